import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { openFont, type PaperFonts } from '../drawing/index.ts';

const require = createRequire(import.meta.url);
const face = (name: string) =>
  openFont(readFileSync(require.resolve(`@expo-google-fonts/source-sans-3/${name}.ttf`)));

/** The fonts that papers are printed in. */
export const fonts: PaperFonts = {
  regular: face('400Regular/SourceSans3_400Regular'),
  bold: face('600SemiBold/SourceSans3_600SemiBold'),
};
