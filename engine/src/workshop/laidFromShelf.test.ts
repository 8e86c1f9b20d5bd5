import { expect, test } from 'vitest';
import { classOf } from '../testing/classes.ts';
import { besideLays, howMany, laidFromShelf, planClass, searchClass, toldBeside } from './index.ts';

const child = { body: { waist: '56 cm', hip: '64 cm', waistToHem: '50 cm' } };
const tall = {
  cut: { kind: 'gathered', widths: 3 },
  body: { waist: '100 cm', hip: '120 cm', waistToHem: '95 cm' },
};
/** Two small skirts and one that is too long for what is at hand, on cloth that no more can be had of. */
const short = (length: string) =>
  classOf({
    cloths: { navy: { width: '112 cm', washed: true, bolt: false, lengths: [{ length }] } },
    skirts: [
      { wearer: 'Alex', ...tall },
      { wearer: 'Kit', ...child },
      { wearer: 'Jo', ...child },
    ],
  });

const answer = (length: string) => {
  const request = short(length);
  const [plan, shelf] = [planClass(request), howMany(request, null)];
  return { plan, shelf, laid: laidFromShelf(plan, shelf), told: toldBeside(plan, shelf) };
};

test('where cloth is too little for all, those it is enough for are laid on it, and nobody else', () => {
  const { plan, laid, told } = answer('260 cm');
  expect(plan.cloths[0]?.chosen.fits).toBe(false);
  expect(laid).toHaveLength(1);
  for (const { chosen, shares, ways } of laid) {
    expect(chosen.fits).toBe(true);
    expect(chosen.toBuy.value).toBe(0);
    expect(ways).toEqual([chosen]);
    expect(shares.map(({ skirt }) => skirt.label)).toEqual(['Kit', 'Jo']);
    const wearers = new Set(chosen.tables.flatMap(({ pieces }) => pieces.map(({ wearer }) => wearer)));
    expect([...wearers].sort()).toEqual(['Jo', 'Kit']);
  }
  const short = told.filter(({ notice }) => notice.code === 'cloth.notEnoughFor');
  expect(short.map(({ notice }) => notice.params['wearer'])).toEqual(['Alex']);
});

test('who finds too little cloth takes none from those after', () => {
  const short = answer('260 cm').plan.notices.filter(({ notice }) => notice.code === 'cloth.notEnoughFor');
  expect(short.map(({ notice }) => notice.params['wearer'])).toEqual(['Alex']);
});

test('what is laid in the order of the list, and as many as can be where those are others', () => {
  const request = short('380 cm');
  const [plan, shelf] = [planClass(request), howMany(request, null)];
  const laid = laidFromShelf(plan, shelf).map(({ shares }) => shares.map(({ skirt }) => skirt.label));
  expect(laid).toEqual([...new Set([shelf[0]?.inOrder.skirts, shelf[0]?.most.skirts])]);
  expect(laid[0]).toContain('Alex');
});

test('where everybody’s skirt fits, or nobody’s, nothing is laid apart and all is told', () => {
  for (const length of ['20 m', '20 cm']) {
    const { plan, laid, told } = answer(length);
    expect(laid).toEqual([]);
    expect(told).toEqual(plan.notices);
  }
});

test('a length of which nothing was folded is not called opened out, and nothing of it uncut twice', () => {
  const rest = { width: '110 cm', bolt: false, lengths: [{ name: 'rest', length: '30 cm' }] };
  const request = classOf({
    measure: 'metric',
    cloths: { print: { width: '150 cm' }, plain: rest },
    skirts: [
      {
        cloth: 'print',
        waist: { kind: 'plain waistband' },
        body: { waist: '72 cm', hip: '96 cm', waistToHem: '80 cm' },
        contrast: [{ pieces: ['waistband'], cloth: 'plain' }],
      },
    ],
  });
  const plan = searchClass(request, { seed: 1, evaluations: 2000 });
  const ways = plan.cloths.find(({ key }) => key === 'plain')?.ways.filter(({ fits }) => fits) ?? [];
  expect(ways.length).toBeGreaterThan(0);
  for (const { tables } of ways) {
    expect(tables.map(({ where }) => where)).toEqual(['first']);
    for (const { along, layers, leftOver, uncut } of tables)
      if (layers === 1) expect([along > 284, leftOver === null, uncut]).toEqual([true, false, null]);
  }
});

test('beside the lays it is told what of a skirt is cut from no such cloth, and not what else is to be known of it', () => {
  const body = { waist: '70 cm', hip: '95 cm', waistToHem: '70 cm' };
  const plan = planClass(
    classOf({
      cloths: { navy: {}, red: {} },
      skirts: [{ wearer: 'Kit', body, contrast: [{ pieces: ['waistband'], cloth: 'red' }] }],
    }),
  );
  const told = besideLays(plan.notices);
  expect(told.map(({ notice: { code } }) => code)).toEqual(['cloth.contrastNothing']);
  // The cloth is called what the class calls it.
  expect(told[0]?.notice.params['cloth']).toBe('red');
  expect(plan.notices.length).toBeGreaterThan(told.length);
});

test('of cloth that is too little it is not told how it would be cut', () => {
  const navy = { bolt: false, lengths: [{ length: '20 cm' }], pattern: { across: '4 cm' } };
  const plan = planClass(classOf({ cloths: { navy }, skirts: [child, child] }));
  expect(plan.cloths[0]?.chosen.notices.map(({ code }) => code)).toContain('cloth.byEye');
  const told = plan.notices.filter(({ label }) => label === null).map(({ notice: { code } }) => code);
  expect(new Set(told)).toEqual(new Set(['cloth.notEnoughFor']));
});
