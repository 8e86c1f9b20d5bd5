import {
  dashesOf,
  resolve,
  type Drawing,
  type Mark,
  type PaperFonts,
  type PathMark,
  type Placement,
  type PlainMark,
} from '../drawing/index.ts';
import { escaped, factor, short } from './numbers.ts';
import { pathData } from './pathData.ts';
import { FONT_FAMILY, liveWords, outlinedWords } from './words.ts';

export interface SvgOptions {
  /** With fonts the words are written as outlines; without, as live text. */
  readonly fonts?: PaperFonts;
  /** Start of the ids within, for several pictures on one page. */
  readonly id?: string;
}

function pathElement({ paths, closed, style }: PathMark): string {
  const attributes = [`d="${pathData(paths, closed)}"`, `fill="${style.fill ?? 'none'}"`];
  const clear = style.opacity ?? 1;
  if (style.fill !== null) {
    attributes.push('fill-rule="evenodd"');
    if (clear < 1) attributes.push(`fill-opacity="${short(clear)}"`);
  }
  if (style.stroke !== null) {
    attributes.push(`stroke="${style.stroke}" stroke-width="${short(style.width)}"`);
    if (clear < 1) attributes.push(`stroke-opacity="${short(clear)}"`);
    const dashes = dashesOf(style);
    if (dashes.length > 0) attributes.push(`stroke-dasharray="${dashes.map(short).join(' ')}"`);
  }
  return `<path ${attributes.join(' ')}/>`;
}

function placementOf({ dx, dy, scale, angle }: Placement): string {
  const steps: string[] = [];
  if (dx !== 0 || dy !== 0) steps.push(`translate(${short(dx)} ${short(dy)})`);
  if (angle !== 0) steps.push(`rotate(${short((angle * 180) / Math.PI)})`);
  if (scale !== 1) steps.push(`scale(${factor(scale)})`);
  return steps.length > 0 ? ` transform="${steps.join(' ')}"` : '';
}

function element(mark: PlainMark, fonts: PaperFonts | undefined): string {
  if (mark.kind === 'path') return pathElement(mark);
  if (mark.kind === 'text') return fonts ? outlinedWords(mark, fonts) : liveWords(mark);
  const name = mark.name === '' ? '' : ` data-layer="${escaped(mark.name)}"`;
  return `<g${name}${placementOf(mark.placement)}>\n${elements(mark.marks, fonts)}\n</g>`;
}

const elements = (marks: readonly Mark[], fonts: PaperFonts | undefined): string =>
  marks.flatMap((mark) => resolve(mark).map((plain) => element(plain, fonts))).join('\n');

/**
 * A drawing as an SVG document at true size: width and height in millimetres, one unit one millimetre.
 * It is one image with a title and a description for those who hear it. Equal drawings give equal text.
 */
export function writeSvg(drawing: Drawing, options: SvgOptions = {}): string {
  const id = escaped(options.id ?? 'drawing');
  const width = short(drawing.width);
  const height = short(drawing.height);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="${id}-title ${id}-desc" stroke-linejoin="round" font-family="${escaped(FONT_FAMILY)}">`,
    `<title id="${id}-title">${escaped(drawing.title)}</title>`,
    `<desc id="${id}-desc">${escaped(drawing.description)}</desc>`,
    elements(drawing.marks, options.fonts),
    '</svg>',
    '',
  ].join('\n');
}
