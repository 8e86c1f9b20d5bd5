import { boundsOf, line, point, type Path, type Point } from '../../../../geometry/index.ts';
import type { Figure } from '../../../../figure/index.ts';
import { mm } from '../../../../units/index.ts';
import { area, dot, inks, stroke, type Mark } from '../../../drawing/index.ts';
import { chalkLine, foldLine } from '../../cloth.ts';
import { fitInto } from '../fitted.ts';
import { lineTo } from '../lines.ts';
import { shapeOf } from '../panel.ts';
import type { Draw, Scene } from '../picture.ts';
import { head } from '../signs.ts';
import { patch } from '../surface.ts';
import { chalk, ruler } from '../tools/index.ts';
import { measured, note } from '../wording.ts';

/** The figure of one sentence; other sentences of the step name theirs alike. */
function told({ step }: Scene, code: string, name: string): Figure | null {
  const value = step.sentences.find((each) => each.code === code)?.params[name];
  return typeof value === 'object' ? value : null;
}

/** One panel by its own measures: top and hem square to its centre line, the sides joined. */
export const markPiece: Draw = (scene) => {
  const { speaker } = scene;
  const shape = shapeOf(scene);
  const { fitted, ...drawn } = chalked(shape.cut, { left: 28, top: 11, width: 38, height: 40 });
  const { left, top, width, height } = fitted.box;
  const at = (y: number): Point => fitted.at(point(0, y));
  const [upper, lower] = [at(-shape.topAllowance), at(shape.length + shape.hemAllowance)];
  const finished = (name: 'waist' | 'hem'): Path =>
    fitted.path(shape.edges.find((edge) => edge.name === name)?.finished ?? []);
  const [topWidth, hemWidth, length] = ['top', 'hem', 'length'].map((name) =>
    told(scene, 'mark.piece', name),
  );
  const ends = (path: Path, grown: number): [Point, Point] => {
    const { left: from, right: to, bottom } = boundsOf(path);
    return [point(from - grown, bottom), point(to + grown, bottom)];
  };
  const [waistFrom, waistTo] = ends(finished('waist'), 0.4);
  const hem = ends(finished('hem'), 0.4);
  const bottom = top + height;
  return {
    height: 64,
    marks: [
      ...drawn.marks,
      stroke(lineTo([upper.x, top - 2], [upper.x, bottom + 1.4]), { ...foldLine, stroke: inks.ink }),
      ...[finished('waist'), finished('hem')].map((path) => stroke(path, { ...foldLine, width: mm(0.25) })),
      ...[waistFrom, waistTo, ...hem].map((corner) => dot(corner, mm(0.7))),
      chalk({ x: hem[1].x, y: hem[1].y, scale: 0.8 }),
      ...(topWidth ? [measured(waistFrom, waistTo, speaker.value(topWidth), -(waistFrom.y - top) - 4)] : []),
      ...(hemWidth ? [measured(hem[0], hem[1], speaker.value(hemWidth), bottom - hem[0].y + 4)] : []),
      ...(length
        ? [measured(point(left + width + 9, top), point(left + width + 9, bottom), speaker.value(length), 0)]
        : []),
      ...note(point(12, (upper.y + lower.y) / 2), scene.speaker.words.papers.centreLine, {
        room: 21,
        bold: true,
      }),
    ],
  };
};

/** A piece chalked on the wrong side of its cloth. */
function chalked(cut: Path, room: Parameters<typeof fitInto>[1]) {
  const fitted = fitInto(cut, room);
  const { left, top, width, height } = fitted.box;
  const marks: Mark[] = [
    ...patch('wrong', {
      left: left - 4,
      top: top - 3,
      right: left + width + 4,
      bottom: top + height + 3,
      torn: ['left', 'top', 'right', 'bottom'],
    }),
    area(fitted.path(cut), { ...chalkLine, width: mm(0.5) }),
  ];
  return { fitted, marks };
}

const MOST = 4;

/** Each tier's strips across the cloth, one beneath the other, with their length and depth to cut. */
export const markStrips: Draw = (scene) => {
  const { rounds } = scene.plan.skirt;
  const sizes = rounds.map(({ panels }) => boundsOf(panels[0].shape.cut)).slice(0, MOST);
  const widest = Math.max(1, ...sizes.map(({ width }) => width));
  const deep = sizes.reduce((sum, { height }) => sum + height, 0);
  const scale = Math.min(50 / widest, 40 / Math.max(1, deep));
  const left = 7;
  const gap = 4;
  const strips = scene.step.sentences.filter(({ code }) => code === 'mark.tier');
  let y = 8;
  const marks: Mark[] = [];
  const bottom = y + deep * scale + gap * sizes.length - 2;
  marks.push(
    ...patch('wrong', {
      left: 4,
      top: 4,
      right: left + widest * scale + 3,
      bottom,
      torn: ['left', 'right', 'bottom'],
    }),
  );
  for (const [i, { width, height }] of sizes.entries()) {
    const [wide, high] = [width * scale, height * scale];
    const { width: across, length } = strips[i]?.params ?? {};
    marks.push(
      area(lineTo([left, y], [left + wide, y], [left + wide, y + high], [left, y + high], [left, y]), {
        ...chalkLine,
        width: mm(0.5),
      }),
      ...(typeof across === 'object'
        ? [
            measured(
              point(left, y + high / 2),
              point(left + wide, y + high / 2),
              scene.speaker.value(across),
              0,
            ),
          ]
        : []),
      ...(typeof length === 'object'
        ? [
            stroke(lineTo([68, y], [68, y + high]), { width: mm(0.3) }),
            head(point(68, y), point(0, -1), 1.8),
            head(point(68, y + high), point(0, 1), 1.8),
            ...note(point(70, y + high / 2), scene.speaker.value(length), { align: 'start', room: 15 }),
          ]
        : []),
    );
    y += high + gap;
  }
  marks.push(ruler(Math.min(18, widest * scale), { x: left, y: bottom - 4.6 }));
  return { height: Math.max(40, bottom + 3), marks };
};

/** A string held at a dot and swung about it: the short radius for the waist edge, the long one for the hem. */
export const markSwung: Draw = (scene) => {
  const shape = shapeOf(scene);
  const { apex } = shape;
  if (!apex) return markPiece(scene);
  const { speaker } = scene;
  const centre = point(0, -apex.waistRadius);
  // The dot about which the string swings is drawn too.
  const whole: Path = [...shape.cut, line(centre, point(1, -apex.waistRadius))];
  const fitted = fitInto(whole, { left: 6, top: 8, width: 56, height: 46 });
  const { left, top, width, height } = fitted.box;
  const at = fitted.at(centre);
  const out = (radius: number, turns: number): Point => {
    const angle = apex.halfSweep * turns;
    return fitted.at(point(radius * Math.sin(angle), radius * Math.cos(angle) - apex.waistRadius));
  };
  const rawTop = scene.step.sentences.find(({ code }) => code.startsWith('mark.swingTop'))?.params['rawTop'];
  const rawHem = told(scene, 'mark.swingHem', 'rawHem');
  const reach = rawHem?.value ?? apex.hemRadius + shape.hemAllowance;
  const tip = out(reach, 0.34);
  const beyond = out(reach, 0.08);
  const short = typeof rawTop === 'object' ? out(Math.max(1, rawTop.value), -0.3) : null;
  const values = [rawTop, rawHem].flatMap((each) =>
    typeof each === 'object' && each ? [speaker.value(each)] : [],
  );
  const { edgeWaist, edgeHem } = speaker.words.papers;
  return {
    height: Math.max(40, top + height + 8),
    marks: [
      ...patch('wrong', {
        left: left - 3,
        top: top - 3,
        right: left + width + 3,
        bottom: top + height + 3,
        torn: ['left', 'right', 'bottom'],
      }),
      area(fitted.path(shape.cut), { ...chalkLine, width: mm(0.5) }),
      stroke(lineTo([at.x, at.y], [tip.x, tip.y]), { width: mm(0.35) }),
      ...(short
        ? [stroke(lineTo([at.x, at.y], [short.x, short.y]), { width: mm(0.35) }), dot(short, mm(0.6))]
        : []),
      dot(at, mm(1)),
      head(beyond, awayFrom(tip, beyond), 2.4),
      chalk({ x: tip.x, y: tip.y, scale: 0.9 }),
      ...[edgeWaist, edgeHem].flatMap((name, i) => [
        ...note(point(67, 20 + i * 16), name, { align: 'start', room: 17, ink: inks.grey }),
        ...note(point(67, 24.4 + i * 16), values[i] ?? '', { align: 'start', room: 17, bold: true }),
      ]),
    ],
  };
};

function awayFrom(from: Point, to: Point): Point {
  const long = Math.max(0.001, Math.hypot(to.x - from.x, to.y - from.y));
  return point((to.x - from.x) / long, (to.y - from.y) / long);
}
