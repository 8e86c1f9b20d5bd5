import {
  changed,
  parseColour,
  parseLength,
  standingAt,
  type RequestDocument,
  type Speaker,
} from '@ribbonwright/engine';
import { shownLength } from '../../places/shelf/kept.ts';
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

/** What a cloth of the shelf is called: one that was not named by its colour. */
export function shelfName({ name, colour, length, width }: ShelfRecord, speaker: Speaker): string {
  const read = parseColour(colour);
  const called = name !== '' || !read ? name : speaker.colour(read);
  return clothSize(called, shownLength(length, speaker), shownLength(width, speaker), speaker);
}

/** What a length of cloth is called, and which way it is how large; what is not known is left out. */
export function clothSize(name: string, length: string, width: string, { text, words }: Speaker): string {
  return [
    name,
    length === '' ? '' : text(words.table.clothLong, { length }),
    width === '' ? '' : text(words.table.clothWide, { width }),
  ]
    .filter((each) => each !== '')
    .join(' · ');
}

/** The skirt as it would be cut from this cloth of the shelf alone: what the reverse questions are asked of. */
export const askedOf = (document: RequestDocument, { length, width, washed }: ShelfRecord): RequestDocument =>
  changed(document, [
    { path: ['cloth', 'have'], value: length },
    ...(width === '' ? [] : [{ path: ['cloth', 'width'], value: width }]),
    ...(washed === true ? [{ path: ['cloth', 'washed'], value: true }] : []),
  ]);
