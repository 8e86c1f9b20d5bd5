import { boundsOf } from '../../geometry/index.ts';
import type { Meetings, Placement } from '../../packing/index.ts';
import type { ClothEffort } from './effort.ts';
import type { Known } from './known.ts';
import { packLots, type Lot } from './lots.ts';
import { placedAt } from './lying.ts';
import { within } from './shares.ts';
import { stripOf, type Laid, type Strip } from './strip.ts';
import { liesOn } from './tables.ts';

/** What binary fractions make longer is no longer. */
const HAIR = 0.01;

/**
 * What lies on each length at hand pressed together towards its beginning. The packing looks at where the last piece of
 * all ends: on the lengths before that pieces lie anywhere, and what is left of them would be in tatters. Each length has its
 * share of the effort; the bolt is left as it is. A length on which nothing is gained stays as it was.
 */
export function pressed(
  lots: readonly Lot[],
  placements: readonly Placement[],
  strip: Strip,
  { job, way }: Pick<Known, 'job' | 'way'>,
  effort: Pick<ClothEffort, 'seed' | 'evaluations' | 'spent'>,
  meetings: Meetings,
): Placement[] {
  const atHand = strip.lengths.filter(({ from }) => from.length !== null);
  return atHand.reduce<Placement[]>(
    (so, laid, i) => {
      const on = so.flatMap((placement, at) => (isOn(placement, lots, laid) ? [at] : []));
      const share = { seed: effort.seed, ...shareOf(effort, i, atHand.length) };
      const found = on.length > 0 && pressedOn(on, so, lots, laid, { job, way }, share, meetings);
      if (!found) return so;
      return so.map((placement, at) => found.get(at) ?? placement);
    },
    [...placements],
  );
}

const outlineOf = (placement: Placement, lots: readonly Lot[]) => {
  const outline = lots[placement.item]?.outline;
  return outline ? placedAt(outline, placement) : null;
};

function isOn(placement: Placement, lots: readonly Lot[], laid: Laid): boolean {
  const outline = outlineOf(placement, lots);
  return outline !== null && liesOn(outline, laid);
}

/** Of the effort's time what is left of it when the length's turn comes; of its evaluations the same for each. */
const shareOf = (
  { evaluations, spent }: Pick<ClothEffort, 'evaluations' | 'spent'>,
  at: number,
  of: number,
): Pick<ClothEffort, 'evaluations' | 'spent'> => ({
  ...(evaluations === undefined ? {} : { evaluations: Math.max(1, Math.floor(evaluations / of)) }),
  ...(spent ? { spent: within(spent, at / of, (at + 1) / of) } : {}),
});

/** New places of the pieces on one length, by their place in the list; null where they are no closer together. */
function pressedOn(
  on: readonly number[],
  placements: readonly Placement[],
  lots: readonly Lot[],
  laid: Laid,
  { job, way }: Pick<Known, 'job' | 'way'>,
  effort: Pick<ClothEffort, 'seed' | 'evaluations' | 'spent'>,
  meetings: Meetings,
): Map<number, Placement> | null {
  const alone = stripOf({ ...job, lengths: [laid.from] }, way);
  const [there] = alone.lengths;
  if (!there) return null;
  const moved = (placement: Placement, sign: 1 | -1): Placement => ({
    ...placement,
    x: placement.x + sign * (there.start - laid.start),
    y: placement.y + sign * (there.low - laid.low),
  });
  const start = on.flatMap((at) => {
    const placement = placements[at];
    return placement ? [moved(placement, 1)] : [];
  });
  const demanded = lots.map((lot, item) => ({
    ...lot,
    item: { ...lot.item, demand: start.filter((each) => each.item === item).length },
  }));
  const result = packLots(demanded, alone, job.fabric, effort, { start, meetings });
  if (!result.ok) return null;
  const endOf = (all: readonly Placement[]): number =>
    Math.max(
      ...all.map((each) => {
        const outline = outlineOf(each, lots);
        return outline ? boundsOf(outline).right : 0;
      }),
    );
  if (endOf(result.packing.placements) > endOf(start) - HAIR) return null;
  const waiting = result.packing.placements.map((each) => moved(each, -1));
  return new Map(
    on.flatMap((at): [number, Placement][] => {
      // Copies of one item are alike: whose is whose goes by their order.
      const next = waiting.findIndex(({ item }) => item === placements[at]?.item);
      const [found] = next < 0 ? [] : waiting.splice(next, 1);
      return found ? [[at, found]] : [];
    }),
  );
}
