import { boundsOf, translate, type Path } from '../../geometry/index.ts';
import { mm } from '../../units/index.ts';
import type { Cutting } from '../blocks.ts';
import type { ClothEffort } from './effort.ts';
import type { ClothJob, FoundTable } from '../job/found.ts';
import { breadthOf, lotsOf, packLots, placedOf } from './lots.ts';
import type { Lying } from './lying.ts';
import { FREE } from './match.ts';
import { onEachLayer, openedAlong } from './opened.ts';
import { outwards } from './outwards.ts';
import { restOf } from '../job/rest.ts';
import { stripOf, type Laid } from './strip.ts';
import { beyond, tablesOf } from './tables.ts';

interface LooseLaid {
  /** Those of the folded cloth, then the same cloth opened out. */
  readonly tables: readonly FoundTable[];
  readonly lacking: readonly Cutting[];
}

/**
 * Pieces that make no pair and lie on no fold, sought on the cloth opened out once the folded ones are cut: in the holes
 * between them and beyond. Null where no place is found.
 */
export function looseOpened(
  loose: readonly Lying[],
  folded: readonly FoundTable[],
  job: ClothJob,
  effort: Pick<ClothEffort, 'seed' | 'evaluations' | 'spent'>,
): LooseLaid | null {
  const { fabric } = job;
  const strip = stripOf(job, 'open');
  const cut = new Map(strip.lengths.map((laid) => [laid, cutFrom(laid, folded)]));
  const keepOut = [...cut.values()].flatMap(({ outlines, laid }) =>
    outlines.map((outline) => outwards(translate(outline, laid.start, laid.low - fabric.selvage.value))),
  );
  const lots = lotsOf(loose, fabric, FREE);
  if (lots.some((lot) => breadthOf(lot) > strip.width)) return null;
  const last = strip.lengths.at(-1);
  const enough = last ? last.start + (cut.get(last)?.used ?? 0) : 0;
  let isEnough = false;
  const result = packLots(lots, { ...strip, keepOut: [...strip.keepOut, ...keepOut] }, fabric, {
    ...effort,
    ...(effort.spent || effort.evaluations !== undefined
      ? { spent: () => (isEnough ? 1 : (effort.spent?.() ?? 0)) }
      : {}),
    better: ({ length }) => {
      // What lies within cloth that is taken already costs nothing.
      isEnough = length <= enough;
    },
  });
  if (!result.ok) return null;
  const placed = placedOf(lots, result.packing.placements);
  const opened = strip.lengths.flatMap((laid) => {
    const { outlines, used } = cut.get(laid) ?? { outlines: [], used: 0 };
    return tablesOf(placed, { ...strip, lengths: [laid] }, 'open', fabric).map((table): FoundTable => {
      const along = mm(Math.max(table.along, used));
      // Cloth that nothing was folded of lay open from the beginning.
      const where = outlines.length > 0 ? ('opened' as const) : ('another' as const);
      const whole = { ...table, along, where, ...(outlines.length > 0 ? { cut: outlines } : {}) };
      return {
        ...whole,
        used: mm(Math.max(0, table.used - used)),
        leftOver: restOf(whole, fabric, [...table.flaws, ...outlines]),
      };
    });
  });
  const isOpened = (table: FoundTable): boolean => opened.some(({ from }) => from === table.from);
  return {
    // What is left of a cloth is told where it lies opened out.
    tables: [
      ...folded.map((table) => (isOpened(table) ? { ...table, leftOver: null, beneath: null } : table)),
      ...opened,
    ].map((table, i) => (i === 0 ? { ...table, where: 'first' } : table)),
    lacking: beyond(placed, strip).map(({ lying }) => lying.cutting),
  };
}

/** What is cut from one length already, as it lies opened out, and how far along that takes it. */
function cutFrom(
  laid: Laid,
  folded: readonly FoundTable[],
): { readonly laid: Laid; readonly outlines: readonly Path[]; readonly used: number } {
  const outlines: Path[] = [];
  let from = 0;
  let used = 0;
  for (const table of folded.filter((each) => each.from === laid.from)) {
    const on = table.pieces
      .flatMap(({ outline }) => onEachLayer(outline, table))
      .map((outline) => translate(outline, from, 0));
    outlines.push(...on);
    used = Math.max(used, from + table.used, ...on.map((outline) => boundsOf(outline).right));
    from += openedAlong(table);
  }
  return { laid, outlines, used };
}
