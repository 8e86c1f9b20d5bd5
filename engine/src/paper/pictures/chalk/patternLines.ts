import { linesOn, type Fabric, type FoundTable } from '../../../cloth/index.ts';
import { point } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { straight, type Ink, type Mark } from '../../drawing/index.ts';
import type { Fit } from '../fit.ts';
import type { Sheet } from './clothMarks.ts';

/** Lines nearer to one another on the paper are a grey wash that nobody reads. */
const LEAST = 1;

/** A line of a pattern and how far it is to the next: on the cloth, from the corner at the left above. */
export interface Repeat {
  readonly at: number;
  readonly step: number;
}

/**
 * Where the lines of a pattern that has to meet pass over a table: stripes that run along it by how far across they lie, bands that
 * run across by how far along, each by the first of them. Only cloth in a single layer or folded once, from its selvage, shows
 * where they are; along it only from its own raw end.
 */
export function repeatsOn(
  table: Pick<FoundTable, 'along' | 'layers' | 'top' | 'right' | 'where'>,
  { pattern }: Pick<Fabric, 'pattern'>,
): { readonly across: Repeat | null; readonly along: Repeat | null } {
  const { layers, top, where } = table;
  if (!pattern?.match || !top.startsWith('selvage') || layers > 2) return { across: null, along: null };
  const { across, along } = pattern;
  const isFromEnd = where === 'first' || where === 'another';
  const at = linesOn(table, pattern);
  return {
    across: across === null ? null : firstOf(at.across, across),
    along: along === null || !isFromEnd ? null : firstOf(at.along, along),
  };
}

const firstOf = (at: number, step: number): Repeat => ({
  at: at - step * Math.floor(at / step + 1e-9),
  step,
});

/** The lines of the pattern that pass over a stretch of the cloth. */
export function patternLines(
  table: FoundTable,
  fabric: Pick<Fabric, 'pattern'>,
  { from, to, left, right, y, across }: Sheet,
  fit: Fit,
  ink: Ink,
): Mark[] {
  const repeats = repeatsOn(table, fabric);
  const thin = { stroke: ink, width: mm(0.12) };
  return [
    ...placesOf(repeats.across, 0, table.across, fit.scale).map((at) =>
      straight(point(left, y + at * fit.scale), point(right, y + at * fit.scale), thin),
    ),
    ...placesOf(repeats.along, from, Math.min(to, table.along), fit.scale).map((at) =>
      straight(point(fit.dx + at * fit.scale, y), point(fit.dx + at * fit.scale, y + across), thin),
    ),
  ];
}

function placesOf(repeat: Repeat | null, from: number, to: number, scale: number): number[] {
  if (!repeat || repeat.step * scale < LEAST) return [];
  const { at, step } = repeat;
  const first = at + step * Math.ceil((from - at) / step);
  return Array.from({ length: Math.max(0, Math.floor((to - first) / step) + 1) }, (_, i) => first + i * step);
}
