import { boundsOf, point } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { inks, label, rectangle, straight, stroke, type Mark } from '../../drawing/index.ts';
import { thinLine } from '../../pictures/cloth.ts';
import { edgeNames, edgeView } from '../../pictures/edgeView.ts';
import { spread } from '../../pictures/fit.ts';
import { note } from '../../pictures/steps/wording.ts';
import { dots } from './dots.ts';
import { LEFT, packetOf, reached, TALLEST, TOP, type Marking, type Packet } from './frame.ts';
import { SIZE, WIDTH, type Scene } from './stage.ts';

const LINE = 4.4;
/** Lowest that a level is told: below it the edges are named. */
const LOWEST = TOP + TALLEST + 4.6;

/** The folded cloth with the marks chalked so far, those of this stage in bold; below it its layers from their edge. */
export function packetMarks(scene: Scene, upTo: Marking): Mark[] {
  const packet = packetOf(scene);
  const { right, bottom } = packet;
  const top = packet.at(0, boundsOf(packet.half).top).y;
  const whole = scene.plan.cloth.chosen.headToTail;
  return [
    rectangle(LEFT, top, right - LEFT, bottom - top, { fill: scene.wrong, width: mm(0.3) }),
    straight(point(LEFT, top), point(LEFT, bottom), whole ? { dash: 'fold' } : { width: mm(1) }),
    ...lines(scene, packet, upTo),
    ...levels(scene, packet, upTo),
    ...dots(scene, packet, upTo),
    ...edges(scene),
  ];
}

/** Across the cloth: the lines that casing and hem fold on, where it is trimmed; at last the line to be cut. */
function lines({ plan, chalk }: Scene, packet: Packet, upTo: Marking): Mark[] {
  const { shape } = plan.skirt.panels[0];
  const across = (y: number, look: Parameters<typeof straight>[2]): Mark =>
    straight(packet.at(0, y), point(packet.right, packet.at(0, y).y), { stroke: chalk, ...look });
  const fold = { dash: 'fold', width: mm(0.4) } as const;
  return [
    ...(reached(upTo, 'waist') ? [across(0, fold)] : []),
    ...(reached(upTo, 'length') && !shape.apex
      ? [across(shape.length + shape.hemAllowance, { width: mm(0.2) })]
      : []),
    ...(reached(upTo, 'hem') ? [across(shape.length, fold)] : []),
    ...(upTo === 'joined'
      ? [
          // The last piece of a half panel runs along the fold, where nothing is cut.
          stroke(packet.path(packet.half.slice(0, -1)), { stroke: chalk, dash: 'chalk', width: mm(0.7) }),
        ]
      : []),
  ];
}

/** At the left: how far below the top edge each level lies. */
function levels({ plan, speaker }: Scene, { half, at }: Packet, upTo: Marking): Mark[] {
  const { papers } = speaker.words;
  const { shape } = plan.skirt.panels[0];
  const bounds = boundsOf(half);
  const all: readonly (readonly [Marking, number, string])[] = [
    ['waist', 0, papers.casingFold],
    ['hem', shape.length, papers.hemFold],
    ['length', shape.length + shape.hemAllowance, papers.trimHere],
    ['length', bounds.bottom, papers.cutHere],
  ];
  const found = all.filter(([marking]) => reached(upTo, marking));
  const heights = spread(
    found.map(([, y]) => at(0, y).y),
    LINE,
    LOWEST,
  );
  return found.flatMap(([marking, y, name], i): Mark[] => {
    const end = at(0, y);
    const height = heights[i] ?? end.y;
    const isNew = marking === upTo || upTo === 'joined';
    return [
      straight(point(end.x - 0.9, end.y), point(end.x - 3.4, height), thinLine),
      label(point(end.x - 4, height), speaker.length(mm(y - bounds.top)), {
        size: SIZE,
        align: 'end',
        baseline: 'middle',
        bold: isNew,
        ink: isNew ? inks.ink : inks.grey,
      }),
      label(point(end.x - 20.5, height), name, {
        size: mm(3.5),
        align: 'end',
        baseline: 'middle',
        ink: inks.grey,
      }),
    ];
  });
}

/** How long the layers are drawn, and what is left beside them. */
const LAYERS = 15;

/** Below: the layers seen from their edge, and what the two upright edges are. */
function edges({ plan, speaker }: Scene): Mark[] {
  const names = edgeNames(plan, speaker);
  const y = TOP + TALLEST + 9.4;
  const right = LEFT + LAYERS;
  return [
    ...edgeView(plan, LEFT + 2, right, y),
    ...note(point(LEFT - 5, y + 2.5), names.centre, { size: SIZE, align: 'end', bold: true, room: LEFT - 7 }),
    ...note(point(right + 5, y + 2.5), names.side, { size: SIZE, align: 'start', room: WIDTH - 6 - right }),
  ];
}
