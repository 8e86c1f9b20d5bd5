import type { Figure, Notice } from '../../figure/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import { beforeWash, boughtOff } from '../fabric.ts';
import type { LayKind } from '../options.ts';
import { takenBefore } from './before.ts';
import { boundOffBolt } from './bound.ts';
import type { ClothJob, FoundCloth, FoundTable } from './found.ts';
import { uncutOf } from './uncut.ts';

/** What was to be laid, how, and the cloth before the wash that it takes by hand. */
interface Asked {
  readonly job: ClothJob;
  readonly way: LayKind;
  readonly handBefore: Figure<Mm> | null;
}

/** What a lay is made of. */
interface Answer {
  readonly tables: readonly FoundTable[];
  /** Length after the wash that no lay of this way takes less than. */
  readonly bound: number;
  readonly evaluations: number;
  readonly notices: readonly Notice[];
  readonly isByHand?: boolean;
}

/** A lay with all that is to be known of it. */
export function assembled({ job, way, handBefore }: Asked, answer: Answer): FoundCloth {
  const { fabric } = job;
  const { evaluations, notices } = answer;
  const tables = answer.tables.map((table, i): FoundTable => {
    const isLast = answer.tables.slice(i + 1).every(({ from }) => from !== table.from);
    const own = answer.tables.filter(({ from }) => from === table.from);
    return { ...table, uncut: isLast ? uncutOf(table.from, own, fabric) : null };
  });
  const used = (all: readonly FoundTable[]): number => all.reduce((sum, each) => sum + each.used, 0);
  const clothAfter = figure.length(mm(used(tables)), 'cloth.foundAfter');
  const clothBefore = takenBefore(
    tables.map(({ used: after, from }) => ({ after, from })),
    'cloth.foundAfter',
    fabric,
  );
  const ofBolt = used(tables.filter(({ from }) => from.length === null));
  const bought = (length: number): Figure<Mm> => {
    if (length <= 0) return figure.length(mm(0), 'cloth.nothingToBuy');
    const after = figure.length(mm(length), 'cloth.foundUsed');
    return boughtOff(after, beforeWash(after, fabric.lengthwise), fabric);
  };
  const fits = notices.every(({ level }) => level !== 'problem');
  const lowerBound = Math.min(answer.bound, clothAfter.value);
  const buys = bought(ofBolt);
  // A lay by hand saves nothing of itself, though with a print on its side it may take less than an upright one.
  const isLess =
    fits && handBefore !== null && answer.isByHand === true && clothBefore.value < handBefore.value;
  const byHand = isLess ? clothBefore : handBefore;
  return {
    fabric,
    kind: way,
    tables,
    clothAfter,
    clothBefore,
    toBuy: buys,
    byHand,
    saved: fits && byHand ? savedOf(byHand, clothBefore) : null,
    lowerBound: figure.length(mm(lowerBound), 'cloth.leastPossible'),
    proven: fits && (buys.value === 0 || bought(boundOffBolt(job, lowerBound)).value >= buys.value),
    evaluations,
    fits,
    notices,
  };
}

const savedOf = (hand: Figure<Mm>, found: Figure<Mm>): Figure<Mm> =>
  figure.length(mm(Math.max(0, hand.value - found.value)), 'cloth.savedLength', { byHand: hand, found });

/** What binary fractions lose saves no cloth. */
const HAIR = 1e-6;

/** Whether one lay is to be taken rather than another: one that fits, then what the shop cuts, then what is used. */
export function isBetter(one: FoundCloth, other: FoundCloth): boolean {
  if (one.fits !== other.fits) return one.fits;
  const bought = one.toBuy.value - other.toBuy.value;
  if (Math.abs(bought) > HAIR) return bought < 0;
  return one.clothAfter.value < other.clothAfter.value - HAIR;
}

/** No lay at all, and why. */
export const nothing = (notices: readonly Notice[]): Answer => ({
  tables: [],
  bound: 0,
  evaluations: 0,
  notices,
});
