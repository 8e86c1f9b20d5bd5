export { missingGlyphs, writePdf } from './writePdf.ts';
