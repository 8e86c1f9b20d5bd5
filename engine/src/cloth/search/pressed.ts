import { boundsOf } from '../../geometry/index.ts';
import type { Meetings, PackingItem, Placement } from '../../packing/index.ts';
import type { ClothEffort } from './effort.ts';
import type { Known } from './known.ts';
import { packLots, type Lot } from './lots.ts';
import { placedAt } from './lying.ts';
import { partOf } from './shares.ts';
import { stripOf, type FoldOn, type Laid, type Strip } from './strip.ts';
import { liesOn } from './tables.ts';

/** What binary fractions make longer is no longer. */
const HAIR = 0.01;

type Share = Pick<ClothEffort, 'seed' | 'evaluations' | 'spent'>;

/** What a lay was packed from. */
interface Packed {
  readonly lots: readonly Lot[];
  readonly strip: Strip;
  readonly known: Pick<Known, 'job' | 'way'>;
  readonly foldOn: FoldOn;
  readonly meetings: Meetings;
}

/**
 * What lies on each length at hand pressed together towards its beginning. The packing looks at where the last piece of
 * all ends: on the lengths before that pieces lie anywhere, and what is left of them would be in tatters. Each length has its
 * share of the effort; the bolt is left as it is.
 */
export function pressed(placements: readonly Placement[], packed: Packed, effort: Share): Placement[] {
  const atHand = packed.strip.lengths.filter(({ from }) => from.length !== null);
  return atHand.reduce<Placement[]>(
    (so, laid, i) => {
      const found = pressedOn(laid, so, packed, partOf(effort, i / atHand.length, (i + 1) / atHand.length));
      return found ? so.map((placement, at) => found.get(at) ?? placement) : so;
    },
    [...placements],
  );
}

/** Where the pattern lies across a length that is moved across by so much. */
const moving = ({ lattice }: PackingItem, by: number): Pick<PackingItem, 'lattice'> =>
  lattice?.y ? { lattice: { ...lattice, y: { ...lattice.y, at: lattice.y.at + by } } } : {};

/** New places of the pieces on one length, by their place in the list; null where they would reach farther. */
function pressedOn(
  laid: Laid,
  placements: readonly Placement[],
  { lots, known: { job, way }, foldOn, meetings }: Packed,
  effort: Share,
): Map<number, Placement> | null {
  const boxOf = (placement: Placement) => boundsOf(placedAt(lots[placement.item]?.outline ?? [], placement));
  const on = [...placements.entries()].filter(([, placement]) => liesOn(boxOf(placement), laid));
  const alone = stripOf({ ...job, lengths: [laid.from] }, way, foldOn);
  const [there] = alone.lengths;
  if (!there || on.length === 0) return null;
  const moved = (placement: Placement, sign: 1 | -1): Placement => ({
    ...placement,
    x: placement.x + sign * (there.start - laid.start),
    y: placement.y + sign * (there.low - laid.low),
  });
  const start = on.map(([, placement]) => moved(placement, 1));
  const demanded = lots.map((lot, item) => ({
    ...lot,
    item: {
      ...lot.item,
      ...moving(lot.item, there.low - laid.low),
      demand: start.filter((each) => each.item === item).length,
    },
  }));
  const result = packLots(demanded, alone, job.fabric, effort, { start, meetings });
  if (!result.ok) return null;
  const endOf = (all: readonly Placement[]): number => Math.max(...all.map((each) => boxOf(each).right));
  if (endOf(result.packing.placements) > endOf(start) + HAIR) return null;
  const waiting = result.packing.placements.map((each) => moved(each, -1));
  return new Map(
    on.flatMap(([at, { item }]): [number, Placement][] => {
      // Copies of one item are alike: whose is whose goes by their order.
      const next = waiting.findIndex((each) => each.item === item);
      const [found] = next < 0 ? [] : waiting.splice(next, 1);
      return found ? [[at, found]] : [];
    }),
  );
}
