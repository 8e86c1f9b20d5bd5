import { hasProblems, planDocument } from '@ribbonwright/engine';
import { FINE, PROBLEMS } from '../exit.ts';
import { load, type LoadOptions } from '../load.ts';
import type { Session } from '../session.ts';
import { cardText } from '../text/card.ts';
import { styleFor } from '../text/style.ts';

export interface PlanOptions extends LoadOptions {
  readonly json?: boolean;
}

/** Prints the card with its notices, or the whole plan for a machine. */
export async function plan(file: string, options: PlanOptions, session: Session): Promise<number> {
  const { terminal } = session;
  const loaded = await load(file, options, session);
  const text =
    options.json === true
      ? `${JSON.stringify(planDocument(loaded.plan, loaded.speaker, loaded.fromCloth), null, 2)}\n`
      : cardText({ ...loaded, style: styleFor(terminal), width: terminal.width });
  terminal.out(text);
  return hasProblems(loaded.plan) ? PROBLEMS : FINE;
}
