import type { Language } from '../request/index.ts';
import type { Catalogue } from './catalogue.ts';

interface Tongue {
  /** The language's own name for itself. */
  readonly name: string;
  readonly words: () => Promise<Catalogue>;
}

/**
 * Every language there is. A new one is its catalogue file and a line here and in the request's `languages`. Words
 * come when they are asked for, so that a page carries those of one language, not of all.
 */
const tongues: Readonly<Record<Language, Tongue>> = {
  en: { name: 'English', words: async () => (await import('./en.ts')).en },
  fr: { name: 'Français', words: async () => (await import('./fr.ts')).fr },
};

export const languageName = (language: Language): string => tongues[language].name;

/** All the words of a language. Rejects where they cannot be fetched. */
export const catalogueOf = (language: Language): Promise<Catalogue> => tongues[language].words();
