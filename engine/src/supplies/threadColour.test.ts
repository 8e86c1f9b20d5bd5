import { describe, expect, test } from 'vitest';
import { planOf, type RawRequest } from '../testing/requests.ts';

const skirt = (more: RawRequest = {}, colour?: string) =>
  planOf({
    cut: { kind: 'tiered', tiers: 2 },
    waist: { kind: 'plain waistband' },
    cloth: { colour: 'white' },
    contrast: [
      { pieces: ['tier 2'], cloth: { colour: 'black' } },
      { pieces: ['waistband'], cloth: { colour: 'gold' } },
    ],
    ribbons: { rows: 0 },
    ...more,
    supplies: { thread: colour === undefined ? {} : { colour } },
  });

type Plan = ReturnType<typeof skirt>;
const sewn = ({ supplies }: Plan, name: string | null): number =>
  supplies.thread
    .filter(({ colour }) => (colour?.name ?? null) === name)
    .flatMap(({ parts }) => parts)
    .filter(({ stitch }) => stitch === '301')
    .reduce((sum, { seam }) => sum + seam.value, 0);
const lengthOf = ({ lines }: Plan, name: string): number =>
  lines.filter((line) => line.name === name).reduce((sum, { length }) => sum + length.value, 0);

describe('thread of a skirt of several cloths', () => {
  test('a seam between two cloths is sewn in the darker, unless it is to be in the one above', () => {
    const [darker, outer] = [skirt(), skirt({}, 'outer')];
    // The tier seam joins white above to black below; the band's seam gold above to white below.
    const tier = lengthOf(darker, 'tier seam');
    expect(tier).toBeGreaterThan(0);
    expect(sewn(darker, 'black') - sewn(outer, 'black')).toBeCloseTo(tier, 6);
    expect(sewn(outer, null) - sewn(darker, null)).toBeCloseTo(tier, 6);
    expect(sewn(outer, 'gold')).toBeCloseTo(sewn(darker, 'gold'), 6);
  });

  test('one colour for all is the skirt’s own', () => {
    const own = skirt({}, 'own');
    expect(own.supplies.thread.map(({ colour }) => colour)).toEqual([null]);
    const total = (plan: Plan) => plan.supplies.thread.reduce((sum, { total: each }) => sum + each.value, 0);
    expect(total(own)).toBeCloseTo(total(skirt()), 6);
  });

  test('under a ribbon goes the colour of the cloth that it lies on', () => {
    const plan = skirt({ ribbons: { rows: [{ colour: 'red' }] } });
    const red = plan.supplies.thread.find(({ colour }) => colour?.name === 'red');
    expect(red?.parts.map(({ underIn }) => underIn?.name)).toEqual(['black']);
    expect(red?.under.value).toBe(0);
  });

  test('gores of two cloths: each seam by the two that it joins', () => {
    const gores = (pieces: string[]) =>
      planOf({
        cut: { kind: 'gored', gores: 6 },
        cloth: { colour: 'black' },
        contrast: [{ pieces, cloth: { colour: 'white' } }],
        ribbons: { rows: 0 },
      });
    const whiteSeams = (pieces: string[]): number => {
      const plan = gores(pieces);
      const line = plan.lines.find(({ name }) => name === 'gore seam');
      const each = (line?.length.value ?? 0) / 6;
      return sewn(plan, 'white') / each;
    };
    // Apart, every seam of theirs has a black neighbour; side by side, one seam is white on both sides.
    expect(whiteSeams(['gore 1', 'gore 3'])).toBe(0);
    expect(whiteSeams(['gore 2', 'gore 3'])).toBeCloseTo(1, 6);
  });

  test('the shopping list has a spool of each colour', () => {
    const spools = skirt().supplies.items.filter(({ what }) => what === 'thread');
    expect(spools.map(({ colour }) => colour?.name).toSorted()).toEqual(['black', 'gold', 'white']);
  });
});
