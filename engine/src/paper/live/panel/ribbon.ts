import type { Figure } from '../../../figure/index.ts';
import { arc, endOf, line, point, startOf, type Path, type Point } from '../../../geometry/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import type { Row, RowLine } from '../../../ribbon/index.ts';
import { mm, radians, type Mm } from '../../../units/index.ts';
import { area, label, stroke, type Ink, type Mark } from '../../drawing/index.ts';
import { ribbonArea } from '../../pictures/cloth.ts';
import { chalkOn, mixed } from '../../pictures/chalkOn.ts';
import { lineOn } from '../../pictures/pieces/kinds.ts';
import { isMarkedWhole, levelPoint, type Sheet, type Sheets } from './sheet.ts';
import { levelAt } from './where.ts';

/** From a ribbon's edge to the stitches along it, and the narrowest ribbon that they are drawn on, on the drawing. */
const STITCHES_IN = 0.28;
const NARROWEST = 1;

/** A row on one panel: its ribbon, stitched along both edges, and the chalk line at its lower edge, a little past the cloth. */
export function ribbon(row: Row, line: RowLine, sheet: Sheet, cloth: Ink): Mark[] {
  const { hex } = row.colour;
  const [lower, upper] = [sheet.path(line.lower), sheet.path(line.upper)];
  const seam = { stroke: mixed(hex, chalkOn(hex), 0.6), width: mm(0.16), dash: 'hidden' } as const;
  const wide = row.width.value * sheet.scale >= NARROWEST;
  return [
    area(ribbonArea({ lower, upper }), { fill: hex, stroke: mixed(hex, '#231f1c', 0.35), width: mm(0.12) }),
    ...(wide ? [stroke([raised(lower, STITCHES_IN), raised(upper, -STITCHES_IN)], seam)] : []),
    stroke(lower, { dash: 'chalk', width: mm(0.45), stroke: chalkOn(cloth) }),
  ];
}

/** The same line of the panel, so much nearer to the waist. Arcs of a panel lie about its apex, above it. */
const raised = (path: Path, by: number): Path =>
  path.map((segment) =>
    segment.kind === 'line'
      ? line(point(segment.from.x, segment.from.y - by), point(segment.to.x, segment.to.y - by))
      : arc(segment.centre, mm(Math.max(0.01, segment.radius - by)), segment.start, segment.sweep),
  );

/** Past this turn from the centre, a row of a wide part of a circle is told where it still comes downwards. */
const WIDE = 1.1;

/** Right end of a row's chalk line, over all panels that carry it, on the drawing. */
export function endOfRow(row: Row, { all }: Sheets): Point | null {
  const ends = all.flatMap(({ kind, path }) => {
    const line = lineOn(kind, row);
    return line ? endsOf(path(line.lower)) : [];
  });
  return ends.reduce<Point | null>((most, at) => (most && most.x >= at.x ? most : at), null);
}

function endsOf(path: Path): Point[] {
  const [first] = path;
  if (path.length === 1 && first?.kind === 'arc' && Math.abs(first.sweep) / 2 > WIDE)
    return [
      point(first.centre.x + first.radius * Math.sin(WIDE), first.centre.y + first.radius * Math.cos(WIDE)),
    ];
  return [path[0], path.at(-1)].flatMap((segment) => (segment ? [endOf(segment), startOf(segment)] : []));
}

const GAP_SIZE = 3.4;
/** Least room between two ribbons for the size of their gap. */
const GAP_ROOM = 3.6;
/** Least width of a panel for them beside what is taken hold of. */
const GAP_WIDTH = 45;
/** Where the sizes stand, of the way from the panel's left side to its right: clear of what is taken hold of. */
const GAP_SHARE = 0.86;

/** The size of each gap between bands, in the gap and along it, where it has room. */
export function gapWords(
  plan: SkirtPlan,
  sheets: Sheets,
  inkOn: (sheet: Sheet) => Ink,
  say: (gap: Figure<Mm>) => string,
): Mark[] {
  const { ribbons, skirt } = plan;
  return ribbons.rows.flatMap(({ gapBelow, fromHem, lower }): Mark[] => {
    if (!gapBelow || lower.length === 0 || gapBelow.value * sheets.main.scale < GAP_ROOM) return [];
    const { sheet, y } = levelAt(skirt, sheets, fromHem.value - gapBelow.value / 2);
    if (!isMarkedWhole(plan) && sheet.right - sheet.left < GAP_WIDTH) return [];
    const { apex } = sheet.shape;
    const turn = apex ? Math.min(WIDE, apex.halfSweep) : 0;
    const share = apex ? 0.5 + ((GAP_SHARE - 0.5) * turn) / apex.halfSweep : GAP_SHARE;
    return [
      label(levelPoint(sheet, y, share), say(gapBelow), {
        size: mm(GAP_SIZE),
        align: 'middle',
        baseline: 'middle',
        angle: radians(-turn * (2 * GAP_SHARE - 1)),
        ink: chalkOn(inkOn(sheet)),
      }),
    ];
  });
}
