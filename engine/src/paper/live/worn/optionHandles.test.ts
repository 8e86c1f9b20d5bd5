import { describe, expect, test } from 'vitest';
import { handlesOf, moved, planSkirt, type HandleName } from '../../../plan/index.ts';
import { changed } from '../../../request/index.ts';
import { planOf, requestOf, type RawRequest } from '../../../testing/requests.ts';
import { mm } from '../../../units/index.ts';
import { speakerOf } from '../../../testing/speakers.ts';
import type { WornSide } from './stance.ts';
import { wornPicture } from './wornPicture.ts';

const cases: readonly (readonly [HandleName, WornSide, RawRequest])[] = [
  ['tier 1', 'front', { cut: { kind: 'tiered', tiers: 3 } }],
  ['band', 'front', { cut: { kind: 'gored' }, waist: { kind: 'plain waistband' } }],
  ['casing', 'back', { waist: { kind: 'separate casing' } }],
  ['opening', 'back', { cut: { kind: 'gored' }, waist: { kind: 'plain waistband' } }],
  ['slit', 'side', { extras: { slits: {} } }],
  ['pocket', 'side', { extras: { pockets: {} } }],
  ['tuck', 'front', { extras: { tucks: { count: 1, depth: '1/2 in' } } }],
];
const body = { waist: '29 in', hip: '36 in', waistToHem: '31 in' };

describe.each(cases)('the handle of the %s, from the %s', (name, side, raw) => {
  test('goes with the hand', () => {
    const before = planOf(raw);
    const placed = (plan: typeof before) =>
      wornPicture(plan, speakerOf(plan.request), side).handles.find((each) => each.name === name);
    const now = handlesOf(before).find((each) => each.name === name);
    const from = placed(before);
    if (!now || !from) throw new Error(`No handle ${name}`);
    const by = now.value + 4 * now.step <= now.most ? 4 : -4;
    const changes = moved(before, name, mm(now.value + by * now.step));
    const after = planSkirt(requestOf(changed({ ...raw, body }, changes)));
    const to = placed(after);
    const grew = (handlesOf(after).find((each) => each.name === name)?.value ?? NaN) - now.value;
    if (!to) throw new Error(`No handle ${name} any more`);
    const went =
      ((to.at.x - from.at.x) * from.towards.x + (to.at.y - from.at.y) * from.towards.y) * from.perMm;
    expect(Math.abs(grew)).toBeGreaterThan(1);
    expect(Math.abs(went - grew)).toBeLessThan(0.2 * Math.abs(grew) + 2);
  });
});
