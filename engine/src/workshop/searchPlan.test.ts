import { expect, test } from 'vitest';
import type { SkirtPlan } from '../plan/index.ts';
import { classOf } from '../testing/classes.ts';
import { planOf } from '../testing/requests.ts';
import type { ClassPlan } from './class.ts';
import { searchClass } from './search.ts';
import { searchPlan } from './searchPlan.ts';

const effort = { seed: 1, evaluations: 5000 };
const gored = { cut: { kind: 'gored' }, cloth: { step: '1 mm', least: '0 mm' } };

test('a searched plan takes less cloth, and its shopping list says so', () => {
  const plan = planOf(gored);
  const closer = searchPlan(plan.request, effort);
  expect(closer.cloth.chosen.clothBefore.value).toBeLessThan(plan.cloth.chosen.clothBefore.value);
  const cloth = closer.supplies.items.find(({ what }) => what === 'cloth');
  expect(cloth?.buy.value).toBe(closer.cloth.chosen.toBuy.value);
  expect(closer.skirt).toEqual(plan.skirt);
});

test('of a cloth that is partly at hand the list has what comes off the bolt; of one that is all there, what it takes', () => {
  const listed = (length: string) => {
    const plan = planOf({ ...gored, cloth: { ...gored.cloth, lengths: [{ length }] } });
    const { cloth, supplies } = searchPlan(plan.request, effort);
    return { chosen: cloth.chosen, item: supplies.items.find(({ what }) => what === 'cloth') };
  };
  const part = listed('45 in');
  expect(part.item?.need?.value).toBeLessThan(part.chosen.clothBefore.value - 100);
  // The shop's step is a millimetre here.
  expect((part.item?.buy.value ?? 0) - (part.item?.need?.value ?? 0)).toBeLessThan(1.001);
  const all = listed('5 m');
  expect(all.item?.buy.value).toBe(0);
  expect(all.item?.need?.value).toBe(all.chosen.clothBefore.value);
});

test('where nothing is saved the plan stays as it was', () => {
  const plan = planOf({ cloth: { step: '3 m', least: '3 m' } });
  expect(searchPlan(plan.request, effort).cloth.chosen.toBuy.value).toBe(plan.cloth.chosen.toBuy.value);
});

test('the way that is asked for is kept to', () => {
  const plan = planOf({ ...gored, cloth: { ...gored.cloth, lay: 'lengthwise fold' } });
  expect(searchPlan(plan.request, effort).cloth.chosen.kind).toBe('lengthwise fold');
});

test('where nothing lies in the way that is asked for the others are searched, and which is taken instead is told once', () => {
  const sixGores = {
    body: { waist: '28 in', hip: '38 in', waistToHem: '32 in' },
    cut: { kind: 'gored', gores: 6 },
  };
  const cloth = { width: '60 in', step: '1 mm', least: '0 mm', lay: 'double fold' };
  const wished = (plan: SkirtPlan | ClassPlan) =>
    plan.notices
      .map(({ notice }) => notice)
      .filter(({ code }) => code === 'cloth.layWished')
      .map(({ params }) => params['taken']);
  const plan = planOf({ ...sixGores, cloth });
  expect(wished(plan)).toEqual([plan.cloth.chosen.kind]);
  const closer = searchPlan(plan.request, { seed: 1, evaluations: 20_000 });
  expect(closer.cloth.chosen.clothBefore.value).toBeLessThan(plan.cloth.chosen.clothBefore.value);
  expect(wished(closer)).toEqual([closer.cloth.chosen.kind]);
  const shared = searchClass(
    classOf({ cloths: { a: cloth }, skirts: [{ wearer: 'Ira', ...sixGores }] }),
    effort,
  );
  expect(shared.cloths.map(({ chosen }) => chosen.fits)).toEqual([true]);
  expect(wished(shared)).toEqual(shared.cloths.map(({ chosen }) => chosen.kind));
});

test('a pattern that has to meet is laid so only by a search, and the plan says so', () => {
  const plan = planOf({ cloth: { width: '60 in', pattern: { across: '4 cm' } } });
  expect(plan.notices.map(({ notice }) => notice.code)).toContain('cloth.laidByHand');
  const says = ({ sewing }: SkirtPlan): boolean =>
    sewing.steps.some(({ sentences }) => sentences.some(({ code }) => code === 'fold.pattern'));
  expect(plan.cloth.chosen.table.layers).toBeGreaterThan(1);
  expect(says(plan)).toBe(false);
  for (const lay of ['open', 'lengthwise fold'] as const) {
    const closer = searchPlan({ ...plan.request, cloth: { ...plan.request.cloth, lay } }, effort);
    expect(closer.cloth.chosen.kind).toBe(lay);
    expect(closer.notices.map(({ notice }) => notice.code)).not.toContain('cloth.laidByHand');
    // Folded, it is folded on the pattern, and the sewing order says so.
    expect(says(closer)).toBe(lay !== 'open');
  }
});

test.each([
  ['lengthwise fold', { across: '4 cm' }, 'offMiddle'],
  ['lengthwise fold', { along: '4 cm' }, 'selvages'],
  ['crosswise fold', { along: '4 cm' }, 'onBand'],
] as const)('where the fold lies on a pattern: %s, %j', (lay, pattern, fold) => {
  const cloth = { width: '60 in', lay, pattern };
  const { sewing } = searchPlan(planOf({ cut: { kind: 'gored', gores: 8 }, cloth }).request, effort);
  const said = sewing.steps.flatMap(({ sentences }) =>
    sentences.filter(({ code }) => code === 'fold.pattern'),
  );
  expect(said.map(({ params }) => params['fold'])).toEqual([fold]);
});

test('what is known of a cloth however it lies is still told once it was searched', () => {
  const flaw = { along: '150 cm', across: '10 cm', length: '5 cm', width: '5 cm' };
  for (const [code, raw] of [
    ['cloth.contrastNothing', { contrast: [{ pieces: ['waistband'], cloth: {} }] }],
    ['cloth.flawBeyond', { cloth: { ...gored.cloth, lengths: [{ length: '100 cm', flaws: [flaw] }] } }],
  ] as const) {
    const plan = planOf({ ...gored, ...raw });
    const told = ({ notices }: SkirtPlan) => notices.filter(({ notice }) => notice.code === code);
    expect(told(plan)).toHaveLength(1);
    const closer = searchPlan(plan.request, effort);
    expect(closer.cloth.chosen).not.toEqual(plan.cloth.chosen);
    expect(told(closer)).toEqual(told(plan));
  }
});
