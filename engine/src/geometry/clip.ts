import { carriersMeet } from './carrier.ts';
import { contains } from './inside.ts';
import type { Path } from './path.ts';
import { lengthOfSegment, partOf, pointOn, shareAt, type Segment } from './segment.ts';
import { SAME } from './tolerance.ts';

/**
 * The shares of a segment's length at which it may enter or leave the outline, in order, with 0 and 1. A
 * part along an edge begins and ends where the segment meets that edge's neighbours.
 */
function cuts(outline: Path, segment: Segment): readonly number[] {
  const least = SAME / lengthOfSegment(segment);
  const shares: number[] = [];
  for (const edge of outline)
    for (const at of carriersMeet(segment, edge)) {
      const share = shareAt(segment, at);
      if (share <= least || share >= 1 - least) continue;
      const slack = SAME / lengthOfSegment(edge);
      const onEdge = shareAt(edge, at);
      if (onEdge >= -slack && onEdge <= 1 + slack) shares.push(share);
    }
  shares.sort((a, b) => a - b);
  const apart = [0];
  for (const share of shares) if (share > (apart.at(-1) ?? 0) + least) apart.push(share);
  apart.push(1);
  return apart;
}

/**
 * The parts of `cutter` (a line, an arc or several, end to end) that lie inside a closed outline, in order
 * along it. A part along the outline itself is in; a mere touch is not a part. A closed cutter is parted at
 * its own start.
 */
export function chordWithin(outline: Path, cutter: Path): Path[] {
  const parts: Segment[][] = [];
  let open: Segment[] | undefined;
  for (const segment of cutter) {
    if (lengthOfSegment(segment) <= SAME) continue;
    let inSince: number | undefined;
    let last = 0;
    const close = (to: number): void => {
      if (inSince === undefined) return;
      const part = inSince === 0 && to === 1 ? segment : partOf(segment, inSince, to);
      if (open) open.push(part);
      else parts.push((open = [part]));
      inSince = undefined;
    };
    for (const share of cuts(outline, segment)) {
      if (share === 0) continue;
      if (contains(outline, pointOn(segment, (last + share) / 2))) inSince ??= last;
      else {
        close(last);
        open = undefined;
      }
      last = share;
    }
    close(1);
  }
  return parts;
}
