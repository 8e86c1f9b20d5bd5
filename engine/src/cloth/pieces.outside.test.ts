// Outside source: clipper2-ts, areas of polygons cut by one another: an independent look at every piece on the cloth.
import { areaD, areaPathsD, differenceD, FillRule, intersectD, type PathD } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, boundsOf, flatten, lengthOf, type Path } from '../geometry/index.ts';
import type { Skirt } from '../skirt/index.ts';
import { anyBody } from '../testing/bodies.ts';
import { anyCloth } from '../testing/cloths.ts';
import { anyCut } from '../testing/cuts.ts';
import { planOf, requestOf, type RawRequest } from '../testing/requests.ts';
import { patience, runs } from '../testing/runs.ts';
import { mm } from '../units/index.ts';
import { layAll, type ClothPlan, type Lay, type Table } from './index.ts';
import { unlike } from './testing/unlike.ts';

/** Arcs are flattened to this; a polygon's coordinates are whole steps of 10⁻⁴ mm. */
const FLAT = 0.002;
const STEP = 1e-4;

const polygon = (outline: Path): PathD => {
  const points = flatten(outline, mm(FLAT)).map(({ x, y }) => ({ x, y }));
  return areaD(points) < 0 ? points.toReversed() : points;
};
const areaCut = (paths: readonly PathD[]): number => Math.abs(areaPathsD([...paths]));
const slack = (table: Table): number =>
  (FLAT + 2 * STEP) * Math.max(...table.pieces.map(({ outline }) => lengthOf(outline)));

/** The part of a table where cloth may be cut: a selvage is left along every edge that is one, but the waist's. */
function room(lay: Lay, table: Table, { fabric }: ClothPlan): PathD {
  const left = fabric.selvage.value;
  const waistOnSelvage = lay.kind === 'double fold' && table === lay.table;
  const top = table.top.startsWith('selvage') && !waistOnSelvage ? left : 0;
  const bottom = table.bottom.startsWith('selvage') ? table.across - left : table.across;
  return [
    { x: 0, y: top },
    { x: table.along, y: top },
    { x: table.along, y: bottom },
    { x: 0, y: bottom },
  ];
}

function worst(lay: Lay, table: Table, cloth: ClothPlan): { overlap: number; outside: number } {
  const pieces = table.pieces.map(({ outline }) => ({ path: polygon(outline), box: boundsOf(outline) }));
  let overlap = 0;
  for (const [i, a] of pieces.entries())
    for (const b of pieces.slice(i + 1)) {
      const apart =
        a.box.right < b.box.left ||
        b.box.right < a.box.left ||
        a.box.bottom < b.box.top ||
        b.box.bottom < a.box.top;
      if (!apart) overlap = Math.max(overlap, areaCut(intersectD([a.path], [b.path], FillRule.NonZero, 4)));
    }
  const all = pieces.map(({ path }) => path);
  const outside =
    all.length === 0 ? 0 : areaCut(differenceD(all, [room(lay, table, cloth)], FillRule.NonZero, 4));
  return { overlap, outside };
}

/** Every panel and every part of the skirt's cloth, by name and number. */
const wanted = ({ panels, parts }: Skirt): string[] => {
  const counted = new Map<string, number>();
  const listed = parts
    .filter(({ cloth }) => cloth === 'skirt')
    .flatMap(({ name, count }) =>
      Array.from({ length: count }, () => {
        counted.set(name, (counted.get(name) ?? 0) + 1);
        return `${name} ${String(counted.get(name))}`;
      }),
    );
  return [...panels.map(({ name, number }) => `${name} ${String(number)}`), ...listed].toSorted();
};
const laidOn = (tables: readonly Table[]): string[] =>
  tables
    .flatMap(({ pieces }) => pieces.flatMap(({ panels, parts }) => [...panels, ...parts]))
    .map(({ name, number }) => `${name} ${String(number)}`)
    .toSorted();

function check(skirt: Skirt, cloth: ClothPlan): number {
  const fitting = cloth.lays.filter(({ fits }) => fits);
  const width = cloth.fabric.usable.value + 2 * cloth.fabric.selvage.value;
  const area =
    skirt.panels.reduce((sum, { shape }) => sum + areaOf(shape.cut), 0) +
    skirt.parts.reduce(
      (sum, { shape, count, cloth: of }) => sum + (of === 'skirt' ? count * areaOf(shape.cut) : 0),
      0,
    );
  for (const lay of fitting) {
    const tables: Table[] = [lay.table, ...lay.more];
    expect(laidOn(tables), lay.kind).toEqual(wanted(skirt));
    for (const table of tables) {
      const { overlap, outside } = worst(lay, table, cloth);
      expect(overlap, lay.kind).toBeLessThan(slack(table) + 1e-9);
      expect(outside, lay.kind).toBeLessThan(slack(table) + 1e-9);
    }
    // Layer by layer the outlines are the pieces; an odd width on the crosswise fold leaves one layer over.
    const laid = tables.reduce(
      (sum, { pieces, layers }) =>
        sum + pieces.reduce((of, { outline }) => of + Math.abs(areaOf(outline)) * layers, 0),
      0,
    );
    if (lay.notices.every(({ code }) => code !== 'cloth.oddPanels'))
      expect(laid / area, lay.kind).toBeCloseTo(1, 3);
    // The cloth is what lies on the table unfolded, and what lies beyond.
    const beyond = lay.more.filter(({ where }) => where === 'beyond');
    const unfolded = (lay.table.along * lay.table.across * lay.table.layers) / width;
    expect(unfolded, lay.kind).toBeCloseTo(lay.tableCloth.value, 6);
    expect(lay.clothAfter.value, lay.kind).toBeCloseTo(
      unfolded + beyond.reduce((sum, { along }) => sum + along, 0),
      6,
    );
    expect(area, lay.kind).toBeLessThan(lay.clothAfter.value * width + 1);
    for (const { along, pieces } of beyond)
      expect(Math.max(...pieces.map(({ outline }) => boundsOf(outline).right))).toBeCloseTo(along, 6);
  }
  return fitting.length;
}

const parses = (raw: RawRequest): boolean => {
  try {
    requestOf(raw);
    return true;
  } catch {
    return false;
  }
};
const cuts = ['gored', 'circle', 'tiered', 'wrap'].map((kind) => ({ kind })).filter((cut) => parses({ cut }));
const circles = ['1/4', '1/3', '1/2', '3/4', 'full'].flatMap((fraction) =>
  ['auto', 1, 2, 4].map((pieces) => ({ kind: 'circle', fraction, pieces })),
);
const waists = ['separate casing', 'flat front', 'drawstring', 'plain waistband', 'stretch band'].map(
  (kind) => ({
    kind,
  }),
);
const extras = [
  {},
  { pockets: {} },
  { lining: {} },
  { pockets: { cloth: 'lining' }, lining: {} },
  { slits: {} },
];

const anyDressed = fc.record({
  body: anyBody,
  cut: fc.oneof(anyCut, fc.constantFrom(...cuts), fc.constantFrom(...circles)),
  waist: fc.constantFrom({}, ...waists),
  extras: fc.constantFrom(...extras),
  cloth: anyCloth,
});

describe('every piece of any skirt on any cloth', () => {
  test(
    'is laid once, on none of the others, inside the cloth, and the cloth is as long as they reach',
    patience,
    () => {
      let laid = 0;
      fc.assert(
        fc.property(anyDressed.filter(parses), (raw) => {
          const plan = planOf(raw);
          laid += check(plan.skirt, plan.cloth);
        }),
        { numRuns: runs(150) },
      );
      expect(laid).toBeGreaterThan(100);
    },
  );

  test.each(Object.entries(unlike))('%s', (_, skirt) => {
    for (const width of ['32 in', '44 in', '60 in', '108 in'])
      for (const oneWay of [false, true])
        check(skirt, layAll(skirt, requestOf({ cloth: { width, oneWay } }).cloth));
  });

  test('it does see a piece that lies on another, and one that is missing', () => {
    const skirt = unlike['six gores and a wide front'];
    const cloth = layAll(skirt, requestOf({ cloth: { lay: 'open' } }).cloth);
    const { chosen } = cloth;
    const [first, ...others] = chosen.table.pieces;
    if (!first) throw new Error('there are pieces');
    expect(worst(chosen, { ...chosen.table, pieces: [first, first] }, cloth).overlap).toBeGreaterThan(1000);
    expect(laidOn([{ ...chosen.table, pieces: others }])).not.toEqual(wanted(skirt));
  });
});
