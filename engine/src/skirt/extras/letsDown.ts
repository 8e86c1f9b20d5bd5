import { keepFor, type Growth } from '../../body/index.ts';
import type { Figure, Notice } from '../../figure/index.ts';
import { inches, mm, roundTo, type Mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import type { DraftGiven } from '../context.ts';
import type { TuckOptions } from './tuckOptions.ts';

/** What is usually kept in hand where no growth is forecast. Common practice, no source. */
const USUAL = { inches: inches(2), metric: mm(50) } as const;
/** Less is not worth the stitching. Common practice, no source. */
const LEAST = inches(0.5);
/** Most of the finished length that is kept in hand: past it the skirt is all tuck. */
const MOST_SHARE = 1 / 3;

interface Wish {
  readonly letsDown: Figure<Mm>;
  readonly notices: readonly Notice[];
}

/** What is to be let down: as asked, what the growth takes, or what is usual; at a mark. */
export function letsDownOf({ body, mark }: DraftGiven, chosen: TuckOptions): Wish {
  const { growth } = body;
  const need = needOf(growth, chosen, mark);
  const most = figure.length(
    roundTo(mm(body.waistToHem.value * MOST_SHARE), mark, 'down'),
    'skirt.letsDownMost',
  );
  const unknown =
    chosen.months !== undefined && chosen.letsDown === undefined && !growth
      ? [caution('skirt.tucksNoForecast', { usual: need })]
      : [];
  if (need.value > most.value)
    return { letsDown: most, notices: [...unknown, caution('skirt.letsDownHeld', { need, most })] };
  const exact = mm(Math.max(need.value, chosen.letsDown === undefined ? Math.min(LEAST, most.value) : 0));
  return {
    letsDown: figure.length(roundTo(exact, mark, 'up'), 'skirt.letsDown', { need }, { exact: need.value }),
    notices: unknown,
  };
}

function needOf(growth: Growth | null, { letsDown, months }: TuckOptions, mark: Mm): Figure<Mm> {
  if (letsDown !== undefined) return figure.length(letsDown, 'skirt.letsDownAsked');
  if (growth) return months === undefined ? growth.keep : keepFor(growth.line, months);
  // Inch marks are no whole number of millimetres.
  return figure.length(Number.isInteger(mark) ? USUAL.metric : USUAL.inches, 'skirt.letsDownUsual');
}
