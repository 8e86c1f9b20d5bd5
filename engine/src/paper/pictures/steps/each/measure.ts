import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, straight, stroke, type Mark } from '../../../drawing/index.ts';
import { thinLine } from '../../cloth.ts';
import type { FigureCode } from '../../../../words/index.ts';
import { curve } from '../lines.ts';
import { person } from '../person.ts';
import type { Draw } from '../picture.ts';
import { measured, named } from '../wording.ts';

const X = 23;
const FLOOR = 62;
const LINE = 48;
const WORDS = 56;

/** A body with the string tied at the waist, the level tapes, and the length from the string down. */
export const measure: Draw = (scene) => {
  const { speaker, plan } = scene;
  const name = (code: FigureCode): string => [speaker.words.figures[code]].flat()[0] ?? '';
  const { waist, hip, waistToHem } = plan.body;
  const body = person(scene, X, FLOOR, 60);
  const hem = Math.min(FLOOR, body.waist + waistToHem.value * body.scale);
  const words = (at: number, from: number, name: string, value: string): Mark[] => [
    straight(point(LINE + 1, from), point(WORDS - 1, at), thinLine),
    ...named(point(WORDS, at), name, value, { align: 'start', room: 29 }),
  ];
  const level = (y: number, half: number): Mark =>
    straight(point(X + half + 1, y), point(LINE + 1, y), thinLine);
  const marks: Mark[] = [
    level(body.waist, body.halfWaist),
    level(body.hip, body.halfHip),
    straight(point(X + 6, hem), point(LINE + 1, hem), thinLine),
    ...body.marks,
    ...tape(body.waist, body.halfWaist),
    ...tape(body.hip, body.halfHip),
    ...knot(body.waist, body.halfWaist),
    ...words(body.waist - 4, body.waist, name('body.waist'), speaker.value(waist)),
    ...words(body.hip + 1, body.hip, name('body.hip'), speaker.value(hip)),
    measured(point(LINE - 2, body.waist), point(LINE - 2, hem), '', 0),
    ...words(body.hip + 16, body.hip + 12, name('body.waistToHem'), speaker.value(waistToHem)),
  ];
  return { height: 64, marks };
};

/** A tape round the body, level: its front half, as a ring is seen from a little above. */
function tape(y: number, half: number): Mark[] {
  const ring = curve([-1, -0.6, 0, 0.6, 1].map((t) => point(X + t * half, y + 1.1 * (1 - t * t))));
  return [stroke(ring, { width: mm(1.5) }), stroke(ring, { width: mm(0.9), stroke: inks.wash })];
}

/** The string is tied: its two ends hang from the knot. */
function knot(y: number, half: number): Mark[] {
  const x = X - half * 0.5;
  const end = (dx: number, long: number) =>
    curve([point(x, y + 1), point(x + dx, y + 1 + long / 2), point(x + dx * 0.6, y + 1 + long)]);
  return [stroke([end(-1.4, 4), end(0.8, 3.4)], { width: mm(0.4) })];
}
