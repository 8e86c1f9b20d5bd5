import type { SkirtPlan } from '../../../plan/index.ts';
import type { Around } from '../../../skirt/index.ts';
import { within } from './stance.ts';

/** A part of the round that is drawn up: cloth for each unit that it is drawn up to. */
export interface Gathered extends Around {
  readonly ratio: number;
}

/** The waist as it is seen. Shares are of the finished length, from the top. */
export interface WaistLook {
  /** Lower edge of the waist's own piece above the panels; 0 without one. */
  readonly band: number;
  /** A casing's stitching; null where nothing is stitched across the panels. */
  readonly stitched: number | null;
  /** Where the panels begin to fall: the lower of the two. */
  readonly foot: number;
  /** A band of knit is not of the skirt's cloth. */
  readonly knit: boolean;
  /** Where an elastic or a cord puckers what it runs through. */
  readonly puckered: readonly Around[];
  readonly gathered: readonly Gathered[];
  /** In turns round the body; their length as a share. */
  readonly darts: readonly number[];
  readonly dartLength: number;
}

export const WHOLE: Around = { from: -0.5, to: 0.5 };
export const FRONT: Around = { from: -0.25, to: 0.25 };
export const BACK: Around = { from: 0.25, to: 0.75 };

/** Less cloth than this for each unit of waist lies flat: it is eased in, and nobody sees it. */
const FLAT = 1.03;

/** No waist takes more of a skirt than this, on a doll's skirt either. */
const MOST = 0.5;

export function waistLook({ skirt, body }: SkirtPlan): WaistLook {
  const { waist, opening } = skirt;
  const length = Math.max(1, skirt.finishedLength.value);
  const band = Math.min(MOST, waist.above.value / length);
  const stitched = waist.build === 'turned' ? Math.min(MOST, band + waist.depth / length) : null;
  const { elastic, takenUp } = waist;
  const behind = elastic?.where === 'back';
  const drawn = elastic !== null || waist.cord !== null;
  const puckered = !drawn ? [] : behind ? [BACK] : [WHOLE];
  const whole = { ...WHOLE, ratio: waist.gatherRatio.value };
  const held = takenUp?.by === 'gathers';
  const look = {
    band,
    stitched,
    foot: stitched ?? band,
    knit: waist.build === 'stretch band',
    puckered,
    darts: [] as number[],
    dartLength: Math.min(MOST, (takenUp?.dartLength?.value ?? 0) / length),
  };
  const seen = (parts: readonly Gathered[]) => parts.filter(({ ratio }) => ratio > FLAT);
  if (!takenUp) return { ...look, gathered: stitched === null ? seen([whole]) : [whole] };
  if (!behind) return { ...look, gathered: seen(held ? [whole] : []), darts: dartsRound(takenUp.darts) };
  // What a flat front has more than its band is taken up there; behind the elastic draws the rest.
  const half = opening.value / 2;
  const front = Math.max(1, half - takenUp.difference.value);
  const back = within(1, half / Math.max(1, body.waist.value - front), 4);
  return {
    ...look,
    gathered: seen([...(held ? [{ ...FRONT, ratio: half / front }] : []), { ...BACK, ratio: back }]),
    darts: dartsIn(takenUp.darts),
  };
}

/** Two darts are behind, on either side of the middle; four are in front as well. */
const dartsRound = (count: number): number[] =>
  count === 0 ? [] : [0.41, 0.59, ...(count > 2 ? [-0.1, 0.1] : [])];

/** All of them in front. */
const dartsIn = (count: number): number[] =>
  Array.from({ length: count }, (_, i) => ((i + 0.5) / count - 0.5) * 0.36);
