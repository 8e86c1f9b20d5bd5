import type { Figure } from '../../figure/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { DraftContext } from '../context.ts';
import type { Around, Panel, PanelShape } from '../panel.ts';
import type { TopNeed } from '../top.ts';
import { sewn, turned, type Allowances } from './edges.ts';
import { goreFrame, mostUp, type GoreHalves } from './goreFrame.ts';
import { hipLevelOf } from './goreLevels.ts';
import { goreShape, type NotchWish } from './goreShape.ts';
import { riseOf } from './riseOf.ts';
import type { Rise } from './rise.ts';
import type { WrapEdges, WrapHalves, WrapWidths } from './wrapWidths.ts';

interface Drawing extends WrapEdges {
  readonly length: Figure<Mm>;
  readonly need: TopNeed;
  readonly hem: Figure<Mm>;
  readonly margin: Mm;
}

/** Finished half widths of a panel: its allowances taken out of what was chalked. */
export function sewnHalf(
  name: keyof WrapHalves,
  { top, hem }: Pick<WrapWidths, 'top' | 'hem'>,
  { seam, facing }: WrapEdges,
  length: Mm,
): GoreHalves {
  const beyond = name === 'back' ? seam.value : (seam.value + facing.value) / 2;
  return {
    halfTop: mm(top[name].value - beyond),
    halfHem: mm(hem[name].value - beyond),
    length,
    hip: null,
  };
}

/** From the free edge of the left front, round the back, to the free edge of the right front. */
export function wrapPanels(
  context: DraftContext,
  widths: WrapWidths,
  drawing: Drawing,
): readonly [Panel, Panel, Panel] {
  const { length, need, hem, seam, facing, margin } = drawing;
  const [back, front] = (['back', 'front'] as const).map((name) =>
    sewnHalf(name, widths, drawing, length.value),
  ) as [GoreHalves, GoreHalves];
  const kept = keptBy([back, front], need.allowance.value);
  const across = widths.overlap.value / widths.closed.value / 2;
  const level = hipLevelOf(context, need, length.value)?.value ?? length.value / 2;
  const [joined, free] = [sewn(seam.value), turned(facing.value)];
  const shape = (half: GoreHalves, around: Around, sides: Pick<Allowances, 'left' | 'right'>): PanelShape =>
    goreShape({
      ...half,
      ...sides,
      top: { depth: need.allowance.value, turned: need.turned },
      hem: turned(hem.value),
      margin,
      rise: kept(riseOf(context, around)),
      notches: notchesOf(around, sides, mm(length.value - level)),
    });
  const panel = (name: Panel['name'], around: Around, drawn: PanelShape): Panel => ({
    name,
    number: 1,
    around,
    shape: drawn,
  });
  const [left, behind, right] = [
    { from: -across, to: 0.25 },
    { from: 0.25, to: 0.75 },
    { from: 0.75, to: 1 + across },
  ];
  return [
    panel('left front', left, shape(front, left, { left: free, right: joined })),
    panel('back', behind, shape(back, behind, { left: joined, right: joined })),
    panel('right front', right, shape(front, right, { left: joined, right: free })),
  ];
}

/** Notches at the hips where sides are sewn, and at the top where the centres of front and back come. */
function notchesOf(
  { from, to }: Around,
  sides: Pick<Allowances, 'left' | 'right'>,
  fromHem: Mm,
): readonly NotchWish[] {
  const centre = [0, 0.5, 1].find((turn) => turn > from && turn < to);
  return [
    ...(centre === undefined
      ? []
      : [
          {
            on: 'waist',
            share: (centre - from) / (to - from),
            use: 'centre',
            lines: centre === 0.5 ? 2 : 1,
          } as const,
        ]),
    ...(['left', 'right'] as const)
      .filter((side) => !sides[side].turned)
      .map((on): NotchWish => ({ on, fromHem, use: 'hip', lines: 1 })),
  ];
}

/** What a dip may take of the panel's length. */
const MOST_OF_LENGTH = 0.4;

/** The rise that all three can have alike, so that their seams stay of one length. */
function keptBy(halves: readonly GoreHalves[], depth: Mm): (rise: Rise) => Rise {
  const up = Math.min(...halves.map((half) => mostUp(goreFrame(half).radius, depth)));
  const dip = Math.min(...halves.map(({ length }) => MOST_OF_LENGTH * length));
  const within = (each: Mm): Mm => mm(Math.max(-dip, Math.min(up, each)));
  return ({ left, centre, right }) => ({ left: within(left), centre: within(centre), right: within(right) });
}
