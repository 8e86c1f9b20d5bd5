import { parseLength, standingAt, type RequestDocument } from '@ribbonwright/engine';
import type { ShelfRecord } from '../../store/index.ts';

/** The lengths of cloth at hand as they are written in a document. */
export function writtenLengths(document: RequestDocument | null): readonly unknown[] {
  const written = standingAt(document, ['cloth', 'lengths']);
  return Array.isArray(written) ? written : [];
}

/** Cloth on the shelf that can be cut from, the oldest first: its length is known. */
export const onShelf = (shelf: readonly ShelfRecord[]): readonly ShelfRecord[] =>
  shelf
    .filter(({ what, length }) => what === 'cloth' && parseLength(length).ok)
    .toSorted((one, other) => one.made - other.made);

/** A cloth of the shelf as a length of this cloth. */
export const asLength = ({ name, length, width, washed }: ShelfRecord): Record<string, unknown> => ({
  ...(name === '' ? {} : { name }),
  length,
  ...(width === '' ? {} : { width }),
  ...(washed === true ? { washed } : {}),
});

/** Whether it is among the lengths already. */
export const isAmong = (record: ShelfRecord, lengths: readonly unknown[]): boolean =>
  lengths.some((each) => {
    const { name, length, width } = asLength(record);
    return (
      standingAt(each, ['name']) === name &&
      standingAt(each, ['length']) === length &&
      standingAt(each, ['width']) === width
    );
  });
