import type { Figure } from '../../figure/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import type { TopNeed } from '../top.ts';
import { goreFrame, waistCurveOf, type GoreHalves } from './goreFrame.ts';
import { ringed, type GoreLevels } from './goreLevels.ts';
import { sewnGores } from './gorePanels.ts';
import { quarterOf, type Gores } from './goreWidths.ts';
import { flatHang, levelHang } from './hang.ts';
import { ringOf } from './ringShape.ts';

interface HangInput {
  readonly context: DraftContext;
  readonly gores: Gores;
  readonly levels: GoreLevels;
  readonly length: Figure<Mm>;
  readonly need: TopNeed;
  readonly hem: Figure<Mm>;
}

type Hung = ReturnType<typeof levelHang>;

/** How the front gore hangs: its hem about the apex of its lower part, and above a hip line its waist about one of its own. */
export function goreHang(input: HangInput): Hung {
  const { context, gores, levels, length, need, hem } = input;
  const gore = sewnGores(gores, levels, length.value).front;
  const { radius, turn } = goreFrame(gore);
  const [top, bottom] = [quarterOf(gores, levels.hip?.halves ?? levels.top), quarterOf(gores, levels.hem)];
  const hang = (apex: Figure<Mm>, halfSweep: number): Hung =>
    levelHang({ context, apex, halfSweep, length, insteadOf: null, top: need, hemAllowance: hem });
  const hung =
    radius === null
      ? flatHang({
          length,
          flare: figure.length(mm(Math.max(0, bottom.value - top.value)), 'skirt.flareAtFold', {
            hem: bottom,
            top,
          }),
          tolerance: mm(0),
          asked: false,
        })
      : ringed(levels)
        ? hang(...ringApex(levels, length))
        : hang(apexOf(gore, radius, levels, length), turn);
  const waist = gore.hip && waistArc(gore, gore.hip);
  if (!gore.hip) return hung;
  if (!waist)
    return {
      ...hung,
      hang: {
        ...hung.hang,
        waistOrdinates: [],
        extraDepth: figure.length(mm(0), 'skirt.noExtraDepth'),
      },
    };
  const { waistOrdinates, extraDepth } = hang(waist.radius, waist.halfSweep).hang;
  return { ...hung, hang: { ...hung.hang, waistOrdinates, extraDepth } };
}

function ringApex({ top, hem }: GoreLevels, length: Figure<Mm>): readonly [Figure<Mm>, number] {
  const { radius, halfSweep } = ringOf(top.front.value, hem.front.value, length.value);
  return [figure.length(radius, 'skirt.apexRadius', { top: top.front, hem: hem.front, length }), halfSweep];
}

const halfOf = (half: Mm): Figure<Mm> => figure.length(half, 'skirt.goreSewnHalf');

function apexOf(
  { halfTop, halfHem, hip }: GoreHalves,
  radius: Mm,
  levels: GoreLevels,
  length: Figure<Mm>,
): Figure<Mm> {
  const bottom = halfOf(halfHem);
  if (!hip || !levels.hip)
    return figure.length(radius, 'skirt.apexRadius', { top: halfOf(halfTop), hem: bottom, length });
  const { level } = levels.hip;
  const below = figure.length(mm(length.value - level.value), 'skirt.belowHip', { length, level });
  return figure.length(radius, 'skirt.goreApex', { hip: halfOf(hip.half), hem: bottom, below, level });
}

/** A waist flatter than this, mm of radius, is straight to the hand. */
const FLAT = 100_000;

function waistArc(
  gore: GoreHalves,
  hip: NonNullable<GoreHalves['hip']>,
): { readonly radius: Figure<Mm>; readonly halfSweep: number } | null {
  const curve = waistCurveOf(gore, hip);
  const radius = mm((curve.across ** 2 + curve.up ** 2) / (2 * curve.up));
  if (!(radius < FLAT)) return null;
  const across = figure.length(curve.across, 'skirt.goreWaistAcross');
  const up = figure.length(curve.up, 'skirt.goreWaistUp');
  return {
    radius: figure.length(radius, 'skirt.goreWaistCurve', { across, up }),
    halfSweep: gore.halfTop / radius,
  };
}
