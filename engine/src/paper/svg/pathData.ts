import { endOf, startOf, type Path, type Segment } from '../../geometry/index.ts';
import { arcPieces } from '../drawing/index.ts';
import { short } from './numbers.ts';

const at = ({ x, y }: { readonly x: number; readonly y: number }): string => `${short(x)} ${short(y)}`;

/** The two ends of half a circle or more don't tell where its centre is: such an arc is written in pieces. */
const MOST = 0.9 * Math.PI;

function segmentData(segment: Segment): string {
  if (segment.kind === 'line') return `L${at(segment.to)}`;
  const radius = short(segment.radius);
  const turn = segment.sweep > 0 ? '1' : '0';
  return arcPieces(segment, MOST)
    .map((piece) => `A${radius} ${radius} 0 0 ${turn} ${at(endOf(piece))}`)
    .join('');
}

/** The `d` of an SVG path, in millimetres. A live picture is written for every frame of a drag: plain loops, no lists. */
export function pathData(paths: readonly Path[], closed: boolean): string {
  let data = '';
  for (const path of paths) {
    const first = path[0];
    if (!first) continue;
    data += `M${at(startOf(first))}`;
    for (const segment of path) data += segmentData(segment);
    if (closed) data += 'Z';
  }
  return data;
}
