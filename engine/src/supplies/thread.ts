import { colourKey, type Colour } from '../fields/index.ts';
import type { Figure } from '../figure/index.ts';
import type { StitchClass, StitchLine } from '../seams/index.ts';
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

/** All the thread of one colour: null is the cloth's colour. */
export interface ThreadTotal {
  readonly colour: Colour | null;
  readonly overlock: boolean;
  readonly parts: readonly ThreadPart[];
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
 * Thread by colour. A ribbon is stitched with its own colour on top and the cloth's colour on the bobbin, so
 * that only the needle is re-threaded; all else is the cloth's colour.
 */
export function threadTotals(lines: readonly StitchLine[], options: ThreadOptions): ThreadTotal[] {
  const groups = new Map<string, { colour: Colour | null; overlock: boolean; lines: StitchLine[] }>();
  for (const line of lines) {
    const overlock = line.stitch === '504';
    const key = `${line.top ? colourKey(line.top) : ''}|${String(overlock)}`;
    const group = groups.get(key) ?? { colour: line.top, overlock, lines: [] };
    group.lines.push(line);
    groups.set(key, group);
  }
  const made = [...groups.values()].map((group) => ({ ...group, parts: partsOf(group.lines, options) }));
  const bobbinForRibbons = made
    .filter(({ colour }) => colour !== null)
    .reduce((sum, { parts }) => sum + sumOf(parts, 'under'), 0);
  return made.map(({ colour, overlock, parts }) => {
    const isCloth = colour === null && !overlock;
    const needle = figure.length(mm(sumOf(parts, 'needle')), 'thread.total');
    const own = colour === null ? sumOf(parts, 'under') : 0;
    const under = figure.length(mm(own + (isCloth ? bobbinForRibbons : 0)), 'thread.total');
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

const sumOf = (parts: readonly ThreadPart[], which: 'needle' | 'under'): number =>
  parts.reduce((sum, part) => sum + part[which].value, 0);

function partsOf(lines: readonly StitchLine[], options: ThreadOptions): ThreadPart[] {
  const byStitch = new Map<StitchClass, { length: number; starts: number }>();
  for (const line of lines) {
    const sum = byStitch.get(line.stitch) ?? { length: 0, starts: 0 };
    byStitch.set(line.stitch, { length: sum.length + line.length.value, starts: sum.starts + line.starts });
  }
  return [...byStitch].map(([stitch, { length, starts }]) => threadFor(stitch, mm(length), starts, options));
}
