import { colourKey, type Colour } from '../fields/index.ts';
import type { Figure } from '../figure/index.ts';
import type { StitchClass } from '../seams/index.ts';
import { mm, type Mm } from '../units/index.ts';
import { figure } from './codes.ts';
import type { SuppliesOptions } from './options.ts';

export type ThreadOptions = SuppliesOptions['thread'];

/** Share of the thread that the needle takes; the bobbin or the loopers take the rest. 504 from memory. */
const needleShare: Readonly<Record<StitchClass, number>> = { '301': 0.5, '304': 0.5, '504': 0.2 };

/** Thread of one stitch class in one colour. */
export interface ThreadPart {
  readonly stitch: StitchClass;
  readonly seam: Figure<Mm>;
  readonly needle: Figure<Mm>;
  readonly under: Figure<Mm>;
}

/** Thread of one stitch class, its needle's in one colour and its bobbin's in one: null is the skirt's own cloth's. */
export interface ColouredPart extends ThreadPart {
  readonly underIn: Colour | null;
}

/** Stitching with its two threads' colours: null is that of the skirt's own cloth. */
export interface Sewn {
  readonly stitch: StitchClass;
  readonly length: Mm;
  readonly starts: number;
  readonly top: Colour | null;
  readonly under: Colour | null;
}

/** All the thread of one colour: null is the colour of the skirt's own cloth. */
export interface ThreadTotal {
  readonly colour: Colour | null;
  readonly overlock: boolean;
  /** What has it on the needle. */
  readonly parts: readonly ColouredPart[];
  readonly needle: Figure<Mm>;
  readonly under: Figure<Mm>;
  readonly total: Figure<Mm>;
  readonly spools: Figure;
}

const ratioOf = (stitch: StitchClass, options: ThreadOptions): number =>
  ({ '301': options.straight, '304': options.zigzag, '504': options.overlock })[stitch];

/**
 * Thread = seam × ratio × (1 + waste), shared between needle and bobbin, + a tail at each start and stop of
 * each thread. References to the ratios stand beside the settings.
 */
export function threadFor(
  stitch: StitchClass,
  seamLength: Mm,
  starts: number,
  options: ThreadOptions,
): ThreadPart {
  const seam = figure.length(seamLength, 'thread.seam');
  const ratio = figure.ratio(ratioOf(stitch, options), 'thread.ratio');
  const waste = figure.percent(options.waste, 'thread.waste');
  const tails = figure.count(2 * starts, 'thread.starts');
  const tail = figure.length(options.tail, 'thread.tail');
  const threads = seam.value * ratio.value * (1 + waste.value);
  const part = (code: 'thread.needle' | 'thread.under', portion: number): Figure<Mm> =>
    figure.length(mm(threads * portion + tails.value * tail.value), code, {
      seam,
      ratio,
      share: figure.percent(portion, 'thread.share'),
      waste,
      tails,
      tail,
    });
  const share = needleShare[stitch];
  return { stitch, seam, needle: part('thread.needle', share), under: part('thread.under', 1 - share) };
}

/**
 * Thread by colour. A ribbon is stitched with its own colour on top and its cloth's colour on the bobbin, so
 * that only the needle is re-threaded. `under` of a colour is all that is wound on bobbins, ribbons' with it.
 */
export function threadTotals(sewn: readonly Sewn[], options: ThreadOptions): ThreadTotal[] {
  const groups = new Map<string, { colour: Colour | null; overlock: boolean; sewn: Sewn[] }>();
  const groupOf = (colour: Colour | null, overlock: boolean) => {
    const key = `${keyOf(colour)}|${String(overlock)}`;
    const found = groups.get(key) ?? { colour, overlock, sewn: [] };
    groups.set(key, found);
    return found;
  };
  for (const each of sewn) groupOf(each.top, each.stitch === '504').sewn.push(each);
  // A colour may be on bobbins alone.
  for (const { stitch, under } of sewn) groupOf(under, stitch === '504');
  const made = [...groups.values()].map((group) => ({ ...group, parts: partsOf(group.sewn, options) }));
  const bobbins = (colour: Colour | null, overlock: boolean): number =>
    made
      .filter((each) => each.overlock === overlock)
      .flatMap(({ parts }) => parts)
      .filter(({ underIn }) => keyOf(underIn) === keyOf(colour))
      .reduce((sum, { under }) => sum + under.value, 0);
  return made.map(({ colour, overlock, parts }) => {
    const needle = figure.length(mm(parts.reduce((sum, part) => sum + part.needle.value, 0)), 'thread.total');
    const under = figure.length(mm(bobbins(colour, overlock)), 'thread.total');
    const total = figure.length(mm(needle.value + under.value), 'thread.sum', { needle, under });
    const spool = figure.length(overlock ? options.cone : options.spool, 'supplies.spool');
    const exact = total.value / spool.value;
    // A three-thread overlocker is threaded from three cones at once, however little each gives.
    const spools = overlock ? 3 : Math.max(1, Math.ceil(exact - 1e-9));
    return {
      colour,
      overlock,
      parts,
      needle,
      under,
      total,
      spools: figure.count(
        spools,
        overlock ? 'supplies.cones' : 'supplies.spools',
        { total, spool },
        { exact },
      ),
    };
  });
}

const keyOf = (colour: Colour | null): string => (colour ? colourKey(colour) : '');

function partsOf(sewn: readonly Sewn[], options: ThreadOptions): ColouredPart[] {
  const alike = new Map<string, Sewn>();
  for (const each of sewn) {
    const key = `${each.stitch} ${keyOf(each.under)}`;
    const { length, starts } = alike.get(key) ?? { length: mm(0), starts: 0 };
    alike.set(key, { ...each, length: mm(length + each.length), starts: starts + each.starts });
  }
  return [...alike.values()].map(({ stitch, length, starts, under }) => ({
    ...threadFor(stitch, length, starts, options),
    underIn: under,
  }));
}
