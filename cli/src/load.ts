import {
  catalogues,
  fromCloth,
  parseLength,
  parseRequestText,
  planSkirt,
  speakerFor,
  speakerOf,
  type FromCloth,
  type Mm,
  type SkirtPlan,
  type Speaker,
} from '@ribbonwright/engine';
import { CannotRun } from './exit.ts';
import { readRequest } from './read.ts';
import type { Session } from './session.ts';

/** Options that stand for keys of the request, and what is asked beside it. */
export interface LoadOptions {
  readonly language?: string;
  readonly measure?: string;
  readonly paper?: string;
  readonly have?: string;
}

export interface Loaded {
  readonly plan: SkirtPlan;
  readonly speaker: Speaker;
  readonly fromCloth: FromCloth | null;
}

/** Reads, parses and plans one request; a malformed one ends the command with a line for each field. */
export async function load(file: string, options: LoadOptions, session: Session): Promise<Loaded> {
  const text = withOptions(await readRequest(file, session), options);
  const parsed = parseRequestText(text);
  if (!parsed.ok) {
    const language =
      options.language === undefined && parsed.language === 'en' ? session.speaker.language : parsed.language;
    const speaker = speakerFor({ language, measure: 'metric', mark: 1 as Mm });
    throw new CannotRun(parsed.errors.map(speaker.error).join('\n'));
  }
  const { request } = parsed;
  const plan = planSkirt(request);
  const have = options.have === undefined ? request.cloth.have : lengthOf(options.have, session.speaker);
  return {
    plan,
    speaker: speakerOf(request),
    fromCloth: have === undefined ? null : fromCloth(request, have),
  };
}

/** Options win over the document's own keys. A text that is no object is left for the parser to refuse. */
function withOptions(text: string, { language, measure, paper }: LoadOptions): string {
  const changes = Object.entries({ language, measure, paper }).filter(([, value]) => value !== undefined);
  if (changes.length === 0) return text;
  try {
    const raw: unknown = JSON.parse(text);
    if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) return text;
    return JSON.stringify({ ...raw, ...Object.fromEntries(changes) });
  } catch {
    return text;
  }
}

function lengthOf(text: string, speaker: Speaker): Mm {
  const parsed = parseLength(text);
  if (parsed.ok && parsed.value > 0) return parsed.value;
  const { errors, command } = catalogues[speaker.language];
  const reason = parsed.ok ? errors['length.negative'] : errors[`length.${parsed.fault}`];
  throw new CannotRun(speaker.text(command.badHave, { value: JSON.stringify(text), reason }));
}
