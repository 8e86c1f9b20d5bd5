import { point, type Point } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { DraftContext } from '../context.ts';
import type { Around, Notch, Panel, Panels, PanelShape } from '../panel.ts';
import { sewn, type Beyond } from './edges.ts';
import { keptRise, LEVEL, riseAt } from './rise.ts';
import { riseOf } from './riseOf.ts';
import { aroundInTurn } from './round.ts';
import { straightShape } from './straightShape.ts';
import type { TierRound } from './tierRounds.ts';

interface TierOf {
  readonly height: Mm;
  readonly top: Beyond;
  readonly bottom: Beyond;
  readonly seam: Mm;
  readonly margin: Mm;
  /** What is unlike about front, back and sides is made at the top of the top tier. */
  readonly isTop: boolean;
  /** Strips of the tiers above: numbers go on from there. */
  readonly from: number;
}

/** The strips of one tier, the first in the middle of the front, each with the quarters that fall on it. */
export function tierPanels(context: DraftContext, { strips, strip, round }: TierRound, of: TierOf): Panels {
  const { height, top, bottom, margin, seam, isTop, from } = of;
  const half = mm(strip.value / 2);
  const side = sewn(seam);
  const shapeFor = (around: Around): PanelShape => {
    const rise = isTop ? keptRise(riseOf(context, around), height) : LEVEL;
    const shape = straightShape({
      halfTop: half,
      halfHem: half,
      length: height,
      top,
      hem: bottom,
      left: side,
      right: side,
      margin,
      rise,
    });
    const quarters = quartersOn(around, round.value).flatMap(({ across, lines }): Notch[] => {
      const notch = (at: Point, down: 1 | -1): Notch => ({
        at,
        inward: point(0, down),
        use: 'quarter',
        lines,
      });
      const above = -top.depth - riseAt(rise, across / (half - seam));
      return [
        notch(point(across, above), 1),
        // A hem is sewn to nothing.
        ...(bottom.turned ? [] : [notch(point(across, height + bottom.depth), -1)]),
      ];
    });
    return { ...shape, notches: [...shape.notches, ...quarters] };
  };
  const panel = (around: Around, i: number): Panel => ({
    name: 'tier',
    number: from + i + 1,
    shape: shapeFor(around),
    around,
  });
  const [first, ...rest] = aroundInTurn(strips.value);
  return [panel(first, 0), ...rest.map((around, i) => panel(around, i + 1))];
}

/** Nearer to a seam than this, the seam is the mark. */
const AT_SEAM = 2;

/** Where centre front, sides and centre back fall on a strip, from its middle; the back's has two lines. */
function quartersOn(
  { from, to }: Around,
  round: Mm,
): readonly { readonly across: Mm; readonly lines: 1 | 2 }[] {
  const middle = (from + to) / 2;
  const reach = ((to - from) / 2) * round - AT_SEAM;
  return [0, 0.25, 0.5, 0.75].flatMap((turn) => {
    // The nearest way round; straight behind a lone strip it is its seam.
    const away = turn - middle - Math.round(turn - middle);
    const across = mm(away * round);
    return Math.abs(across) < reach ? [{ across, lines: turn === 0.5 ? (2 as const) : (1 as const) }] : [];
  });
}
