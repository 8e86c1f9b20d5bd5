import { boundsOf } from '../../geometry/index.ts';
import type { Corner, Outline } from '../../packing/index.ts';
import type { Fabric } from '../fabric.ts';
import type { LayKind } from '../options.ts';
import type { ClothJob, ClothLength, Flaw } from '../job/found.ts';
import { kept, lengthOf, trimOf, usableOf } from '../job/lengths.ts';

/** One length of cloth as it lies on the strip, folded as the way asks. */
export interface Laid {
  readonly from: ClothLength;
  /** Along the strip; the end of the bolt is without end. */
  readonly start: number;
  readonly end: number;
  /** Across it, between selvages or from selvage to fold. */
  readonly low: number;
  readonly high: number;
  /** Where nothing may be cut, on the strip. */
  readonly flaws: readonly Outline[];
}

/** All lengths of one cloth end to end, in the order of their use. */
export interface Strip {
  readonly width: number;
  readonly lengths: readonly Laid[];
  readonly keepOut: readonly Outline[];
  /** What lies past this found no cloth at all: infinite where there is a bolt as wide as the widest length. */
  readonly end: number;
  /** As the shop sells the bolt, on the strip. */
  readonly sold: { readonly step: number; readonly least: number } | null;
}

/** Where a fold lies so that the pattern of the two layers falls on itself: on a line of it, or midway between two. */
export type FoldOn = 'line' | 'between';

/** Binary fractions may make a width a hair larger than the cloth it was cut from. */
const HAIR = 0.002;

/** Between two lengths: any thickness keeps pieces from lying over both. */
const WALL = 10;

/** What is kept out is no longer than so many widths: the packing reckons with whole units, and takes no longer ones. */
const LONGEST = 10;

/** How many layers of cloth lie across and along the strip. */
export const foldsOf = (way: LayKind): { readonly across: number; readonly along: number } => ({
  across: way === 'lengthwise fold' ? 2 : 1,
  along: way === 'double fold' ? 4 : way === 'crosswise fold' ? 2 : 1,
});

/**
 * How far across a length that is folded lengthwise pieces may lie, from its selvage to the fold: half of it; where stripes
 * have to meet, as far as the last place before that where they fall on themselves. The other layer reaches beyond.
 */
function halfOf(length: ClothLength, fabric: Fabric, on: FoldOn): number {
  const { pattern, selvage } = fabric;
  const half = usableOf(length, fabric) / 2;
  if (pattern?.match !== true || pattern.across === null) return half;
  const { across: step, at } = pattern;
  const first = at.across - selvage.value + (on === 'line' ? 0 : step / 2);
  return Math.max(0, first + step * Math.floor((half - first) / step + 1e-9));
}

/** Lays the lengths of a job end to end, folded as the way asks; along the cloth where its pattern falls on itself. */
export function stripOf({ fabric, lengths, wanted }: ClothJob, way: LayKind, foldOn: FoldOn = 'line'): Strip {
  const folds = foldsOf(way);
  const room = (length: ClothLength): number =>
    folds.across === 2 ? halfOf(length, fabric, foldOn) : usableOf(length, fabric);
  const width = Math.max(1, ...lengths.map(room)) + HAIR;
  const spacing = fabric.between.value;
  const keepOut: Outline[] = [];
  const laid: Laid[] = [];
  const step = (fabric.step.value * (1 - fabric.lengthwise.value)) / folds.along;
  const repeat = fabric.pattern?.match === true ? fabric.pattern.along : null;
  const far = farthest(wanted);
  let start = 0;
  for (const from of lengths) {
    if (from.length === null && laid.length > 0 && repeat === null) start = nextMultiple(start, step);
    if (repeat !== null) start = nextMultiple(start, repeat);
    const before = laid.at(-1);
    if (before) keepOut.push(upright(before.end + spacing, start - spacing, -1, width + 1));
    const trimmed = trimOf(from, fabric);
    const along = Math.max(0, lengthOf(from, fabric) - trimmed) / folds.along;
    const end = start + along;
    // The fold is the strip's upper edge: a narrower length keeps away from the lower one.
    const low = way === 'lengthwise fold' ? width - room(from) : 0;
    const high = low + room(from);
    const reach = along === Infinity ? null : end;
    const flaws = from.flaws.flatMap((flaw) =>
      flawOn(trimmedFlaw(washedFlaw(flaw, from.washed, fabric), trimmed), way, {
        start,
        low,
        room: room(from),
        along,
      }),
    );
    laid.push({ from, start, end, low, high: Math.min(width, high + HAIR), flaws });
    keepOut.push(...flaws.flatMap((flaw) => parted(flaw, LONGEST * width)));
    const [beside, besideTo] =
      way === 'lengthwise fold'
        ? [-1 - spacing, low - spacing - HAIR]
        : [high + spacing + HAIR, width + 1 + spacing];
    // However little narrower; and a narrow bolt without end for as long as any lay may get.
    if (room(from) < width - 2 * HAIR)
      keepOut.push(
        ...parted(
          upright(start - WALL / 2, (reach ?? start + far) + WALL / 2, beside, besideTo),
          LONGEST * width,
        ),
      );
    start = end + 2 * spacing + WALL;
  }
  const last = laid.at(-1);
  const end = last?.end ?? 0;
  if (end !== Infinity) keepOut.push(upright(end + spacing, end + spacing + WALL, -1, width + 1));
  const single = laid.length === 1;
  const soldFrom = end === Infinity && (single || repeat === null);
  const isNarrow = last !== undefined && last.high - last.low < width - 2 * HAIR;
  return {
    width,
    lengths: laid,
    keepOut,
    end: isNarrow && end === Infinity ? last.start + far : end,
    sold: soldFrom
      ? { step, least: single ? (fabric.least.value * (1 - fabric.lengthwise.value)) / folds.along : 0 }
      : null,
  };
}

/** Longer than any lay of a job: as if all pieces lay one after the other, each the longer way. */
const farthest = (wanted: ClothJob['wanted']): number =>
  wanted
    .flatMap(({ mains, parts }) => [...mains, ...parts])
    .reduce((sum, { piece, copies }) => {
      const { width, height } = boundsOf(piece.outline);
      return sum + 2 * copies.length * Math.max(width, height);
    }, 0);

const nextMultiple = (value: number, step: number): number =>
  step > 0 ? Math.ceil(value / step - 1e-9) * step : value;

function upright(left: number, right: number, low: number, high: number): Outline {
  const corner = (x: number, y: number): Corner => ({ x, y });
  return [corner(left, low), corner(right, low), corner(right, high), corner(left, high)];
}

/** An upright rectangle in stretches no longer than that: longer ones are too long to be kept out in one. */
function parted(outline: Outline, most: number): Outline[] {
  const [from, , to] = outline;
  if (!from || !to) return [];
  const count = Math.max(1, Math.ceil((to.x - from.x) / most));
  const at = (i: number): number => from.x + (i * (to.x - from.x)) / count;
  return Array.from({ length: count }, (_, i) => upright(at(i), at(i + 1), from.y, to.y));
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

/** A flaw changes in the wash as its cloth does. Across it is counted from where pieces may lie. */
function washedFlaw(
  { along, across, length, width }: Flaw,
  washed: boolean,
  { lengthwise, crosswise, selvage }: Fabric,
): Box {
  const down = (value: number): number => value * kept(washed, lengthwise);
  const over = (value: number): number => value * kept(washed, crosswise) - selvage.value;
  return { left: down(along), right: down(along + length), low: over(across), high: over(across + width) };
}

/** Counted from the end that is trimmed, it lies so much nearer at most: all that it may cover. */
const trimmedFlaw = (flaw: Box, trimmed: number): Box => ({ ...flaw, left: flaw.left - trimmed });

/** A flaw on the strip: twice where it lies over a fold on both sides. */
function flawOn(
  { left, right, low, high }: Box,
  way: LayKind,
  cloth: { readonly start: number; readonly low: number; readonly room: number; readonly along: number },
): Outline[] {
  const { start, room, along } = cloth;
  const boxes: Box[] = [];
  const upper = (from: Box): void => {
    // On a length that is folded across, the fold is at the strip's side of its beginning.
    if (way !== 'crosswise fold') boxes.push(from);
    else {
      boxes.push({ ...from, left: along - Math.min(from.right, along), right: along - from.left });
      boxes.push({ ...from, left: Math.max(from.left, along) - along, right: from.right - along });
    }
  };
  if (way !== 'lengthwise fold') upper({ left, right, low, high });
  else {
    upper({ left, right, low, high: Math.min(high, room) });
    upper({ left, right, low: 2 * room - high, high: Math.min(room, 2 * room - low) });
  }
  return boxes
    .map((box) => ({
      left: Math.max(0, box.left),
      right: Math.min(along, box.right),
      low: Math.max(0, box.low),
      high: Math.min(room, box.high),
    }))
    .filter((box) => box.right > box.left && box.high > box.low)
    .map((box) => upright(start + box.left, start + box.right, cloth.low + box.low, cloth.low + box.high));
}
