import type { Figure } from '../../figure/index.ts';
import type { Point } from '../../geometry/index.ts';
import type { Panel } from '../../skirt/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { FoundCloth, PanelSeam, Wanted } from '../job/found.ts';
import { liesFolded, type OnTable } from './lies.ts';
import { linesOn } from './linesOn.ts';
import { apart, MEETS, type PatternOn } from './match.ts';
import { joinOf, pairsAlong } from './seamJoin.ts';

/** How well a pattern meets at one seam, at the stitching line. */
export interface SeamMeet {
  readonly wearer: string;
  readonly seam: PanelSeam;
  /** Whether the edges slope alike, so that the whole seam is looked at; else only the notch that both have. */
  readonly whole: boolean;
  /** Farthest that a line of the pattern on one side is from its partner on the other. */
  readonly off: Figure<Mm>;
  /** Whether that is too little to be seen. */
  readonly meets: boolean;
}

/**
 * Whether stripes and bands meet at each seam, read off the pieces as they are drawn on the table: nothing of how they
 * were placed is asked. At places along the stitching, the same distance from the hem on both panels, the pattern has
 * run on or is mirrored. Of what is cut through two layers both are read: the pattern of the one lies on that of the other.
 * Seams whose panels are not found are left out.
 */
export function seamMeets(
  { tables, fabric }: Pick<FoundCloth, 'tables' | 'fabric'>,
  wanted: readonly Wanted[],
): SeamMeet[] {
  const { pattern } = fabric;
  if (!pattern) return [];
  // A lay may come from another thread: its panels are copies, told by name and number.
  const isSame = (one: Panel, other: Panel): boolean =>
    one.name === other.name && one.number === other.number;
  const placesOf = (wearer: string, panel: Panel): OnTable | null => {
    for (const table of tables)
      for (const piece of table.pieces) {
        const at = piece.panels.findIndex((each) => isSame(each, panel));
        if (piece.wearer !== wearer || at < 0) continue;
        const lies = liesFolded(piece, panel, at);
        return lies && fromLines(lies.at, linesOn(table, pattern));
      }
    return null;
  };
  return wanted.flatMap(({ wearer, seams }) =>
    seams.flatMap((seam): SeamMeet[] => {
      const [before, after] = [placesOf(wearer, seam.before), placesOf(wearer, seam.after)];
      if (!before || !after) return [];
      const join = joinOf(seam);
      const pairs = (join.whole ? pairsAlong(seam) : [join]).map((pair) => ({
        before: before(pair.before),
        after: after(pair.after),
      }));
      const off = Math.max(
        farthest(pairs, ({ x }) => x, pattern.along),
        farthest(pairs, ({ y }) => y, pattern.across),
      );
      const within = figure.length(mm(off), 'cloth.matchedWithin');
      return [{ wearer, seam, whole: join.whole, off: within, meets: off <= MEETS }];
    }),
  );
}

/** Places as they are seen from a line or crossing of the pattern. */
const fromLines =
  (places: OnTable, { along, across }: PatternOn): OnTable =>
  (at) => {
    const { x, y } = places(at);
    return { x: x - along, y: y - across };
  };

/** Along a whole seam the pattern either runs on or is mirrored: the better of the two. */
function farthest(
  pairs: readonly { readonly before: Point; readonly after: Point }[],
  from: (at: Point) => number,
  repeat: number | null,
): number {
  const most = (way: 1 | -1): number =>
    Math.max(...pairs.map(({ before, after }) => apart(from(before) - way * from(after), repeat)));
  return Math.min(most(1), most(-1));
}
