import { hasProblems, planDocument, type Speaker } from '@ribbonwright/engine';
import { FINE, PROBLEMS } from '../exit.ts';
import { load, type LoadOptions } from '../load.ts';
import { cardText } from '../text/card.ts';
import { styleFor } from '../text/style.ts';

export interface PlanOptions extends LoadOptions {
  readonly json?: boolean;
}

const NARROWEST = 60;
const USUAL_WIDTH = 100;

/** Lines are as long as the terminal is wide; into a file or a pipe, as a page is. */
export const terminalWidth = (): number =>
  Math.max(NARROWEST, process.stdout.isTTY ? process.stdout.columns : USUAL_WIDTH);

/** Prints the card with its notices, or the whole plan for a machine. */
export async function plan(file: string, options: PlanOptions, terminal: Speaker): Promise<number> {
  const loaded = await load(file, options, terminal);
  const text =
    options.json === true
      ? `${JSON.stringify(planDocument(loaded.plan, loaded.speaker, loaded.fromCloth), null, 2)}\n`
      : cardText({ ...loaded, style: styleFor(process.stdout, process.env), width: terminalWidth() });
  process.stdout.write(text);
  return hasProblems(loaded.plan) ? PROBLEMS : FINE;
}
