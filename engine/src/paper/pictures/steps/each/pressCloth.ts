import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { arrow, inks, style, type Mark } from '../../../drawing/index.ts';
import { lineTo } from '../lines.ts';
import type { Draw } from '../picture.ts';
import { bad, good, movement } from '../signs.ts';
import { patch } from '../surface.ts';
import { ironAbove } from '../tools/index.ts';
import { note } from '../wording.ts';

/** The iron goes with the selvages, not across them. */
export const pressCloth: Draw = ({ speaker }) => {
  const { tableEdges } = speaker.words;
  const marks: Mark[] = [
    ...patch('wrong', { left: 4, top: 8, right: 82, bottom: 44, torn: ['left', 'right'] }),
    ...[9.6, 42.4].map((y) => arrowless(y)),
    ...note(point(43, 4.4), tableEdges.selvage, { ink: inks.grey }),
    ...note(point(43, 48), tableEdges.selvage, { ink: inks.grey }),
    ironAbove({ x: 22, y: 20, scale: 1.05 }),
    ...movement(lineTo([35, 20], [58, 20])),
    ...movement(lineTo([58, 23], [35, 23])),
    ...good(66, 21.5),
    arrow(point(48, 30), point(48, 40), {
      tail: 'arrow',
      style: style({ stroke: inks.grey, width: mm(0.35) }),
    }),
    ...bad(56, 35),
  ];
  return { height: 52, marks };
};

/** The selvage's own dense edge. */
const arrowless = (y: number): Mark =>
  arrow(point(4, y), point(82, y), { head: 'none', style: style({ width: mm(0.2), stroke: inks.grey }) });
