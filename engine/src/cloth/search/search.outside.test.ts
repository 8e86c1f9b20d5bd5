// Outside source: clipper2-ts at integer precision (a micrometre), an independent look at every found lay.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyBody } from '../../testing/bodies.ts';
import { anyCloth } from '../../testing/cloths.ts';
import { anyCut } from '../../testing/cuts.ts';
import { anyExtras } from '../../testing/extras.ts';
import { planOf } from '../../testing/requests.ts';
import { anyWaist } from '../../testing/waists.ts';
import { patience, runs } from '../../testing/runs.ts';
import { layKinds } from '../options.ts';
import { byHand } from './byHand.ts';
import type { ClothJob, FoundCloth, Wanted } from '../job/found.ts';
import { liesAs } from './lies.ts';
import { searchCloth } from './search.ts';
import { faultsOf } from './testing/faults.ts';
import { openedFaults } from './testing/openedFaults.ts';
import { clothJobOf, wantedOf } from '../job/wanted.ts';

const some = (fields: Readonly<Record<string, fc.Arbitrary<unknown>>>) =>
  fc.record(fields, { requiredKeys: [] });

const anySkirt = some({
  body: anyBody,
  cut: anyCut,
  waist: anyWaist,
  extras: anyExtras,
  cloth: anyCloth,
});
const length = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((value) => `${String(value)} mm`);

const anyLengths = fc.array(
  fc.record({
    length: length(200, 4000),
    width: length(700, 1800),
    flaws: fc.array(
      fc.record({
        along: length(0, 3000),
        across: length(0, 1200),
        length: length(5, 400),
        width: length(5, 400),
      }),
      { maxLength: 3 },
    ),
  }),
  { maxLength: 3 },
);

const more = some({
  between: fc.constantFrom('0 mm', '0 mm', '8 mm'),
  lengths: anyLengths,
  bolt: fc.boolean(),
});

/** Some skirts on one cloth: that of the first. */
const anyJob = (extras: fc.Arbitrary<object>) =>
  fc.tuple(fc.array(anySkirt, { minLength: 1, maxLength: 3 }), extras).map(([skirts, extra]): ClothJob => {
    const cloth = { ...(skirts[0]?.['cloth'] as object | undefined), ...extra };
    const plans = skirts.map((skirt) => planOf({ ...skirt, cloth }));
    const wanted = plans.flatMap(({ skirt }, i): Wanted[] => {
      const each = wantedOf(skirt, [], 'own', `wearer ${String(i + 1)}`);
      return each ? [each] : [];
    });
    const [first] = plans;
    if (!first) throw new Error('no skirt');
    return clothJobOf(first.request.cloth, wanted);
  });
const anyPlain = anyJob(fc.constant({ have: undefined }));
const anyOther = anyJob(more);

const search = (job: ClothJob, way: (typeof layKinds)[number]): FoundCloth =>
  searchCloth(job, way, { seed: 3, evaluations: 300 });

describe('a found lay', () => {
  test.each(layKinds)(
    '%s: every piece once, in the cloth, clear of the others and of flaws',
    (way) => {
      fc.assert(
        fc.property(anyOther, (job) => {
          const found = search(job, way);
          if (!found.fits) {
            expect(found.notices.some(({ level }) => level === 'problem')).toBe(true);
            return;
          }
          expect(faultsOf(found, job)).toEqual([]);
          expect(openedFaults(found, job)).toEqual([]);
          // A search that could not be made falls back on hands: opened out it always can.
          if (way === 'open' && !found.proven) expect(found.evaluations).toBeGreaterThan(0);
          expect(found.lowerBound.value).toBeLessThanOrEqual(found.clothAfter.value + 0.01);
        }),
        { numRuns: runs(15) },
      );
    },
    patience.timeout * 2,
  );

  test.each(layKinds)(
    '%s: takes no more than the same skirts laid by hand',
    (way) => {
      fc.assert(
        fc.property(anyPlain, (job) => {
          const hand = byHand(job, way === 'open' ? null : way);
          if (!hand || (way === 'crosswise fold' && job.fabric.oneWay)) return;
          const found = search(job, way);
          expect(found.fits).toBe(true);
          const used = hand.reduce((sum, { lay }) => sum + lay.clothAfter.value, 0);
          if (job.lengths.length === 1) expect(found.clothAfter.value).toBeLessThanOrEqual(used + 1e-3);
        }),
        { numRuns: runs(15) },
      );
    },
    patience.timeout * 2,
  );

  test(
    'a one-way print lies the same way on every panel',
    () => {
      fc.assert(
        fc.property(anyPlain, (plain) => {
          const job = { ...plain, fabric: { ...plain.fabric, oneWay: true } };
          const found = search(job, 'open');
          if (!found.fits) return;
          const turns = found.tables
            .filter(({ layers }) => layers === 1)
            .flatMap(({ pieces }) =>
              pieces.flatMap((piece) => piece.panels.flatMap((panel) => liesAs(piece, panel)?.degrees ?? [])),
            );
          for (const turn of turns) expect([270, 0]).toContain(turn);
        }),
        { numRuns: runs(15) },
      );
    },
    patience.timeout,
  );

  test('round pieces too', () => {
    for (const cut of [
      { kind: 'circle' },
      { kind: 'circle', fraction: '1/4' },
      { kind: 'flared', hemline: 'level' },
    ]) {
      const { skirt, request } = planOf({ cut, cloth: { width: '60 in' } });
      const wanted = wantedOf(skirt, [], 'own');
      const job = clothJobOf(request.cloth, wanted ? [wanted] : []);
      const found = search(job, 'open');
      expect(found.fits).toBe(true);
      expect(faultsOf(found, job)).toEqual([]);
      expect(openedFaults(found, job)).toEqual([]);
    }
  });
});
