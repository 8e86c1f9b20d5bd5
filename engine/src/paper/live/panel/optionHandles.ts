import { point } from '../../../geometry/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import { openingTurn, turnOf } from '../worn/places.ts';
import { liesDown, onLevel, onSide, type Wanted } from './place.ts';
import { freeSide, sideAtTurn } from './seamSide.ts';
import { isMarkedWhole, type Sheets } from './sheet.ts';
import { levelAt } from './where.ts';

/** Shares of an edge: from its ends inwards, for names stand in the middle above it. */
const INWARDS = [0.93, 0.07, 0.8, 0.2, 0.68, 0.32];
/** Of a panel whose name stands close above it: the same line, a little past its end. */
const BESIDE_NAME = [1.14, 1.04];
/** Of the folds of tucks: what else crosses the middle of a panel begins there. */
const ASIDE = [0.3, 0.7, 0.18, 0.82, 0.5];

/** What the waist, the overlap and the extras put on the panels. */
export const optionHandles = (plan: SkirtPlan, sheets: Sheets): Wanted[] => [
  ...openings(plan, sheets),
  ...overlap(plan, sheets),
  ...waist(plan, sheets),
  ...tuck(plan, sheets),
];

/** Lower edge of each tier but the last: its neighbours take from one another. */
export function tierHandles({ skirt }: SkirtPlan, { all, tiers }: Sheets): Wanted[] {
  if (!tiers) return [];
  return all.slice(0, -1).map((sheet, i) => ({
    name: `tier ${i + 1}`,
    places: onLevel(sheet, skirt.rounds[i]?.length ?? sheet.shape.length, INWARDS, 'up'),
  }));
}

/** The fold at the top of the waist's own piece; a casing that is turned from the panels ends at their raw edge. */
function waist(plan: SkirtPlan, { all: [first], tiers }: Sheets): Wanted[] {
  const { build, above } = plan.skirt.waist;
  if (build === 'turned')
    return [
      { name: 'casing', places: onLevel(first, -first.shape.topAllowance, tiers ? INWARDS : OUTWARDS, 'up') },
    ];
  const shares = liesDown(first) ? OUTWARDS : isMarkedWhole(plan) || tiers ? INWARDS : BESIDE_NAME;
  // Beyond the cloth no level has ends of its own: the fold lies straight above the top line.
  const lift = above.value * first.scale;
  const places = onLevel(first, 0, shares, 'up').map(({ at, towards, perMm }) => ({
    at: point(at.x + lift * towards.x, at.y + lift * towards.y),
    towards,
    perMm,
  }));
  return [
    { name: 'casing', places },
    { name: 'band', places },
  ];
}

/** Shares of an edge from the middle outwards. */
export const OUTWARDS = [0.5, 0.38, 0.62, 0.26, 0.74];

/** A quarter of what the overlap grows by goes to either side of each front: seen from its other side, half of it. */
const HALF_OF_OVERLAP = 2;

function overlap({ skirt }: SkirtPlan, sheets: Sheets): Wanted[] {
  if (!skirt.overlap) return [];
  const { sheet, hand } = freeSide(sheets);
  const place = { at: sheet.side(hand, 0), towards: point(hand, 0), perMm: HALF_OF_OVERLAP / sheet.scale };
  return [{ name: 'overlap', places: [place] }];
}

/** In the seams: the opening of the waist by its lower end, a slit by its upper, a pocket by where it begins. */
function openings(plan: SkirtPlan, sheets: Sheets): Wanted[] {
  const { skirt } = plan;
  const { waist, extras, rounds } = skirt;
  const { closure } = waist;
  const { pockets, slits } = extras;
  const wanted: Wanted[] = [];
  if (closure) {
    const { sheet, hand } = sideAtTurn(sheets, 1, openingTurn(plan));
    const y = closure.depth.value - waist.above.value;
    wanted.push({ name: 'opening', places: [onSide(sheet, hand, y, 'down')] });
  }
  const [pocket] = pockets?.sides ?? [];
  if (pockets && pocket) {
    const { sheet, hand } = sideAtTurn(sheets, 1, turnOf(plan, rounds[0], pocket));
    wanted.push({ name: 'pocket', places: [onSide(sheet, hand, pockets.below.value, 'down')] });
  }
  const [slit] = slits?.sides ?? [];
  const lowest = rounds.at(-1);
  if (slits && slit && lowest) {
    const on = levelAt(skirt, sheets, slits.takes.to);
    const { sheet, hand } = sideAtTurn(sheets, on.sheet.kind.round, turnOf(plan, lowest, slit));
    const y = sheets.tiers ? on.y : sheet.shape.length - slits.takes.to;
    wanted.push({ name: 'slit', places: [onSide(sheet, hand, y, 'up')] });
  }
  return wanted;
}

/** The fold of the first tuck: its upper stitching stays, its lower goes twice as far. */
function tuck({ skirt }: SkirtPlan, { all: [first] }: Sheets): Wanted[] {
  const { tucks } = skirt.extras;
  if (tucks?.how !== 'tucks') return [];
  return [{ name: 'tuck', places: onLevel(first, tucks.below.value + tucks.depth.value, ASIDE, 'down') }];
}
