/** The part of fontkit that is used here; the package carries no types of its own. */
declare module 'fontkit' {
  export interface PathCommand {
    readonly command: 'moveTo' | 'lineTo' | 'quadraticCurveTo' | 'bezierCurveTo' | 'closePath';
    readonly args: readonly number[];
  }
  export interface Glyph {
    readonly id: number;
    readonly advanceWidth: number;
    readonly codePoints: readonly number[];
    readonly path: { readonly commands: readonly PathCommand[] };
  }
  export interface GlyphRun {
    readonly glyphs: readonly Glyph[];
    readonly positions: readonly {
      readonly xAdvance: number;
      readonly yAdvance: number;
      readonly xOffset: number;
      readonly yOffset: number;
    }[];
    readonly advanceWidth: number;
  }
  export interface Font {
    readonly postscriptName: string;
    readonly unitsPerEm: number;
    readonly capHeight: number;
    layout(text: string): GlyphRun;
    hasGlyphForCodePoint(codePoint: number): boolean;
  }
  export function create(bytes: Uint8Array): Font;
}
