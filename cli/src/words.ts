import {
  languages,
  speakerFor,
  usualMark,
  type Language,
  type MeasureSystem,
  type Speaker,
} from '@ribbonwright/engine';
import type { Terminal } from './terminal.ts';

/** Language of the command's own words: asked for, or the terminal's by the usual variables. */
export function terminalLanguage(environment: Terminal['environment'], argv: readonly string[]): Language {
  const at = argv.findIndex((argument) => argument === '--language' || argument === '-l');
  const asked =
    at >= 0 ? argv[at + 1] : argv.find((each) => each.startsWith('--language='))?.slice('--language='.length);
  const locale = asked ?? environment['LC_ALL'] ?? environment['LC_MESSAGES'] ?? environment['LANG'] ?? '';
  return languages.find((language) => locale.toLowerCase().startsWith(language)) ?? 'en';
}

/** A speaker for messages about files, options and what is refused of a document, in the measure that it is in. */
export const commandSpeaker = (language: Language, measure: MeasureSystem = 'metric'): Promise<Speaker> =>
  speakerFor({ language, measure, mark: usualMark(measure) });
