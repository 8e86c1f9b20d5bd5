import { classHasProblems, isClassText, layDocument } from '@ribbonwright/engine';
import { FINE, PROBLEMS } from '../exit.ts';
import { layFiles } from '../laying/files.ts';
import { readSearch, type SearchOptions } from '../laying/options.ts';
import { searchShown } from '../laying/searchShown.ts';
import { loadEither, readDocument, type LoadOptions } from '../load.ts';
import type { Session } from '../session.ts';
import { layText } from '../text/lays.ts';
import { styleFor } from '../text/style.ts';

export interface LayOptions extends LoadOptions, SearchOptions {
  readonly json?: boolean;
  readonly out?: string;
}

/** Looks for the closest lay of a skirt or of a whole class, and shows every way side by side. */
export async function lay(file: string, options: LayOptions, session: Session): Promise<number> {
  const { terminal } = session;
  const wanted = readSearch(options, session);
  const text = await readDocument(file, options, session);
  const { request, speaker } = await loadEither(text, options, session);
  const asked = {
    ...wanted,
    text,
    shelf:
      isClassText(text) &&
      request.cloths.some(({ options: { lengths, have } }) => lengths.length > 0 || have !== undefined),
  };
  const { plan, shelf } = await searchShown(request, asked, speaker, terminal);
  terminal.out(
    options.json === true
      ? `${JSON.stringify(layDocument(plan, speaker, shelf), null, 2)}\n`
      : layText({ plan, speaker, shelf, style: styleFor(terminal), width: terminal.width }),
  );
  if (options.out !== undefined) await layFiles({ plan, shelf }, speaker, options.out, terminal);
  return classHasProblems(plan) ? PROBLEMS : FINE;
}
