import {
  beforeWash,
  toBuy,
  type ClothLength,
  type Fabric,
  type FoundCloth,
  type FoundTable,
  type Lay,
  type LayKind,
  type Table,
} from '../cloth/index.ts';
import type { Figure, Notice } from '../figure/index.ts';
import { translate } from '../geometry/index.ts';
import { mm, type Mm } from '../units/index.ts';
import { caution, figure, problem } from './codes.ts';
import type { ClothShare } from './shares.ts';

/** One skirt's lay, and the length that it lies on. */
interface Laid {
  readonly label: string;
  readonly lay: Lay;
  readonly from: ClothLength;
  /** Where on that length it begins, after the wash. */
  readonly start: Mm;
}

/**
 * The skirts of one cloth laid one after the other in one way, as they are laid by hand: the oldest length first,
 * each skirt on the first length that is long enough. A skirt that can't be laid this way is laid in the way that takes
 * least of it. Never a search: it is there at once.
 */
export function layByHand(
  shares: readonly ClothShare[],
  lengths: readonly [ClothLength, ...ClothLength[]],
  fabric: Fabric,
  kind: LayKind,
): FoundCloth {
  const room = lengths.map((length) => ({ length, used: mm(0) }));
  const notices: Notice[] = [];
  const others: string[] = [];
  const laid = shares.flatMap(({ lays, skirt: { label } }): Laid[] => {
    const lay = layOf(lays, kind, fabric);
    const asked = lays.find((each) => each.kind === kind);
    if (!lay || (shares.length === 1 && lay !== asked)) {
      // By itself a skirt that can't be laid so is not laid at all: why is known of its own lay.
      const why = label === '' ? asked?.notices.filter(({ level }) => level === 'problem') : undefined;
      notices.push(...(why ?? [problem('class.noWay', { wearer: label })]));
      return [];
    }
    if (lay.kind !== kind) others.push(label);
    const place =
      room.find(
        ({ length, used }) =>
          isFree(length, fabric) && used + lay.clothBefore.value <= (length.length ?? Infinity),
      ) ?? room.at(-1);
    if (!place) return [];
    if (
      place.used + lay.clothBefore.value > (place.length.length ?? Infinity) ||
      !isFree(place.length, fabric)
    )
      notices.push(problem('class.notEnough', { wearer: label || 'nobody', needed: lay.clothBefore }));
    const start = mm(place.used * (1 - fabric.lengthwise.value));
    place.used = mm(place.used + lay.clothBefore.value);
    return [{ label, lay, from: place.length, start }];
  });
  if (others.length > 0) notices.push(caution('class.otherWay', { wearers: others.join(', '), lay: kind }));
  if (fabric.pattern?.match === true || fabric.between.value > 0) notices.push(caution('class.byEye'));
  const clothAfter = inARow(afterOf(laid), laid.length);
  const clothBefore = beforeWash(clothAfter, fabric.lengthwise);
  const byHand = leastByHand(shares, fabric);
  const ofBolt = laid.filter(({ from }) => from.length === null);
  const boltAfter = afterOf(ofBolt);
  return {
    fabric,
    kind,
    tables: lengths.flatMap((length) =>
      tablesOf(
        laid.filter(({ from }) => from === length),
        fabric,
      ),
    ),
    clothAfter,
    clothBefore,
    toBuy:
      boltAfter > 0
        ? toBuy(beforeWash(inARow(boltAfter, ofBolt.length), fabric.lengthwise), fabric)
        : figure.length(mm(0), 'class.enough'),
    byHand,
    saved:
      byHand &&
      figure.length(mm(Math.max(0, byHand.value - clothBefore.value)), 'class.saved', {
        hand: byHand,
        found: clothBefore,
      }),
    lowerBound: figure.length(mm(0), 'class.nothing'),
    proven: false,
    evaluations: 0,
    fits: notices.every(({ level }) => level !== 'problem'),
    notices,
  };
}

const inARow = (length: Mm, skirts: number): Figure<Mm> =>
  figure.length(length, 'class.inARow', { skirts: figure.count(skirts, 'class.skirts') });

const afterOf = (laid: readonly Laid[]): Mm =>
  mm(laid.reduce((sum, { lay }) => sum + lay.clothAfter.value, 0));

/** Each skirt in the way that takes least of it by hand; null where one can't be laid at all. */
function leastByHand(shares: readonly ClothShare[], fabric: Fabric): Figure<Mm> | null {
  const least = shares.map(({ lays }) => leastOf(lays, fabric)?.clothAfter.value ?? NaN);
  const sum = least.reduce((all, each) => all + each, 0);
  return Number.isNaN(sum) ? null : beforeWash(inARow(mm(sum), shares.length), fabric.lengthwise);
}

/** Lays of one skirt are made for the whole width of the bolt, and go round no flaw. */
const isFree = ({ width, flaws, length }: ClothLength, fabric: Fabric): boolean =>
  length === null ||
  (flaws.length === 0 &&
    width * (1 - fabric.crosswise.value) >= fabric.usable.value + 2 * fabric.selvage.value - 1e-6);

/** The lay of a way where the skirt can be laid so, else the one that takes least. */
const layOf = (lays: readonly Lay[], kind: LayKind, fabric: Fabric): Lay | undefined =>
  lays.find((lay) => lay.fits && lay.kind === kind) ?? leastOf(lays, fabric);

/** A one-way print is kept upright where that can be had. */
function leastOf(lays: readonly Lay[], { oneWay }: Fabric): Lay | undefined {
  const fitting = lays.filter(({ fits }) => fits);
  const upright = oneWay ? fitting.filter(({ printOnItsSide }) => !printOnItsSide) : fitting;
  return (upright.length > 0 ? upright : fitting).reduce<Lay | undefined>(
    (best, lay) => (best && best.clothAfter.value <= lay.clothAfter.value ? best : lay),
    undefined,
  );
}

/** What lies on one length, one table after the other; those that lie the same way are one. */
function tablesOf(laid: readonly Laid[], fabric: Fabric): FoundTable[] {
  const tables = laid.flatMap(({ label, lay, from, start }) =>
    [lay.table, ...lay.more].map((table, i): FoundTable => ({
      ...table,
      where: i === 0 ? 'first' : 'beyond',
      from,
      used: mm(start + lay.clothAfter.value),
      pieces: table.pieces.map((piece) => ({ ...piece, wearer: label })),
      flaws: [],
      leftOver: null,
    })),
  );
  const joined = tables.reduce<FoundTable[]>((before, table) => {
    const last = before.at(-1);
    return last && liesOn(last, table) ? [...before.slice(0, -1), inOne(last, table)] : [...before, table];
  }, []);
  const [only] = joined;
  return only && joined.length === 1 ? [withRest(only, fabric)] : joined;
}

const isFolded = ({ left, right }: Table): boolean =>
  [left, right].some((edge) => edge === 'fold' || edge === 'two folds');

const liesOn = (one: Table, other: Table): boolean =>
  !isFolded(one) &&
  !isFolded(other) &&
  one.layers === other.layers &&
  one.top === other.top &&
  one.bottom === other.bottom &&
  Math.abs(one.across - other.across) < 1e-6;

const inOne = (one: FoundTable, other: FoundTable): FoundTable => ({
  ...one,
  along: mm(one.along + other.along),
  used: other.used,
  right: other.right,
  pieces: [
    ...one.pieces,
    ...other.pieces.map((piece) => ({ ...piece, outline: translate(piece.outline, one.along, mm(0)) })),
  ],
});

/** Shorter than this, what is left of a length is a rag. */
const RAG = 100;

/** A length of which the end stays uncut is shown whole. */
function withRest(table: FoundTable, fabric: Fabric): FoundTable {
  const { length } = table.from;
  const rest = length === null ? 0 : length * (1 - fabric.lengthwise.value) - table.along;
  if (rest < RAG || isFolded(table)) return table;
  return {
    ...table,
    along: mm(table.along + rest),
    leftOver: { x: table.along, y: mm(0), along: mm(rest), across: table.across },
  };
}
