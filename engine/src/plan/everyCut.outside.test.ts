// Sources: ANSUR II (U.S. Army, 2010-2012: 1,986 women, 4,082 men) and NHANES 2017-2018 (CDC/NCHS: everyone of 2 years and over with a
// waist). What is synthetic beside the measurements is told in testing/survey.ts.
import { describe, expect, test } from 'vitest';
import { codesOf, draftOf, type Drafted } from '../testing/drafts.ts';
import { isClosed, selfIntersects } from '../geometry/index.ts';
import { endlessIn } from '../testing/endlessIn.ts';
import type { RawRequest } from '../testing/requests.ts';
import { runs } from '../testing/runs.ts';
import {
  armyMen,
  armyWomen,
  bodyOf,
  lengthsOf,
  people,
  surveysThere,
  type Person,
} from '../testing/survey.ts';

/** Every cut, and the waists of all kinds; circles in all their shares, for they are the most unlike. */
const cuts: readonly NonNullable<RawRequest['cut']>[] = [
  { kind: 'flared' },
  { kind: 'gathered' },
  { kind: 'gored', gores: 4 },
  { kind: 'gored', gores: 6, front: 1.4 },
  { kind: 'gored', gores: 10 },
  { kind: 'tiered', tiers: 2 },
  { kind: 'tiered', tiers: 5 },
  { kind: 'circle', fraction: '1/4' },
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
const ways = cuts.flatMap((cut) => waists.map((kind) => ({ cut, waist: { kind } })));

const HAIR = 0.05;

/** What must hold of any skirt on anybody, or be told of by the notices that are named. */
function faultsOf({ skirt, context }: Drafted): string[] {
  const faults: string[] = [];
  const codes = codesOf(skirt);
  const told = (...any: readonly string[]): boolean => any.some((code) => codes.includes(code));
  const must = (holds: boolean, what: string): void => {
    if (!holds) faults.push(what);
  };
  const { body, stride } = context;
  faults.push(...endlessIn(skirt));
  must(skirt.opening.value > 0 && skirt.hemRound.value > 0, 'has a top and a hem');
  const pulledOn = skirt.waist.closure === null && skirt.overlap === null;
  must(
    !pulledOn || skirt.opening.value >= body.hip.value + 25.4 - HAIR || told('skirt.doesNotGoOn'),
    'goes on, or says that it does not',
  );
  const everyday = stride.everyday?.value ?? 0;
  must(
    skirt.overlap !== null ||
      skirt.hemRound.value >= everyday - HAIR ||
      codes.some((code) => /^skirt\.(hem|slit)/.test(code)),
    'can be walked in, or says that it can not',
  );
  const needsRound = ['turned', 'strip', 'stretch band'].includes(skirt.waist.build);
  must(!skirt.overlap || !needsRound || told('waist.needsRound'), 'says that a casing needs a round');
  const { apex } = skirt.panels[0].shape;
  const tight = skirt.waist.build === 'turned' && apex !== null && apex.waistRadius < 250;
  must(!tight || told('skirt.casingTight'), 'says that its casing is too tight to turn');
  return faults;
}

/** Crossing outlines are looked for on one skirt in so many: it takes longer than drafting them. */
const OUTLINES_OF = 15;

function unsound({ skirt }: Drafted): string[] {
  return skirt.panels.flatMap(({ name, shape }) =>
    [shape.edges.flatMap(({ finished }) => finished), shape.trimmed, shape.cut].some(
      (outline) => !isClosed(outline) || selfIntersects(outline),
    )
      ? [`${name} is no sound outline`]
      : [],
  );
}

const groups: readonly (readonly [string, readonly Person[]])[] = [
  ['army women', armyWomen],
  ['army men', armyMen],
  ['nation, 2 to 12 years', people.filter(({ age }) => age < 13)],
  ['nation, 13 years and over', people.filter(({ age }) => age >= 13)],
];

/** Each person is drafted for in so many ways; PROPERTY_RUNS=66 drafts everybody in every way. */
const each = Math.min(ways.length, runs(1));

describe.skipIf(!surveysThere)('every cut with every waist', () => {
  const tally = new Map<string, Map<string, number>>();
  const drafted = new Map<string, number>();

  test.each(groups)(
    '%s: a skirt that is sound, or a notice that names the reason',
    { timeout: 60_000 * each },
    (_, group) => {
      const wrong: unknown[] = [];
      group.forEach((person, i) => {
        for (let k = 0; k < each; k++) {
          const way = ways[(i * 7 + k) % ways.length] ?? {};
          const [length = 0.4] = lengthsOf(i + k, 1);
          const raw = { ...way, measure: i % 2 ? 'inches' : 'metric', body: bodyOf(person, length) };
          const skirt = draftOf(raw);
          const faults = [...faultsOf(skirt), ...((i + k) % OUTLINES_OF === 0 ? unsound(skirt) : [])];
          if (faults.length > 0) wrong.push({ ...raw, faults });
          const kind = skirt.skirt.kind;
          drafted.set(kind, (drafted.get(kind) ?? 0) + 1);
          for (const code of new Set(codesOf(skirt.skirt))) {
            const counts = tally.get(code) ?? new Map<string, number>();
            counts.set(kind, (counts.get(kind) ?? 0) + 1);
            tally.set(code, counts);
          }
        }
      });
      expect(wrong.slice(0, 3)).toEqual([]);
    },
  );

  test('share of skirts with each notice, by cut', () => {
    const share = (code: string, kind: string): string =>
      `${((100 * (tally.get(code)?.get(kind) ?? 0)) / (drafted.get(kind) ?? 1)).toFixed(1)} %`;
    const kinds = [...drafted.keys()].toSorted();
    console.table(
      Object.fromEntries(
        [...tally.keys()]
          .toSorted()
          .map((code) => [code, Object.fromEntries(kinds.map((kind) => [kind, share(code, kind)]))]),
      ),
    );
    expect(kinds.length).toBeGreaterThanOrEqual(6);
  });
});
