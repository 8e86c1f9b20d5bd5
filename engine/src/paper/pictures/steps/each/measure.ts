import { point } from '../../../../geometry/index.ts';
import { mm } from '../../../../units/index.ts';
import { inks, straight, stroke, type Mark } from '../../../drawing/index.ts';
import { thinLine } from '../../cloth.ts';
import { curve } from '../lines.ts';
import { person } from '../person.ts';
import type { Draw } from '../picture.ts';
import { measured, note } from '../wording.ts';

const X = 23;
const FLOOR = 62;
const WORDS = 58;

/** A body with the string tied at the waist, the level tapes, and the length from the string down. */
export const measure: Draw = (scene) => {
  const { speaker, plan } = scene;
  const { waist, hip, waistToHem } = plan.body;
  const body = person(scene, X, FLOOR, 60);
  const hem = Math.min(FLOOR + 1, body.waist + waistToHem.value * body.scale);
  const levels: [number, string, string][] = [
    [body.waist, speaker.name(waist), speaker.value(waist)],
    [body.hip, speaker.name(hip), speaker.value(hip)],
  ];
  const words = [body.waist - 4, body.hip + 5];
  const marks: Mark[] = [
    ...body.marks,
    ...tape(body.waist, body.halfWaist),
    ...tape(body.hip, body.halfHip),
    ...string(body.waist, body.halfWaist),
    ...levels.flatMap(([y, name, value], i): Mark[] => {
      const at = words[i] ?? y;
      return [
        straight(point(X + 11, y), point(WORDS - 8, y), thinLine),
        straight(point(WORDS - 8, y), point(WORDS - 1, at), thinLine),
        ...note(point(WORDS, at - 1.9), name, { align: 'start', ink: inks.grey }),
        ...note(point(WORDS, at + 1.9), value, { align: 'start', bold: true }),
      ];
    }),
    straight(point(X + 6, hem), point(WORDS - 8, hem), thinLine),
    measured(point(WORDS - 10, body.waist), point(WORDS - 10, hem), '', 0),
    ...note(point(WORDS, hem - 8), speaker.name(waistToHem), { align: 'start', ink: inks.grey, room: 27 }),
    ...note(point(WORDS, hem - 2), speaker.value(waistToHem), { align: 'start', bold: true }),
  ];
  return { height: 64, marks };
};

/** A tape round the body, level: its front half, sagging no more than a level ring seen from a little above. */
function tape(y: number, half: number): Mark[] {
  const ring = (dy: number) =>
    curve([
      point(X - half, y + dy),
      point(X - half * 0.6, y + 0.8 + dy),
      point(X, y + 1.1 + dy),
      point(X + half * 0.6, y + 0.8 + dy),
      point(X + half, y + dy),
    ]);
  return [stroke(ring(0), { width: mm(1.5) }), stroke(ring(0), { width: mm(0.9), stroke: inks.wash })];
}

/** The string, tied: its two ends hang from a knot. */
const string = (y: number, half: number): Mark[] => [
  stroke(
    [
      curve([point(X - half * 0.5, y + 1), point(X - half * 0.5 - 1.4, y + 3), point(X - half * 0.5 - 0.8, y + 5)]),
      curve([point(X - half * 0.5, y + 1), point(X - half * 0.5 + 0.8, y + 3.2), point(X - half * 0.5 + 0.4, y + 4.4)]),
    ],
    { width: mm(0.4) },
  ),
];
