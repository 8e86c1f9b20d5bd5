import type { Figure } from '../figure/index.ts';
import { MM_PER_METRE, minutes, type Minutes, type Mm } from '../units/index.ts';
import { figure } from './codes.ts';
import { timeShare, type Skill } from './options.ts';

/** A beginner's pace at one kind of work: minutes to get ready, then minutes for each metre and each piece. */
export interface Pace {
  readonly setUp: number;
  readonly perMetre?: number;
  readonly perPiece?: number;
}

/** Paces of a beginner, in minutes. Common practice, no source; together a six-row skirt is a day's work. */
export const paces = {
  measure: { setUp: 15 },
  colourTest: { setUp: 10 },
  prewash: { setUp: 10 },
  pressCloth: { setUp: 5, perMetre: 5 },
  straighten: { setUp: 10 },
  fold: { setUp: 8 },
  mark: { setUp: 8, perPiece: 2 },
  cut: { setUp: 5, perMetre: 2 },
  cutParts: { setUp: 3, perMetre: 2, perPiece: 3 },
  trim: { setUp: 3, perPiece: 3 },
  hang: { setUp: 15 },
  chalkRows: { setUp: 5, perPiece: 1.5 },
  cutRibbon: { setUp: 3, perPiece: 1 },
  seal: { setUp: 3, perPiece: 0.5 },
  testStitch: { setUp: 10 },
  hold: { setUp: 3, perPiece: 3 },
  stitchRibbon: { setUp: 5, perMetre: 1.5, perPiece: 0.75 },
  rethread: { setUp: 0, perPiece: 4 },
  pressRows: { setUp: 5, perPiece: 0.75 },
  applique: { setUp: 60 },
  seam: { setUp: 6, perMetre: 3, perPiece: 4 },
  edge: { setUp: 5, perMetre: 2 },
  hem: { setUp: 5, perMetre: 10 },
  casing: { setUp: 5, perMetre: 10 },
  threadElastic: { setUp: 15 },
  closeElastic: { setUp: 15 },
  seamRows: { setUp: 5 },
  seamRowsAlone: { setUp: 18 },
  pocket: { setUp: 5, perMetre: 10, perPiece: 8 },
  pocketBag: { setUp: 0, perMetre: 8, perPiece: 5 },
  dart: { setUp: 5, perPiece: 6 },
  gather: { setUp: 8, perMetre: 3, perPiece: 2 },
  gatheredSeam: { setUp: 8, perMetre: 15 },
  facing: { setUp: 5, perMetre: 10 },
  slit: { setUp: 5, perMetre: 10, perPiece: 6 },
  zip: { setUp: 40 },
  placket: { setUp: 35 },
  tuck: { setUp: 8, perMetre: 8 },
  lining: { setUp: 10, perMetre: 5 },
  ties: { setUp: 5, perMetre: 6, perPiece: 6 },
  stiffen: { setUp: 15 },
  casingStrip: { setUp: 8, perMetre: 10 },
  band: { setUp: 15, perMetre: 12 },
  eyelet: { setUp: 8, perPiece: 8 },
  threadCord: { setUp: 12 },
  fasten: { setUp: 8, perPiece: 8 },
  finish: { setUp: 15 },
} as const satisfies Record<string, Pace>;

/** Minutes with hands on the work = (get ready + pieces × pace + metres × pace) × the maker's share of a beginner's time. */
export function hands(skill: Skill, pace: Pace, pieces = 0, length: Mm | 0 = 0): Figure<Minutes> {
  const share = figure.ratio(timeShare[skill], 'sewing.skill');
  const setUp = figure.minutes(minutes(pace.setUp), 'sewing.setUp');
  const each = figure.minutes(minutes(pace.perPiece ?? 0), 'sewing.perPiece');
  const metre = figure.minutes(minutes(pace.perMetre ?? 0), 'sewing.perMetre');
  const metres = figure.ratio(length / MM_PER_METRE, 'sewing.length');
  const count = figure.count(pieces, 'sewing.pieces');
  const value = (setUp.value + count.value * each.value + metres.value * metre.value) * share.value;
  return figure.minutes(minutes(value), 'sewing.hands', { setUp, count, each, metres, metre, share });
}

/** Two bouts of work in one step. */
export function together(...bouts: readonly Figure<Minutes>[]): Figure<Minutes> {
  const [first] = bouts;
  if (first && bouts.length === 1) return first;
  const value = minutes(bouts.reduce((sum, each) => sum + each.value, 0));
  return figure.minutes(
    value,
    'sewing.handsTotal',
    Object.fromEntries(bouts.map((bout, i) => [`bout${String(i + 1)}`, bout])),
  );
}

export const noWait: Figure<Minutes> = figure.minutes(minutes(0), 'sewing.wait');
export const waiting = (length: number): Figure<Minutes> => figure.minutes(minutes(length), 'sewing.wait');
