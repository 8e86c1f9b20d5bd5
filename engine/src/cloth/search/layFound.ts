import { mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { Lay } from '../lays/lay.ts';
import type { MoreTable } from '../lays/loose.ts';
import type { Table } from '../lays/table.ts';
import type { FoundCloth, FoundTable } from '../job/found.ts';
import { liesOnItsSide } from './lies.ts';

/** A found lay in the form of those made by hand, so that whatever shows or counts a lay shows and counts it too. */
export function layFound(found: FoundCloth): Lay {
  const { kind, fits, clothAfter, clothBefore, toBuy, notices, tables } = found;
  const [first, ...others] = tables;
  const pieces = tables.flatMap((table) => table.pieces);
  const largest = tables
    .flatMap(({ leftOver, beneath, uncut }) =>
      [leftOver, beneath, uncut].flatMap((rest) => rest?.opened ?? []),
    )
    .reduce((most, each) => (each.along * each.across > most.along * most.across ? each : most), {
      along: mm(0),
      across: mm(0),
    });
  return {
    kind,
    fits,
    tableCloth: first ? figure.length(first.used, 'cloth.foundUsed') : clothAfter,
    clothAfter,
    clothBefore,
    toBuy,
    from: null,
    left: {
      across: figure.length(largest.across, largest.across > 0 ? 'cloth.leftPiece' : 'cloth.nothingLeft'),
      along: figure.length(largest.along, 'cloth.leftLength'),
    },
    // On the double fold panels lie across the bolt, half of each on a fold.
    printOnItsSide: kind === 'double fold' || pieces.some(liesOnItsSide),
    headToTail: pieces.some(({ turned, panels }) => turned && panels.length > 0),
    table: first ? plain(first) : EMPTY,
    more: others.map((table): MoreTable => ({
      ...plain(table),
      where: table.where === 'first' ? 'another' : table.where,
    })),
    notices,
  };
}

const plain = ({ along, across, layers, top, bottom, left, right, pieces, cut }: FoundTable): Table => ({
  along,
  across,
  layers,
  top,
  bottom,
  left,
  right,
  pieces,
  ...(cut ? { cut } : {}),
});

/** Nothing is cut: no cloth on the table. */
const EMPTY: Table = {
  along: mm(1),
  across: mm(1),
  layers: 1,
  top: 'selvage',
  bottom: 'selvage',
  left: 'raw end',
  right: 'raw end',
  pieces: [],
};
