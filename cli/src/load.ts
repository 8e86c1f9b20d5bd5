import {
  classOfOne,
  fromAll,
  isClassText,
  parseClassText,
  parseLength,
  parseRequestText,
  planSkirt,
  speakerOf,
  type ClassRequest,
  type FromCloth,
  type LayKind,
  type Mm,
  type ParsedRequest,
  type SkirtPlan,
  type Speaker,
} from '@ribbonwright/engine';
import { CannotRun } from './exit.ts';
import { laidAs } from './laying/laidAs.ts';
import { readRequest } from './read.ts';
import type { Session } from './session.ts';
import { commandSpeaker } from './words.ts';

/** Options that stand for keys of the request, and what is asked beside it. */
export interface LoadOptions {
  readonly language?: string;
  readonly measure?: string;
  readonly paper?: string;
  readonly have?: string;
  readonly way?: LayKind;
}

export interface Loaded {
  readonly plan: SkirtPlan;
  readonly speaker: Speaker;
}

/** Text of a document, with the options that stand for keys of it in their place. */
export async function readDocument(file: string, options: LoadOptions, session: Session): Promise<string> {
  return withOptions(await readRequest(file, session), options);
}

/** Parses and plans one skirt's request; a malformed one ends the command with a line for each field. */
export async function loadSkirt(text: string, options: LoadOptions, session: Session): Promise<Loaded> {
  const parsed = parseRequestText(text);
  if (!parsed.ok) return refuse(parsed, options, session);
  const { request } = parsed;
  return { plan: planSkirt(request), speaker: await speakerOf(request) };
}

/** What can be made of the cloth that is asked about, and of each length of it at hand. */
export function fromClothOf({ plan }: Loaded, { have }: LoadOptions, { speaker }: Session): FromCloth[] {
  return fromAll(plan.request, have === undefined ? undefined : lengthOf(have, speaker));
}

export interface LoadedClass {
  readonly request: ClassRequest;
  readonly speaker: Speaker;
}

/** Parses a class; a malformed one ends the command with a line for each field. */
export async function loadClass(text: string, options: LoadOptions, session: Session): Promise<LoadedClass> {
  const parsed = parseClassText(text);
  if (!parsed.ok) return refuse(parsed, options, session);
  return { request: laidAs(parsed.request, options.way ?? null), speaker: await speakerOf(parsed.request) };
}

/** A class; or a skirt by itself, which is a class of one. */
export async function loadEither(text: string, options: LoadOptions, session: Session): Promise<LoadedClass> {
  if (isClassText(text)) return loadClass(text, options, session);
  const parsed = parseRequestText(text);
  if (!parsed.ok) return refuse(parsed, options, session);
  return { request: classOfOne(parsed.request), speaker: await speakerOf(parsed.request) };
}

async function refuse(
  { errors, measure, language: written }: Extract<ParsedRequest, { readonly ok: false }>,
  options: LoadOptions,
  session: Session,
): Promise<never> {
  const language = options.language === undefined && written === 'en' ? session.speaker.language : written;
  const speaker = await commandSpeaker(language, measure);
  throw new CannotRun(errors.map(speaker.error).join('\n'));
}

/** Options win over the document's own keys. A text that is no object is left for the parser to refuse. */
function withOptions(text: string, { language, measure, paper, way }: LoadOptions): string {
  const changes = Object.entries({ language, measure, paper }).filter(([, value]) => value !== undefined);
  if (changes.length === 0 && way === undefined) return text;
  try {
    const raw: unknown = JSON.parse(text);
    if (!isGroup(raw)) return text;
    const changed = { ...raw, ...Object.fromEntries(changes) };
    return JSON.stringify(way === undefined ? changed : laidIn(changed, way));
  } catch {
    return text;
  }
}

type Group = Readonly<Record<string, unknown>>;
const isGroup = (raw: unknown): raw is Group =>
  typeof raw === 'object' && raw !== null && !Array.isArray(raw);

/** Every cloth of a skirt asks for one way to lay it. What is no cloth is left for the parser to refuse. */
function laidIn(raw: Group, lay: LayKind): Group {
  if ('skirts' in raw) return raw;
  const asking = (cloth: unknown): unknown => (isGroup(cloth) ? { ...cloth, lay } : cloth);
  const { cloth, contrast } = raw;
  return {
    ...raw,
    cloth: asking(cloth ?? {}),
    ...(Array.isArray(contrast)
      ? {
          contrast: contrast.map((each: unknown) =>
            isGroup(each) ? { ...each, cloth: asking(each['cloth']) } : each,
          ),
        }
      : {}),
  };
}

function lengthOf(text: string, speaker: Speaker): Mm {
  const parsed = parseLength(text);
  if (parsed.ok && parsed.value > 0) return parsed.value;
  const { errors, command } = speaker.words;
  const reason = parsed.ok ? command.noLength : errors[`length.${parsed.fault}`];
  throw new CannotRun(speaker.text(command.badHave, { value: JSON.stringify(text), reason }));
}
