import { colourKey, type Colour } from '../fields/index.ts';
import type { Figure } from '../figure/index.ts';
import { mm, type Mm } from '../units/index.ts';
import { figure } from './codes.ts';
import type { Row, Strip } from './row.ts';

/** All the ribbon of one colour and width. */
export interface RibbonTotal {
  readonly colour: Colour;
  readonly width: Figure<Mm>;
  readonly strips: readonly Strip[];
  readonly total: Figure<Mm>;
}

/** Ribbon by colour and width, in the order in which they are met from the hem up. */
export function ribbonTotals(rows: readonly Row[]): RibbonTotal[] {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    const key = `${colourKey(row.colour)} ${row.width.value.toFixed(3)}`;
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    if (!first) return [];
    const strips = group.flatMap((row) => row.strips);
    const sum = mm(strips.reduce((total, strip) => total + strip.length.value, 0));
    const total = figure.length(sum, 'ribbon.total', {
      strips: figure.count(strips.length, 'ribbon.strips'),
    });
    return [{ colour: first.colour, width: first.width, strips, total }];
  });
}
