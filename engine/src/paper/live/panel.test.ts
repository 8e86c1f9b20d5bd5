import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distance, endOf, flatten, point, startOf } from '../../geometry/index.ts';
import { handlesOf, moved, type SkirtPlan } from '../../plan/index.ts';
import { anyRequest, planOf } from '../../testing/requests.ts';
import { patience, runs } from '../../testing/runs.ts';
import { mm } from '../../units/index.ts';
import { speakerOf } from '../../testing/speakers.ts';
import { placedTexts, type GroupMark, type Mark } from '../drawing/index.ts';
import { chalkOn, chalks } from '../pictures/chalkOn.ts';
import { panelPicture } from './panel.ts';
import { sheetOf, sheetsOf } from './panel/sheet.ts';
import { levelAt } from './panel/where.ts';
import { finite, outside } from './testing/bounds.ts';
import { anyUnlike } from './testing/unlike.ts';

const plans: Readonly<Record<string, SkirtPlan>> = {
  flared: planOf(),
  curved: planOf({ cut: { kind: 'flared', hemAtFold: '26 in' } }),
  gathered: planOf({ cut: { kind: 'gathered' } }),
  touching: planOf({ ribbons: { rows: [{}, { touching: [{}, { width: '1/4 in' }] }, {}] } }),
  'in French, metric': planOf({ language: 'fr', measure: 'metric' }),
};
const pictureOf = (plan: SkirtPlan) => panelPicture(plan, speakerOf(plan.request));
const groupOf = (marks: readonly Mark[], name: string): GroupMark => {
  const found = marks.find((mark) => mark.kind === 'group' && mark.name === name);
  if (found?.kind !== 'group') throw new Error(`No group ${name}`);
  return found;
};

const unlike: Readonly<Record<string, SkirtPlan>> = {
  gores: planOf({ cut: { kind: 'gored', front: 1.6 } }),
  'fitted gores': planOf({ cut: { kind: 'gored' }, waist: { kind: 'plain waistband' } }),
  tiers: planOf({ cut: { kind: 'tiered', tiers: 3 } }),
  'a circle': planOf({ cut: { kind: 'circle', fraction: 'full' } }),
  'a wrap': planOf({ cut: { kind: 'wrap' } }),
};

describe.each(Object.entries(unlike))('the open panels of %s', (_, plan) => {
  const { drawing, handles } = pictureOf(plan);
  const sheets = sheetsOf(plan);

  test('have every row on each kind of panel that carries it, to one scale', () => {
    for (const row of plan.ribbons.rows) {
      const { marks } = groupOf(drawing.marks, `row ${String(row.number)}`);
      const carrying = sheets.all.filter(({ kind }) =>
        row.lines.some(({ panel, lower }) => lower.length > 0 && kind.panels.includes(panel)),
      );
      const ribbons = marks.filter((mark) => mark.kind === 'path' && mark.closed);
      expect(ribbons).toHaveLength(carrying.length);
      expect(carrying.length).toBeGreaterThan(0);
    }
    expect(new Set(sheets.all.map(({ scale }) => scale)).size).toBe(1);
  });

  test('lie beside one another, or tier below tier, and do not overlap', () => {
    for (const [i, one] of sheets.all.entries())
      for (const other of sheets.all.slice(i + 1))
        expect(one.right <= other.left || one.bottom <= other.top).toBe(true);
  });

  test('have a handle for each row on the level of its own panel', () => {
    for (const row of plan.ribbons.rows) {
      const handle = handles.find(({ name }) => name === `row ${String(row.number)}`);
      if (!handle) throw new Error('No handle');
      const { sheet, y } = levelAt(plan.skirt, sheets, row.fromHem.value + row.width.value / 2);
      expect(sheet.kind.round).toBe(row.round);
      const apex = sheet.shape.apex ? sheet.at(point(0, -sheet.shape.apex.waistRadius)) : null;
      const centre = sheet.at(point(0, y));
      const off = apex ? distance(handle.at, apex) - distance(centre, apex) : handle.at.y - centre.y;
      expect(Math.abs(off)).toBeLessThan(0.05);
      expect(handle.perMm * sheet.scale).toBeCloseTo(1, 9);
    }
  });

  test('have no words outside the drawing', () => {
    expect(outside(drawing)).toEqual([]);
    expect(finite(drawing)).toBe(true);
  });
});

describe.each(Object.entries(plans))('the open panel, %s', (_, plan) => {
  const { drawing, handles } = pictureOf(plan);
  const sheet = sheetOf(plan);
  const handle = (name: string) => {
    const found = handles.find((each) => each.name === name);
    if (!found) throw new Error(`No handle ${name}`);
    return found;
  };

  test('begins with the cloth’s whole area in its own colour', () => {
    const [base] = groupOf(drawing.marks, 'cloth').marks;
    expect(base).toMatchObject({
      kind: 'path',
      closed: true,
      style: { fill: plan.request.cloth.colour.hex },
    });
  });

  test('has every row to scale above the trimmed raw edge', () => {
    const raw = plan.skirt.finishedLength.value + plan.skirt.hemAllowance.value;
    for (const row of plan.ribbons.rows) {
      const [ribbon] = groupOf(drawing.marks, `row ${String(row.number)}`).marks;
      if (ribbon?.kind !== 'path') throw new Error('No ribbon');
      const lowest = Math.max(...ribbon.paths.flatMap((path) => flatten(path)).map(({ y }) => y));
      const expected = sheet.at(point(0, raw)).y - row.fromRawEdge.value * sheet.scale;
      expect(Math.abs(lowest - expected)).toBeLessThan(0.05);
    }
  });

  test('tells each row, both widths, and the length', () => {
    const speaker = speakerOf(plan.request);
    const texts = placedTexts(drawing.marks).map(({ text }) => text);
    for (const { fromRawEdge } of plan.ribbons.rows) expect(texts).toContain(speaker.value(fromRawEdge));
    expect(texts).toContain(speaker.value(plan.skirt.finishedLength));
    if (plan.skirt.marking === 'at the fold')
      for (const mark of [plan.skirt.marks.waistQuarter, plan.skirt.marks.hemQuarter]) {
        const whole = speaker.length(mm(2 * mark.value));
        expect(texts.some((text) => text.includes(whole) && text.includes(speaker.value(mark)))).toBe(true);
      }
  });

  test('has a handle for all that can be taken hold of, no two in one place', () => {
    const { rows } = plan.ribbons;
    const touching = rows
      .filter(({ band }, i) => rows[i - 1]?.band === band)
      .map((row) => `row ${String(row.number)}`);
    const names = handlesOf(plan).map((each) => each.name);
    // Of rows that touch, the lowest moves them all.
    expect(handles.map((each) => each.name).sort()).toEqual(
      names.filter((each) => !touching.includes(each)).sort(),
    );
    for (const [i, one] of handles.entries())
      for (const other of handles.slice(i + 1))
        expect(distance(one.at, other.at), `${one.name}, ${other.name}`).toBeGreaterThan(7.9);
  });

  test('has its handles on the lines that they are named for', () => {
    expect(handle('length').at.y).toBeCloseTo(sheet.at(point(0, plan.skirt.finishedLength.value)).y, 6);
    const hem = plan.skirt.panels[0].shape.edges.find(({ name }) => name === 'hem');
    const ends = hem?.finished.flatMap((each) => [startOf(each), endOf(each)]).map(sheet.at) ?? [];
    if (handles.some(({ name }) => name === 'hemMark')) {
      // The raw side lies a seam's width beyond the finished corner.
      const nearest = Math.min(...ends.map((end) => distance(end, handle('hemMark').at)));
      expect(nearest).toBeLessThan(plan.skirt.sideSeamAllowance.value * sheet.scale * 1.2);
    }
    expect(handle('row 1').towards).toEqual({ x: 0, y: -1 });
    expect(handle('row 1').perMm * sheet.scale).toBeCloseTo(1, 9);
    if (plan.skirt.panels[0].shape.apex === null && plan.skirt.marking === 'at the fold')
      expect(handle('waistMark').perMm * sheet.scale).toBeCloseTo(1, 6);
  });
});

test('a row that is moved up by its handle is drawn higher by as much', () => {
  const plan = planOf();
  const { handles } = pictureOf(plan);
  const row = handles.find(({ name }) => name === 'row 6');
  const now = handlesOf(plan).find(({ name }) => name === 'row 6');
  if (!row || !now) throw new Error('No sixth row');
  expect(moved(plan, 'row 6', mm(now.value + 10 * row.perMm))).not.toEqual([]);
  expect(row.towards.y).toBeLessThan(0);
});

test('light chalk is taken for dark cloth, dark chalk for light cloth', () => {
  for (const dark of ['#1d2c55', '#1f1d1c', '#7d1a22', '#14716f']) expect(chalkOn(dark)).toBe(chalks.light);
  for (const light of ['#fbfaf6', '#dcc8a4', '#f2d13c', '#8fbfe0']) expect(chalkOn(light)).toBe(chalks.dark);
});

test('gores too slender for their names are numbered, and named below', () => {
  const slender = {
    body: { hip: undefined, waist: '250.8 mm', waistToHem: '1564.5 mm', age: 0 },
    cut: { kind: 'gored', frontHem: '50.8 mm', hemRound: '400.8 mm' },
    waist: { kind: 'turned casing' },
  };
  const { drawing } = pictureOf(planOf(slender));
  expect(outside(drawing)).toEqual([]);
  const texts = placedTexts(drawing.marks).map(({ text }) => text);
  expect(texts).toEqual(expect.arrayContaining(['1', '2']));
  expect(texts.some((text) => text.startsWith('1 front gore · 2 '))).toBe(true);
});

test('every other cut gives finite numbers, and no handle without a place', patience, () => {
  fc.assert(
    fc.property(anyUnlike, (raw) => {
      const { drawing, handles } = pictureOf(planOf(raw));
      expect(finite(drawing)).toBe(true);
      expect(outside(drawing)).toEqual([]);
      for (const { at, perMm } of handles) expect([at.x, at.y, perMm].every(Number.isFinite)).toBe(true);
    }),
    { numRuns: runs(40) },
  );
});

test('any request gives finite numbers and no words outside the drawing', patience, () => {
  fc.assert(
    fc.property(anyRequest, (raw) => {
      const plan = planOf(raw);
      const { drawing, handles } = pictureOf(plan);
      expect(finite(drawing)).toBe(true);
      expect(outside(drawing)).toEqual([]);
      for (const { at, perMm } of handles) expect([at.x, at.y, perMm].every(Number.isFinite)).toBe(true);
    }),
    { numRuns: runs(60) },
  );
});
