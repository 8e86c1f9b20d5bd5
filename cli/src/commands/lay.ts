import { classHasProblems, layDocument, layKinds, type LayKind } from '@ribbonwright/engine';
import { CannotRun, FINE, PROBLEMS } from '../exit.ts';
import { layFiles } from '../laying/files.ts';
import { progressOn } from '../laying/progress.ts';
import { search } from '../laying/search.ts';
import { loadEither, readDocument, type LoadOptions } from '../load.ts';
import type { Session } from '../session.ts';
import { layText } from '../text/lays.ts';
import { styleFor } from '../text/style.ts';

export interface LayOptions extends LoadOptions {
  readonly seconds: string;
  readonly seed: string;
  readonly way?: LayKind;
  readonly json?: boolean;
  readonly out?: string;
}

const MOST_SECONDS = 86_400;
const MOST_SEED = 2 ** 31 - 1;

/** Looks for the closest lay of a skirt or of a whole class, and shows every way side by side. */
export async function lay(file: string, options: LayOptions, session: Session): Promise<number> {
  const { terminal } = session;
  const seconds = numberIn(options.seconds, '--seconds', MOST_SECONDS, session);
  const seed = numberIn(options.seed, '--seed', MOST_SEED, session);
  if (!Number.isInteger(seed)) throw badNumber(options.seed, '--seed', MOST_SEED, session);
  const text = await readDocument(file, options, session);
  const { request, speaker } = await loadEither(text, options, session);
  const progress = progressOn(terminal, speaker, seconds);
  const isClass = request.skirts.length > 1;
  const asked = {
    text,
    seconds,
    seed,
    ways: options.way ? [options.way] : null,
    shelf:
      isClass &&
      request.cloths.some(({ options: { lengths, have } }) => lengths.length > 0 || have !== undefined),
  };
  const { plan, shelf, isStopped } = await search(request, asked, terminal, progress.show);
  progress.clear();
  if (isStopped) terminal.note(`${speaker.words.command.stopped}\n`);
  terminal.out(
    options.json === true
      ? `${JSON.stringify(layDocument(plan, speaker, shelf), null, 2)}\n`
      : layText({ plan, speaker, shelf, style: styleFor(terminal), width: terminal.width }),
  );
  if (options.out !== undefined) await layFiles(plan, speaker, options.out, terminal);
  return classHasProblems(plan) ? PROBLEMS : FINE;
}

export const wayNames: readonly LayKind[] = layKinds;

function numberIn(text: string, name: string, most: number, session: Session): number {
  const value = Number(text.replace(',', '.'));
  if (text.trim() === '' || !(value >= 0 && value <= most)) throw badNumber(text, name, most, session);
  return value;
}

const badNumber = (text: string, name: string, most: number, { speaker }: Session): CannotRun =>
  new CannotRun(
    speaker.text(speaker.words.command.badNumber, { name, value: JSON.stringify(text), most: String(most) }),
  );
