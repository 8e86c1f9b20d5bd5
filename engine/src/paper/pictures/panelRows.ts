import { boundsOf, endOf, point, startOf, type Path, type Point } from '../../geometry/index.ts';
import type { SkirtPlan } from '../../plan/index.ts';
import type { Row } from '../../ribbon/index.ts';
import { mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import { area, drawing, inks, label, straight, stroke, type Drawing, type Mark } from '../drawing/index.ts';
import { chalkLine, clothStyle, foldLine, patternsOf, ribbonArea, thinLine } from './cloth.ts';
import { clothLegend, washOf } from './clothInks.ts';
import { fitPath, fitPoint, spread, type Fit } from './fit.ts';
import { lineOn, panelKinds, type PanelKind } from './pieces/kinds.ts';

const WIDTH = 92;
const RIGHT = 20;
/** Words of a row on the seam of two tiers want more room. */
const RIGHT_OF_SEAM = 32;
const LEFT = 5;
const TOP = 7;
/** Above the first tier stands its name, too. */
const NAMED = 3.4;
const BOTTOM = 8;
const TALLEST = 74;
const APART = 4;

/** A kind of panel where it lies on the drawing. */
interface Open {
  readonly kind: PanelKind;
  readonly fit: Fit;
  readonly bottom: number;
}

/**
 * Every kind of panel opened out, right side up, tiers from the top down, with its ribbons and the chalk line of each from
 * the trimmed raw edge.
 */
export function panelRows(plan: SkirtPlan, speaker: Speaker): Drawing {
  const { skirt, ribbons } = plan;
  const right = ribbons.rows.some(({ onSeam }) => onSeam) ? RIGHT_OF_SEAM : RIGHT;
  const tiers = skirt.rounds.length > 1;
  const top = tiers ? TOP + NAMED : TOP;
  const open = opened(panelKinds(plan), tiers, WIDTH - right - LEFT, top);
  const bottom = Math.max(...open.map((each) => each.bottom));
  const legend = clothLegend(plan.cloths.length > 1 ? plan.cloths : [], speaker, {
    left: LEFT,
    top: bottom + BOTTOM + 0.6,
    room: WIDTH - LEFT,
    size: mm(2.6),
  });
  const { papers } = speaker.words;
  const middle = (LEFT + WIDTH - right) / 2;
  const grey = { size: mm(3), align: 'middle', ink: inks.grey } as const;
  return drawing({
    width: mm(WIDTH),
    height: mm(bottom + BOTTOM + (legend.height > 0 ? 1 + legend.height : 0)),
    title: papers.rowsHeading,
    description: speaker.text(papers.altPanel, {
      rows: ribbons.rows.length,
      list: ribbons.rows.map(({ fromRawEdge }) => speaker.value(fromRawEdge)).join(', '),
    }),
    marks: [
      ...open.flatMap((each) => panelMarks(plan, each)),
      label(point(middle, top - 2 - (tiers ? NAMED : 0)), `${papers.topEdge} · ${papers.rightSideUp}`, grey),
      ...namesBelow(plan, speaker, open),
      label(point(middle, bottom + (open.length > 1 && !tiers ? 7.2 : 4.4)), papers.rawEdge, grey),
      ...rowNumbers(plan, speaker, open, WIDTH - right),
      ...legend.marks,
    ],
  });
}

/** Side by side, or tiers one below the other, as large as there is room. */
function opened(kinds: readonly PanelKind[], tiers: boolean, width: number, top: number): Open[] {
  const boxes = kinds.map((kind) => ({ kind, box: boundsOf(kind.panels[0].shape.trimmed) }));
  const gaps = (kinds.length - 1) * APART;
  const sum = (of: (box: ReturnType<typeof boundsOf>) => number): number =>
    boxes.reduce((total, { box }) => total + of(box), 0);
  const most = (of: (box: ReturnType<typeof boundsOf>) => number): number =>
    Math.max(...boxes.map(({ box }) => of(box)));
  const [wide, tall] = tiers
    ? [most((box) => box.width), sum((box) => box.height)]
    : [sum((box) => box.width), most((box) => box.height)];
  const scale = Math.min(
    (width - (tiers ? 0 : gaps)) / Math.max(1, wide),
    (TALLEST - (tiers ? gaps : 0)) / Math.max(1, tall),
  );
  let x = LEFT + (width - wide * scale - (tiers ? 0 : gaps)) / 2;
  let y = top;
  return boxes.map(({ kind, box }) => {
    const left = tiers ? LEFT + (width - box.width * scale) / 2 : x;
    const fit: Fit = { scale, dx: left - box.left * scale, dy: y - box.top * scale };
    const bottom = y + box.height * scale;
    if (tiers) y = bottom + APART;
    else x += box.width * scale + APART;
    return { kind, fit, bottom };
  });
}

function panelMarks(plan: SkirtPlan, { kind, fit }: Open): Mark[] {
  const { ribbons } = plan;
  const { shape } = kind.panels[0];
  const patternOf = patternsOf(ribbons.rows.map(({ colour }) => colour));
  const folds = shape.edges
    .filter(({ turned }) => turned)
    .map(({ finished }) => stroke(fitPath(finished, fit), foldLine));
  const bands = ribbons.rows.flatMap((row): Mark[] => {
    const line = lineOn(kind, row);
    if (!line) return [];
    return [
      area(fitPath(ribbonArea(line), fit), {
        fill: row.colour.hex,
        pattern: patternOf(row.colour),
        width: mm(0.2),
      }),
      stroke(fitPath(line.lower, fit), chalkLine),
    ];
  });
  return [
    area(fitPath(shape.trimmed, fit), { ...clothStyle, fill: washOf(plan, kind.panels[0]) }),
    ...folds,
    ...bands,
  ];
}

/** Which panel is which, where they are unlike: below panels side by side, above a tier's corner. */
function namesBelow({ skirt }: SkirtPlan, speaker: Speaker, open: readonly Open[]): Mark[] {
  if (open.length < 2) return [];
  const tiers = skirt.rounds.length > 1;
  return open.map(({ kind, fit, bottom }) => {
    const { left, width, top } = boundsOf(kind.panels[0].shape.trimmed);
    const names = [...new Set(kind.panels.map(({ name }) => speaker.words.panels[name]))];
    const look = { size: mm(2.6), ink: inks.grey, bold: true } as const;
    return tiers
      ? label(
          fitPoint(point(left, top), { ...fit, dy: fit.dy - 1 }),
          speaker.text(speaker.words.papers.tierNumber, { number: kind.round }),
          look,
        )
      : label(point((left + width / 2) * fit.scale + fit.dx, bottom + 3.4), names.join(' + '), {
          ...look,
          align: 'middle',
        });
  });
}

const LARGEST = 3.3;
const SMALLEST = 2.3;

/**
 * At the right, the distance of each chalk line from the raw edge, at the left its number. Many rows are
 * written smaller; where even that has no room, only some are written and the ribbon list has the rest.
 */
function rowNumbers(
  { ribbons: { rows } }: SkirtPlan,
  speaker: Speaker,
  open: readonly Open[],
  edge: number,
): Mark[] {
  const bottom = Math.max(...open.map((each) => each.bottom));
  const size = Math.max(SMALLEST, Math.min(LARGEST, (bottom - TOP) / Math.max(1, rows.length) / 1.2));
  const gap = size * 1.2;
  const every = Math.max(1, Math.ceil((rows.length * gap) / (bottom - TOP + gap)));
  const written = rows.flatMap((row, i) => {
    const ends = i % every === 0 ? endsOf(row, open) : null;
    return ends ? [{ row, ...ends }] : [];
  });
  const foot = size / 3;
  const levels = (of: readonly Point[]): number[] =>
    spread(
      of.map(({ y }) => y + foot),
      gap,
      bottom + foot,
    );
  const [rights, lefts] = [
    levels(written.map(({ right }) => right)),
    levels(written.map(({ left }) => left)),
  ];
  return written.flatMap(({ row, left, right }, i): Mark[] => {
    const height = rights[i] ?? right.y;
    const height2 = lefts[i] ?? left.y;
    const x = edge + 3;
    return [
      straight(point(right.x + 0.6, right.y), point(x - 0.6, height - foot), thinLine),
      label(point(x, height), distanceText(row, speaker), { size: mm(size), bold: true }),
      straight(point(left.x - 0.6, left.y), point(LEFT - 0.8, height2 - foot), thinLine),
      label(point(LEFT - 1.4, height2), String(row.number), {
        size: mm(size * 0.9),
        align: 'end',
        ink: inks.grey,
      }),
    ];
  });
}

const distanceText = ({ onSeam, fromRawEdge }: Row, speaker: Speaker): string =>
  onSeam ? speaker.text(speaker.words.papers.rowBelowSeam, { below: onSeam }) : speaker.value(fromRawEdge);

/** Left and right end of a row's chalk line, over all panels that carry it. */
function endsOf(row: Row, open: readonly Open[]): { left: Point; right: Point } | null {
  const ends = open.flatMap(({ kind, fit }) => {
    const line = lineOn(kind, row);
    return line ? pathEnds(line.lower).map((at) => fitPoint(at, fit)) : [];
  });
  const [first, ...others] = ends;
  if (!first) return null;
  return others.reduce(
    ({ left, right }, at) => ({ left: at.x < left.x ? at : left, right: at.x > right.x ? at : right }),
    { left: first, right: first },
  );
}

/** Past this, from the centre, a row of a wide part of a circle is told where it still comes downwards. */
const WIDE = 1.1;

function pathEnds(path: Path): Point[] {
  const [first, last] = [path[0], path.at(-1)];
  if (!first || !last) return [];
  if (path.length === 1 && first.kind === 'arc' && Math.abs(first.sweep) / 2 > WIDE) {
    const { centre, radius } = first;
    return [-1, 1].map((hand) =>
      point(centre.x + hand * radius * Math.sin(WIDE), centre.y + radius * Math.cos(WIDE)),
    );
  }
  return [startOf(first), endOf(last)];
}
