import { describe, expect, test } from 'vitest';
import { boundsOf } from '../../geometry/index.ts';
import { planOf, type RawRequest } from '../../testing/requests.ts';
import { clothJobOf, wantedOf } from '../job/wanted.ts';
import type { ClothJob, FoundCloth } from '../job/found.ts';
import type { LayKind } from '../options.ts';
import { searchCloth } from './search.ts';
import { faultsOf } from './testing/faults.ts';

const flaws = [{ along: '50 cm', across: '30 cm', length: '5 cm', width: '5 cm' }];
const lengths = [
  { name: 'one', length: '1.5 m', flaws },
  { name: 'two', length: '2.6 m', width: '140 cm' },
];
const skirts: readonly RawRequest[] = [{ cut: { kind: 'gored' } }, {}, { cut: { kind: 'gathered' } }];

function jobWith(cloth: RawRequest['cloth']): ClothJob {
  const plans = skirts.map((raw) => planOf({ ...raw, cloth: { width: '150 cm', ...cloth } }));
  const wanted = plans.flatMap(({ skirt }, i) => wantedOf(skirt, [], 'own', String(i)) ?? []);
  const [plan] = plans;
  if (!plan) throw new Error('a job has a skirt');
  return clothJobOf(plan.request.cloth, wanted);
}

const search = (job: ClothJob, way: LayKind): FoundCloth =>
  searchCloth(job, way, { seed: 2, evaluations: 6000 });

/** Where the first piece of each length at hand begins. */
const beginnings = ({ tables }: FoundCloth): number[] =>
  tables
    .filter(({ from }) => from.length !== null)
    .map(({ pieces }) => Math.min(...pieces.map(({ outline }) => boundsOf(outline).left)));

describe('what lies on lengths at hand is pressed together', () => {
  test.each<[string, LayKind, RawRequest['cloth']]>([
    ['in one layer', 'open', { lengths }],
    ['folded lengthwise', 'lengthwise fold', { lengths: lengths.map((each) => ({ ...each, flaws: [] })) }],
    ['with room for the scissors', 'open', { lengths, between: '5 mm' }],
    ['with stripes that meet', 'open', { lengths, pattern: { across: '4 cm' } }],
  ])('%s: it begins at the raw end, nothing lies on anything', (_, way, cloth) => {
    const job = jobWith(cloth);
    const found = search(job, way);
    expect(found.fits).toBe(true);
    expect(faultsOf(found, job)).toEqual([]);
    const begun = beginnings(found);
    expect(begun.length).toBeGreaterThan(0);
    for (const at of begun) expect(at).toBeLessThan(1);
  });

  test('the same seed and evaluations give the same lay', () => {
    const job = jobWith({ lengths });
    expect(JSON.stringify(search(job, 'open'))).toBe(JSON.stringify(search(job, 'open')));
  });

  test('where what is at hand is enough the search still ends before its time, and tidily', () => {
    let asked = 0;
    const found = searchCloth(jobWith({ lengths: [{ length: '8 m' }, ...lengths] }), 'open', {
      seed: 2,
      spent: () => asked++ / 100_000,
    });
    expect(found.toBuy.value).toBe(0);
    expect(asked).toBeLessThan(50_000);
    for (const at of beginnings(found)) expect(at).toBeLessThan(1);
  });
});
