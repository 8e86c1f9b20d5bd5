import { languages, speakerFor, type Language, type Mm, type Speaker } from '@ribbonwright/engine';
import type { Terminal } from './terminal.ts';

/** Language of the command's own words: asked for, or the terminal's by the usual variables. */
export function terminalLanguage(environment: Terminal['environment'], argv: readonly string[]): Language {
  const at = argv.findIndex((argument) => argument === '--language' || argument === '-l');
  const asked =
    at >= 0 ? argv[at + 1] : argv.find((each) => each.startsWith('--language='))?.slice('--language='.length);
  const locale = asked ?? environment['LC_ALL'] ?? environment['LC_MESSAGES'] ?? environment['LANG'] ?? '';
  return languages.find((language) => locale.toLowerCase().startsWith(language)) ?? 'en';
}

/** A speaker for messages about files and options; what it measures in never shows. */
export const commandSpeaker = (language: Language): Promise<Speaker> =>
  speakerFor({ language, measure: 'metric', mark: 1 as Mm });
