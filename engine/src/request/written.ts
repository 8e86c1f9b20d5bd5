import { writtenColour } from '../fields/index.ts';
import { bandsOf, type BandRow, type RibbonOptions, type Row } from '../ribbon/index.ts';
import { mm, writeLength, type MeasureSystem } from '../units/index.ts';

/** One row as a document writes it, nothing left to a default. */
export interface WrittenRow {
  readonly colour: ReturnType<typeof writtenColour>;
  readonly width: string;
}

/** A band as a document writes it: one row, or rows that touch. */
export type WrittenBand = WrittenRow | { readonly touching: readonly WrittenRow[] };

/** Every band from the hem up, written out: what stands in `ribbons.rows` once a maker changes one of them. */
export function writtenRows(chosen: RibbonOptions, measure: MeasureSystem): WrittenBand[] {
  const written = ({ colour, width }: BandRow): WrittenRow => ({
    colour: writtenColour(colour),
    width: writeLength(width, measure),
  });
  return bandsOf(chosen).flatMap((band): WrittenBand[] => {
    const [first, ...others] = band.map(written);
    if (!first) return [];
    return [others.length === 0 ? first : { touching: [first, ...others] }];
  });
}

/**
 * The gaps between the bands as they came out, from the hem up, written out: what stands in `ribbons.gaps` once they are
 * kept by hand. Bands that found no room have none.
 */
export function writtenGaps(chosen: RibbonOptions, rows: readonly Row[], measure: MeasureSystem): string[] {
  const between = Math.max(0, bandsOf(chosen).length - 1);
  return Array.from({ length: between }, (_, i) => {
    const first = rows.find(({ band }) => band === i + 2);
    return writeLength(first?.gapBelow?.value ?? mm(0), measure);
  });
}
