import type { Figure } from '../../../figure/index.ts';
import { arc, endOf, line, point, startOf, type Path, type Point } from '../../../geometry/index.ts';
import type { Row } from '../../../ribbon/index.ts';
import { mm, radians, type Mm } from '../../../units/index.ts';
import { area, group, label, stroke, type Ink, type Mark } from '../../drawing/index.ts';
import { ribbonArea } from '../../pictures/cloth.ts';
import { chalkOn, mixed } from '../../pictures/chalkOn.ts';
import { levelPoint, type Sheet } from './sheet.ts';

/** From a ribbon's edge to the stitches along it, and the narrowest ribbon that they are drawn on, on the drawing. */
const STITCHES_IN = 0.28;
const NARROWEST = 1;

/** A row: its ribbon, stitched along both edges, and the chalk line at its lower edge, a little past the cloth. */
export function ribbon(row: Row, sheet: Sheet, cloth: Ink): Mark {
  const { hex } = row.colour;
  const [lower, upper] = [sheet.path(row.lower), sheet.path(row.upper)];
  const seam = { stroke: mixed(hex, chalkOn(hex), 0.6), width: mm(0.16), dash: 'hidden' } as const;
  const wide = row.width.value * sheet.scale >= NARROWEST;
  return group(`row ${String(row.number)}`, [
    area(ribbonArea({ lower, upper }), { fill: hex, stroke: mixed(hex, '#231f1c', 0.35), width: mm(0.12) }),
    ...(wide ? [stroke([raised(lower, STITCHES_IN), raised(upper, -STITCHES_IN)], seam)] : []),
    stroke(lower, { dash: 'chalk', width: mm(0.45), stroke: chalkOn(cloth) }),
  ]);
}

/** The same line of the panel, so much nearer to the waist. Arcs of a panel lie about its apex, above it. */
const raised = (path: Path, by: number): Path =>
  path.map((segment) =>
    segment.kind === 'line'
      ? line(point(segment.from.x, segment.from.y - by), point(segment.to.x, segment.to.y - by))
      : arc(segment.centre, mm(Math.max(0.01, segment.radius - by)), segment.start, segment.sweep),
  );

/** Right end of a row's chalk line, on the drawing. */
export function endOfRow({ lower }: Row, { path }: Sheet): Point | null {
  const drawn = path(lower);
  const ends = [drawn[0], drawn.at(-1)].flatMap((segment) =>
    segment ? [endOf(segment), startOf(segment)] : [],
  );
  return ends.reduce<Point | null>((most, at) => (most && most.x >= at.x ? most : at), null);
}

const GAP_SIZE = 3.4;
/** Least room between two ribbons for the size of their gap. */
const GAP_ROOM = 3.6;
/** Where the sizes stand, of the way from the panel's left side to its right: clear of what is taken hold of. */
const GAP_SHARE = 0.86;

/** The size of each gap between bands, in the gap and along it, where it has room. */
export function gapWords(
  rows: readonly Row[],
  sheet: Sheet,
  cloth: Ink,
  say: (gap: Figure<Mm>) => string,
): Mark[] {
  const { apex, length } = sheet.shape;
  const angle = radians(apex ? -apex.halfSweep * (2 * GAP_SHARE - 1) : 0);
  return rows.flatMap(({ gapBelow, fromHem }): Mark[] => {
    if (!gapBelow || gapBelow.value * sheet.scale < GAP_ROOM) return [];
    const y = length - fromHem.value + gapBelow.value / 2;
    return [
      label(levelPoint(sheet, y, GAP_SHARE), say(gapBelow), {
        size: mm(GAP_SIZE),
        align: 'middle',
        baseline: 'middle',
        angle,
        ink: chalkOn(cloth),
      }),
    ];
  });
}
