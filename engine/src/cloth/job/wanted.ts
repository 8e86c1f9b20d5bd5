import type { Round, Skirt } from '../../skirt/index.ts';
import { mm } from '../../units/index.ts';
import type { ContrastOptions } from '../contrast.ts';
import type { CutPiece } from '../cutPieces.ts';
import { readFabric } from '../fabric.ts';
import type { ClothOptions } from '../options.ts';
import { piecesOf, type WhichCloth } from '../piecesOf.ts';
import type { ClothJob, ClothLength, PanelSeam, Wanted } from './found.ts';

/** What a skirt takes of one of its cloths; null where that is nothing. */
export function wantedOf(
  skirt: Skirt,
  contrast: readonly ContrastOptions[],
  which: WhichCloth,
  wearer = '',
): Wanted | null {
  const pieces = piecesOf(skirt, contrast, which);
  return pieces && { wearer, ...pieces, seams: seamsOf(skirt, pieces.mains) };
}

/** Seams between panels that are cut from the same cloth. */
function seamsOf({ rounds }: Skirt, mains: readonly CutPiece[]): PanelSeam[] {
  const cut = new Set(mains.flatMap(({ copies }) => copies.flatMap(({ panels }) => panels)));
  return rounds.flatMap(seamsIn).filter(({ before, after }) => cut.has(before) && cut.has(after));
}

/** Going round the body, each panel ends where the next begins; the last of a round that closes meets the first. */
function seamsIn({ panels, seams }: Round): PanelSeam[] {
  const found = panels.flatMap((before): PanelSeam[] => {
    const after = panels.find((each) => isSame(each.around.from, before.around.to));
    return after && (after !== before || panels.length === 1) ? [{ before, after }] : [];
  });
  return found.slice(0, seams);
}

const HAIR = 1e-6;
function isSame(a: number, b: number): boolean {
  const turns = Math.abs(a - b) % 1;
  return Math.min(turns, 1 - turns) < HAIR;
}

/** How many pieces are cut. */
export const piecesIn = (wanted: readonly Wanted[]): number =>
  wanted
    .flatMap(({ mains, parts }) => [...mains, ...parts])
    .reduce((sum, { copies }) => sum + copies.length, 0);

/** All that is to be laid on one cloth. */
export const clothJobOf = (options: ClothOptions, wanted: readonly Wanted[]): ClothJob => ({
  fabric: readFabric(options),
  lengths: lengthsOf(options),
  wanted,
});

/** The lengths of a cloth in the order of their use; one of nothing where there is none of it. */
export function lengthsOf({ width, have, bolt, lengths }: ClothOptions): ClothJob['lengths'] {
  const all: ClothLength[] = lengths.map((each) => ({ ...each, width: each.width ?? width }));
  if (have !== undefined) all.push({ name: '', length: have, width, washed: false, flaws: [] });
  if (bolt && have === undefined) all.push({ name: '', length: null, width, washed: false, flaws: [] });
  const [first = { name: '', length: mm(0), width, washed: false, flaws: [] }, ...others] = all;
  return [first, ...others];
}
