import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changed, parseRequest, type RequestDocument } from '../request/index.ts';
import { evenly } from '../testing/evenly.ts';
import { anyCircle, anyFlared, anyGathered, anyGored, anyTiered, anyWrap } from '../testing/cuts.ts';
import { anyRequest, type RawRequest } from '../testing/requests.ts';
import { patience, runs } from '../testing/runs.ts';
import { mm } from '../units/index.ts';
import { handlesOf, moved, planSkirt, type Handle, type HandleName, type SkirtPlan } from './index.ts';

const planned = (raw: RequestDocument): SkirtPlan => {
  const parsed = parseRequest(raw);
  if (!parsed.ok) throw new Error(JSON.stringify({ errors: parsed.errors, raw }));
  return planSkirt(parsed.request);
};
const handleIn = (plan: SkirtPlan, name: HandleName): Handle => {
  const found = handlesOf(plan).find((handle) => handle.name === name);
  if (!found) throw new Error(`no handle ${name}`);
  return found;
};
const bandEdges = (plan: SkirtPlan): number[] =>
  plan.ribbons.rows
    .filter(({ band }, i, all) => all[i - 1]?.band !== band)
    .map(({ fromHem }) => fromHem.value);

/**
 * How far from the wish a handle may land: a mark. Widths that are cut down land on a mark of each width, and where one
 * more comes in, its two seams leave a gap of half an allowance in the quarter, and the width that is only just needed is cut at
 * a mark of its own.
 */
function tolerance(before: SkirtPlan, then: SkirtPlan, handle: Handle): number {
  const { cut } = before.request;
  if (handle.name !== 'waistMark' || cut.kind !== 'gathered' || cut.wholeWidths) return handle.step;
  const most = Math.max(before.skirt.panels.length, then.skirt.panels.length);
  return (before.request.mark * most) / 2 + before.skirt.sideSeamAllowance.value / 2;
}

/** Any request, of every cut as often as of another; a waist that names no kind would be read as the cut's usual one. */
const anySkirt: fc.Arbitrary<RawRequest> = fc
  .tuple(anyRequest, fc.oneof(anyFlared, anyGathered, anyCircle, anyTiered, anyGored, anyWrap))
  .map(([raw, cut]) => ({
    ...raw,
    cut,
    ...(raw.waist && { waist: { kind: 'turned casing', ...raw.waist } }),
  }));

const anyMove = fc.record({
  raw: anySkirt,
  which: fc.nat(),
  share: evenly(-0.2, 1.2),
});
interface Move {
  raw: RawRequest;
  which: number;
  share: number;
}
/** Any handle of those whose name begins so is moved; null where the skirt has none. */
const movedAt = ({ raw, which, share }: Move, begins = '') => {
  const before = planned(raw);
  const handles = handlesOf(before).filter(({ name }) => name.startsWith(begins));
  const handle = handles[which % handles.length];
  if (!handle) return null;
  const wish = mm(handle.least + share * (handle.most - handle.least));
  const clamped = Math.min(handle.most, Math.max(handle.least, wish));
  const changes = moved(before, handle.name, wish);
  const document = changed(raw, changes);
  return { before, handle, wish, clamped, changes, document, then: planned(document) };
};

describe('of any request', () => {
  test('every handle lies within its bounds', patience, () => {
    fc.assert(
      fc.property(anySkirt, (raw) => {
        for (const { value, least, most, step } of handlesOf(planned(raw))) {
          expect(least).toBeLessThanOrEqual(value);
          expect(value).toBeLessThanOrEqual(most);
          expect(step).toBeGreaterThan(0);
        }
      }),
      { numRuns: runs(200) },
    );
  });

  test('any handle, moved anywhere, is read and lands there', patience, () => {
    fc.assert(
      fc.property(anyMove, (move) => {
        const made = movedAt(move);
        if (!made) throw new Error('every skirt has a length');
        const { before, handle, clamped, then } = made;
        const now = handleIn(then, handle.name);
        const away = Math.abs(now.value - clamped);
        if (away > tolerance(before, then, handle) + 1e-6)
          throw new Error(`${handle.name}: ${String(clamped)} wished, ${String(now.value)} came of it`);
      }),
      { numRuns: runs(250) },
    );
  });

  test('moved again to where it is, nothing changes', patience, () => {
    fc.assert(
      fc.property(anyMove, (move) => {
        const made = movedAt(move);
        if (!made) throw new Error('every skirt has a length');
        const { handle, then } = made;
        expect(moved(then, handle.name, handleIn(then, handle.name).value)).toEqual([]);
      }),
      { numRuns: runs(150) },
    );
  });

  test('a row moved by hand leaves every other band where it was', patience, () => {
    let byHand = 0;
    fc.assert(
      fc.property(anyMove, (move) => {
        const made = movedAt(move, 'row');
        if (!made || made.changes.length === 0) return;
        const { before, handle, then } = made;
        if (then.request.ribbons.spacing !== 'by hand') return;
        byHand += 1;
        const band = before.ribbons.rows[Number(handle.name.slice(4)) - 1]?.band ?? 0;
        const now = bandEdges(then);
        bandEdges(before).forEach((edge, i) => {
          if (i !== band - 1) expect(now[i]).toBeCloseTo(edge, 6);
        });
      }),
      { numRuns: runs(250) },
    );
    expect(byHand).toBeGreaterThan(50);
  });
});

test('a gap moved leaves the gaps above it and all below it', patience, () => {
  let gaps = 0;
  fc.assert(
    fc.property(anyMove, (move) => {
      const made = movedAt(move, 'gap');
      if (!made) return;
      const { before, handle, then } = made;
      gaps += 1;
      const by = handleIn(then, handle.name).value - handle.value;
      const number = Number(handle.name.slice(4));
      before.ribbons.rows.forEach(({ fromHem }, i) => {
        expect(then.ribbons.rows[i]?.fromHem.value).toBeCloseTo(
          fromHem.value + (i >= number - 1 ? by : 0),
          6,
        );
      });
    }),
    { numRuns: runs(150) },
  );
  expect(gaps).toBeGreaterThan(50);
});
