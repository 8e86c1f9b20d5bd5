import { colourKey, type Colour } from '../../fields/index.ts';
import { endOf, line, reversed, startOf, type Path } from '../../geometry/index.ts';
import type { Row } from '../../ribbon/index.ts';
import { mm } from '../../units/index.ts';
import { inks, patternNames, type PatternName, type Style } from '../drawing/index.ts';

/** Cloth on paper: a light wash, so that a black-and-white printer keeps chalk and words readable. */
export const clothStyle: Partial<Style> = { fill: inks.wash, width: mm(0.35) };
export const chalkLine: Partial<Style> = { dash: 'chalk', width: mm(0.35) };
export const foldLine: Partial<Style> = { dash: 'fold', width: mm(0.3), stroke: inks.grey };
export const thinLine: Partial<Style> = { width: mm(0.18), stroke: inks.grey };

/** The area of a ribbon between its two edges. */
export function ribbonArea({ lower, upper }: Pick<Row, 'lower' | 'upper'>): Path {
  const back = reversed(upper);
  const [firstLower, lastLower, firstBack, lastBack] = [lower[0], lower.at(-1), back[0], back.at(-1)];
  if (!firstLower || !lastLower || !firstBack || !lastBack) return [];
  return [
    ...lower,
    line(endOf(lastLower), startOf(firstBack)),
    ...back,
    line(endOf(lastBack), startOf(firstLower)),
  ];
}

/** Each colour's own filling, so that ribbons are told apart without colour. */
export function patternsOf(colours: readonly Colour[]): (colour: Colour) => PatternName {
  const keys = [...new Set(colours.map(colourKey))];
  return (colour) => patternNames[keys.indexOf(colourKey(colour)) % patternNames.length] ?? 'none';
}
