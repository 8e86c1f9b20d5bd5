import { readFabric } from '../../cloth/index.ts';
import type { Figure, Notice } from '../../figure/index.ts';
import type { SkirtRequest } from '../../request/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { FromCloth } from './answer.ts';
import { caution, figure, problem } from './codes.ts';

type Found = Pick<FromCloth, 'longest' | 'fullest' | 'mostRows' | 'count'>;

interface Tried {
  readonly hand: Figure<Mm>;
  /** What the skirt as planned takes; null where no lay of it fits. */
  readonly planned: Figure<Mm> | null;
  /** The same of the shortest, where that was tried. */
  readonly least: Figure<Mm> | null;
  readonly shortest: Mm;
}

/** What a length of cloth is not enough for, with what to do about it. */
export function noticesOf(request: SkirtRequest, found: Found, tried: Tried): Notice[] {
  const { longest, mostRows } = found;
  if (!longest) return [nothing(request, tried)];
  return [
    ...(found.count.value === 0 ? [notAsPlanned(request, found, longest, tried)] : []),
    ...(mostRows?.value === 0 ? [caution('have.noRows')] : []),
  ];
}

/** Not one skirt of this cut, however short. */
function nothing({ cloth }: SkirtRequest, { hand, planned, least, shortest }: Tried): Notice {
  return least
    ? problem('have.tooShort', {
        shortest: figure.length(shortest, 'have.shortest'),
        needed: least,
        have: hand,
        planned: planned ?? 'none',
      })
    : problem('have.tooNarrow', { usable: readFabric(cloth).usable });
}

/** A skirt, but not this one. */
function notAsPlanned(
  { cloth }: SkirtRequest,
  { fullest }: Found,
  longest: Figure<Mm>,
  { hand, planned }: Tried,
): Notice {
  if (!planned) return caution('have.tooWide', { usable: readFabric(cloth).usable, longest });
  const params = { needed: planned, missing: missing(planned, hand), longest };
  return fullest
    ? caution('have.shortenOrLess', { ...params, fullness: fullest.fullness })
    : caution('have.shorten', params);
}

const missing = (needed: Figure<Mm>, hand: Figure<Mm>): Figure<Mm> =>
  figure.length(mm(needed.value - hand.value), 'have.missing', { needed, hand });
