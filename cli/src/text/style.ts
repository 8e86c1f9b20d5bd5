import type { Terminal } from '../terminal.ts';

/** Weight and colour on a terminal that shows them; plain text elsewhere and where NO_COLOR is set. */
export interface Style {
  readonly heading: (text: string) => string;
  readonly problem: (text: string) => string;
  readonly caution: (text: string) => string;
}

const plain = (text: string): string => text;
const wrapped =
  (code: string) =>
  (text: string): string =>
    `\u001b[${code}m${text}\u001b[0m`;

export function styleFor({ isScreen, environment }: Terminal): Style {
  const noColour = environment['NO_COLOR'] !== undefined && environment['NO_COLOR'] !== '';
  if (!isScreen || noColour || environment['TERM'] === 'dumb')
    return { heading: plain, problem: plain, caution: plain };
  return { heading: wrapped('1'), problem: wrapped('1;31'), caution: wrapped('33') };
}
