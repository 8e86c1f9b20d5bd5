import { rightHalf } from '../../cloth/index.ts';
import { boundsOf, point, polyline } from '../../geometry/index.ts';
import type { SkirtPlan } from '../../plan/index.ts';
import { mm, radians } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import { area, drawing, inks, label, straight, type Drawing, type Mark } from '../drawing/index.ts';
import { chalkLine, clothStyle } from './cloth.ts';
import { edgeNames, edgeView } from './edgeView.ts';
import { fitPath, scaleInto, type Fit } from './fit.ts';
import { acrossMarks, curveLines, downMarks, widthMark, type FoldFrame } from './foldMarks.ts';

const WIDTH = 96;
const HEIGHT = 118;
const LEFT = 47;
const RIGHT = 6;
const TOP = 8;
const BELOW = 20;

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
  const frame: FoldFrame = { left: LEFT, right, top: TOP, bottom, at };
  const straightWidths = skirt.marking === 'straight widths';
  const names = edgeNames(plan, speaker);
  const marks: Mark[] = [
    area(cloth, { ...clothStyle, stroke: inks.grey }),
    area(fitPath(half, fit), { ...chalkLine, fill: null, width: mm(0.5) }),
    straight(point(LEFT, TOP), point(LEFT, bottom), { width: mm(0.9) }),
    ...sideWords(names, right, bottom),
    ...downMarks(plan, speaker, frame),
    ...(straightWidths ? widthMark(plan, speaker, frame) : acrossMarks(plan, speaker, frame)),
    ...curveLines(plan, frame),
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

/** What the two upright edges are, along them: which is the centre must never be in doubt. */
function sideWords(
  names: { readonly centre: string; readonly side: string },
  right: number,
  bottom: number,
): Mark[] {
  const middle = (TOP + bottom) / 2;
  const upright = { size: mm(3), align: 'middle', baseline: 'middle', angle: radians(-Math.PI / 2) } as const;
  return [
    label(point(LEFT + 3, middle), names.centre, { ...upright, bold: true, halo: inks.wash }),
    label(point(right + 2.6, middle), names.side, upright),
  ];
}
