import { translate } from '../../geometry/index.ts';
import { mm } from '../../units/index.ts';
import type { Fabric } from '../fabric.ts';
import type { TableEdge } from '../lays/table.ts';
import type { ClothJob, FoundTable } from '../job/found.ts';
import { restOf, stripTaken } from '../job/rest.ts';
import { lengthOf } from '../job/lengths.ts';
import type { HandLaid } from './inTurn.ts';

/** A table, and the one of a lay that it is, where it is no more than that. */
interface Kept {
  readonly table: FoundTable;
  readonly of: object | null;
}

/** Skirts laid by hand as tables, one after the other; those of one length that lie the same way are one. */
export function handTables(
  laid: readonly HandLaid<{ readonly wearer: string }>[],
  { lengths, fabric }: Pick<ClothJob, 'lengths' | 'fabric'>,
): FoundTable[] {
  const tables = lengths.flatMap((from, at) => {
    const on = laid.filter(({ length }) => length === at);
    const joined = on.flatMap((each) => tablesOf(each, from)).reduce<Kept[]>(joinedTo, []);
    const whole = wholeLength(joined, fabric);
    return whole.map((kept, i) => ({ ...kept.table, leftOver: leftOf(kept, whole[i + 1], fabric) }));
  });
  return tables.map((table, i) => (i === 0 ? { ...table, where: 'first' } : table));
}

const tablesOf = (
  { of: { wearer }, lay }: HandLaid<{ readonly wearer: string }>,
  from: FoundTable['from'],
): Kept[] =>
  [{ of: lay.table, where: 'another' as const }, ...lay.more.map((of) => ({ of, where: of.where }))].map(
    ({ of, where }): Kept => ({
      of,
      table: {
        ...of,
        where,
        from,
        used: where === 'another' ? lay.tableCloth.value : where === 'beside' ? mm(0) : of.along,
        pieces: of.pieces.map((piece) => ({ ...piece, wearer })),
        flaws: [],
        leftOver: null,
        uncut: null,
        beneath: null,
      },
    }),
  );

/** Whether one goes on where the other ends: no fold lies across the cloth between them. */
const isAlike = (one: FoundTable, other: FoundTable): boolean =>
  [one, other].every(({ where, left, right }) => where !== 'beside' && !isFold(left) && !isFold(right)) &&
  one.layers === other.layers &&
  one.top === other.top &&
  one.bottom === other.bottom &&
  Math.abs(one.across - other.across) < HAIR;

const HAIR = 1e-6;
const isFold = (edge: TableEdge): boolean => edge === 'fold' || edge === 'two folds';

function joinedTo(before: readonly Kept[], next: Kept): Kept[] {
  const last = before.at(-1)?.table;
  const { table } = next;
  if (!last || !isAlike(last, table)) return [...before, next];
  const pieces = table.pieces.map((piece) => ({
    ...piece,
    outline: translate(piece.outline, last.along, mm(0)),
  }));
  const both: FoundTable = {
    ...last,
    along: mm(last.along + table.along),
    used: mm(last.used + table.used),
    right: table.right,
    pieces: [...last.pieces, ...pieces],
  };
  return [...before.slice(0, -1), { of: null, table: both }];
}

/** A length that lies in a single layer is shown to its end. */
function wholeLength(kept: readonly Kept[], fabric: Fabric): readonly Kept[] {
  const table = kept[0]?.table;
  if (!table || kept.length > 1 || table.layers > 1) return kept;
  const along = lengthOf(table.from, fabric);
  return along === Infinity || along <= table.along
    ? kept
    : [{ of: null, table: { ...table, along: mm(along) } }];
}

/** What one skirt's lay leaves is looked for once, on however many lengths it is tried. */
const known = new WeakMap<object, FoundTable['leftOver']>();

function leftOf({ table, of }: Kept, next: Kept | undefined, fabric: Fabric): FoundTable['leftOver'] {
  const before = of ? known.get(of) : undefined;
  if (before !== undefined) return before;
  const beside = next?.table.where === 'beside' && table.where !== 'beside' ? next.table : null;
  const left = restOf(table, fabric, beside ? [stripTaken(table, beside.across)] : []);
  if (of) known.set(of, left);
  return left;
}
