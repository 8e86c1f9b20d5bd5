import { describe, expect, test } from 'vitest';
import { changed, parseRequest, type RequestDocument } from '../request/index.ts';
import { inches, mm, type Mm } from '../units/index.ts';
import { handlesOf, moved, planSkirt, type Handle, type HandleName, type SkirtPlan } from './index.ts';

const planned = (raw: RequestDocument): SkirtPlan => {
  const parsed = parseRequest(raw);
  if (!parsed.ok) throw new Error(JSON.stringify({ errors: parsed.errors, raw }));
  return planSkirt(parsed.request);
};
const handleIn = (plan: SkirtPlan, name: HandleName): Handle => {
  const found = handlesOf(plan).find((handle) => handle.name === name);
  if (!found) throw new Error(`no handle ${name}`);
  return found;
};
const bandEdges = (plan: SkirtPlan): number[] =>
  plan.ribbons.rows
    .filter(({ band }, i, all) => all[i - 1]?.band !== band)
    .map(({ fromHem }) => fromHem.value);

const body = {
  waist: '28 in',
  hip: '36 in',
  waistToHem: '33 in',
  waistToFloor: '40 in',
  height: '5 ft 5 in',
};
/** The document once a handle was brought to `wish`, and its plan. */
const after = (
  raw: RequestDocument,
  name: HandleName,
  wish: Mm,
): { raw: RequestDocument; plan: SkirtPlan } => {
  const document = changed(raw, moved(planned(raw), name, wish));
  return { raw: document, plan: planned(document) };
};
const partOf = (raw: RequestDocument, part: string): unknown => raw[part];

describe('the length', () => {
  test('is written as the finished length, in the measure of the document', () => {
    expect(partOf(after({ body }, 'length', inches(30.1)).raw, 'body')).toEqual({
      ...body,
      waistToHem: '30 1/8 in',
    });
    expect(after({ body, measure: 'metric' }, 'length', mm(801)).raw['body']).toHaveProperty(
      'waistToHem',
      '80.2 cm',
    );
  });

  test('ends at the floor', () => {
    expect(after({ body }, 'length', inches(60)).plan.skirt.finishedLength.value).toBeCloseTo(inches(40), 6);
  });

  test('is not halved by a second take: that one is set away', () => {
    const raw = { body: { ...body, second: { waist: '28 in', waistToHem: '34 in' } } };
    const { raw: document, plan } = after(raw, 'length', inches(31));
    expect(plan.skirt.finishedLength.value).toBeCloseTo(inches(31), 6);
    expect(document['body']).toHaveProperty('second', { waist: '28 in' });
  });

  test('leaves room for the rows that lie on the skirt', () => {
    const raw = { body, ribbons: { rows: 4, highest: '20 in' } };
    expect(after(raw, 'length', mm(0)).plan.ribbons.rows).toHaveLength(4);
  });
});

describe('the marks at the double fold', () => {
  test('of a flared skirt: the waist by its fullness, in few decimals, the hem as a mark of its own', () => {
    const { raw, plan } = after({ body }, 'waistMark', inches(15.75));
    expect(raw['cut']).toEqual({ fullness: 1.75 });
    expect(plan.skirt.marks.waistQuarter.value).toBeCloseTo(inches(15.75), 6);
    expect(after({ body }, 'hemMark', inches(20)).raw['cut']).toEqual({ hemAtFold: '20 in' });
  });

  test('of whole widths: one width more or less', () => {
    const raw = { body, cut: { kind: 'gathered' } };
    const handle = handleIn(planned(raw), 'waistMark');
    const { raw: document, plan } = after(raw, 'waistMark', mm(3.2 * handle.step));
    expect(document['cut']).toEqual({ kind: 'gathered', widths: 3 });
    expect(plan.skirt.panels).toHaveLength(3);
    expect(plan.skirt.marks.waistQuarter.value).toBeCloseTo(3 * handle.step, 6);
  });

  test('of widths cut down: by their fullness; the hem has no mark of its own', () => {
    const raw = { body, cut: { kind: 'gathered', wholeWidths: false, fullness: 2 } };
    const { plan } = after(raw, 'waistMark', inches(20));
    expect(plan.skirt.marks.waistQuarter.value).toBeCloseTo(inches(20), 6);
    expect(moved(plan, 'hemMark', inches(20))).toEqual([]);
  });
});

test('casing and hem: the elastic takes what the casing gets, ease and turn-under stay', () => {
  expect(after({ body }, 'casing', inches(1.5)).raw['waist']).toEqual({ elasticWidth: '1 in' });
  expect(after({ body }, 'hem', inches(2)).raw['cut']).toEqual({ hem: '2 in' });
});

test.each([
  ['turned casing', 'casing'],
  ['separate casing', 'casing'],
  ['drawstring', 'casing'],
  ['flat front', 'band'],
  ['plain waistband', 'band'],
  ['stretch band', 'band'],
] as const)('the %s grows as far as the rows below it let', (kind, name) => {
  const raw = { body, waist: { kind }, ribbons: { rows: 5, highest: '28 in' } };
  const { plan } = after(raw, name, mm(5000));
  expect(plan.ribbons.rows).toHaveLength(5);
  expect(handleIn(plan, name).value).toBeGreaterThan(handleIn(planned(raw), name).value);
});

test('one tuck that the growth makes deeper than anybody would write has no handle', () => {
  const namesOf = (letsDown: string): HandleName[] =>
    handlesOf(planned({ body, measure: 'metric', extras: { tucks: { count: 1, letsDown } } })).map(
      ({ name }) => name,
    );
  expect(namesOf('15 cm')).toContain('tuck');
  expect(namesOf('18 cm')).not.toContain('tuck');
});

describe('rows', () => {
  const fitted = { body, ribbons: { rows: 4, lowest: '2 in', highest: '14 in' } };
  const edges = bandEdges(planned(fitted));

  test('the lowest and the highest of fitted rows are the limits', () => {
    const up = after(fitted, 'row 1', inches(3));
    expect(up.raw['ribbons']).toEqual({ ...fitted.ribbons, lowest: '3 in' });
    expect(bandEdges(up.plan)[0]).toBeCloseTo(inches(3), 6);
    expect(bandEdges(up.plan)[3]).toBeCloseTo(edges[3] ?? NaN, 6);
    const down = after(fitted, 'row 4', inches(12));
    expect(down.raw['ribbons']).toEqual({ ...fitted.ribbons, highest: '12 5/8 in' });
    expect(bandEdges(down.plan)[0]).toBeCloseTo(inches(2), 6);
  });

  test('one between is moved by hand; the others stay', () => {
    const { raw, plan } = after(fitted, 'row 2', mm((edges[1] ?? 0) + inches(0.5)));
    expect(raw['ribbons']).toMatchObject({ spacing: 'by hand', rows: 4 });
    const now = bandEdges(plan);
    expect(now[1]).toBeCloseTo((edges[1] ?? 0) + inches(0.5), 6);
    for (const i of [0, 2, 3]) expect(now[i]).toBeCloseTo(edges[i] ?? NaN, 6);
  });

  test('it goes no further than to its neighbours', () => {
    for (const wish of [mm(0), mm(5000)]) {
      const { plan } = after(fitted, 'row 3', wish);
      expect(plan.ribbons.rows).toHaveLength(4);
      for (const { gapBelow } of plan.ribbons.rows) expect(gapBelow?.value ?? 0).toBeGreaterThan(-1e-9);
      expect(bandEdges(plan)[1]).toBeCloseTo(edges[1] ?? NaN, 6);
      expect(bandEdges(plan)[3]).toBeCloseTo(edges[3] ?? NaN, 6);
    }
  });

  test('a lowest row that lay at the mark above its limit lies there by hand too', () => {
    const raw = { body, ribbons: { ...fitted.ribbons, lowest: '2.03 in' } };
    const { raw: document, plan } = after(raw, 'row 2', inches(6.5));
    expect(document['ribbons']).toHaveProperty('lowest', '2 1/8 in');
    expect(bandEdges(plan)[0]).toBeCloseTo(inches(2.125), 6);
  });

  test('a row within a band takes its band with it; only its first has a gap', () => {
    const rows = [{}, { touching: [{}, {}, {}] }, {}];
    const raw = { body, ribbons: { rows, spacing: 'by hand', gaps: ['1 in', '2 in'] } };
    const { raw: document, plan } = after(raw, 'row 3', inches(4.75));
    expect(plan.ribbons.rows[1]?.fromHem.value).toBeCloseTo(inches(4.125), 6);
    expect(document['ribbons']).toEqual({ rows, spacing: 'by hand', gaps: ['1 1/2 in', '1 1/2 in'] });
    const names = handlesOf(planned(raw)).map(({ name }) => name);
    expect(names.filter((name) => name.startsWith('gap'))).toEqual(['gap 2', 'gap 5']);
  });

  test('a gap takes all above it along, and no gap but itself changes', () => {
    const { plan } = after(fitted, 'gap 3', inches(1));
    const now = bandEdges(plan);
    const by = (now[2] ?? 0) - (edges[2] ?? 0);
    expect(plan.ribbons.rows[2]?.gapBelow?.value).toBeCloseTo(inches(1), 6);
    expect(now.slice(0, 2)).toEqual(edges.slice(0, 2));
    expect((now[3] ?? 0) - (edges[3] ?? 0)).toBeCloseTo(by, 6);
  });

  test('a row alone goes past its own upper limit and takes it along', () => {
    const raw = { body, ribbons: { rows: 1, lowest: '2 in', highest: '4 in' } };
    const { raw: document, plan } = after(raw, 'row 1', inches(10));
    expect(document['ribbons']).toEqual({ rows: 1, lowest: '10 in', highest: '10 5/8 in' });
    expect(bandEdges(plan)[0]).toBeCloseTo(inches(10), 6);
  });
});

test('what the skirt has not, and what stands there already, changes nothing', () => {
  const plan = planned({ body });
  expect(moved(plan, 'row 99', mm(100))).toEqual([]);
  expect(moved(plan, 'gap 1', mm(100))).toEqual([]);
  expect(moved(plan, 'length', mm(NaN))).toEqual([]);
  for (const { name, value } of handlesOf(plan)) expect(moved(plan, name, value)).toEqual([]);
});

test('each end of what a field takes is read, and what is past it is refused', () => {
  const reads = (part: string, fields: object): boolean => parseRequest({ body, [part]: fields }).ok;
  const lengths = [
    ['cut', 'hemAtFold', 50, 3000],
    ['cut', 'hem', 6, 250],
    ['waist', 'elasticWidth', 3, 100],
    ['ribbons', 'lowest', 0, 1800],
  ] as const;
  for (const [part, name, least, most] of lengths) {
    for (const good of [least, most]) expect(reads(part, { [name]: `${String(good)} mm` })).toBe(true);
    for (const bad of [least - 0.1, most + 0.1])
      expect(reads(part, { [name]: `${String(bad)} mm` })).toBe(false);
  }
  for (const fullness of [1, 4]) expect(reads('cut', { fullness })).toBe(true);
  for (const fullness of [0.99, 4.01]) expect(reads('cut', { fullness })).toBe(false);
  for (const widths of [1, 12]) expect(reads('cut', { kind: 'gathered', widths })).toBe(true);
  for (const widths of [0, 13]) expect(reads('cut', { kind: 'gathered', widths })).toBe(false);
});
