import type { Notice } from '../figure/index.ts';
import { called } from './called.ts';
import { caution } from './codes.ts';
import { readFabric, type Fabric } from './fabric.ts';
import type { SkirtCloth, SkirtCloths } from './whose.ts';

/** Shares by which two cloths may change apart before their seam draws up: 2 cm on a metre. Common practice, no source. */
const APART = 0.02;

/** What to know of cloths that are sewn to one another: they change unlike in the wash, or one is heavier. */
export const clothsDiffer = ([own, ...others]: SkirtCloths): Notice[] => [
  ...shrinkApart(own, others),
  ...weighApart(own, others),
];

function shrinkApart(own: SkirtCloth, others: readonly SkirtCloth[]): Notice[] {
  const first = readFabric(own.options);
  return others.flatMap((other) => {
    const second = readFabric(other.options);
    if (Math.max(...ways.map((way) => Math.abs(first[way].value - second[way].value))) < APART) return [];
    const [more, less] = mostOf(second) > mostOf(first) ? [other, own] : [own, other];
    const { lengthwise, crosswise } = more === own ? first : second;
    return [
      caution('cloth.shrinkApart', {
        ...called(more.options),
        otherCloth: called(less.options).cloth,
        otherColour: called(less.options).colour,
        lengthwise,
        crosswise,
        otherLengthwise: (more === own ? second : first).lengthwise,
        otherCrosswise: (more === own ? second : first).crosswise,
      }),
    ];
  });
}

const ways = ['lengthwise', 'crosswise'] as const;
const mostOf = (fabric: Fabric): number => Math.max(...ways.map((way) => fabric[way].value));

function weighApart(own: SkirtCloth, others: readonly SkirtCloth[]): Notice[] {
  return others
    .filter(({ options }) => options.weight !== own.options.weight)
    .map((other) =>
      caution('cloth.weighApart', {
        ...called(other.options),
        weight: other.options.weight,
        own: own.options.weight,
      }),
    );
}
