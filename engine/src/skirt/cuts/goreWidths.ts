import type { Figure, Notice } from '../../figure/index.ts';
import { mm, roundTo, type Mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import { LAYERS } from './common.ts';

/** How a round is shared among the gores: the front one, and all the others alike. */
export interface Gores {
  readonly count: Figure;
  readonly others: Figure;
  /** Width of the front gore for each unit of another's. */
  readonly front: Figure;
  /** All the gores, the front one counted by its width. */
  readonly units: Figure;
  readonly seam: Figure<Mm>;
}

/** Half widths at one level, centre to raw side, at a mark. */
export interface Halves {
  readonly front: Figure<Mm>;
  readonly other: Figure<Mm>;
}

/** Whether the front gore is like all the others at this level. */
export const areAlike = ({ front, other }: Halves): boolean => front.value === other.value;

/** What each of the other gores measures where the front one has a width of its own: they share the rest of the round. */
export const shareRound = (total: Mm, front: Mm, gores: number): Mm => mm((total - front) / (gores - 1));

export function goresOf(count: number, front: number, seam: Figure<Mm>): Gores {
  const gores = figure.count(count, 'skirt.gores');
  const others = figure.count(count - 1, 'skirt.otherGores');
  const share = figure.ratio(front, 'skirt.frontGore');
  const units =
    front === 1 ? gores : figure.ratio(front + count - 1, 'skirt.goreUnits', { front: share, others });
  return { count: gores, others, front: share, units, seam };
}

/** A round shared out and each half chalked at a mark; as wide as `atLeast`, where that is given. */
export function halvesOf(gores: Gores, round: Figure<Mm>, mark: Mm, atLeast?: Halves): Halves {
  const { front, units, seam } = gores;
  const exact = mm(round.value / units.value / 2 + seam.value);
  const other = chalked(exact, mark, 'skirt.goreHalf', { round, units, seam });
  const mine = mm((round.value * front.value) / units.value / 2 + seam.value);
  const first =
    front.value === 1 ? other : chalked(mine, mark, 'skirt.frontGoreHalf', { round, front, units, seam });
  return atLeast ? wider({ front: first, other }, atLeast) : { front: first, other };
}

interface FrontHem {
  readonly asked: Mm;
  readonly round: Figure<Mm>;
  readonly mark: Mm;
  /** Half widths of the gores above, and the widest finished half that each flares to. */
  readonly above: Halves;
  readonly most: { readonly front: Mm; readonly other: Mm };
}

/** A hem whose front gore has a width of its own; the others share the rest. No gore narrows, or flares too far. */
export function frontHemHalves(
  gores: Gores,
  { asked, round, mark, above, most }: FrontHem,
): { readonly halves: Halves; readonly notices: readonly Notice[] } {
  const { seam, others } = gores;
  const n = others.value;
  const least = (half: Figure<Mm>): number => 2 * (half.value - seam.value);
  const low = Math.max(least(above.front), round.value - n * 2 * most.other);
  const high = Math.min(2 * most.front, round.value - n * least(above.other));
  const width = mm(Math.max(low, Math.min(high, asked)));
  const wished = figure.length(asked, 'skirt.frontHemAsked');
  const held = Math.abs(width - asked) > HAIR;
  const hem = held ? figure.length(width, 'skirt.frontHemHeld') : wished;
  const front = chalked(mm(width / 2 + seam.value), mark, 'skirt.frontHemHalf', { hem, seam });
  const rest = mm(shareRound(round.value, width, n + 1) / 2 + seam.value);
  const other = chalked(rest, mark, 'skirt.otherHemHalf', { round, hem, others, seam });
  return {
    halves: wider({ front, other }, above),
    notices: held ? [caution('skirt.frontHemHeld', { asked: wished, held: hem })] : [],
  };
}

/** What binary fractions lose is no difference. */
const HAIR = 0.01;

/** Of each gore the wider of two half widths. */
export const wider = (one: Halves, other: Halves): Halves => ({
  front: other.front.value > one.front.value ? other.front : one.front,
  other: other.other.value > one.other.value ? other.other : one.other,
});

/** A quarter of all the cloth round, raw edges of every gore. */
export const quarterOf = ({ others }: Gores, { front, other }: Halves): Figure<Mm> =>
  figure.length(mm((2 * (front.value + others.value * other.value)) / 4), 'skirt.goresQuarter', {
    front,
    others,
    other,
    layers: LAYERS,
  });

/** All round, seam to seam. */
export function roundOfHalves(gores: Gores, halves: Halves): Figure<Mm> {
  const quarter = quarterOf(gores, halves);
  const { seam } = gores;
  const edges = figure.count(2 * gores.count.value, 'skirt.sideSeams');
  return figure.length(mm(4 * quarter.value - edges.value * seam.value), 'skirt.goresRound', {
    quarter,
    layers: LAYERS,
    edges,
    seam,
  });
}

function chalked(
  exact: Mm,
  mark: Mm,
  code: 'skirt.goreHalf' | 'skirt.frontGoreHalf' | 'skirt.frontHemHalf' | 'skirt.otherHemHalf',
  inputs: Readonly<Record<string, Figure>>,
): Figure<Mm> {
  return figure.length(roundTo(exact, mark, 'up'), code, inputs, { exact });
}
