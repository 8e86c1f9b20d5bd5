import { boundsOf, mirrorX, polyline, translate, type Bounds, type Path } from '../../geometry/index.ts';
import type { Outline } from '../../packing/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { labelsOf } from '../cutPieces.ts';
import type { Fabric } from '../fabric.ts';
import type { LayKind } from '../options.ts';
import type { Table } from '../lays/table.ts';
import type { FoundPiece, FoundTable } from '../job/found.ts';
import { RAG } from '../job/free.ts';
import { restOf, type LeftOver } from '../job/rest.ts';
import { stripedFold } from './linesOn.ts';
import type { Placed } from './lots.ts';
import { foldsOf, type Laid, type Strip } from './strip.ts';

/** Edges and layers of the table as each way folds it. */
const folded: Readonly<Record<LayKind, Omit<Table, 'along' | 'across' | 'pieces'>>> = {
  open: { layers: 1, top: 'selvage', bottom: 'selvage', left: 'raw end', right: 'raw end' },
  'lengthwise fold': { layers: 2, top: 'selvages', bottom: 'fold', left: 'raw end', right: 'raw end' },
  'double fold': {
    layers: 4,
    top: 'selvages',
    bottom: 'selvages',
    left: 'two folds',
    right: 'fold and two ends',
  },
  'crosswise fold': { layers: 2, top: 'selvages', bottom: 'selvages', left: 'two ends', right: 'fold' },
};

/** What of the strip's pieces lies on each length of cloth, as tables. A length that nothing lies on has none. */
export function tablesOf(
  placed: readonly Placed[],
  strip: Strip,
  way: LayKind,
  fabric: Fabric,
): FoundTable[] {
  const none = new Set(beyond(placed, strip));
  const tables = strip.lengths.flatMap((laid): FoundTable[] => {
    const on = placed.filter((each) => !none.has(each) && liesOn(boundsOf(each.outline), laid));
    return on.length === 0 ? [] : [tableOf(laid, on, way, fabric)];
  });
  return tables.map((table, i) => (i === 0 ? { ...table, where: 'first' } : table));
}

/** What found no cloth at all. */
export const beyond = (placed: readonly Placed[], { end }: Strip): Placed[] =>
  placed.filter(({ outline }) => boundsOf(outline).right > end + 0.01);

/** Whether a piece on the strip lies on one of its lengths. */
export const liesOn = ({ left, right }: Bounds, { start, end }: Laid): boolean => {
  const middle = (left + right) / 2;
  return middle >= start && middle <= end;
};

function tableOf(laid: Laid, on: readonly Placed[], way: LayKind, fabric: Fabric): FoundTable {
  const { start, end, low, high, from } = laid;
  const edges = folded[way];
  const used = Math.max(...on.map(({ outline }) => boundsOf(outline).right)) - start;
  const along = end === Infinity ? used : end - start;
  const room = high - low;
  // The strip begins at the fold across; a table is drawn with that fold at its right.
  const onTable = (outline: Path): Path => {
    const moved = translate(outline, -start, fabric.selvage.value - low);
    return way === 'crosswise fold' ? mirrorX(moved, along / 2) : moved;
  };
  const pieces = on.map(({ lying, outline, turned }): FoundPiece => ({
    outline: onTable(outline),
    ...labelsOf(lying.cutting.copies),
    onFold: lying.onFold !== 'no',
    turned,
    wearer: lying.wearer,
  }));
  const flaws = laid.flaws.map((flaw) => onTable(closed(flaw)));
  const across = mm(room + (way === 'lengthwise fold' ? 1 : 2) * fabric.selvage.value);
  const beyond = stripedFold({ ...edges, across, from }, fabric)?.beyond ?? mm(0);
  const table = {
    ...edges,
    // Two selvages lie at that edge only where they lie on one another.
    top: beyond > 0 ? ('selvage' as const) : edges.top,
    along: mm(along),
    across,
    pieces,
  };
  return {
    ...table,
    where: 'another',
    from,
    used: mm(used * foldsOf(way).along),
    flaws,
    ...withBeneath(restOf(table, fabric, flaws), table.along, fabric.selvage.value, beyond),
    uncut: null,
  };
}

/**
 * What is left where the lower layer reaches out beyond the upper one's selvage, by `beyond`. What is left along all of
 * that selvage is one piece with it on the lower layer.
 */
function withBeneath(
  leftOver: LeftOver | null,
  along: Mm,
  selvage: Mm,
  beyond: Mm,
): Pick<FoundTable, 'leftOver' | 'beneath'> {
  if (Math.min(along, beyond) < RAG) return { leftOver, beneath: null };
  const isAlongAll = leftOver?.count === 2 && leftOver.y <= selvage + HAIR && leftOver.along >= along - HAIR;
  const across = mm(beyond + (isAlongAll ? leftOver.opened.across : 0));
  return {
    leftOver: isAlongAll ? { ...leftOver, count: 1 } : leftOver,
    beneath: { opened: { along, across }, count: 1 },
  };
}

const HAIR = 0.01;

const closed = (outline: Outline): Path => polyline(outline, { closed: true });
