import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { openFont, type PaperFonts } from '@ribbonwright/engine';

const resolve = createRequire(import.meta.url).resolve;
const font = (file: string) => openFont(readFileSync(resolve(`@expo-google-fonts/source-sans-3/${file}`)));

/** The papers' typeface: a full set of fractions, accents and signs in two weights. */
export const loadFonts = (): PaperFonts => ({
  regular: font('400Regular/SourceSans3_400Regular.ttf'),
  bold: font('600SemiBold/SourceSans3_600SemiBold.ttf'),
});
