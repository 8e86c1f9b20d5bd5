import { fontOf, footBelow, startBefore, type PaperFonts, type TextMark } from '../drawing/index.ts';
import { escaped, factor, short } from './numbers.ts';

/** Faces for live text: what is on most machines, plain and open. */
export const FONT_FAMILY =
  "'Source Sans 3', 'Source Sans Pro', 'Noto Sans', 'Segoe UI', Helvetica, Arial, sans-serif";

const HALO = 0.18;
const degrees = (angle: number): number => (angle * 180) / Math.PI;
const turn = (mark: TextMark): string => (mark.angle === 0 ? '' : ` rotate(${short(degrees(mark.angle))})`);

/** Words as outlines: the same on every machine, with no font installed. The words stay in `data-text`. */
export function outlinedWords(mark: TextMark, fonts: PaperFonts): string {
  const font = fontOf(mark, fonts);
  const scale = mark.size / font.unitsPerEm;
  const letters = { moveTo: 'M', lineTo: 'L', quadraticCurveTo: 'Q', bezierCurveTo: 'C', closePath: 'Z' };
  const data = font
    .outlines(mark.text)
    .flatMap(({ x, y, commands }) =>
      commands.map(
        ({ command, args }) =>
          letters[command] + args.map((value, i) => short(i % 2 === 0 ? value + x : -(value + y))).join(' '),
      ),
    )
    .join('');
  const place = `translate(${short(mark.at.x)} ${short(mark.at.y)})${turn(mark)} translate(${short(0 - startBefore(mark, fonts))} ${short(footBelow(mark))}) scale(${factor(scale)})`;
  const halo =
    mark.halo !== null
      ? ` stroke="${mark.halo}" stroke-width="${short((2 * HALO * mark.size) / scale)}" stroke-linejoin="round" paint-order="stroke"`
      : '';
  return `<path data-text="${escaped(mark.text)}" transform="${place}" fill="${mark.ink}"${halo} d="${data}"/>`;
}

/** Live words, to be searched and copied; set in whatever of the family the machine has. */
export function liveWords(mark: TextMark): string {
  const attributes = [
    `x="0" y="${short(footBelow(mark))}"`,
    `transform="translate(${short(mark.at.x)} ${short(mark.at.y)})${turn(mark)}"`,
    `font-size="${short(mark.size)}"`,
    `fill="${mark.ink}"`,
  ];
  if (mark.align !== 'start') attributes.push(`text-anchor="${mark.align}"`);
  if (mark.bold) attributes.push('font-weight="600"');
  if (mark.halo !== null)
    attributes.push(
      `stroke="${mark.halo}" stroke-width="${short(2 * HALO * mark.size)}" stroke-linejoin="round" paint-order="stroke"`,
    );
  return `<text ${attributes.join(' ')}>${escaped(mark.text)}</text>`;
}
