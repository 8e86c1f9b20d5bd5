import { fontOf, placedTexts, startBefore, type Drawing } from '../../drawing/index.ts';
import { writeSvg } from '../../svg/index.ts';
import { fonts } from '../../testing/fonts.ts';

/** Whether every number of a drawing is one. */
export const finite = (drawing: Drawing): boolean => {
  const numbers = [drawing.width, drawing.height];
  return (
    numbers.every((each) => Number.isFinite(each) && each > 0) && !/NaN|Infinity/.test(writeSvg(drawing))
  );
};

/** Words that reach more than half a millimetre beyond their drawing, by the widths of the papers' own font. */
export function outside(drawing: Drawing): string[] {
  return placedTexts(drawing.marks)
    .filter((mark) => {
      const width = fontOf(mark, fonts).widthOf(mark.text, mark.size);
      const start = -startBefore(mark, fonts);
      const up = { foot: 0.7, middle: 0.36, top: 0 }[mark.baseline] * mark.size;
      return [start, start + width].some((dx) =>
        [-up, 0.75 * mark.size - up].some((dy) => {
          const x = mark.at.x + dx * Math.cos(mark.angle) - dy * Math.sin(mark.angle);
          const y = mark.at.y + dx * Math.sin(mark.angle) + dy * Math.cos(mark.angle);
          return x < -0.5 || y < -0.5 || x > drawing.width + 0.5 || y > drawing.height + 0.5;
        }),
      );
    })
    .map(({ text }) => text);
}
