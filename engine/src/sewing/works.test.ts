import fc from 'fast-check';
import { expect, test } from 'vitest';
import { anyCircle, anyGored, anyTiered, anyWrap } from '../testing/cuts.ts';
import { anyRequest, planOf } from '../testing/requests.ts';
import { patience, runs } from '../testing/runs.ts';
import type { Work } from '../skirt/index.ts';
import type { SentenceCode, StepId } from './index.ts';

type Plan = ReturnType<typeof planOf>;

/** Any skirt at all: the unusual cuts as often as the others. */
const anySkirt = fc
  .tuple(anyRequest, fc.option(fc.oneof(anyCircle, anyGored, anyTiered, anyWrap), { freq: 3 }))
  .map(([raw, cut]) =>
    // A wrap has a band where no waist is named: what is written of another waist is refused then.
    cut === null ? raw : { ...raw, cut, waist: { kind: 'turned casing', ...raw.waist } },
  );

/** How many of each kind of work, and how long all of them are. */
function summed(works: readonly Work[]): Record<string, readonly [count: number, length: number]> {
  const sums: Record<string, readonly [number, number]> = {};
  for (const { name, count, each } of works) {
    const [counted, length] = sums[name] ?? [0, 0];
    sums[name] = [counted + count, Math.round((length + count * each.value) * 1000) / 1000];
  }
  return sums;
}

const codesOf = ({ sewing }: Plan): SentenceCode[] =>
  sewing.steps.flatMap(({ sentences }) => sentences.map(({ code }) => code));

test('what is sewn of a skirt is sewn in its steps, all of it and once', patience, () => {
  fc.assert(
    fc.property(anySkirt, (raw) => {
      const { skirt, sewing } = planOf(raw);
      const sewn = summed(sewing.steps.flatMap(({ works }) => works));
      const all = summed(skirt.works);
      expect(Object.keys(sewn).sort()).toEqual(Object.keys(all).sort());
      for (const [name, [count, length]] of Object.entries(all)) {
        expect([name, sewn[name]?.[0]]).toEqual([name, count]);
        expect(sewn[name]?.[1], name).toBeCloseTo(length, 1);
      }
    }),
    { numRuns: runs(200) },
  );
});

test('every piece that is not a panel is told of where it is cut', patience, () => {
  fc.assert(
    fc.property(anySkirt, (raw) => {
      const { skirt, sewing } = planOf(raw);
      const cut = sewing.steps.find(({ id }) => id === 'cut');
      const told = (cut?.sentences ?? []).flatMap(({ code, params }) =>
        code === 'cut.part' || code === 'cut.shapedPart'
          ? [[params['part'], code === 'cut.part' ? params['pieces'] : 1]]
          : [],
      );
      const parts = skirt.parts.filter(({ count }) => count > 0);
      const byName = (list: readonly (readonly unknown[])[]) => list.map((each) => each.join(' ')).sort();
      expect(byName(told)).toEqual(byName(parts.map(({ name, count }) => [`part ${name}`, count])));
    }),
    { numRuns: runs(200) },
  );
});

/** What each of these speaks of, which a skirt may lack. */
const speakOf: readonly (readonly [RegExp, (plan: Plan) => boolean])[] = [
  [/^pockets\.|^seams\.pocket/, ({ skirt }) => skirt.extras.pockets !== null],
  [/^slits\.|^seams\.slit/, ({ skirt }) => skirt.extras.slits !== null],
  [/^lining\.|^casing\.lining|^lining/, ({ skirt }) => skirt.extras.lining !== null],
  [/^tucks\./, ({ skirt }) => skirt.extras.tucks?.how === 'tucks'],
  [/^finish\.letDown/, ({ skirt }) => skirt.extras.tucks !== null],
  [/^opening\.|^seams\.opening/, ({ skirt }) => skirt.waist.closure !== null],
  [/^opening\.zip/, ({ skirt }) => skirt.waist.closure?.kind === 'zip'],
  [/^opening\.placket/, ({ skirt }) => skirt.waist.closure?.kind === 'placket'],
  [/^threadElastic|^closeElastic|^measure\.string$/, ({ skirt }) => skirt.waist.elastic !== null],
  [/^casing\.stitch(Seam)?$/, ({ skirt }) => skirt.waist.elastic !== null],
  [/^threadCord|^cordEyelets|^casing\.stitchClosed/, ({ skirt }) => skirt.waist.cord !== null],
  [/^darts\./, ({ skirt }) => skirt.waist.takenUp?.by === 'darts'],
  [/^gather\.tiers|^sewTiers|^seamRows|Strips|^mark\.tier/i, ({ skirt }) => skirt.rounds.length > 1],
  [/^faceEdges|freeEdges|Wrap$|\.across|\.edge$/, ({ skirt }) => skirt.overlap !== null],
  [/^ties|band\.ties/, ({ skirt }) => skirt.parts.some(({ name }) => name === 'tie')],
  [/^hang\./, ({ skirt }) => skirt.hang.mustHang],
  [/^mark\.swing/, ({ skirt }) => skirt.marking === 'swung'],
  [/^chalkRows|^holdRibbon|^stitchRibbon|^pressRows|^cutRibbon/, ({ ribbons }) => ribbons.rows.length > 0],
  [/^mark\.(raised|lowered|rise)/, ({ body }) => Object.values(body.rises).some(({ value }) => value !== 0)],
  [/\.expecting$/, ({ body }) => body.expecting],
  [/\.seated$/, ({ body }) => body.wears === 'seated'],
];

test('no step speaks of what the skirt lacks', patience, () => {
  fc.assert(
    fc.property(anySkirt, (raw) => {
      const plan = planOf(raw);
      for (const code of codesOf(plan))
        for (const [about, has] of speakOf)
          if (about.test(code) && code !== 'cutRibbon.strips' && code !== 'stitchRibbon.edge')
            expect([code, has(plan)]).toEqual([code, true]);
    }),
    { numRuns: runs(200) },
  );
});

test('the order of work: what covers another thing comes after it', patience, () => {
  const order: readonly (readonly [StepId, StepId])[] = [
    ['pockets', 'sideSeams'],
    ['pockets', 'panelSeams'],
    ['pockets', 'joinStrips'],
    ['pockets', 'firstSeams'],
    ['pockets', 'firstJoins'],
    ['firstJoins', 'chalkRows'],
    ['pressRows', 'panelSeams'],
    ['pressRows', 'joinStrips'],
    ['darts', 'sideSeams'],
    ['joinStrips', 'gather'],
    ['gather', 'sewTiers'],
    ['gather', 'band'],
    ['sewTiers', 'seamRows'],
    ['faceEdges', 'band'],
    ['faceEdges', 'hem'],
    ['slits', 'hem'],
    ['opening', 'band'],
    ['bandPrepare', 'band'],
    ['ties', 'band'],
    ['cordEyelets', 'casing'],
    ['lining', 'casing'],
    ['lining', 'casingStrip'],
    ['lining', 'band'],
    ['tucks', 'hem'],
    ['casing', 'threadCord'],
    ['band', 'fasten'],
    ['threadElastic', 'hem'],
    ['threadCord', 'hem'],
    ['fasten', 'hem'],
  ];
  fc.assert(
    fc.property(anySkirt, (raw) => {
      const { steps } = planOf(raw).sewing;
      const before = new Map<StepId, ReadonlySet<StepId>>();
      for (const { id, after } of steps)
        before.set(id, new Set(after.flatMap((each) => [each, ...(before.get(each) ?? [])])));
      for (const [first, then] of order)
        if (before.has(first) && before.has(then))
          expect(before.get(then), `${first} before ${then}`).toContain(first);
    }),
    { numRuns: runs(200) },
  );
});
