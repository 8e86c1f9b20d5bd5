import { hasProblems, isClassText, planDocument } from '@ribbonwright/engine';
import { CannotRun, FINE, PROBLEMS } from '../exit.ts';
import { fromClothOf, loadSkirt, readDocument, type LoadOptions } from '../load.ts';
import type { Session } from '../session.ts';
import { cardText } from '../text/card.ts';
import { styleFor } from '../text/style.ts';

export interface PlanOptions extends LoadOptions {
  readonly json?: boolean;
}

/** Prints the card with its notices, or the whole plan for a machine. */
export async function plan(file: string, options: PlanOptions, session: Session): Promise<number> {
  const { terminal } = session;
  const text = await readDocument(file, options, session);
  const { speaker } = session;
  if (isClassText(text)) throw new CannotRun(speaker.text(speaker.words.command.isClass, { file }));
  const loaded = await loadSkirt(text, options, session);
  const fromCloth = fromClothOf(loaded, options, session);
  const printed =
    options.json === true
      ? `${JSON.stringify(planDocument(loaded.plan, loaded.speaker, fromCloth), null, 2)}\n`
      : cardText({ ...loaded, fromCloth, style: styleFor(terminal), width: terminal.width });
  terminal.out(printed);
  return hasProblems(loaded.plan) ? PROBLEMS : FINE;
}
