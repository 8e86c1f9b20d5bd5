import { readFabric, NARROWEST, type ClothOptions, type Lay } from '../../cloth/index.ts';
import type { SkirtRequest } from '../../request/index.ts';
import { composeRibbons, MOST_ROWS } from '../../ribbon/index.ts';
import { mm, stepsIn, type Mm } from '../../units/index.ts';
import type { FromCloth } from './answer.ts';
import { caution, figure } from './codes.ts';
import { noticesOf } from './noticesOf.ts';
import { drafted, largest, leastLay, ofLength } from './trial.ts';

/** Most that the request accepts; a skirt past these is cut another way. */
const LONGEST = mm(1800);
const MOST_FULLNESS = 4;
const FULLNESS_STEP = 0.05;
/** How far apart lengths are tried, in millimetres, and fullnesses, in steps, before they are looked at more closely. */
const LENGTHS_APART = 10;
const FULLNESS_APART = 1;
/** Shorter than this nobody wears it. */
const SHORTEST = 100;

/** The reverse question: "I have 2 m: what is the longest, the fullest, the most rows, how many?" `have` is cloth before its wash. */
export function fromCloth(request: SkirtRequest, have: Mm): FromCloth {
  const { mark } = request;
  const hand = figure.length(have, 'have.cloth');
  const wideEnough = readFabric(request.cloth).usable.value >= NARROWEST;
  const shortest = mm(Math.ceil(SHORTEST / mark) * mark);
  const isUpright = wideEnough && keepsUpright(request, shortest);
  const layOf = (tried: SkirtRequest, within: number): Lay | null =>
    wideEnough ? leastLay(tried, { isUpright, within }) : null;
  const isEnough = (tried: SkirtRequest): boolean => layOf(tried, have) !== null;
  const length = longestFrom(request, shortest, isEnough);
  const lay = length === null ? null : layOf(ofLength(request, length), have);
  const planned = layOf(request, Infinity)?.clothBefore ?? null;
  const takes = lay?.clothBefore ?? null;
  const answer = {
    have,
    at: null,
    longest: length === null ? null : figure.length(length, 'have.longest'),
    way: lay?.kind ?? null,
    takes,
    left: takes && figure.length(mm(have - takes.value), 'have.left', { hand, takes }),
    fullest: fullestFrom(request, isEnough),
    mostRows: length === null ? null : figure.count(mostRowsOn(ofLength(request, length)), 'have.rows'),
    count: planned
      ? figure.count(Math.floor(have / planned.value + 1e-9), 'have.count', { hand, planned })
      : figure.count(0, 'have.none'),
  };
  const least = length === null ? layOf(ofLength(request, shortest), Infinity) : null;
  return {
    ...answer,
    notices: noticesOf(request, answer, { hand, planned, least: least?.clothBefore ?? null, shortest }),
  };
}

/**
 * The same of each length of the skirt's cloth that is at hand, in their order. Of one with spoilt places it is reckoned
 * with the longest stretch between them: what fits there can be cut, whatever else a closer lay finds room for.
 */
export const fromLengths = (request: SkirtRequest): FromCloth[] =>
  request.cloth.lengths.map((each) => {
    const { cloth } = request;
    const width = each.width ?? cloth.width;
    const clear = clearStretch(each);
    const washed = cloth.washed || each.washed;
    const answer = fromCloth({ ...request, cloth: { ...cloth, width, washed } }, clear);
    const spoilt =
      clear < each.length ? [caution('have.spoilt', { clear: figure.length(clear, 'have.cloth') })] : [];
    return {
      ...answer,
      have: each.length,
      at: { name: each.name, width },
      notices: [...spoilt, ...answer.notices],
    };
  });

/** Of all cloth that is known of: the length that is asked about or planned with, then what is at hand. */
export const fromAll = (request: SkirtRequest, asked = request.cloth.have): FromCloth[] => [
  ...(asked === undefined ? [] : [fromCloth(request, asked)]),
  ...fromLengths(request),
];

function clearStretch({ length, flaws }: ClothOptions['lengths'][number]): Mm {
  const places = flaws.toSorted((one, other) => one.along - other.along);
  let [free, from] = [0, 0];
  for (const place of places) {
    free = Math.max(free, Math.min(place.along, length) - from);
    from = Math.max(from, place.along + place.length);
  }
  return mm(Math.max(free, length - from));
}

/**
 * Whether the print has to be upright: where it runs one way and the skirt as planned can have it so; where that skirt
 * fits in no way at all, where the shortest can.
 */
function keepsUpright(request: SkirtRequest, shortest: Mm): boolean {
  if (!request.cloth.oneWay) return false;
  const within = Infinity;
  const tried = leastLay(request, { isUpright: false, within }) ? request : ofLength(request, shortest);
  return leastLay(tried, { isUpright: true, within }) !== null;
}

function longestFrom(
  request: SkirtRequest,
  shortest: Mm,
  isEnough: (tried: SkirtRequest) => boolean,
): Mm | null {
  const { mark, body } = request;
  const floor = Math.min(LONGEST, body.waistToFloor ?? LONGEST);
  const from = Math.round(shortest / mark);
  const to = Math.max(from, stepsIn(mm(floor), mark, 'down'));
  const apart = Math.max(1, Math.round(LENGTHS_APART / mark));
  const steps = largest(from, to, apart, (step) => isEnough(ofLength(request, mm(step * mark))));
  return steps === null ? null : mm(steps * mark);
}

function mostRowsOn(request: SkirtRequest): number {
  const skirt = drafted(request);
  const haveRoom = (rows: number): boolean => {
    const ribbons = { ...request.ribbons, rows, spacing: 'even' as const };
    const placed = composeRibbons(skirt, ribbons, request.mark);
    return placed.rows.length === rows && !placed.notices.some(({ code }) => code === 'ribbon.noRoom');
  };
  return largest(0, MOST_ROWS, MOST_ROWS, haveRoom) ?? 0;
}

function fullestFrom(
  request: SkirtRequest,
  isEnough: (tried: SkirtRequest) => boolean,
): FromCloth['fullest'] {
  const { cut } = request;
  if (!('fullness' in cut)) return null;
  const fuller = (step: number): SkirtRequest => ({
    ...request,
    cut: { ...cut, fullness: step * FULLNESS_STEP },
  });
  const [least, most] = [Math.round(1 / FULLNESS_STEP), Math.round(MOST_FULLNESS / FULLNESS_STEP)];
  const step = largest(least, most, FULLNESS_APART, (each) => isEnough(fuller(each)));
  if (step === null) return null;
  return {
    fullness: figure.ratio(step * FULLNESS_STEP, 'have.fullness'),
    hemQuarter: drafted(fuller(step)).marks.hemQuarter,
  };
}
