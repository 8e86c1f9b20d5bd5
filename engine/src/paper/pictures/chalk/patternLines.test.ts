import { describe, expect, test } from 'vitest';
import { classOfOne } from '../../../request/index.ts';
import type { FoundTable } from '../../../cloth/index.ts';
import { boundsOf, translate } from '../../../geometry/index.ts';
import { requestOf } from '../../../testing/requests.ts';
import { speakerOf } from '../../../testing/speakers.ts';
import { mm } from '../../../units/index.ts';
import { searchClass } from '../../../workshop/index.ts';
import { inks, type Mark } from '../../drawing/index.ts';
import { meetsText, patternTexts } from '../../documents/patternTexts.ts';
import { patternLines, repeatsOn } from './patternLines.ts';

const request = requestOf({
  body: { waist: '70 cm', hip: '95 cm', waistToHem: '70 cm' },
  cut: { kind: 'gored', gores: 6 },
  cloth: {
    width: '150 cm',
    washed: true,
    lay: 'open',
    pattern: { across: '6 cm', along: '9 cm', at: { along: '2 cm' } },
  },
});
const plan = searchClass(classOfOne(request), { seed: 1, evaluations: 1000 });
const [cloth] = plan.cloths;
const [table] = cloth?.chosen.tables ?? [];
if (!cloth || !table) throw new Error('the gores lie on one length');
const { fabric } = cloth.chosen;
const speaker = speakerOf(request);

/** Drawn ten times smaller, the cloth's corner in the paper's. */
const scale = 0.1;
function drawnOn(of: FoundTable, from = 0, to = of.along): { x: number[]; y: number[] } {
  const sheet = { from, to, left: 0, right: (to - from) * scale, y: 0, across: of.across * scale };
  const marks = patternLines(of, fabric, sheet, { scale, dx: -from * scale, dy: 0 }, inks.grey);
  const at = (axis: 'left' | 'top', other: 'right' | 'bottom'): number[] =>
    marks.flatMap((mark: Mark) => {
      const box = mark.kind === 'path' && mark.paths[0] ? boundsOf(mark.paths[0]) : null;
      return box && Math.abs(box[axis] - box[other]) < 1e-9 ? [box[axis] / scale] : [];
    });
  return { x: at('left', 'right'), y: at('top', 'bottom') };
}

describe('the pattern of a cloth in a single layer', () => {
  test('is drawn where it lies: from the raw end and from the selvage, every repeat', () => {
    const { x, y } = drawnOn(table);
    expect(x.map((each) => (each - 20) / 90).every((each, i) => Math.abs(each - i) < 1e-6)).toBe(true);
    expect(y.map((each) => each / 60).every((each, i) => Math.abs(each - i) < 1e-6)).toBe(true);
    expect(x.length).toBe(Math.floor((table.along - 20) / 90) + 1);
    expect(y.length).toBe(Math.floor(table.across / 60) + 1);
  });

  test('goes on over the next stretch of a long cloth', () => {
    const [first] = drawnOn(table, 300).x;
    // 20 + 4 × 90 is the first beyond 300.
    expect((first ?? 0) + 300).toBeCloseTo(380, 6);
  });

  test('passes down the middle of a gore that its round begins with', () => {
    const middles = table.pieces.flatMap(({ panels, outline }) => {
      const { top, bottom } = boundsOf(outline);
      return panels.length > 0 ? [(top + bottom) / 2] : [];
    });
    const { y } = drawnOn(table);
    expect(middles.some((at) => y.some((line) => Math.abs(line - at) < 1))).toBe(true);
  });

  test('is told in words, and how closely it meets', () => {
    expect(patternTexts(table, cloth.chosen, speaker)).toHaveLength(2);
    const [said] = meetsText(cloth, speaker);
    expect(said).toContain('along 6 whole seams');
    // A seam where it does not meet is told by name, not counted among those where it does.
    const moved = table.pieces.map((piece, i) =>
      i === 0 ? { ...piece, outline: translate(piece.outline, 0, 20) } : piece,
    );
    const askew = { ...cloth, chosen: { ...cloth.chosen, tables: [{ ...table, pieces: moved }] } };
    expect(meetsText(askew, speaker)[0]).toContain('along 4 whole seams');
  });
});

test('where it is folded in four, or begins somewhere within, it is not known where the pattern lies', () => {
  const none = { across: null, along: null };
  expect(repeatsOn({ ...table, layers: 4 }, fabric)).toEqual(none);
  expect(repeatsOn({ ...table, top: 'fold' }, fabric)).toEqual(none);
  expect(repeatsOn(table, { pattern: null })).toEqual(none);
  expect(repeatsOn({ ...table, where: 'beyond' }, fabric)).toEqual({
    across: { at: 0, step: 60 },
    along: null,
  });
});

test('lines that would run into one another on the paper are left out', () => {
  const fine = { pattern: { across: mm(4), along: null, at: { across: mm(0), along: mm(0) }, match: true } };
  const sheet = { from: 0, to: 100, left: 0, right: 10, y: 0, across: 100 };
  expect(patternLines(table, fine, sheet, { scale, dx: 0, dy: 0 }, inks.grey)).toEqual([]);
});
