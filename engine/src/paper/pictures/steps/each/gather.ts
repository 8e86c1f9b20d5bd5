import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, stroke, type Mark } from '../../../drawing/index.ts';
import { thinLine } from '../../cloth.ts';
import { curve, lineTo, stitches } from '../lines.ts';
import type { Draw } from '../picture.ts';
import { movement, turn } from '../signs.ts';
import { patch } from '../surface.ts';
import { note } from '../wording.ts';

const QUARTERS = [8, 25.5, 43, 60.5, 78];

/** Rows begin and end at the quarter notches (1); both bobbin threads are drawn, and the edge gathers (2). */
export const gather: Draw = ({ speaker, step }) => {
  const { papers, stitches: names } = speaker.words;
  const { stitch } = step;
  return {
    height: 64,
    marks: [
      ...turn(4, 5, '1'),
      ...flat(),
      ...turn(4, 37, '2'),
      ...drawn(),
      ...(stitch
        ? note(
            point(72, 52),
            speaker.text(papers.stitchLength, { stitch: names[stitch.stitch], length: stitch.length }),
            { room: 24 },
          )
        : []),
    ],
  };
};

/** The flat edge, its threads left long at each quarter. */
function flat(): Mark[] {
  const rows = [13, 16.4].flatMap((y) =>
    QUARTERS.slice(0, -1).flatMap((from, i) => {
      const to = QUARTERS[i + 1] ?? from;
      return stitches(lineTo([from + 1.2, y], [to - 0.6, y]));
    }),
  );
  const tails = QUARTERS.slice(1).flatMap((x) =>
    [13, 16.4].map((y, i) =>
      curve([point(x - 1, y), point(x - 2, y - 6), point(x - 1 - i * 2.4, y - 8 - i)]),
    ),
  );
  return [
    ...patch('wrong', { left: 5, top: 9, right: 81, bottom: 29, torn: ['left', 'right', 'bottom'] }),
    ...rows,
    stroke(tails, { width: mm(0.25) }),
    stroke(
      QUARTERS.map((x) => lineTo([x, 9], [x, 11.4])),
      { width: mm(0.7) },
    ),
  ];
}

/** One quarter drawn up: narrower, folds running out below the rows; the threads of one side are pulled. */
function drawn(): Mark[] {
  const [left, right, top] = [8, 44, 40];
  const folds = Array.from({ length: 13 }, (_, i) => {
    const x = left + 2 + i * 2.7;
    const long = [14, 7, 10][i % 3] ?? 8;
    return curve([
      point(x, top + 0.6),
      point(x + 0.4, top + 5),
      point(x - 0.4 + (i - 6) * 0.25, top + 6 + long),
    ]);
  });
  return [
    ...patch('wrong', { left, top, right, bottom: 62, torn: ['left', 'right', 'bottom'] }),
    stroke(folds, { width: mm(0.25), stroke: inks.ink }),
    ...[top + 3, top + 5.8].flatMap((y) => stitches(lineTo([left + 1, y], [right - 1, y]))),
    stroke(
      [3, 5.8].map((dy) => lineTo([right - 1, top + dy], [right + 8, top + dy])),
      { ...thinLine, stroke: inks.ink, width: mm(0.3) },
    ),
    ...movement(lineTo([right + 3, top + 9.4], [right + 11, top + 9.4])),
    ...movement(lineTo([left + 12, top - 2.4], [right - 8, top - 2.4])),
  ];
}
