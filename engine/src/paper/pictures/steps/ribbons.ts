import { point, polyline, type Path } from '../../../geometry/index.ts';
import type { Row } from '../../../ribbon/index.ts';
import { mm } from '../../../units/index.ts';
import { area, inks, type Mark, type Style } from '../../drawing/index.ts';
import { patternsOf } from '../cloth.ts';
import type { Scene } from './picture.ts';

/** How a row of this plan looks, counted from the hem; where a plan has none, a bare ribbon. */
export function ribbonLook({ plan }: Scene, row: number): Partial<Style> {
  const { rows } = plan.ribbons;
  const found: Row | undefined = rows[row % Math.max(1, rows.length)];
  if (!found) return { fill: inks.paper, pattern: 'none', width: mm(0.3) };
  const patternOf = patternsOf(rows.map(({ colour }) => colour));
  return { fill: found.colour.hex, pattern: patternOf(found.colour), width: mm(0.3) };
}

export const ribbon = (scene: Scene, row: number, outline: Path): Mark =>
  area(outline, ribbonLook(scene, row));

/** A ribbon that lies level, by its two corners. */
export const band = (
  scene: Scene,
  row: number,
  left: number,
  top: number,
  right: number,
  bottom: number,
): Mark =>
  ribbon(
    scene,
    row,
    polyline([point(left, top), point(right, top), point(right, bottom), point(left, bottom)], {
      closed: true,
    }),
  );

/** Whether the panels' rows meet at the side seams. */
export const rowsMeet = ({ plan }: Scene): boolean =>
  plan.ribbons.rows.length > 0 && plan.ribbons.where !== 'front' && plan.ribbons.where !== 'back';
