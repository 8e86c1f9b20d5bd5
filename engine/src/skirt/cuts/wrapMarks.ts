import type { Figure } from '../../figure/index.ts';
import { lengthOf } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import type { PanelShape } from '../panel.ts';
import type { TopNeed } from '../top.ts';
import type { Marks } from './cut.ts';
import { goreFrame } from './goreFrame.ts';
import { flatHang, levelHang } from './hang.ts';
import { chalkedEnd } from './rawEnd.ts';
import { sewnHalf } from './wrapPanels.ts';
import { wrapQuarter, type WrapEdges, type WrapWidths } from './wrapWidths.ts';

interface WrapDrawn {
  readonly context: DraftContext;
  readonly widths: WrapWidths;
  readonly length: Figure<Mm>;
  readonly need: TopNeed;
  readonly hem: Figure<Mm>;
}

/** How the left front hangs; the other panels are of the same ring but for what rounding adds. */
export function wrapHang(input: WrapDrawn & { readonly edges: WrapEdges }): ReturnType<typeof levelHang> {
  const { context, widths, edges, length, need, hem } = input;
  const half = sewnHalf('front', widths, edges, length.value);
  const { radius, turn } = goreFrame(half);
  if (radius === null) return flatHang({ length, flare: flareOf(widths), tolerance: mm(0), asked: false });
  const [top, bottom] = [half.halfTop, half.halfHem].map((each) =>
    figure.length(each, 'skirt.goreSewnHalf'),
  ) as [Figure<Mm>, Figure<Mm>];
  const apex = figure.length(radius, 'skirt.apexRadius', { top, hem: bottom, length });
  return levelHang({ context, apex, halfSweep: turn, length, insteadOf: null, top: need, hemAllowance: hem });
}

function flareOf({ top, hem }: WrapWidths): Figure<Mm> {
  const [above, below] = [wrapQuarter(top), wrapQuarter(hem)];
  return figure.length(mm(below.value - above.value), 'skirt.flareAtFold', { hem: below, top: above });
}

/** Quarters of all the cloth round, spread flat. */
export function wrapMarks(input: WrapDrawn & { readonly cut: Figure<Mm>; readonly rise: Figure<Mm> }): Marks {
  const { context, widths, cut, length, need, hem, rise } = input;
  const [waistQuarter, hemQuarter] = [wrapQuarter(widths.top), wrapQuarter(widths.hem)];
  const flare = flareOf(widths);
  const lean = (depth: Figure<Mm>) => ({ flare, depth, length });
  return {
    waistQuarter,
    hemQuarter,
    cutLength: cut,
    bottom: figure.length(mm(cut.value + rise.value), 'skirt.bottom', { cut, rise }),
    casingEnd: chalkedEnd('skirt.narrowerEnd', waistQuarter, lean(need.allowance), context.mark),
    hemEnd: chalkedEnd('skirt.widerEnd', hemQuarter, lean(hem), context.mark),
  };
}

/** A faced edge, raw top to raw hem: its turned depth is stitched down along all of it. */
export function freeEdge(leftFront: PanelShape, casing: Figure<Mm>, hem: Figure<Mm>): Figure<Mm> {
  const finished = leftFront.edges.find(({ name }) => name === 'left')?.finished ?? [];
  const sewn = figure.length(lengthOf(finished), 'skirt.freeEdge');
  return figure.length(mm(sewn.value + casing.value + hem.value), 'skirt.facingLine', { sewn, casing, hem });
}
