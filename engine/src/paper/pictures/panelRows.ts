import { boundsOf, endOf, point, type Path } from '../../geometry/index.ts';
import type { SkirtPlan } from '../../plan/index.ts';
import { mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import { area, drawing, inks, label, straight, stroke, type Drawing, type Mark } from '../drawing/index.ts';
import { chalkLine, clothStyle, foldLine, patternsOf, ribbonArea, thinLine } from './cloth.ts';
import { fitPath, fitPoint, scaleInto, spread, type Fit } from './fit.ts';

const WIDTH = 92;
const RIGHT = 20;
const LEFT = 5;
const TOP = 7;
const BOTTOM = 8;
const TALLEST = 74;

/** One panel opened out, right side up, with its ribbons and the chalk line of each from the trimmed raw edge. */
export function panelRows(plan: SkirtPlan, speaker: Speaker): Drawing {
  const { skirt, ribbons } = plan;
  const { shape } = skirt.panels[0];
  const bounds = boundsOf(shape.trimmed);
  const scale = scaleInto(bounds.width, bounds.height, {
    width: mm(WIDTH - RIGHT - LEFT),
    height: mm(TALLEST),
  });
  const fit: Fit = {
    scale,
    dx: (LEFT + WIDTH - RIGHT - bounds.width * scale) / 2 - bounds.left * scale,
    dy: TOP - bounds.top * scale,
  };
  const bottom = TOP + bounds.height * scale;
  const patternOf = patternsOf(ribbons.rows.map(({ colour }) => colour));
  const { papers } = speaker.words;
  const folds = skirt.panels[0].shape.edges
    .filter(({ turned }) => turned)
    .map(({ finished }) => stroke(fitPath(finished, fit), foldLine));
  const bands = ribbons.rows.flatMap((row): Mark[] => [
    area(fitPath(ribbonArea(row), fit), {
      fill: row.colour.hex,
      pattern: patternOf(row.colour),
      width: mm(0.2),
    }),
    stroke(fitPath(row.lower, fit), chalkLine),
  ]);
  const numbers = rowNumbers(plan, speaker, fit, bottom);
  return drawing({
    width: mm(WIDTH),
    height: mm(bottom + BOTTOM),
    title: papers.rowsHeading,
    description: speaker.text(papers.altPanel, {
      rows: ribbons.rows.length,
      list: ribbons.rows.map(({ fromRawEdge }) => speaker.value(fromRawEdge)).join(', '),
    }),
    marks: [
      area(fitPath(shape.trimmed, fit), clothStyle),
      ...folds,
      ...bands,
      label(point((LEFT + WIDTH - RIGHT) / 2, TOP - 2), `${papers.topEdge} · ${papers.rightSideUp}`, {
        size: mm(3),
        align: 'middle',
        ink: inks.grey,
      }),
      label(point((LEFT + WIDTH - RIGHT) / 2, bottom + 4.4), papers.rawEdge, {
        size: mm(3),
        align: 'middle',
        ink: inks.grey,
      }),
      ...numbers,
    ],
  });
}

const LARGEST = 3.3;
const SMALLEST = 2.3;

/**
 * At the right, the distance of each chalk line from the raw edge, at the left its number. Many rows are
 * written smaller; where even that has no room, only some are written and the ribbon list has the rest.
 */
function rowNumbers({ ribbons }: SkirtPlan, speaker: Speaker, fit: Fit, bottom: number): Mark[] {
  const size = Math.max(SMALLEST, Math.min(LARGEST, (bottom - TOP) / Math.max(1, ribbons.rows.length) / 1.2));
  const gap = size * 1.2;
  const every = Math.max(1, Math.ceil((ribbons.rows.length * gap) / (bottom - TOP + gap)));
  const written = ribbons.rows.filter((_, i) => i % every === 0);
  const ends = written.map(({ lower }) => endOfPath(lower, fit));
  const foot = size / 3;
  const heights = spread(
    ends.map(({ y }) => y + foot),
    gap,
    bottom + foot,
  );
  return written.flatMap((row, i): Mark[] => {
    const end = ends[i] ?? point(0, 0);
    const height = heights[i] ?? end.y;
    const x = WIDTH - RIGHT + 3;
    return [
      straight(point(end.x + 0.6, end.y), point(x - 0.6, height - foot), thinLine),
      label(point(x, height), speaker.value(row.fromRawEdge), { size: mm(size), bold: true }),
      straight(point(fit.dx * 2 - end.x - 0.6, end.y), point(LEFT - 0.8, height - foot), thinLine),
      label(point(LEFT - 1.4, height), String(row.number), {
        size: mm(size * 0.9),
        align: 'end',
        ink: inks.grey,
      }),
    ];
  });
}

function endOfPath(path: Path, fit: Fit) {
  const last = path.at(-1);
  return last ? fitPoint(endOf(last), fit) : point(0, 0);
}
