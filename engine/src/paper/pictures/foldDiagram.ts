import { rightHalf } from '../../cloth/index.ts';
import { boundsOf, point, polyline } from '../../geometry/index.ts';
import type { SkirtPlan } from '../../plan/index.ts';
import { mm, radians } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import {
  area,
  arrow,
  dot,
  drawing,
  inks,
  label,
  straight,
  stroke,
  type Drawing,
  type Mark,
} from '../drawing/index.ts';
import { chalkLine, clothStyle, foldLine, thinLine } from './cloth.ts';
import { edgeView, edgeNames } from './edgeView.ts';
import { fitPath, scaleInto, spread, type Fit } from './fit.ts';

const WIDTH = 92;
const HEIGHT = 118;
const LEFT = 40;
const RIGHT = 6;
const TOP = 8;
const BELOW = 20;
const SIZE = mm(3.3);

/**
 * The folded cloth with its cutting marks and nothing else: the centre, with the folds, on the left; the side
 * on the right; below it the layers seen from their edge.
 */
export function foldDiagram(plan: SkirtPlan, speaker: Speaker): Drawing {
  const { skirt } = plan;
  const { shape } = skirt.panels[0];
  const half = rightHalf(shape.cut);
  const bounds = boundsOf(half);
  const room = { width: mm(WIDTH - LEFT - RIGHT), height: mm(HEIGHT - TOP - BELOW) };
  const scale = scaleInto(bounds.width, bounds.height, room);
  const fit: Fit = { scale, dx: LEFT, dy: TOP - bounds.top * scale };
  const right = LEFT + bounds.width * scale;
  const bottom = TOP + bounds.height * scale;
  const at = (x: number, y: number) => point(x * scale + fit.dx, y * scale + fit.dy);
  const cloth = polyline([point(LEFT, TOP), point(right, TOP), point(right, bottom), point(LEFT, bottom)], {
    closed: true,
  });
  const names = edgeNames(plan, speaker);
  const marks: Mark[] = [
    area(cloth, { ...clothStyle, stroke: inks.grey }),
    area(fitPath(half, fit), { ...chalkLine, fill: null, width: mm(0.5) }),
    straight(point(LEFT, TOP), point(LEFT, bottom), { width: mm(0.9) }),
    ...sideWords(names, right, bottom),
    ...downMarks(plan, speaker, at, right),
    ...acrossMarks(plan, speaker, at),
    ...(shape.apex ? curveLines(plan, at) : []),
    ...edgeView(plan, LEFT, right, bottom + 9.5),
  ];
  const { papers } = speaker.words;
  return drawing({
    width: mm(WIDTH),
    height: mm(bottom + BELOW),
    title: papers.markHeading,
    description: speaker.text(papers.altFold, {
      waist: speaker.value(skirt.marks.waistQuarter),
      hem: speaker.value(skirt.marks.hemQuarter),
      length: speaker.value(skirt.marks.cutLength),
    }),
    marks,
  });
}

type At = (x: number, y: number) => ReturnType<typeof point>;

/** What the two upright edges are, along them: which is the centre must never be in doubt. */
function sideWords(
  names: { readonly centre: string; readonly side: string },
  right: number,
  bottom: number,
): Mark[] {
  const middle = (TOP + bottom) / 2;
  const upright = {
    size: mm(3),
    align: 'middle',
    baseline: 'middle',
    bold: true,
    angle: radians(-Math.PI / 2),
  } as const;
  return [
    label(point(LEFT + 3, middle), names.centre, { ...upright, halo: inks.wash }),
    label(point(right + 2.6, middle), names.side, { ...upright, bold: false }),
  ];
}

/** Distances down from the top edge, along the centre. */
function downMarks({ skirt }: SkirtPlan, speaker: Speaker, at: At, right: number): Mark[] {
  const { papers } = speaker.words;
  const { shape } = skirt.panels[0];
  const casing = skirt.waist.topAllowance.value;
  const levels = [
    { y: 0, name: papers.casingFold, line: foldLine },
    { y: shape.length, name: papers.hemFold, line: foldLine },
    { y: shape.length + shape.hemAllowance, name: papers.trimHere, line: thinLine },
    { y: skirt.marks.cutLength.value - casing, name: papers.cutHere, line: null },
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
      label(point(end.x - 5, height), speaker.length(mm(y + casing)), {
        size: SIZE,
        align: 'end',
        bold: true,
      }),
      label(point(end.x - 18, height), name, { size: mm(3), align: 'end', ink: inks.grey }),
    ];
  });
  return [
    ...words,
    label(point(LEFT - 8, (TOP + at(0, shape.length).y) / 2), papers.downFromTop, {
      size: mm(3),
      align: 'middle',
      baseline: 'middle',
      angle: radians(-Math.PI / 2),
      ink: inks.grey,
    }),
  ];
}

/** Distances across from the fold, each at its dot. */
function acrossMarks({ skirt }: SkirtPlan, speaker: Speaker, at: At): Mark[] {
  const { papers } = speaker.words;
  const { marks } = skirt;
  const { shape } = skirt.panels[0];
  const sideAt = (quarter: number, y: number) => {
    if (!shape.apex) return at(quarter, y);
    const radius = shape.apex.waistRadius + y;
    return at(
      radius * Math.sin(shape.apex.halfSweep),
      radius * Math.cos(shape.apex.halfSweep) - shape.apex.waistRadius,
    );
  };
  const dots: [number, number, string, number][] = [
    [marks.waistQuarter.value, 0, speaker.text(papers.waistMark, { value: marks.waistQuarter }), 4.2],
    [marks.hemQuarter.value, shape.length, speaker.text(papers.hemMark, { value: marks.hemQuarter }), -2.2],
  ];
  const main = dots.flatMap(([quarter, y, words, below]): Mark[] => {
    const end = sideAt(quarter, y);
    return [
      dot(end, mm(1)),
      label(point(end.x - 2.4, end.y + below), words, {
        size: SIZE,
        align: 'end',
        bold: true,
        halo: inks.wash,
      }),
    ];
  });
  if (skirt.marking === 'straight widths' || shape.apex) return main;
  const casingEnd = at(marks.casingEnd.value, -shape.topAllowance);
  const hemEnd = at(marks.hemEnd.value, shape.length + shape.hemAllowance);
  const words = {
    casing: speaker.text(papers.casingEnd, { value: marks.casingEnd }),
    hem: speaker.text(papers.hemEnd, { value: marks.hemEnd }),
  };
  const small = { size: mm(3), align: 'end', ink: inks.grey } as const;
  return [
    ...main,
    dot(casingEnd, mm(0.6)),
    label(point(casingEnd.x, casingEnd.y - 1.6), words.casing, small),
    dot(hemEnd, mm(0.6)),
    label(point(hemEnd.x, at(0, skirt.marks.cutLength.value - shape.topAllowance).y + 4.4), words.hem, small),
  ];
}

/** The line square to the fold that curves are measured up from. */
function curveLines({ skirt }: SkirtPlan, at: At): Mark[] {
  const { shape } = skirt.panels[0];
  if (!shape.apex) return [];
  const across = (radius: number): number => radius * Math.sin(shape.apex?.halfSweep ?? 0);
  return [
    stroke(polyline([at(0, 0), at(across(shape.apex.waistRadius), 0)]), thinLine),
    stroke(polyline([at(0, shape.length), at(across(shape.apex.hemRadius), shape.length)]), thinLine),
  ];
}
