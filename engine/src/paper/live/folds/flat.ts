import { point, type Point } from '../../../geometry/index.ts';
import { mm, type Mm } from '../../../units/index.ts';
import { arrow, inks, label, rectangle, straight, style, type Ink, type Mark } from '../../drawing/index.ts';
import { bowed } from '../../pictures/steps/signs.ts';
import { note } from '../../pictures/steps/wording.ts';
import { measure, SIZE, WIDTH, type Scene } from './stage.ts';

/** Cloth on the table before it is folded, and the scale that it and its folds are drawn at. */
export interface Flat {
  readonly along: Mm;
  readonly across: Mm;
  readonly scale: number;
}

const LEFT = 21;
const RIGHT = 6;
const TOP = 17;
const ROOM = 44;
const MIDDLE = TOP + ROOM / 2;

export function flatOf({ plan }: Scene): Flat {
  const { kind, table, tableCloth } = plan.cloth.chosen;
  const across = mm(kind === 'lengthwise fold' ? 2 * table.across : table.across);
  const along = tableCloth.value;
  return {
    along,
    across,
    scale: Math.min((WIDTH - LEFT - RIGHT) / Math.max(1, along), ROOM / Math.max(1, across)),
  };
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The flat cloth in the middle of its room. */
function boxOf({ along, across, scale }: Flat): Box {
  const [width, height] = [along * scale, across * scale];
  return { x: LEFT + (WIDTH - LEFT - RIGHT - width) / 2, y: MIDDLE - height / 2, width, height };
}

const cloth = ({ x, y, width, height }: Box, fill: Ink): Mark =>
  rectangle(x, y, width, height, { fill, width: mm(0.35) });

/** A selvage is woven denser: a line runs along it, a little inside. */
const selvage = ({ x, width }: Box, y: number, inside: number, chalk: Ink): Mark =>
  straight(point(x, y + inside), point(x + width, y + inside), { stroke: chalk, width: mm(0.25) });

/** The cloth opened out, with its measures, its selvages and its grain. */
export function flatMarks({ speaker, right, chalk, plan }: Scene, flat: Flat): Mark[] {
  const box = boxOf(flat);
  const { x, y, width, height } = box;
  const { papers, tableEdges } = speaker.words;
  const grey = { size: SIZE, ink: inks.grey } as const;
  const middle = x + width / 2;
  return [
    cloth(box, right),
    selvage(box, y, 0.9, chalk),
    selvage(box, y + height, -0.9, chalk),
    ...note(point(middle, y - 3.4), tableEdges.selvage, grey),
    ...note(point(middle, y + height + 3.6), tableEdges.selvage, grey),
    ...grain(point(middle, y + height / 2), Math.min(30, width * 0.5), papers.grain, chalk, height),
    measure(
      point(x + width, y + height),
      point(x, y + height),
      speaker.value(plan.cloth.chosen.tableCloth),
      -8,
    ),
    ...beside(point(x - 6, y + height / 2), speaker.length(flat.across), x - 7),
    arrow(point(x - 3.4, y), point(x - 3.4, y + height), {
      tail: 'arrow',
      size: mm(1.9),
      style: style({ width: mm(0.2) }),
    }),
  ];
}

/** Mean width of a letter or a figure, for each unit of size. */
const LETTER = 0.58;

/** A length to the left of the cloth: smaller where there is little room for it, for a length is never broken. */
const beside = (at: Point, text: string, room: number): Mark[] =>
  note(at, text, {
    size: mm(Math.min(SIZE, room / (LETTER * Math.max(1, text.length)))),
    align: 'end',
    room,
  });

/** Along the bolt; its name above it where there is room on the cloth. */
function grain(at: Point, long: number, name: string, chalk: Ink, room: number): Mark[] {
  const line = arrow(point(at.x - long / 2, at.y + 1.6), point(at.x + long / 2, at.y + 1.6), {
    tail: 'arrow',
    size: mm(2.2),
    style: style({ stroke: chalk, width: mm(0.3) }),
  });
  if (room < 9) return [line];
  return [line, label(point(at.x, at.y - 0.4), name, { size: SIZE, align: 'middle', ink: chalk })];
}

/** Which half is carried over: the right end onto the left, the left onto the right, or the lower selvage up. */
export type Carried = 'right' | 'left' | 'lower';

/**
 * One fold being made: the half that lies still, the half that was carried over as a ghost, the way it goes, and what
 * the folded cloth then measures. `from` is the part of the flat cloth that lies there before this fold.
 */
export function foldMarks(scene: Scene, flat: Flat, carried: Carried, folded: 1 | 2): Mark[] {
  const whole = boxOf(flat);
  const share = folded === 1 ? 1 : 0.5;
  const { x, y, height } = whole;
  const before: Box = { x, y, width: whole.width * share, height };
  const [still, ghost, crease] = halves(before, carried);
  const { speaker, wrong, chalk } = scene;
  const along = carried === 'lower' ? flat.along : mm((flat.along * share) / 2);
  const across = carried === 'lower' ? mm(flat.across / 2) : flat.across;
  const foot = still.y + still.height;
  return [
    rectangle(ghost.x, ghost.y, ghost.width, ghost.height, {
      dash: 'chalk',
      stroke: inks.grey,
      fill: inks.wash,
      width: mm(0.3),
    }),
    cloth(still, wrong),
    selvage(still, still.y, 0.9, chalk),
    ...(carried === 'lower' ? [] : [selvage(still, foot, -0.9, chalk)]),
    straight(crease[0], crease[1], { width: mm(1) }),
    ...over(before, carried),
    ...sizeOf(scene, still, along, carried === 'lower' ? ghost.y + ghost.height : foot),
    ...beside(
      point(still.x - 3, still.y + still.height / 2),
      carried === 'left' || x < 14 ? '' : speaker.length(across),
      still.x - 4,
    ),
  ];
}

const sizeOf = ({ speaker }: Scene, { x, width }: Box, along: Mm, y: number): Mark[] =>
  width < 22
    ? note(point(x + width / 2, y + 4), speaker.length(along), { size: SIZE })
    : [measure(point(x + width, y), point(x, y), speaker.length(along), -3.4)];

function halves(box: Box, carried: Carried): readonly [Box, Box, readonly [Point, Point]] {
  const { x, y, width, height } = box;
  if (carried === 'lower') {
    const half = { x, width, height: height / 2 };
    const level = y + height / 2;
    return [{ ...half, y }, { ...half, y: level }, [point(x, level), point(x + width, level)]];
  }
  const half = { y, width: width / 2, height };
  const middle = x + width / 2;
  const parts = [
    { ...half, x },
    { ...half, x: middle },
  ] as const;
  const crease = [point(middle, y), point(middle, y + height)] as const;
  return carried === 'right' ? [parts[0], parts[1], crease] : [parts[1], parts[0], crease];
}

function over({ x, y, width, height }: Box, carried: Carried): Mark[] {
  const level = y - 1;
  const rise = Math.min(12, width / 4);
  if (carried === 'lower') {
    const at = x + width * 0.82;
    return bowed(point(at, y + height - 1.5), point(at, y + 1.5), Math.min(9, height / 5));
  }
  const [left, right] = [point(x + 1.5, level), point(x + width - 1.5, level)];
  return carried === 'right' ? bowed(right, left, -rise) : bowed(left, right, rise);
}
