import { readBody, strideNeed } from '../body/index.ts';
import { layAll, readFabric, type ClothPlan } from '../cloth/index.ts';
import { figures, type Figure } from '../figure/index.ts';
import type { SkirtRequest } from '../request/index.ts';
import { composeRibbons, MOST_ROWS } from '../ribbon/index.ts';
import { draftSkirt, type Skirt } from '../skirt/index.ts';
import { mm, stepsIn, type Mm } from '../units/index.ts';

export type FromClothFigureCode = 'have.longest' | 'have.fullness' | 'have.count' | 'have.rows';
const figure = figures<FromClothFigureCode>();

/** What can be made of a length of cloth. Null where nothing of this cut can. */
export interface FromCloth {
  readonly have: Mm;
  /** The longest finished skirt with everything else as planned. */
  readonly longest: Figure<Mm> | null;
  /**
   * The fullest at the planned length: cloth round for each unit of the widest part, and its hem mark. Null too where
   * the cut has no fullness to choose.
   */
  readonly fullest: { readonly fullness: Figure; readonly hemQuarter: Figure<Mm> } | null;
  /** The most single rows of the usual ribbon that have room on the longest, all else as planned. */
  readonly mostRows: Figure | null;
  /** How many skirts as planned, laid one after the other. */
  readonly count: Figure;
}

/** Most that the request accepts; a skirt past these is cut another way. */
const LONGEST = mm(1800);
const MOST_FULLNESS = 4;
const FULLNESS_STEP = 0.05;

interface Tried {
  readonly skirt: Skirt;
  readonly cloth: ClothPlan;
}

/** The reverse question: "I have 2 m: what is the longest, the fullest, the most rows, how many?" `have` is cloth before its wash. */
export function fromCloth(request: SkirtRequest, have: Mm): FromCloth {
  const planned = least(trial(request));
  const longest = longestFrom(request, have);
  return {
    have,
    longest: longest === null ? null : figure.length(longest, 'have.longest'),
    fullest: fullestFrom(request, have),
    mostRows: longest === null ? null : figure.count(mostRowsOn(ofLength(request, longest)), 'have.rows'),
    count: figure.count(planned === null ? 0 : Math.floor(have / planned + 1e-9), 'have.count'),
  };
}

function trial(request: SkirtRequest): Tried {
  const body = readBody(request.body);
  const clothWidth = readFabric(request.cloth).usable;
  const { mark } = request;
  const context = { body, stride: strideNeed(body), clothWidth, clothWeight: request.cloth.weight, mark };
  const skirt = draftSkirt(context, request);
  return { skirt, cloth: layAll(skirt, request.cloth, request.contrast) };
}

/** Least cloth before the wash in any lay that fits. */
function least({ cloth }: Tried): number | null {
  const lengths = cloth.lays.filter(({ fits }) => fits).map(({ clothBefore }) => clothBefore.value);
  return lengths.length === 0 ? null : Math.min(...lengths);
}

const enough = (request: SkirtRequest, have: Mm): boolean => {
  const needed = least(trial(request));
  return needed !== null && needed <= have;
};

/** Largest step for which the cloth is enough; a longer or fuller skirt never takes less. */
function largest(from: number, to: number, isEnough: (step: number) => boolean): number | null {
  if (!isEnough(from)) return null;
  let low = from;
  let high = to;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (isEnough(middle)) low = middle;
    else high = middle - 1;
  }
  return low;
}

function longestFrom(request: SkirtRequest, have: Mm): Mm | null {
  const { mark, body } = request;
  const floor = Math.min(LONGEST, body.waistToFloor ?? LONGEST);
  const steps = largest(Math.ceil(100 / mark), stepsIn(mm(floor), mark, 'down'), (step) =>
    enough(ofLength(request, mm(step * mark)), have),
  );
  return steps === null ? null : mm(steps * mark);
}

const ofLength = (request: SkirtRequest, waistToHem: Mm): SkirtRequest => ({
  ...request,
  body: { ...request.body, second: undefined, waistToHem },
});

function mostRowsOn(request: SkirtRequest): number {
  const { skirt } = trial(request);
  const haveRoom = (rows: number): boolean => {
    const ribbons = { ...request.ribbons, rows, spacing: 'even' as const };
    const placed = composeRibbons(skirt, ribbons, request.mark);
    return placed.rows.length === rows && !placed.notices.some(({ code }) => code === 'ribbon.noRoom');
  };
  return largest(0, MOST_ROWS, haveRoom) ?? 0;
}

function fullestFrom(request: SkirtRequest, have: Mm): FromCloth['fullest'] {
  const { cut } = request;
  if (!('fullness' in cut)) return null;
  const fuller = (step: number): SkirtRequest => ({
    ...request,
    cut: { ...cut, fullness: step * FULLNESS_STEP },
  });
  const most = Math.round(MOST_FULLNESS / FULLNESS_STEP);
  const step = largest(Math.round(1 / FULLNESS_STEP), most, (each) => enough(fuller(each), have));
  if (step === null) return null;
  const { skirt } = trial(fuller(step));
  return {
    fullness: figure.ratio(step * FULLNESS_STEP, 'have.fullness'),
    hemQuarter: skirt.marks.hemQuarter,
  };
}
