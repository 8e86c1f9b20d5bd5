import { endOf, polyline, startOf } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { area, stroke, type Ink, type Mark } from '../../drawing/index.ts';
import { chalkOn, mixed } from '../../pictures/chalkOn.ts';
import { hipOf, onCentre } from '../../pictures/pieces/chalked.ts';
import type { Sheet } from './sheet.ts';

/** How much chalk is rubbed on what is trimmed off, or sewn away in a seam. */
const RUBBED = 0.38;

/**
 * The cloth of the panel: first its whole area in its own colour, then, lighter, the straightening margin and the
 * seam allowances, then the fold lines of casing and hem.
 */
export function ground(sheet: Sheet, cloth: Ink): Mark[] {
  const { shape, path } = sheet;
  const chalk = chalkOn(cloth);
  const zone = { stroke: null, fill: mixed(cloth, chalk, RUBBED) } as const;
  const cut = path(shape.cut);
  const trimmed = path(shape.trimmed);
  const folds = shape.edges
    .filter(({ turned, finished }) => turned && finished.length > 0)
    .map(({ finished }) => stroke(path(finished), { dash: 'fold', width: mm(0.4), stroke: chalk }));
  return [
    area(cut, { stroke: null, fill: cloth }),
    area([cut, trimmed], zone),
    ...seams(sheet, zone.fill, chalk),
    stroke(trimmed, { stroke: chalk, width: mm(0.2) }),
    area(cut, { width: mm(0.3) }),
    ...folds,
  ];
}

/** Cloth beside the line of stitching at both sides, from fold to fold. */
function seams({ shape, path, side }: Sheet, fill: Ink, chalk: Ink): Mark[] {
  return shape.edges.flatMap(({ name, finished }): Mark[] => {
    const [first, last] = [finished[0], finished.at(-1)];
    if ((name !== 'left' && name !== 'right') || !first || !last) return [];
    const hand = name === 'right' ? 1 : -1;
    const line = path(finished);
    const [one, two] = [line[0], line.at(-1)];
    if (!one || !two) return [];
    const [from, to] = [startOf(one), endOf(two)];
    const bend = line.length > 1 ? line.slice(0, -1).map(endOf) : [];
    const hip = hipOf(shape, name);
    const levels = [0, ...(hip ? [onCentre(shape, hip.at)] : []), shape.length];
    const raw = levels.map((level) => side(hand, level));
    const down = to.y > from.y ? [...raw].reverse() : raw;
    return [
      area(polyline([from, ...bend, to, ...down], { closed: true }), { stroke: null, fill }),
      stroke(line, { stroke: chalk, width: mm(0.15) }),
    ];
  });
}
