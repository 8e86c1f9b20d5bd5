import type { Figure, Notice } from '../../figure/index.ts';
import type { Mm } from '../../units/index.ts';
import { caution, problem } from '../codes.ts';
import type { Lay } from '../lays/lay.ts';
import type { LayKind } from '../options.ts';
import { assembled, nothing } from '../job/assembled.ts';
import { takenBefore } from '../job/before.ts';
import { boundOf } from '../job/bound.ts';
import { aboutPrint } from '../job/print.ts';
import type { ClothJob, FoundCloth } from '../job/found.ts';
import { inTurn, type HandLaid, type InTurn } from './inTurn.ts';
import { leastOf } from './least.ts';
import { handTables } from './tables.ts';
import { tooShort } from './tooShort.ts';

/** One skirt, and every way to lay it by itself: on the bolt, and on each of the lengths. */
export interface HandSkirt {
  readonly wearer: string;
  readonly lays: readonly Lay[];
  readonly on: (length: number) => readonly Lay[];
}

/**
 * The skirts of one cloth laid one after the other in one way, as they are laid by hand: the oldest length first,
 * each skirt on the first length that is long enough, over all of its width. A skirt that can't be laid this way is laid
 * in the way that takes least of it; where none can be, the way does not fit. Never a search: it is there at once.
 */
export function layByHand(skirts: readonly HandSkirt[], job: ClothJob, kind: LayKind): FoundCloth {
  const { fabric, lengths } = job;
  const notices: Notice[] = [];
  const hasBolt = lengths.some(({ length }) => length === null);
  // By itself a skirt that can't be laid so is not laid at all.
  const taken = (lays: readonly Lay[]): Lay | undefined => {
    const asked = lays.find((each) => each.kind === kind);
    if (asked?.fits === true) return asked;
    return skirts.length === 1 ? undefined : leastOf(lays, fabric);
  };
  const able = skirts.map((of): InTurn<HandSkirt> => {
    const { lays } = of;
    const on = (at: number): Lay | undefined => taken(of.on(at));
    // What it would take is told of cloth that there is, or could be bought.
    const there = lengths.flatMap((_, at) => on(at) ?? []);
    const anyhow = hasBolt ? taken(lays) : (leastOf(there, fabric) ?? taken(lays));
    return { of, on, anyhow };
  });
  const laid = inTurn(able, job);
  for (const { wearer, lays } of skirts.filter((each) => !laid.some(({ of }) => of === each))) {
    // By itself it is known why of its own lay.
    const asked = skirts.length === 1 ? lays.find((each) => each.kind === kind) : undefined;
    const why = asked?.notices.filter(({ level }) => level === 'problem');
    notices.push(...(why ?? [problem('cloth.noWay', { wearer })]));
  }
  const others = laid.filter(({ lay }) => lay.kind !== kind).map(({ of: { wearer } }) => wearer);
  if (others.length === skirts.length && others.length > 0)
    return assembled({ job, way: kind, handBefore: null }, nothing([problem('cloth.nobodyThisWay')]));
  for (const { of, lay } of laid.filter(({ short }) => short))
    notices.push(tooShort(of.wearer, lay, job, (at) => taken(of.on(at)) !== undefined));
  if (others.length > 0) notices.push(caution('cloth.otherWay', { wearers: others.join(', '), lay: kind }));
  notices.push(
    ...aboutPrint(
      fabric,
      kind,
      laid.some(({ lay }) => lay.printOnItsSide),
    ),
    ...turnsOver(laid.map(({ lay }) => lay)),
  );
  const [meets, between] = [fabric.pattern?.match === true, fabric.between.value > 0];
  if (laid.length > 0 && (meets || between))
    notices.push(caution('cloth.byEye', { asked: !between ? 'pattern' : meets ? 'both' : 'between' }));
  return assembled(
    { job, way: kind, handBefore: leastByHand(skirts, laid, job) },
    { tables: handTables(laid, job), bound: boundOf(job, kind, []), evaluations: 0, notices, isByHand: true },
  );
}

/** What a fold makes of a one-way print is said once. */
const turnsOver = (lays: readonly Lay[]): Notice[] =>
  lays
    .flatMap(({ notices }) => notices)
    .filter(({ code }) => code === 'cloth.oneWayCrosswise')
    .slice(0, 1);

/** Each skirt in the way that takes least of it by hand where it is laid; null where one can't be laid at all. */
function leastByHand(
  skirts: readonly HandSkirt[],
  laid: readonly HandLaid<HandSkirt>[],
  { fabric, lengths }: ClothJob,
): Figure<Mm> | null {
  const used = skirts.map((skirt) => {
    const at = laid.find(({ of }) => of === skirt)?.length ?? -1;
    const least = leastOf(skirt.on(at), fabric) ?? leastOf(skirt.lays, fabric);
    return { after: least?.clothAfter.value ?? NaN, from: lengths[at] };
  });
  return used.some(({ after }) => Number.isNaN(after)) ? null : takenBefore(used, 'cloth.byHand', fabric);
}
