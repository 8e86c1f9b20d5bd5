import { mm } from '../../units/index.ts';
import type { HandLaid } from './byHand.ts';
import type { ClothJob, FoundTable } from './found.ts';
import { leftOver } from './left.ts';

/** Skirts laid by hand, each on tables of its own, one after the other. */
export const handTables = (laid: readonly HandLaid[], { lengths, fabric }: ClothJob): FoundTable[] =>
  laid
    .flatMap(({ wanted, lay, length }): FoundTable[] => {
      const from = lengths[length] ?? lengths[0];
      return [{ ...lay.table, where: 'another' as const }, ...lay.more].map((table): FoundTable => {
        const isFirst = table.where === 'another';
        const pieces = table.pieces.map((piece) => ({ ...piece, wearer: wanted.wearer }));
        // On the double fold the waist lies on the selvage; a cut edge has none.
        const top =
          lay.kind === 'double fold' && isFirst ? 0 : table.where === 'beside' ? 0 : fabric.selvage.value;
        const bottom = table.across - (table.bottom === 'fold' ? 0 : fabric.selvage.value);
        const outlines = pieces.map(({ outline }) => outline);
        return {
          ...table,
          from,
          used: isFirst ? lay.tableCloth.value : table.where === 'beside' ? mm(0) : table.along,
          pieces,
          flaws: [],
          leftOver: leftOver({ left: 0, right: table.along, top, bottom }, outlines),
        };
      });
    })
    .map((table, i) => (i === 0 ? { ...table, where: 'first' } : table));
