import type { LaidPiece, Table } from '../../cloth/index.ts';
import { boundsOf, point, type Path, type Point } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import { dot, label, straight, type Ink, type Mark } from '../drawing/index.ts';
import { thinLine } from './cloth.ts';
import { fitPoint, type Fit } from './fit.ts';

/** The middle that a string swings a part of a circle about, where it lies on the table or beyond it. */
export interface Swing {
  readonly centre: Point;
  /** Of the raw edge of the waist. */
  readonly radius: Mm;
  readonly outline: Path;
}

/** The middles of the panels on a table that are swung: the arcs of an outline turn about them. */
export const swingsOf = ({ pieces }: Table): Swing[] => pieces.flatMap(swingOf);

function swingOf({ outline, panels }: LaidPiece): Swing[] {
  if (!panels.some(({ shape }) => shape.apex)) return [];
  const arcs = outline.flatMap((each) => (each.kind === 'arc' ? [each] : []));
  const hem = arcs.reduce<(typeof arcs)[number] | null>(
    (most, arc) => (most && most.radius >= arc.radius ? most : arc),
    null,
  );
  if (!hem) return [];
  return [{ centre: hem.centre, radius: mm(Math.min(...arcs.map(({ radius }) => radius))), outline }];
}

const SIZE = mm(2.5);
/** Nearer to an edge than this it lies on it. */
const ON = 0.5;

/** A dot at each middle, a line to its waist edge, and within the piece how far the dot is from end and edge of the cloth. */
export function swingMarks(
  table: Table,
  speaker: Speaker,
  fit: Fit,
  ink: { readonly halo: Ink; readonly line: Ink },
): Mark[] {
  const { papers } = speaker.words;
  return swingsOf(table).flatMap(({ centre, radius, outline }): Mark[] => {
    const { left, top, width, height } = boundsOf(outline);
    const way = { x: left + width / 2 - centre.x, y: top + height / 2 - centre.y };
    const long = Math.hypot(way.x, way.y) || 1;
    const on = (distance: number): Point =>
      fitPoint(point(centre.x + (way.x / long) * distance, centre.y + (way.y / long) * distance), fit);
    const at = fitPoint(centre, fit);
    const words = on(radius + 4.6 / fit.scale);
    const said = [
      placed(papers.swingAlong, centre.x, table.along, speaker),
      placed(papers.swingAcross, centre.y, table.across, speaker),
    ];
    return [
      straight(at, on(radius), thinLine),
      dot(at, mm(0.9)),
      ...said.map((text, i) =>
        label(point(words.x, words.y + (i - 0.5) * SIZE * 1.2), text, {
          size: SIZE,
          align: 'middle',
          baseline: 'middle',
          halo: ink.halo,
          ink: ink.line,
        }),
      ),
    ];
  });
}

/** From the nearer of two edges that lie at 0 and at `far`: on it, within the cloth or beyond it. */
function placed(pattern: string, at: number, far: number, { text, length }: Speaker): string {
  const isFirst = Math.abs(at) <= Math.abs(far - at);
  const within = isFirst ? at : far - at;
  return text(pattern, {
    distance: length(mm(Math.abs(within))),
    edge: isFirst ? 'first' : 'last',
    side: Math.abs(within) < ON ? 'on' : within > 0 ? 'within' : 'beyond',
  });
}
