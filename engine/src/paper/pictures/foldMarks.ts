import { boundsOf, point, polyline, type Point } from '../../geometry/index.ts';
import type { SkirtPlan } from '../../plan/index.ts';
import type { PanelShape } from '../../skirt/index.ts';
import { mm, radians } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import { dot, inks, label, straight, stroke, type Mark } from '../drawing/index.ts';
import { foldLine, thinLine } from './cloth.ts';
import { spread } from './fit.ts';

/** Where the folded cloth is drawn: its corners on paper, and from a panel's point to paper. */
export interface FoldFrame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly at: (x: number, y: number) => Point;
}

const SIZE = mm(3.3);
/** Below this two levels are one. */
const SAME = 0.5;
const SMALL = { size: mm(3), ink: inks.grey } as const;
/** Cloth narrower than this on paper has no room for words on it: they stand beside it. */
const ROOM_FOR_WORDS = 38;

/** Distances down from the top edge of the cloth, along the centre. */
export function downMarks(
  { skirt, body }: SkirtPlan,
  speaker: Speaker,
  { left, right, top, at }: FoldFrame,
): Mark[] {
  const { papers } = speaker.words;
  const { shape } = skirt.panels[0];
  const bounds = boundsOf(shape.cut);
  const isTurned = skirt.waist.build === 'turned';
  // Raised tops lie above the line that everything is measured from, here and where it is chalked.
  const from = Object.values(body.rises).some(({ value }) => value !== 0) ? levelTop(shape) : bounds.top;
  const raised = from - bounds.top > SAME;
  const levels = [
    ...(raised
      ? [
          {
            y: from,
            name: speaker.text(papers.levelLine, { below: speaker.length(mm(from - bounds.top)) }),
            line: thinLine,
          },
        ]
      : []),
    isTurned
      ? { y: 0, name: papers.casingFold, line: foldLine }
      : { y: 0, name: papers.waistSeam, line: thinLine },
    { y: shape.length, name: papers.hemFold, line: foldLine },
    { y: shape.length + shape.hemAllowance, name: papers.trimHere, line: thinLine },
    { y: bounds.bottom, name: papers.cutHere, line: null },
  ];
  const heights = spread(
    levels.map(({ y }) => at(0, y).y + 1.1),
    4.3,
  );
  const words = levels.flatMap(({ y, name, line }, i): Mark[] => {
    const end = at(0, y);
    const height = heights[i] ?? end.y;
    const crosses = line !== null && !shape.apex;
    return [
      ...(crosses ? [straight(end, point(right, end.y), line)] : []),
      straight(point(end.x - 1, end.y), point(end.x - 4, height - 1.1), thinLine),
      label(point(end.x - 5, height), speaker.length(mm(y - from)), {
        size: SIZE,
        align: 'end',
        bold: true,
      }),
      label(point(end.x - 20, height), name, { ...SMALL, align: 'end' }),
    ];
  });
  return [
    ...words,
    label(
      point(left - 8, (top + at(0, shape.length).y) / 2),
      raised ? papers.downFromLine : papers.downFromTop,
      {
        ...SMALL,
        align: 'middle',
        baseline: 'middle',
        angle: radians(-Math.PI / 2),
      },
    ),
  ];
}

/** Raw top edge of a panel before its top is raised or lowered: of a ring at the sides, which lie highest. */
const levelTop = ({ apex, topAllowance }: PanelShape): number =>
  apex ? (apex.waistRadius - topAllowance) * Math.cos(apex.halfSweep) - apex.waistRadius : -topAllowance;

/** Distances across from the fold, each at its dot. */
export function acrossMarks({ skirt }: SkirtPlan, speaker: Speaker, frame: FoldFrame): Mark[] {
  const { papers } = speaker.words;
  const { marks } = skirt;
  const { shape } = skirt.panels[0];
  const beside = frame.right - frame.left < ROOM_FOR_WORDS;
  const waist = sideAt(skirt, marks.waistQuarter.value, 0, frame);
  const hem = sideAt(skirt, marks.hemQuarter.value, shape.length, frame);
  const text = (end: Point, words: string, below: number): Mark =>
    label(point(beside ? end.x + 2.4 : end.x - 2.4, end.y + (beside ? 1.1 : below)), words, {
      size: SIZE,
      align: beside ? 'start' : 'end',
      bold: true,
      halo: beside ? inks.paper : inks.wash,
    });
  const main = [
    dot(waist, mm(1)),
    text(
      waist,
      speaker.text(papers.waistMark, { value: marks.waistQuarter }),
      frame.at(0, 0).y - waist.y + 4.2,
    ),
    dot(hem, mm(1)),
    text(hem, speaker.text(papers.hemMark, { value: marks.hemQuarter }), -2.2),
  ];
  const mirrored = !shape.apex && marks.hemQuarter.value > marks.waistQuarter.value;
  if (!mirrored) return main;
  const casingEnd = frame.at(marks.casingEnd.value, -shape.topAllowance);
  const hemEnd = frame.at(marks.hemEnd.value, shape.length + shape.hemAllowance);
  const align = beside ? 'start' : 'end';
  return [
    ...main,
    dot(casingEnd, mm(0.6)),
    label(point(casingEnd.x, casingEnd.y - 1.6), speaker.text(papers.casingEnd, { value: marks.casingEnd }), {
      ...SMALL,
      align,
    }),
    dot(hemEnd, mm(0.6)),
    label(point(hemEnd.x, frame.bottom + 4.4), speaker.text(papers.hemEnd, { value: marks.hemEnd }), {
      ...SMALL,
      align,
    }),
  ];
}

/** The raw side at a level; on a ring that is along its arc. */
function sideAt({ panels }: SkirtPlan['skirt'], quarter: number, y: number, { at }: FoldFrame): Point {
  const { apex } = panels[0].shape;
  if (!apex) return at(quarter, y);
  const radius = apex.waistRadius + y;
  return at(radius * Math.sin(apex.halfSweep), radius * Math.cos(apex.halfSweep) - apex.waistRadius);
}

/** Of straight widths only the width counts: half of it lies on the folded cloth. */
export function widthMark({ skirt }: SkirtPlan, speaker: Speaker, { left, right, top }: FoldFrame): Mark[] {
  const width = boundsOf(skirt.panels[0].shape.cut).width;
  const words = speaker.text(speaker.words.papers.panelWidth, { value: speaker.length(mm(width / 2)) });
  return [label(point((left + right) / 2, top - 2), words, { size: SIZE, align: 'middle', bold: true })];
}

/** The lines square to the fold that curves are measured up from. */
export function curveLines({ skirt }: SkirtPlan, { at }: FoldFrame): Mark[] {
  const { shape } = skirt.panels[0];
  const { apex } = shape;
  if (!apex) return [];
  const reach = (radius: number): number => radius * Math.sin(apex.halfSweep);
  return [
    stroke(polyline([at(0, 0), at(reach(apex.waistRadius), 0)]), thinLine),
    stroke(polyline([at(0, shape.length), at(reach(apex.hemRadius), shape.length)]), thinLine),
  ];
}
