import { single, type Cutting } from '../blocks.ts';
import type { Choice } from '../place.ts';
import type { LayInput } from './lay.ts';
import { choiceOf } from './loose.ts';
import { oneByOne } from './pairs.ts';

/** Those that reach furthest along the bolt first, so that what follows stands beside them. */
export const deepestFirst = (cuttings: readonly Cutting[]): Cutting[] =>
  cuttings.toSorted(
    ({ cut: { piece: a } }, { cut: { piece: b } }) =>
      b.depth.value - a.depth.value || b.width.value - a.width.value,
  );

/** Whether panels of several shapes save anything head to tail: straight widths don't. */
export const mayNest = ({ marking, mains, fabric }: LayInput): boolean =>
  !fabric.oneWay && marking !== 'straight widths' && oneByOne(mains).length > 1;

/** How panels lie one by one. A part of a circle has no way up: it lies as it takes least, unless the print has one. */
export function alone(
  cuttings: readonly Cutting[],
  { marking, fabric }: LayInput,
  stance: 'along' | 'across',
): Choice[] {
  const isFree = marking === 'swung' && !fabric.oneWay && stance === 'along';
  return cuttings.map((cutting) => (isFree ? choiceOf(cutting) : [single(cutting, stance)]));
}
