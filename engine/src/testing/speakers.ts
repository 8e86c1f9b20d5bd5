import { languages, type Language, type SkirtRequest } from '../request/index.ts';
import {
  catalogueOf,
  speakerOver,
  type Catalogue,
  type Speaker,
  type SpeakerOptions,
} from '../words/index.ts';

/** The words of every language, there at once: a test need not wait for them in each of its lines. */
export const catalogues = Object.fromEntries(
  await Promise.all(languages.map(async (language) => [language, await catalogueOf(language)] as const)),
) as Readonly<Record<Language, Catalogue>>;

export const speakerFor = (options: SpeakerOptions): Speaker =>
  speakerOver(catalogues[options.language], options);

/** The speaker that a request asks for. */
export const speakerOf = (request: Pick<SkirtRequest, 'language' | 'measure' | 'mark'>): Speaker =>
  speakerFor(request);
