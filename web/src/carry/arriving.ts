const MARK = '#/arriving/';
const inText = new RegExp(`${MARK}([A-Za-z0-9_-]+)`);

/** The address that opens this table, wherever it is hosted, with a packed skirt arriving. */
export const addressWith = (
  packed: string,
  { origin, pathname }: Pick<Location, 'origin' | 'pathname'>,
): string => `${origin}${pathname}${MARK}${packed}`;

/** The packed skirt within a text that holds such an address, whatever its host; null where there is none. */
export const addressIn = (text: string): string | null => inText.exec(text)?.[1] ?? null;
