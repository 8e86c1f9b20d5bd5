import { lengthOf, mirrorX, point, startOf, type Path, type Point } from '../../../geometry/index.ts';
import { clothOf } from '../../../cloth/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import type { Notch, Panel, PieceShape, Round } from '../../../skirt/index.ts';

/** What panels are told apart by: where they are worn and what they are cut from. */
export type Panelled = Pick<SkirtPlan, 'skirt' | 'cloths'>;

/** Panels of one round that are cut alike, from one cloth. */
export interface PanelGroup {
  /** From the top, from 1. */
  readonly round: number;
  readonly panels: readonly [Panel, ...Panel[]];
  /** Those of them that are the mirror image of the first. */
  readonly mirrors: readonly Panel[];
  /** Notches that all of them have, and the one at the centre that only one may have. */
  readonly notches: readonly Notch[];
  /** Whether some have one line where others have two: fronts and backs that are otherwise cut alike. */
  readonly linesDiffer: boolean;
  /** Whether only some have a notch at their centre. */
  readonly centreOnSome: boolean;
}

/** Two outlines that a chalk line could not tell apart. */
const CHALK = 0.05;

/** Every distinct panel of a skirt, round by round from the top, in the order they are worn. */
export const panelGroups = ({ skirt: { rounds }, cloths }: Panelled): PanelGroup[] =>
  rounds.flatMap((round, i) => groupsOf(round, i + 1, cloths));

function groupsOf({ panels }: Round, round: number, cloths: Panelled['cloths']): PanelGroup[] {
  const groups: { readonly first: Panel; readonly others: Panel[]; readonly mirrors: Panel[] }[] = [];
  for (const panel of panels) {
    const { shape } = panel;
    const ofCloth = groups.filter(({ first }) => clothOf(cloths, first) === clothOf(cloths, panel));
    const alike = ofCloth.find(({ first }) => first.shape === shape || isSame(first.shape, shape));
    const found = alike ?? ofCloth.find(({ first }) => isSame(first.shape, mirrorImage(shape)));
    if (!found) groups.push({ first: panel, others: [], mirrors: [] });
    else {
      found.others.push(panel);
      if (!alike) found.mirrors.push(panel);
    }
  }
  return groups.map(({ first, others, mirrors }) => ({
    round,
    panels: [first, ...others],
    mirrors,
    notches: sharedNotches(first, others),
    centreOnSome: others.some(({ shape }) => hasCentre(shape) !== hasCentre(first.shape)),
    linesDiffer: others.some(({ shape }) => lineCount(shape) !== lineCount(first.shape)),
  }));
}

/** Quarters fall on other places of each strip of a round: what is not on all of them is on none. */
const sharedNotches = (first: Panel, others: readonly Panel[]): Notch[] =>
  first.shape.notches.filter(
    (notch) =>
      notch.use !== 'quarter' ||
      others.every(({ shape }) => shape.notches.some((other) => isNear(notch.at, other.at))),
  );

const hasCentre = ({ notches }: PieceShape): boolean => notches.some(({ use }) => use === 'centre');

/** Notches by which pieces are told apart: not those that only say where a panel is worn. */
const telling = ({ notches }: Pick<PieceShape, 'notches'>): Notch[] =>
  notches.filter(({ use }) => use !== 'quarter' && use !== 'centre');

const lineCount = (shape: PieceShape): number => telling(shape).reduce((sum, { lines }) => sum + lines, 0);

type Outlined = Pick<PieceShape, 'cut' | 'notches'>;

const mirrorImage = ({ cut, notches }: PieceShape): Outlined => ({
  cut: mirrorX(cut),
  notches: notches.map((notch) => ({ ...notch, at: point(-notch.at.x, notch.at.y) })),
});

const isSame = (one: Outlined, other: Outlined): boolean =>
  sameOutline(one.cut, other.cut) && sameNotches(telling(one), telling(other));

function sameOutline(a: Path, b: Path): boolean {
  if (a.length !== b.length || Math.abs(lengthOf(a) - lengthOf(b)) > CHALK) return false;
  const corners = b.map(startOf);
  return a.map(startOf).every((at) => corners.some((other) => isNear(at, other)));
}

const sameNotches = (a: readonly Notch[], b: readonly Notch[]): boolean =>
  a.length === b.length && a.every(({ at }) => b.some((other) => isNear(at, other.at)));

const isNear = (a: Point, b: Point): boolean => Math.abs(a.x - b.x) < CHALK && Math.abs(a.y - b.y) < CHALK;
