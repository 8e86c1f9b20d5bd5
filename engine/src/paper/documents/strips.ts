import type { Figure } from '../../figure/index.ts';
import type { Row, Strip } from '../../ribbon/index.ts';
import type { Skirt } from '../../skirt/index.ts';
import type { Mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';

/** Strips of a row that are cut alike. */
export interface StripGroup {
  readonly length: Figure<Mm>;
  readonly strips: readonly [Strip, ...Strip[]];
}

/** The strips of a row by their lengths, longest first: unlike panels have unlike strips. */
export function stripGroups({ strips }: Row): StripGroup[] {
  const groups = new Map<Mm, [Strip, ...Strip[]]>();
  for (const strip of strips) {
    const found = groups.get(strip.length.value);
    if (found) found.push(strip);
    else groups.set(strip.length.value, [strip]);
  }
  return [...groups.values()]
    .map((group) => ({ length: group[0].length, strips: group }))
    .sort((a, b) => b.length.value - a.length.value);
}

export const groupText = ({ length, strips }: StripGroup, speaker: Speaker): string =>
  speaker.text(speaker.words.papers.stripsEach, { count: strips.length, length });

/** `2 × 30⅝ in`, or `2 × 30⅝ in, 4 × 12 in` where the panels differ. */
export const stripsText = (row: Row, speaker: Speaker): string =>
  stripGroups(row)
    .map((group) => groupText(group, speaker))
    .join(', ');

/** Where the ruler is laid for a row: from which raw edge, or how far below the seam that it covers. */
export function rowPlace(row: Row, { rounds }: Pick<Skirt, 'rounds'>, speaker: Speaker): string {
  const { papers } = speaker.words;
  if (row.onSeam)
    return speaker.text(papers.rowOnSeam, { upper: row.round, lower: row.round + 1, below: row.onSeam });
  const value = speaker.value(row.fromRawEdge);
  return rounds.length > 1 ? `${value}, ${speaker.text(papers.tierNumber, { number: row.round })}` : value;
}
