import { describe, expect, test } from 'vitest';
import { boundsOf, distance, point, type Point } from '../../../geometry/index.ts';
import { handlesOf, moved, planSkirt, type SkirtPlan } from '../../../plan/index.ts';
import { changed } from '../../../request/index.ts';
import { planOf, requestOf, type RawRequest } from '../../../testing/requests.ts';
import { mm } from '../../../units/index.ts';
import { speakerOf } from '../../../testing/speakers.ts';
import type { PlacedHandle } from '../livePicture.ts';
import { panelPicture } from '../panel.ts';
import { sheetsOf } from './sheet.ts';

const cuts: readonly NonNullable<RawRequest['cut']>[] = [
  { kind: 'flared' },
  { kind: 'gathered', wholeWidths: false, fullness: 1.6 },
  { kind: 'gored', front: 1.4 },
  { kind: 'tiered', tiers: 3 },
  { kind: 'circle', fraction: '1/2' },
  { kind: 'circle', fraction: 'full' },
  { kind: 'wrap' },
];
const waists = [
  'turned casing',
  'separate casing',
  'flat front',
  'drawstring',
  'plain waistband',
  'stretch band',
] as const;
const extras: readonly NonNullable<RawRequest['extras']>[] = [
  {},
  { pockets: {}, slits: { where: 'sides' } },
  { tucks: { count: 2, depth: '1/2 in' } },
  { pockets: {}, slits: { where: 'back' }, tucks: { count: 1, depth: '1/2 in' } },
];
const all: readonly RawRequest[] = cuts.flatMap((cut) =>
  waists.flatMap((kind) => extras.map((extra) => ({ cut, waist: { kind }, extras: extra }))),
);
const body = { waist: '29 in', hip: '36 in', waistToHem: '31 in' };
const picture = (plan: SkirtPlan) => ({
  ...panelPicture(plan, speakerOf(plan.request)),
  sheets: sheetsOf(plan),
});

/** Handles of the cut's own seams, of the waist and of the extras: each lies on the line that it moves. */
const isOption = (name: string): boolean => /^(tier|overlap|casing|band|opening|slit|pocket|tuck)/.test(name);

/** How far along its way a handle lies, in cloth, from what stays when it is moved: its panel's top line, of slits the hem. */
function along(plan: SkirtPlan, { name, towards }: PlacedHandle, at: Point): number {
  const { all: sheets, main, tiers } = sheetsOf(plan);
  const [first] = sheets;
  if (name === 'overlap') return ((at.x - first.side(1, 0).x) * towards.x) / first.scale;
  const sheet = name.startsWith('tier')
    ? (sheets[Number(name.slice(5)) - 1] ?? first)
    : name === 'slit'
      ? main
      : first;
  const { shape, scale } = sheet;
  const top = sheet.at(point(0, 0));
  const apex = sheet.at(point(0, -(shape.apex?.waistRadius ?? 0)));
  const level = shape.apex ? (distance(at, apex) - distance(top, apex)) / scale : (at.y - top.y) / scale;
  const down = name === 'slit' ? level - (tiers ? main : sheet).shape.length : level;
  return ['pocket', 'opening', 'tuck'].includes(name) ? down : -down;
}

interface Found {
  readonly name: string;
  /** By how much the value grew, and by how much of cloth the place went along its way. */
  readonly grew: number;
  readonly went: number;
}

const STEPS = 4;

function movedBy(raw: RawRequest, before: SkirtPlan, handle: PlacedHandle): Found | null {
  const now = handlesOf(before).find(({ name }) => name === handle.name);
  if (!now) return null;
  const by = now.value + STEPS * now.step <= now.most ? STEPS : -STEPS;
  const changes = moved(before, handle.name, mm(now.value + by * now.step));
  const after = planSkirt(requestOf(changed({ ...raw, body }, changes)));
  const then = panelPicture(after, speakerOf(after.request)).handles.find(({ name }) => name === handle.name);
  const value = handlesOf(after).find(({ name }) => name === handle.name)?.value;
  if (!then || value === undefined) return null;
  // A slit that grows past a seam between tiers is taken hold of on the next.
  const tierOf = ({ skirt }: SkirtPlan): number =>
    skirt.rounds.findIndex(({ fromHem }) => fromHem <= (skirt.extras.slits?.takes.to ?? 0));
  if (
    handle.name === 'slit' &&
    (tierOf(before) !== tierOf(after) || tierOf(after) < before.skirt.rounds.length - 1)
  )
    return null;
  const went = along(after, then, then.at) - along(before, handle, handle.at);
  // What the hand would have gone on the drawing, as what the handle makes of it.
  return {
    name: handle.name,
    grew: value - now.value,
    went: went * sheetsOf(before).main.scale * handle.perMm,
  };
}
const nameOf = ({ cut, waist, extras: more = {} }: RawRequest): string =>
  JSON.stringify([cut, waist?.['kind'], Object.keys(more)]);

describe.each(all.map((raw) => [nameOf(raw), raw] as const))('the open panels: %s', (_, raw) => {
  const plan = planOf(raw);
  const { drawing, handles } = picture(plan);

  test('have a place for every handle, within the drawing, none over another', () => {
    const touching = plan.ribbons.rows
      .filter(({ band }, i, rows) => rows[i - 1]?.band === band)
      .map((row) => `row ${String(row.number)}`);
    const names = handlesOf(plan).map(({ name }) => name);
    expect(handles.map(({ name }) => name).sort()).toEqual(names.filter((n) => !touching.includes(n)).sort());
    for (const [i, { at, name, towards }] of handles.entries()) {
      expect(Math.hypot(towards.x, towards.y)).toBeCloseTo(1, 9);
      expect(at.x >= 0 && at.x <= drawing.width && at.y >= 0 && at.y <= drawing.height, name).toBe(true);
      for (const other of handles.slice(i + 1))
        expect(distance(at, other.at), `${name}, ${other.name}`).toBeGreaterThan(3.5);
    }
  });

  test('a handle that is moved goes with the hand', () => {
    const faults: unknown[] = [];
    for (const handle of handles.filter(({ name }) => isOption(name))) {
      const found = movedBy(raw, plan, handle);
      if (!found || Math.abs(found.grew) < 0.5) continue;
      if (Math.abs(found.went - found.grew) > 0.12 * Math.abs(found.grew)) faults.push(found);
    }
    expect(faults).toEqual([]);
  });
});

test('the handles of openings lie on the raw side of a panel', () => {
  const { handles, sheets } = picture(planOf({ extras: { pockets: {}, slits: { where: 'sides' } } }));
  for (const name of ['pocket', 'slit']) {
    const at = handles.find((each) => each.name === name)?.at ?? point(0, 0);
    const box = boundsOf(sheets.main.path(sheets.main.shape.cut));
    expect(at.x).toBeGreaterThan(box.left + 0.6 * box.width);
  }
});
