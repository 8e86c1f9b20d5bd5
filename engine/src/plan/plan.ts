import { readBody, strideNeed, type Body, type Stride } from '../body/index.ts';
import {
  clothsDiffer,
  clothsOf,
  hardlySeen,
  layAll,
  layContrast,
  layLining,
  readFabric,
  sharesOf,
  type ClothOptions,
  type ClothPlan,
  type ContrastPlan,
  type SkirtCloths,
} from '../cloth/index.ts';
import type { Notice } from '../figure/index.ts';
import type { SkirtRequest } from '../request/index.ts';
import { composeRibbons, type Composition } from '../ribbon/index.ts';
import { seamLines, type StitchLine } from '../seams/index.ts';
import { planSewing, type Sewing } from '../sewing/index.ts';
import { draftSkirt, type Skirt } from '../skirt/index.ts';
import { listSupplies, type Supplies } from '../supplies/index.ts';
import { givenOf } from './given.ts';

/** Parts of the job, in its order; every notice belongs to one. */
export type Stage = 'body' | 'cut' | 'ribbons' | 'cloth' | 'supplies';

export interface StagedNotice {
  readonly stage: Stage;
  readonly notice: Notice;
  /** The cloth that it is about, by what it is called, where a skirt has several; null where it is about none of them alone. */
  readonly of: Pick<ClothOptions, 'name' | 'colour'> | 'lining' | null;
}

/** Everything that is known of one skirt before the scissors close. */
export interface SkirtPlan {
  readonly request: SkirtRequest;
  readonly body: Body;
  readonly stride: Stride;
  readonly skirt: Skirt;
  readonly ribbons: Composition;
  readonly cloth: ClothPlan;
  /** The lining's own cloth; null where nothing is cut from one. */
  readonly lining: ClothPlan | null;
  /** The skirt's other cloths that something is cut from, in the order of the document. */
  readonly contrast: readonly ContrastPlan[];
  /** What is cut from which of the skirt's own cloth and its other ones. */
  readonly cloths: SkirtCloths;
  readonly lines: readonly StitchLine[];
  readonly supplies: Supplies;
  readonly sewing: Sewing;
  /** Problems first, then cautions, each in the order of the job. */
  readonly notices: readonly StagedNotice[];
}

/** Runs the whole line for one skirt. Never throws on a parsed request; what can't be met is among its notices. */
export function planSkirt(request: SkirtRequest): SkirtPlan {
  const body = readBody(request.body);
  const stride = strideNeed(body);
  const fabric = readFabric(request.cloth);
  const skirt = draftSkirt(givenOf(request, { body, stride }, fabric), request);
  const ribbons = composeRibbons(skirt, request.ribbons, request.mark);
  const lines = seamLines(skirt, ribbons, request.sewing.overlocker ? 'overlocker' : 'zigzag');
  const cloths = clothsOf(skirt, request.cloth, request.contrast);
  const start = { request, body, stride, skirt, cloths, ribbons, lines };
  return planOnCloth(start, {
    cloth: layAll(skirt, request.cloth, request.contrast),
    lining: layLining(skirt, request.cloth),
    contrast: layContrast(skirt, request.contrast),
  });
}

/** What is known of a skirt before it is laid, and the lays of its cloths. */
export type Unlaid = Pick<
  SkirtPlan,
  'request' | 'body' | 'stride' | 'skirt' | 'cloths' | 'ribbons' | 'lines'
>;
export type Laid = Pick<SkirtPlan, 'cloth' | 'lining' | 'contrast'>;

/** The rest of the line, once it is known how each cloth is laid. */
export function planOnCloth(start: Unlaid, laid: Laid): SkirtPlan {
  const { request, body, stride, skirt, cloths, ribbons, lines } = start;
  const { cloth, lining, contrast } = laid;
  const supplies = listSupplies({
    skirt,
    ribbons,
    cloth,
    lining,
    contrast,
    cloths,
    lines,
    clothOptions: request.cloth,
    ribbonOptions: request.ribbons,
    options: request.supplies,
    system: request.measure,
  });
  const sewing = planSewing({
    body,
    skirt,
    ribbons,
    ribbonOptions: request.ribbons,
    cloth,
    clothOptions: request.cloth,
    contrast,
    cloths,
    lines,
    supplies,
    threadColour: request.supplies.thread.colour,
    options: request.sewing,
  });
  const hasSeveral = lining !== null || contrast.length > 0;
  const found: Found[] = [
    ['body', [...body.notices, ...stride.notices]],
    ['cut', skirt.notices],
    ['ribbons', [...ribbons.notices, ...hardlySeen(skirt, cloths, ribbons)]],
    ['cloth', cloth.notices, hasSeveral ? request.cloth : null],
    ['cloth', lining?.notices ?? [], 'lining'],
    ...contrast.map((each): Found => ['cloth', each.cloth.notices, each.options]),
    // What one cloth is not cut for is told of the skirt: each names its cloth itself.
    ['cloth', [...sharesOf(skirt, request.contrast).notices, ...clothsDiffer(cloths)]],
    ['supplies', supplies.notices],
  ];
  return { ...start, ...laid, supplies, sewing, notices: staged(found) };
}

type Found = readonly [Stage, readonly Notice[], of?: StagedNotice['of']];

function staged(found: readonly Found[]): StagedNotice[] {
  const all = found.flatMap(([stage, notices, of = null]) =>
    notices.map((notice) => ({ stage, notice, of })),
  );
  const at = (level: Notice['level']): StagedNotice[] => all.filter(({ notice }) => notice.level === level);
  return [...at('problem'), ...at('caution')];
}

/** Whether the plan carries a wish that can't be met. */
export const hasProblems = (plan: SkirtPlan): boolean =>
  plan.notices.some(({ notice }) => notice.level === 'problem');
