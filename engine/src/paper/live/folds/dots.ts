import { point, type Point } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { circle, inks, straight, type Mark } from '../../drawing/index.ts';
import { thinLine } from '../../pictures/cloth.ts';
import { spread } from '../../pictures/fit.ts';
import { note } from '../../pictures/steps/wording.ts';
import { rawHalf } from '../panel/sheet.ts';
import { reached, TALLEST, TOP, type Marking, type Packet } from './frame.ts';
import { SIZE, WIDTH, type Scene } from './stage.ts';

/** Between the middles of two notes at the right, of three lines or four. */
const APART = 14.4;
/** From one line of a note to the next. */
const LINE = 4.3;
/** Clear of the drawing's upper edge. */
const CLEAR = 0.6;

interface Dotted {
  readonly marking: Marking;
  readonly at: Point;
  readonly words: string;
}

/** At the right: how far from the folds each dot lies. */
export function dots(scene: Scene, packet: Packet, upTo: Marking): Mark[] {
  const found = (scene.plan.skirt.hang.shape === 'curved' ? curved : straightSide)(scene, packet).filter(
    ({ marking }) => reached(upTo, marking),
  );
  const x = packet.right + 6.5;
  const noteAt = (y: number, { marking, words }: Dotted): Mark[] => {
    const isNew = marking === upTo || upTo === 'joined';
    return note(point(x, y), words, {
      size: SIZE,
      align: 'start',
      room: WIDTH - 1 - x,
      bold: isNew,
      ink: isNew ? inks.ink : inks.grey,
    });
  };
  const heights = spread(
    // A note stands about the height of its dot; of one near the top edge, half its lines would lie off the drawing.
    found.map((dot) => Math.max(dot.at.y, CLEAR + (LINE / 2) * noteAt(0, dot).length)),
    APART,
    TOP + TALLEST - 2,
  );
  return [
    ...ordinates(scene, packet, upTo),
    ...found.flatMap((dot, i): Mark[] => {
      const { at } = dot;
      const y = heights[i] ?? at.y;
      return [
        circle(at, mm(1), { stroke: inks.paper, fill: inks.ink, width: mm(0.25) }),
        straight(point(at.x + 1.3, at.y), point(x - 0.8, y), thinLine),
        ...noteAt(y, dot),
      ];
    }),
  ];
}

function straightSide({ plan, speaker }: Scene, packet: Packet): Dotted[] {
  const { papers } = speaker.words;
  const { marks, panels } = plan.skirt;
  const { length, topAllowance, hemAllowance } = panels[0].shape;
  const side = rawHalf(plan);
  const at = (y: number): Point => packet.at(side(y).x, y);
  const mirrored = marks.hemQuarter.value > marks.waistQuarter.value;
  const end = (y: number, words: string): Dotted[] =>
    mirrored ? [{ marking: 'joined', at: at(y), words }] : [];
  return [
    ...end(-topAllowance, speaker.text(papers.casingEnd, { value: marks.casingEnd })),
    { marking: 'waist', at: at(0), words: speaker.text(papers.waistMark, { value: marks.waistQuarter }) },
    { marking: 'hem', at: at(length), words: speaker.text(papers.hemMark, { value: marks.hemQuarter }) },
    ...end(length + hemAllowance, speaker.text(papers.hemEnd, { value: marks.hemEnd })),
  ];
}

/** Of a curve the dot at its side: across along the line square to the fold, then up. */
function curved({ plan, speaker }: Scene, { at }: Packet): Dotted[] {
  const { papers } = speaker.words;
  const { hang, panels } = plan.skirt;
  const ends = [
    { marking: 'waist', last: hang.waistOrdinates.at(-1), level: 0 },
    { marking: 'hem', last: hang.hemOrdinates.at(-1), level: panels[0].shape.length },
  ] as const;
  return ends.flatMap(({ marking, last, level }): Dotted[] =>
    last
      ? [
          {
            marking,
            at: at(last.across, level - last.up.value),
            words: speaker.text(papers.curveDot, { across: speaker.length(last.across), up: last.up }),
          },
        ]
      : [],
  );
}

/** The dots of a curve, each measured up from its line. */
function ordinates({ plan, chalk }: Scene, { at }: Packet, upTo: Marking): Mark[] {
  const { hang, panels } = plan.skirt;
  const of = (all: typeof hang.hemOrdinates, level: number): Mark[] =>
    all.flatMap(({ across, up }) => [
      straight(at(across, level), at(across, level - up.value), { stroke: chalk, width: mm(0.2) }),
      circle(at(across, level - up.value), mm(0.5), { stroke: null, fill: chalk }),
    ]);
  return [
    ...(reached(upTo, 'waist') ? of(hang.waistOrdinates, 0) : []),
    ...(reached(upTo, 'hem') ? of(hang.hemOrdinates, panels[0].shape.length) : []),
  ];
}
