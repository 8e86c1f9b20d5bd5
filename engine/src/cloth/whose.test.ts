import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyContrast } from '../testing/cloths.ts';
import { anyRequest, planOf } from '../testing/requests.ts';
import { patience, runs } from '../testing/runs.ts';
import { clothOf, contrastChoices, pieceNames } from './index.ts';

const tiered = { cut: { kind: 'tiered', tiers: 3 }, waist: { kind: 'plain waistband' } };
const contrast = [
  { pieces: ['tier 2'], cloth: { name: 'poplin', colour: 'red' } },
  { pieces: ['waistband'], cloth: { colour: 'gold' } },
];

describe('which cloth a piece is cut from', () => {
  test('a tier and a waistband each have theirs, all else the skirt’s own', () => {
    const { skirt, cloths } = planOf({ ...tiered, contrast });
    const colours = skirt.rounds.map(({ panels: [panel] }) => clothOf(cloths, panel).options.colour.name);
    expect(colours).toEqual(['navy', 'red', 'navy']);
    expect(clothOf(cloths, 'waistband').options.colour.name).toBe('gold');
    expect(cloths.map((cloth) => pieceNames(skirt, cloth))).toEqual([
      ['tier 1', 'tier 3'],
      ['tier 2'],
      ['part waistband'],
    ]);
  });

  test('some gores of a cloth are told by their numbers', () => {
    const { skirt, cloths } = planOf({
      cut: { kind: 'gored', gores: 6 },
      contrast: [{ pieces: ['gore 2', 'gore 5'], cloth: { colour: 'white' } }],
    });
    expect(cloths[1] && pieceNames(skirt, cloths[1])).toEqual(['panel gore 2', 'panel gore 5']);
  });

  test('every panel and every part of the skirt’s cloths is of one of them', patience, () => {
    fc.assert(
      fc.property(anyRequest, anyContrast, (raw, others) => {
        const { skirt, cloths, contrast: laid } = planOf({ ...raw, contrast: others });
        const panels = cloths.flatMap((each) => each.panels);
        expect(panels).toHaveLength(skirt.panels.length);
        expect(new Set(panels)).toEqual(new Set(skirt.panels));
        const parts = cloths.flatMap((each) => each.parts);
        const own = skirt.parts.filter(({ cloth }) => cloth === 'skirt').map(({ name }) => name);
        expect(parts.toSorted()).toEqual([...new Set(own)].toSorted());
        // What is planned of the others is what is laid.
        expect(cloths.slice(1).map(({ which }) => which)).toEqual(laid.map(({ at }) => at));
      }),
      { numRuns: runs(60) },
    );
  });
});

test('what can be cut from another cloth is what the skirt has, and never all of it', () => {
  const names = (raw: Parameters<typeof planOf>[0]) =>
    contrastChoices(planOf(raw).skirt).map(({ piece }) => piece);
  expect(names(tiered)).toEqual(['tier 1', 'tier 2', 'tier 3', 'part waistband']);
  expect(names({ waist: { kind: 'turned casing' } })).toEqual(['panel front', 'panel back']);
  expect(names({ cut: { kind: 'gored', gores: 4 } }).slice(0, 4)).toEqual([
    'panel gore 1',
    'panel gore 2',
    'panel gore 3',
    'panel gore 4',
  ]);
});
