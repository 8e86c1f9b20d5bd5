import type { Row } from '../../../ribbon/index.ts';
import type { Skirt } from '../../../skirt/index.ts';
import { lineOn } from '../../pictures/pieces/kinds.ts';
import type { Sheet, Sheets } from './sheet.ts';

/** A height above the finished hem on the tier that it falls on, as a level of that tier's panel. */
export function levelAt(
  { rounds }: Pick<Skirt, 'rounds'>,
  sheets: Sheets,
  fromHem: number,
): { readonly sheet: Sheet; readonly y: number } {
  const found = rounds.findIndex((round) => round.fromHem <= fromHem);
  const at = found < 0 ? rounds.length - 1 : found;
  const sheet = sheets.tiers ? (sheets.all[at] ?? sheets.main) : sheets.main;
  return { sheet, y: sheet.shape.length - (fromHem - (rounds[at]?.fromHem ?? 0)) };
}

/** The sheet on which a row is taken hold of: the main one where that carries it. */
export function sheetWith(row: Row, { all, main }: Sheets): Sheet | null {
  if (lineOn(main.kind, row)) return main;
  return all.find(({ kind }) => lineOn(kind, row)) ?? null;
}
