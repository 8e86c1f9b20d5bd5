import { existsSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';

const dataFolder = resolve(import.meta.dirname, '../../../../shared/data');

/** The text of an open data file kept beside the repository; null where it is not there. */
export function sharedData(path: string): string | null {
  const file = resolve(dataFolder, path);
  return existsSync(file) ? readFileSync(file, 'utf8') : null;
}

export type CsvRow = Readonly<Record<string, string>>;

/** Reads CSV with a heading line: quoted cells may hold commas and doubled quotes, not line ends. */
export function readCsv(text: string): readonly CsvRow[] {
  const [heading, ...lines] = text.split(/\r?\n/).filter((line) => line !== '');
  const names = cells(heading ?? '');
  return lines.map((line) => {
    const values = cells(line);
    return Object.fromEntries(names.map((name, at) => [name, values[at] ?? '']));
  });
}

const cells = (line: string): readonly string[] =>
  [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(
    ([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain ?? '',
  );

/** A cell as a number; null where it is empty. */
export function numberIn(row: CsvRow, name: string): number | null {
  const cell = row[name];
  if (cell === undefined) throw new Error(`No column ${name}`);
  return cell === '' ? null : Number(cell);
}
