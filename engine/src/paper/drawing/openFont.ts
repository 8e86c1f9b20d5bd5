import { create, type GlyphRun } from 'fontkit';
import { mm } from '../../units/index.ts';
import type { OpenFont, Outline } from './font.ts';

/**
 * Words with the space after them: a line is measured and set word by word, as the PDF writer sets it, so
 * that a width found here is the width on paper.
 */
const words = (text: string): readonly string[] => text.match(/[^ \t]*[ \t]|[^ \t]+$/g) ?? [];

/** Opens a TrueType or OpenType font. Throws if the bytes are no such font. */
export function openFont(bytes: Uint8Array): OpenFont {
  const font = create(bytes);
  const runs = new Map<string, GlyphRun>();
  const runOf = (word: string): GlyphRun => {
    const known = runs.get(word) ?? font.layout(word);
    runs.set(word, known);
    return known;
  };
  return {
    bytes,
    unitsPerEm: font.unitsPerEm,
    widthOf: (text, size) =>
      mm((words(text).reduce((sum, word) => sum + runOf(word).advanceWidth, 0) / font.unitsPerEm) * size),
    missing: (text) => [
      ...new Set(Array.from(text).filter((letter) => !font.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0))),
    ],
    outlines: (text) => {
      let x = 0;
      return words(text).flatMap((word) => {
        const { glyphs, positions } = runOf(word);
        return glyphs.map((glyph, i): Outline => {
          const position = positions[i];
          const at = { x: x + (position?.xOffset ?? 0), y: position?.yOffset ?? 0 };
          x += position?.xAdvance ?? glyph.advanceWidth;
          return { ...at, commands: glyph.path.commands };
        });
      });
    },
  };
}
