import { mm } from '../../units/index.ts';
import { area, drawing, rectangle, rectanglePath, type Drawing } from '../drawing/index.ts';

/** White around a code, in modules: ISO/IEC 18004 asks for four. */
const QUIET = 4;

/** A square code as a scanner reads it: dark modules on white, with its quiet zone. One unit is one module. */
export function codePicture(
  size: number,
  isDark: (row: number, column: number) => boolean,
  words: { readonly title: string; readonly description: string },
): Drawing {
  const side = size + 2 * QUIET;
  const dark = Array.from({ length: size * size }, (_, i) => [Math.floor(i / size), i % size] as const)
    .filter(([row, column]) => isDark(row, column))
    .map(([row, column]) => rectanglePath(column + QUIET, row + QUIET, 1, 1));
  return drawing({
    width: mm(side),
    height: mm(side),
    ...words,
    marks: [
      rectangle(0, 0, side, side, { stroke: null, fill: '#ffffff' }),
      area(dark, { stroke: null, fill: '#000000' }),
    ],
  });
}
