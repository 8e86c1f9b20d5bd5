import type { LayKind } from '@ribbonwright/engine';
import { CannotRun } from '../exit.ts';
import type { Session } from '../session.ts';
import type { Asked } from './messages.ts';

/** How a search is asked for on the command line, as it was typed. */
export interface SearchOptions {
  readonly seconds: string;
  readonly seed: string;
  readonly way?: LayKind;
}

/** What is meant where a search is asked for and no more is said. */
export const usualSearch = { seconds: '10', seed: '1' } as const;

const MOST_SECONDS = 86_400;
const MOST_SEED = 2 ** 31 - 1;

/** The options of a search, read; one that is no number ends the command. */
export function readSearch(
  { seconds, seed, way }: SearchOptions,
  session: Session,
): Pick<Asked, 'seconds' | 'seed' | 'way'> {
  const read = {
    seconds: numberIn(seconds, '--seconds', MOST_SECONDS, session),
    seed: numberIn(seed, '--seed', MOST_SEED, session),
    way: way ?? null,
  };
  if (!Number.isInteger(read.seed)) throw badNumber(seed, '--seed', MOST_SEED, session);
  return read;
}

function numberIn(text: string, name: string, most: number, session: Session): number {
  const value = Number(text.replace(',', '.'));
  if (text.trim() === '' || !(value >= 0 && value <= most)) throw badNumber(text, name, most, session);
  return value;
}

const badNumber = (text: string, name: string, most: number, { speaker }: Session): CannotRun =>
  new CannotRun(
    speaker.text(speaker.words.command.badNumber, { name, value: JSON.stringify(text), most: String(most) }),
  );
