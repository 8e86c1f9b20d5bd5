import type { Notice } from '../figure/index.ts';
import { caution } from './codes.ts';
import type { ClothOptions } from './options.ts';

/** Spoilt places that lie beyond the length that they are told of: they keep nothing away from anything. */
export const flawsBeyond = ({ lengths, width }: Pick<ClothOptions, 'lengths' | 'width'>): Notice[] =>
  lengths.flatMap((each, at) =>
    each.flaws.flatMap(({ along, across }, i) =>
      along < each.length && across < (each.width ?? width)
        ? []
        : [caution('cloth.flawBeyond', { number: i + 1, at: at + 1, length: each.name || 'nobody' })],
    ),
  );
