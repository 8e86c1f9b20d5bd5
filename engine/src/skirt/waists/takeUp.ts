import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import type { Figure, Notice } from '../../figure/index.ts';
import { mm, roundTo, type Mm } from '../../units/index.ts';
import { caution, figure, problem } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import { work, type Work } from '../works.ts';
import { gatherNotices } from './elastic.ts';
import type { TakenUp } from './waist.ts';

/** Options of a waist that does not stretch: how the panels come down to its round. Common practice, no source. */
export const takeUpOptions = (fields: Fields) => ({
  takeUp: z.enum(['gathers', 'darts']).default('gathers'),
  dartLength: fields.usual({ least: mm(20), most: mm(250) }, { inches: '4 1/2 in', metric: '11 cm' }),
  /** Widest that one dart still lies flat. */
  dartMost: fields.usual({ least: mm(5), most: mm(100) }, { inches: '1 in', metric: '2.5 cm' }),
});

export type TakeUpOptions = z.infer<z.ZodObject<ReturnType<typeof takeUpOptions>>>;

/** Up to this share the longer of two edges is eased onto the other and nobody sees it. Common practice, no source. */
const EASED = 0.02;
/** Rows of long stitches that are drawn up. */
const GATHER_ROWS = 2;

interface Edges {
  /** Of the panels, laid flat, and what they are sewn to. */
  readonly top: Figure<Mm>;
  readonly band: Figure<Mm>;
  readonly panelLength: Mm;
}

interface Taken {
  readonly takenUp: TakenUp;
  /** Cloth for each unit of band where it is gathered; 1 where it lies flat. */
  readonly gathered: Figure;
  /** How far down from the top line darts go; 0 without. */
  readonly depth: Mm;
  readonly works: readonly Work[];
  readonly notices: readonly Notice[];
}

/** Panels wider than the band are gathered or darted onto it; a little more or less is eased. */
export function takeUp(context: DraftContext, chosen: TakeUpOptions, edges: Edges): Taken {
  const { top, band } = edges;
  const difference = figure.length(mm(top.value - band.value), 'waist.difference', { top, band });
  if (difference.value > EASED * band.value)
    return chosen.takeUp === 'darts'
      ? inDarts(context, chosen, edges, difference)
      : inGathers(context, edges, difference);
  const short = -difference.value > EASED * band.value;
  return {
    takenUp: { by: 'nothing', difference, darts: 0, dartWidth: null, dartLength: null },
    gathered: flat(),
    depth: mm(0),
    works: [],
    notices: short ? [problem('waist.bandLongerThanTop', { top, band })] : [],
  };
}

const flat = (): Figure => figure.ratio(1, 'waist.ungathered');

function inGathers({ clothWeight }: DraftContext, { top, band }: Edges, difference: Figure<Mm>): Taken {
  const gathered = figure.ratio(top.value / band.value, 'waist.gatheredOnto', { top, band });
  return {
    takenUp: { by: 'gathers', difference, darts: 0, dartWidth: null, dartLength: null },
    gathered,
    depth: mm(0),
    works: [work('gathering rows', figure.length(top.value, 'waist.gatherLine', { top }), GATHER_ROWS)],
    // Nobody minds that little is gathered onto a band: it has no elastic to lie flat under.
    notices: gatherNotices(gathered, clothWeight).filter(({ code }) => code !== 'skirt.barelyGathered'),
  };
}

/** Two darts where they hold the difference, else four. */
function inDarts(context: DraftContext, chosen: TakeUpOptions, edges: Edges, difference: Figure<Mm>): Taken {
  const count = difference.value <= 2 * chosen.dartMost ? 2 : 4;
  const darts = figure.count(count, 'waist.darts');
  const width = figure.length(mm(difference.value / count), 'waist.dartWidth', { difference, darts });
  const { mark } = context;
  // On a small child a dart ends halfway down the panel at the latest.
  const longest = Math.min(chosen.dartLength, edges.panelLength / 2);
  const length = figure.length(mm(Math.max(mark, roundTo(mm(longest), mark, 'down'))), 'waist.dartLength');
  const most = figure.length(chosen.dartMost, 'waist.dartMost');
  const leg = figure.length(mm(Math.hypot(length.value, width.value / 2)), 'waist.dartLine', {
    length,
    width,
  });
  return {
    takenUp: { by: 'darts', difference, darts: count, dartWidth: width, dartLength: length },
    gathered: flat(),
    depth: length.value,
    works: [work('dart', leg, count)],
    notices:
      width.value > most.value + HAIR
        ? [caution('waist.dartsTooDeep', { difference, darts, width, most })]
        : [],
  };
}

/** What binary fractions lose is no depth. */
const HAIR = 0.01;
