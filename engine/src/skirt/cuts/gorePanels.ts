import type { Figure } from '../../figure/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { DraftContext } from '../context.ts';
import type { Around, Panel, PanelName, Panels, PanelShape } from '../panel.ts';
import type { TopNeed } from '../top.ts';
import type { Allowances } from './edges.ts';
import { goreFrame, hipSeamOf, mostUp, type GoreHalves } from './goreFrame.ts';
import { allAlike, hipLevelOf, ringed, type GoreLevels } from './goreLevels.ts';
import { goreShape, type NotchWish } from './goreShape.ts';
import type { Gores, Halves } from './goreWidths.ts';
import type { Rise } from './rise.ts';
import { riseOf } from './riseOf.ts';
import { ringOf, ringShape } from './ringShape.ts';

interface Drawing extends Allowances {
  readonly length: Figure<Mm>;
  readonly need: TopNeed;
  readonly margin: Mm;
}

/** The finished half widths of one gore; a fitted top is sewn to what was asked, a hair inside its mark. */
function sewnHalves(
  { seam }: Gores,
  { top, hip, hem, fitted }: GoreLevels,
  name: keyof Halves,
  length: Mm,
): GoreHalves {
  const within = (half: number): Mm => mm(half - seam.value);
  const topHalf = fitted ? (top[name].exact ?? top[name].value) : top[name].value;
  return {
    halfTop: within(topHalf),
    halfHem: within(hem[name].value),
    length,
    hip: hip && { level: hip.level.value, half: within(hip.halves[name].value), seam: hip.level.value },
  };
}

/** The gores of a skirt as they are sewn, sides of one length. */
export function sewnGores(gores: Gores, levels: GoreLevels, length: Mm): Record<keyof Halves, GoreHalves> {
  const [front, other] = [
    sewnHalves(gores, levels, 'front', length),
    sewnHalves(gores, levels, 'other', length),
  ];
  const seam = hipSeamOf([front, other]);
  const joined = (gore: GoreHalves): GoreHalves => ({ ...gore, hip: gore.hip && { ...gore.hip, seam } });
  return { front: joined(front), other: joined(other) };
}

/** From the centre front on, towards the wearer's left. */
export function gorePanels(
  context: DraftContext,
  gores: Gores,
  levels: GoreLevels,
  drawing: Drawing,
): Panels {
  const { length, need, margin, top, hem, left, right } = drawing;
  const allowances = { margin, top, hem, left, right };
  const sewn = sewnGores(gores, levels, length.value);
  const alike = allAlike(levels);
  const round = 2 * (sewn.front.halfTop + gores.others.value * sewn.other.halfTop);
  const kept = keptBy(sewn, top.depth, (STEEPEST * round) / (2 * Math.PI));
  // A skirt that ends above the hips is notched halfway down.
  const level = hipLevelOf(context, need, length.value)?.value ?? length.value / 2;
  const shapeFor = (name: keyof Halves, around: Around): PanelShape => {
    const half = sewn[name];
    const rise = kept(riseOf(context, around));
    const notches = notchesOf(around, mm(length.value - level), name === 'front');
    const raw = levels.top[name].value;
    const gore = goreShape({
      ...half,
      ...allowances,
      ...(levels.fitted ? { chalkedTop: mm(raw - gores.seam.value) } : {}),
      rise,
      notches,
    });
    if (!ringed(levels) || !gore.apex) return gore;
    // Marks of gores that are all alike are arcs from raw side to raw side.
    const ring = ringOf(raw, levels.hem[name].value, length.value);
    return {
      ...ringShape({ ...ring, ...allowances, length: length.value, rise }),
      notches: gore.notches,
    };
  };
  return [
    panelOf(alike ? 'gore' : 'front gore', 1, turnOf(gores, 0), (around) => shapeFor('front', around)),
    ...Array.from({ length: gores.others.value }, (_, i): Panel => {
      const [name, number] = nameOf(gores, alike, i + 1);
      return panelOf(name, number, turnOf(gores, i + 1), (around) => shapeFor('other', around));
    }),
  ];
}

const panelOf = (
  name: PanelName,
  number: number,
  around: Around,
  shapeFor: (around: Around) => PanelShape,
): Panel => ({ name, number, shape: shapeFor(around), around });

/** The front gore lies in the middle of the front; each takes of the round what it has of the top. */
function turnOf({ front, units }: Gores, i: number): Around {
  const half = front.value / units.value / 2;
  if (i === 0) return { from: -half, to: half };
  return { from: half + (i - 1) / units.value, to: half + i / units.value };
}

/** The number of gores is even, so that one of them lies in the middle of the back. */
function nameOf({ others }: Gores, alike: boolean, i: number): readonly [PanelName, number] {
  if (alike) return ['gore', i + 1];
  const back = (others.value + 1) / 2;
  if (i === back) return ['back gore', 1];
  return ['side gore', i < back ? i : i - 1];
}

/** A notch at the hips on both sides, double on seams behind the sides, and one at the centre front. */
function notchesOf({ from, to }: Around, fromHem: Mm, isFront: boolean): readonly NotchWish[] {
  const lines = (turn: number): 1 | 2 => (Math.cos(2 * Math.PI * turn) < -HAIR ? 2 : 1);
  return [
    ...(isFront ? [{ on: 'waist', share: 0.5, use: 'centre', lines: 1 } as const] : []),
    { on: 'left', fromHem, use: 'hip', lines: lines(from) },
    { on: 'right', fromHem, use: 'hip', lines: lines(to) },
  ];
}

const HAIR = 1e-9;

/** What a dip may take of the side above the hips, or of the panel's length. */
const MOST_OF_SIDE = 0.5;
const MOST_OF_LENGTH = 0.4;
/** How much a top rises for each unit across where it is steepest, half-way from front to back: 2 in in front on a waist of 25. */
const STEEPEST = 0.5;

/** The rise that all the gores can have alike, so that their seams stay of one length. */
function keptBy(
  { front, other }: Record<keyof Halves, GoreHalves>,
  depth: Mm,
  steepest: number,
): (rise: Rise) => Rise {
  const bounds = [front, other].map((gore) => {
    const { radius, at } = goreFrame(gore);
    if (!gore.hip) return { dip: MOST_OF_LENGTH * gore.length, up: mostUp(radius, depth) };
    const lean = at(gore.hip.level, 1).x - gore.halfTop;
    return { dip: MOST_OF_SIDE * (gore.hip.seam - Math.max(0, lean)), up: Infinity };
  });
  const dip = Math.min(steepest, ...bounds.map((each) => each.dip));
  const up = Math.min(steepest, ...bounds.map((each) => each.up));
  const within = (each: Mm): Mm => mm(Math.max(-dip, Math.min(up, each)));
  return ({ left, centre, right }) => ({ left: within(left), centre: within(centre), right: within(right) });
}
