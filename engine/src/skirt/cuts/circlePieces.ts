import type { Figure } from '../../figure/index.ts';
import { lengthOf } from '../../geometry/index.ts';
import { mm, roundTo, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import type { Around, Panel, PanelName, Panels, PanelShape } from '../panel.ts';
import type { TopNeed } from '../top.ts';
import { sewn, turned } from './edges.ts';
import { riseOf } from './riseOf.ts';
import { ringShape } from './ringShape.ts';
import { aroundInTurn } from './round.ts';

export const sharesOfACircle = ['1/4', '1/3', '1/2', '3/4', 'full'] as const;
type ShareOfACircle = (typeof sharesOfACircle)[number];

export const shareOf: Readonly<Record<ShareOfACircle, number>> = {
  '1/4': 1 / 4,
  '1/3': 1 / 3,
  '1/2': 1 / 2,
  '3/4': 3 / 4,
  full: 1,
};

export const pieceCounts = [1, 2, 4] as const;
export type PieceCount = (typeof pieceCounts)[number];

/** What the books divide a round by: 6.28. */
export const fullTurn: Figure = figure.ratio(2 * Math.PI, 'skirt.fullTurn');

/**
 * A circle in one piece is slit open from hem to waist. Its two sides stop a hair short of one another, 0.01° each, so that
 * its outline does not touch itself: 0.2 mm on a metre of radius, less than the scissors take.
 */
const SLIT = 1e-4;

interface CircleInput {
  readonly context: DraftContext;
  readonly share: ShareOfACircle;
  readonly pieces: PieceCount;
  readonly need: TopNeed;
  readonly length: Figure<Mm>;
  readonly seam: Figure<Mm>;
  readonly hem: Figure<Mm>;
  /** Length to cut: what it has besides casing, length and hem is margin. */
  readonly cut: Figure<Mm>;
}

export interface CircleDrawn {
  /** Of the top line and of the hem line, as chalked. */
  readonly radius: Figure<Mm>;
  readonly hemRadius: Figure<Mm>;
  readonly halfSweep: number;
  readonly panels: Panels;
  readonly seams: number;
}

/** The circle in so many pieces alike, its waist radius at the first mark at which it is not tight. */
export function circlePieces(input: CircleInput): CircleDrawn {
  const { context, share, pieces, length } = input;
  const halfSweep = Math.min(Math.PI - SLIT, (Math.PI * shareOf[share]) / pieces);
  const places = placesOf(pieces);
  const shapeAt = (radius: Mm, around: Around): PanelShape =>
    ringOfPiece(input, { radius, halfSweep, around });
  const radius = notTight(input, context.mark, (tried) =>
    places.reduce((sum, around) => sum + sewnTop(shapeAt(tried, around)), 0),
  );
  const name = nameOf(shareOf[share] / pieces);
  const panel = (around: Around, i: number): Panel => ({
    name,
    number: i + 1,
    shape: shapeAt(radius.value, around),
    around,
  });
  const [first, ...rest] = places;
  return {
    radius,
    hemRadius: hemRadiusOf(radius, length),
    halfSweep,
    panels: [panel(first, 0), ...rest.map((around, i) => panel(around, i + 1))],
    seams: pieces,
  };
}

export const hemRadiusOf = (apex: Figure<Mm>, length: Figure<Mm>): Figure<Mm> =>
  figure.length(mm(apex.value + length.value), 'skirt.hemRadius', { apex, length });

/** Four quarters meet at the sides, in front and behind, where pockets and openings look for a seam. */
function placesOf(pieces: PieceCount): readonly [Around, ...Around[]] {
  if (pieces < 4) return aroundInTurn(pieces);
  const quarter = (from: number): Around => ({ from, to: from + 0.25 });
  return [quarter(0), quarter(0.25), quarter(0.5), quarter(0.75)];
}

function nameOf(share: number): PanelName {
  if (share === 1) return 'circle';
  if (share === 0.5) return 'half circle';
  return share === 0.25 ? 'quarter circle' : 'part of a circle';
}

function ringOfPiece(
  { context, need, length, seam, hem, cut }: CircleInput,
  at: { readonly radius: Mm; readonly halfSweep: number; readonly around: Around },
): PanelShape {
  const side = sewn(seam.value);
  return ringShape({
    radius: at.radius,
    halfSweep: at.halfSweep,
    length: length.value,
    top: { depth: need.allowance.value, turned: need.turned },
    hem: turned(hem.value),
    left: side,
    right: side,
    margin: mm(cut.value - length.value - need.allowance.value - hem.value),
    rise: riseOf(context, at.around),
  });
}

const sewnTop = (shape: PanelShape): number =>
  lengthOf(shape.edges.find(({ name }) => name === 'waist')?.finished ?? []);

/** Below a hundredth of a millimetre nothing is tight. */
const HAIR = 0.01;
/** Each try comes nearer by all that was missing but a small part; a body far out of level takes the most. */
const TRIES = 60;

/**
 * The round and its seam allowances ÷ 2π ÷ fraction, up to a mark. A seam allowance is a parallel of the side, which takes a
 * little more of an arc than its width, and a top that rises lies nearer the middle: where the sewn top would come out
 * tight the radius grows by what is missing.
 */
function notTight(
  { share, pieces, need, seam }: CircleInput,
  mark: Mm,
  sewnAt: (radius: Mm) => number,
): Figure<Mm> {
  const { round } = need;
  const edges = figure.count(2 * pieces, 'skirt.sideSeams');
  const turn = 2 * Math.PI * shareOf[share];
  const byHand = mm((round.value + edges.value * seam.value) / turn);
  const inputs = {
    round,
    edges,
    seam,
    turn: fullTurn,
    fraction: figure.ratio(shareOf[share], 'skirt.circleFraction'),
  };
  const hand = figure.length(roundTo(byHand, mark, 'up'), 'skirt.circleRadius', inputs, { exact: byHand });
  // A middle nearer than the seam allowance is wide leaves no waist at all.
  let exact = mm(Math.max(byHand, seam.value + mark));
  let radius = roundTo(exact, mark, 'up');
  for (let i = 0; i < TRIES; i++) {
    const short = round.value - sewnAt(radius);
    if (short <= HAIR) break;
    exact = mm(radius + short / turn);
    radius = roundTo(exact, mark, 'up');
  }
  if (radius <= hand.value) return hand;
  const more = figure.length(mm(radius - hand.value), 'skirt.circleRadiusMore');
  return figure.length(radius, 'skirt.circleRadiusWider', { hand, more });
}
