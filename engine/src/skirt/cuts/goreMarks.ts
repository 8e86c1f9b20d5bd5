import type { Figure } from '../../figure/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import type { TopNeed } from '../top.ts';
import type { Marks } from './cut.ts';
import type { GoreLevels } from './goreLevels.ts';
import { quarterOf, type Gores } from './goreWidths.ts';
import { chalkedEnd } from './rawEnd.ts';

interface MarksInput {
  readonly context: DraftContext;
  readonly gores: Gores;
  readonly levels: GoreLevels;
  readonly cut: Figure<Mm>;
  readonly length: Figure<Mm>;
  readonly need: TopNeed;
  readonly hem: Figure<Mm>;
  readonly rise: Figure<Mm>;
}

/** Quarters of the whole round of cloth. The sides run on beyond the top line and the hem. */
export function goreMarks({ context, gores, levels, cut, length, need, hem, rise }: MarksInput): Marks {
  const { hip } = levels;
  const waistQuarter = quarterOf(gores, levels.top);
  const hemQuarter = quarterOf(gores, levels.hem);
  const hipQuarter = hip && quarterOf(gores, hip.halves);
  const flare = (top: Figure<Mm>, bottom: Figure<Mm>): Figure<Mm> =>
    figure.length(mm(bottom.value - top.value), 'skirt.flareAtFold', { hem: bottom, top });
  const below = hip
    ? figure.length(mm(length.value - hip.level.value), 'skirt.belowHip', { length, level: hip.level })
    : length;
  const narrowed = {
    flare: flare(waistQuarter, hipQuarter ?? hemQuarter),
    depth: need.allowance,
    length: hip?.level ?? length,
  };
  const widened = { flare: flare(hipQuarter ?? waistQuarter, hemQuarter), depth: hem, length: below };
  return {
    waistQuarter,
    hemQuarter,
    cutLength: cut,
    bottom: figure.length(mm(cut.value + rise.value), 'skirt.bottom', { cut, rise }),
    casingEnd: chalkedEnd('skirt.narrowerEnd', waistQuarter, narrowed, context.mark),
    hemEnd: chalkedEnd('skirt.widerEnd', hemQuarter, widened, context.mark),
  };
}
