/** Columns of a text table: what is in them is padded to the widest, the last is wrapped to the terminal. */
export interface TextTable {
  readonly head?: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** Columns set flush right. */
  readonly right?: readonly number[];
}

const GAP = '  ';
const INDENT = '  ';
const LEAST_LAST = 24;

const widthOf = (text: string): number => Array.from(text).length;

export function textTable({ head, rows, right = [] }: TextTable, width: number): string[] {
  const all = head ? [head, ...rows] : rows;
  const count = Math.max(0, ...all.map((row) => row.length));
  const widths = Array.from({ length: count }, (_, i) =>
    Math.max(0, ...all.map((row) => widthOf(row[i] ?? ''))),
  );
  const before = widths.slice(0, -1).reduce((sum, each) => sum + each + GAP.length, INDENT.length);
  const room = Math.max(LEAST_LAST, width - before);
  return all.flatMap((row) => {
    const cells = widths.slice(0, -1).map((each, i) => pad(row[i] ?? '', each, right.includes(i)));
    const [first = '', ...more] = wrapText(row[count - 1] ?? '', room);
    const last = right.includes(count - 1) ? pad(first, widths[count - 1] ?? 0, true) : first;
    return [
      `${INDENT}${[...cells, last].join(GAP)}`.trimEnd(),
      ...more.map((line) => `${' '.repeat(before)}${line}`),
    ];
  });
}

const pad = (text: string, width: number, flushRight: boolean): string => {
  const space = ' '.repeat(Math.max(0, width - widthOf(text)));
  return flushRight ? `${space}${text}` : `${text}${space}`;
};

/** Wraps at ordinary spaces; a no-break space keeps a number with its unit. */
export function wrapText(text: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last === undefined) lines.push(word);
    else if (widthOf(last) + 1 + widthOf(word) <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
