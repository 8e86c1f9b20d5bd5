import type { Notice } from '../figure/index.ts';
import type { Round, Skirt } from '../skirt/index.ts';
import { mm, type Mm } from '../units/index.ts';
import { caution, figure } from './codes.ts';
import type { Row } from './row.ts';

/** A ribbon that covers the seam of two tiers reaches this far beyond it on both sides. Common practice, no source. */
const COVERS = mm(3);

/** The tier above the seam that a ribbon from `at` covers; null where it covers none. */
export function onTierSeam(
  { rounds }: Skirt,
  at: Mm,
  width: Mm,
): { readonly round: Round; readonly number: number } | null {
  const found = rounds.findIndex(
    ({ fromHem }) => fromHem > 0 && at <= fromHem - COVERS && at + width >= fromHem + COVERS,
  );
  const round = rounds[found];
  return round ? { round, number: found + 1 } : null;
}

/** Rows that run into the seam of two tiers without covering it: half of them would lie on gathers. */
export function acrossTiers({ rounds }: Skirt, rows: readonly Row[]): Notice[] {
  const seams = rounds.filter(({ fromHem }) => fromHem > 0);
  const crossing = rows.flatMap((row) => {
    if (row.onSeam) return [];
    const [from, to] = [row.fromHem.value, row.fromHem.value + row.width.value];
    const hit = seams.find(({ fromHem }) => from < fromHem + COVERS && to > fromHem - COVERS);
    return hit ? [{ row, seam: hit.fromHem }] : [];
  });
  const [first] = crossing;
  if (!first) return [];
  const centred = mm(first.seam - first.row.width.value / 2);
  return [
    caution('ribbon.rowAcrossTierSeam', {
      row: first.row.number,
      rows: crossing.length,
      seam: figure.length(first.seam, 'ribbon.tierFromHem'),
      centred: figure.length(mm(Math.max(0, centred)), 'ribbon.onSeamAt'),
    }),
  ];
}
