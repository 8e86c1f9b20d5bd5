import { colourDifference, colourKey, labOf } from '../fields/index.ts';
import type { Notice } from '../figure/index.ts';
import type { Composition, Row } from '../ribbon/index.ts';
import type { Skirt } from '../skirt/index.ts';
import { called } from './called.ts';
import { caution } from './codes.ts';
import { clothsAmong, type SkirtCloth, type SkirtCloths } from './whose.ts';

/** A ribbon less unlike its cloth than this (CIEDE2000) is lost from across a room. Common practice, no source. */
const SEEN_FROM_AFAR = 10;

/** Rows that hardly show on the cloth that they lie on, whichever of the skirt's that is; rows of one colour on one cloth are told once. */
export function hardlySeen(skirt: Skirt, cloths: SkirtCloths, { rows }: Composition): Notice[] {
  const lost = new Map<string, { readonly row: Row; readonly cloth: SkirtCloth; rows: number }>();
  for (const row of rows)
    for (const cloth of clothsUnder(skirt, cloths, row)) {
      const { colour } = cloth.options;
      if (colourDifference(labOf(row.colour.hex), labOf(colour.hex)) >= SEEN_FROM_AFAR) continue;
      const key = `${String(cloth.which)} ${colourKey(row.colour)}`;
      const found = lost.get(key) ?? { row, cloth, rows: 0 };
      found.rows += 1;
      lost.set(key, found);
    }
  return [...lost.values()].map(({ row, cloth, rows: count }) =>
    caution('cloth.rowHardlySeen', {
      ...called(cloth.options),
      row: row.number,
      rows: count,
      ribbon: called({ name: '', colour: row.colour }).colour,
    }),
  );
}

/** A row that covers the seam of two tiers lies on both. */
const clothsUnder = ({ rounds }: Skirt, cloths: SkirtCloths, row: Row): readonly SkirtCloth[] =>
  clothsAmong(cloths, [
    ...row.lines.map(({ panel }) => panel),
    ...(row.onSeam ? (rounds[row.round]?.panels ?? []) : []),
  ]);
