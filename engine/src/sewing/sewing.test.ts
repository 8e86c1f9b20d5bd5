import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lengthOf } from '../geometry/index.ts';
import type { SkirtPlan } from '../plan/index.ts';
import { anyRequest, planOf, type RawRequest } from '../testing/requests.ts';
import { patience, runs } from '../testing/runs.ts';
import { inches } from '../units/index.ts';
import type { Caution, SentenceCode, Step, StepId } from './index.ts';

type Plan = ReturnType<typeof planOf>;
const stepOf = ({ sewing }: Plan, id: StepId): Step => {
  const found = sewing.steps.find((step) => step.id === id);
  if (!found) throw new Error(`no step ${id}`);
  return found;
};
const has = ({ sewing }: Plan, id: StepId) => sewing.steps.some((step) => step.id === id);
const codes = (step: Step) => step.sentences.map(({ code }) => code);
const stepSaying = ({ sewing }: Plan, code: SentenceCode) =>
  sewing.steps.find(({ sentences }) => sentences.some((each) => each.code === code))?.id;

/** All that must be done before a step, by the graph alone. */
function before(plan: Plan, id: StepId, seen = new Set<StepId>()): ReadonlySet<StepId> {
  for (const each of stepOf(plan, id).after)
    if (!seen.has(each)) {
      seen.add(each);
      before(plan, each, seen);
    }
  return seen;
}
const comesBefore = (plan: Plan, first: StepId, then: StepId) => before(plan, then).has(first);

describe('the steps of any skirt', () => {
  test(
    'make a graph: each waits for steps that there are, none for itself, and they are told in an order it allows',
    patience,
    () => {
      fc.assert(
        fc.property(anyRequest, (raw) => {
          const { steps } = planOf(raw).sewing;
          const done = new Set<StepId>();
          for (const { id, after } of steps) {
            expect(done.has(id)).toBe(false);
            for (const each of after) expect(done, `${id} after ${each}`).toContain(each);
            done.add(id);
          }
          // Nothing is left hanging: the skirt is finished only when all else is done.
          const plan = planOf(raw);
          expect(before(plan, 'finish').size).toBe(steps.length - 1);
        }),
        { numRuns: runs(200) },
      );
    },
  );

  test('say something each, and take time', patience, () => {
    fc.assert(
      fc.property(anyRequest, (raw) => {
        const { steps, hands, wait } = planOf(raw).sewing;
        for (const step of steps) {
          expect(step.sentences.length).toBeGreaterThan(0);
          expect(step.hands.value).toBeGreaterThan(0);
          expect(step.wait.value).toBeGreaterThanOrEqual(0);
        }
        expect(hands.value).toBeCloseTo(
          steps.reduce((sum, step) => sum + step.hands.value, 0),
          6,
        );
        expect(wait.value).toBeCloseTo(
          steps.reduce((sum, step) => sum + step.wait.value, 0),
          6,
        );
      }),
      { numRuns: runs(200) },
    );
  });
});

describe('what makers tell one another', () => {
  const plan = planOf();
  const told: [SentenceCode, StepId, string][] = [
    ['colourTest.dab', 'colourTest', 'colours are tested for fastness'],
    ['cut.frontBack', 'cut', 'front and back are marked'],
    ['cut.pinLayers', 'cut', 'layers are pinned before four are cut at once'],
    ['cutRibbon.sealant', 'cutRibbon', 'ribbon ends are sealed'],
    ['stitchRibbon.sameWay', 'stitchRibbon', 'both edges are sewn in the same direction'],
    ['pressRows.cool', 'pressRows', 'satin is pressed cool under a cloth'],
    ['sideSeams.match', 'sideSeams', 'rows are matched at the side seams'],
    ['mark.chalkScrap', 'mark', 'chalk is tried on a scrap'],
    ['testStitch.scrap', 'testStitch', 'a stitch is tested on a scrap'],
    ['closeElastic.catch', 'closeElastic', 'elastic is caught at each side seam'],
  ];
  test.each(told)('%s in %s: %s', (code, id) => {
    expect(codes(stepOf(plan, id))).toContain(code);
  });

  test('a pattern that has to meet is pinned line to line before its seams are sewn, and only such a one', () => {
    const striped = planOf({ cloth: { pattern: { across: '4 cm' } } });
    const [first] = codes(stepOf(striped, 'sideSeams'));
    expect(first).toBe('seams.pattern');
    for (const cloth of [{}, { pattern: { across: '4 cm', match: false } }])
      expect(stepSaying(planOf({ cloth }), 'seams.pattern')).toBeUndefined();
    const gored = planOf({ cut: { kind: 'gored' }, cloth: { pattern: { across: '4 cm' } } });
    expect(stepSaying(gored, 'seams.pattern')).toBeDefined();
  });

  test('colours are tested before cloth and ribbon meet water', () => {
    for (const raw of [
      {},
      { ribbons: { washed: false } },
      { cloth: { washed: true }, ribbons: { washed: false } },
    ]) {
      const washed = planOf(raw);
      expect(comesBefore(washed, 'colourTest', 'prewash')).toBe(true);
      expect(washed.sewing.steps.filter(({ station }) => station === 'wash').map(({ id }) => id)).toEqual([
        'colourTest',
        'prewash',
      ]);
    }
  });

  test('ribbon that is to be washed is cut after its wash; no strip is cut before the body is measured', () => {
    expect(comesBefore(planOf({ ribbons: { washed: false } }), 'prewash', 'cutRibbon')).toBe(true);
    expect(
      comesBefore(planOf({ cloth: { washed: true }, ribbons: { washed: false } }), 'prewash', 'cutRibbon'),
    ).toBe(true);
    expect(comesBefore(plan, 'measure', 'cutRibbon')).toBe(true);
  });

  test('nothing is washed twice: washed cloth and ribbon go straight to the iron', () => {
    expect(has(planOf({ cloth: { washed: true } }), 'prewash')).toBe(false);
  });

  test('cloth is straightened and trimmed before rows are chalked', () => {
    for (const where of ['front and back', 'round']) {
      const rows = planOf({ ribbons: { where } });
      for (const first of ['straighten', 'trim'] as const)
        expect(comesBefore(rows, first, 'chalkRows')).toBe(true);
    }
  });

  test('chalk and stitch are tried before they are used', () => {
    const order = codes(stepOf(plan, 'mark'));
    expect(order[0]).toBe('mark.chalkScrap');
    for (const then of ['stitchRibbon', 'sideSeams'] as const)
      expect(comesBefore(plan, 'testStitch', then)).toBe(true);
  });

  test('layers are pinned before they are cut', () => {
    const order = codes(stepOf(plan, 'cut'));
    expect(order[0]).toBe('cut.pinLayers');
    expect(stepOf(plan, 'cut').sentences[0]?.params).toEqual({ layers: 4 });
  });

  test('gathers are evened before the casing is closed over the elastic, and before it is caught', () => {
    const order = codes(stepOf(plan, 'closeElastic'));
    expect(order).toContain('closeElastic.even');
    for (const then of ['closeElastic.opening', 'closeElastic.catch'] as const)
      expect(order.indexOf('closeElastic.even')).toBeLessThan(order.indexOf(then));
  });

  test('elastic is threaded, pinned and tried on before it is stitched', () => {
    expect(codes(stepOf(plan, 'threadElastic'))).toEqual([
      'threadElastic.cut',
      'threadElastic.thread',
      'threadElastic.pin',
      'threadElastic.tryOn',
    ]);
    expect(stepOf(plan, 'threadElastic').station).toBe('table');
    expect(stepOf(plan, 'closeElastic').after).toEqual(['threadElastic']);
  });

  test('a selvage needs no overlocking', () => {
    expect(codes(stepOf(planOf({ cut: { kind: 'gathered' } }), 'finishEdges'))).toContain(
      'finishEdges.selvage',
    );
    expect(stepSaying(plan, 'finishEdges.selvage')).toBeUndefined();
  });

  test('on the double fold the waist is the selvage', () => {
    const straight = planOf({ cut: { kind: 'flared', hemline: 'straight' } });
    expect(straight.cloth.chosen.kind).toBe('double fold');
    expect(codes(stepOf(straight, 'casing'))).toContain('casing.selvage');
  });

  test('spray is held about 12 in away', () => {
    const sprayed = stepOf(planOf({ ribbons: { hold: 'spray' } }), 'holdRibbon');
    const spray = sprayed.sentences.find(({ code }) => code === 'holdRibbon.spray');
    expect(spray?.params).toMatchObject({ distance: { value: inches(12) } });
  });

  test('rows on one side alone are not matched at the seams', () => {
    for (const where of ['front', 'back'])
      expect(stepSaying(planOf({ ribbons: { where } }), 'sideSeams.match')).toBeUndefined();
  });
});

describe('ways to go', () => {
  test.each(['pins', 'glue', 'spray'] as const)('ribbon is held with %s', (hold) => {
    const step = stepOf(planOf({ ribbons: { hold } }), 'holdRibbon');
    expect(codes(step)).toContain(`holdRibbon.${hold}`);
    expect(codes(step).filter((code) => /^holdRibbon\.(pins|glue|spray)$/.test(code))).toHaveLength(1);
    expect(step.wait.value > 0).toBe(hold === 'glue');
  });

  test('an overlocker, or the zigzag without one', () => {
    const overlocked = stepOf(planOf({ sewing: { overlocker: true } }), 'finishEdges');
    expect([overlocked.station, overlocked.stitch, codes(overlocked)[0]]).toEqual([
      'overlocker',
      null,
      'finishEdges.overlock',
    ]);
    const zigzagged = stepOf(planOf(), 'finishEdges');
    expect([zigzagged.station, zigzagged.stitch?.stitch, codes(zigzagged)[0]]).toEqual([
      'machine',
      '304',
      'finishEdges.zigzag',
    ]);
  });

  test('a motif is sewn on after the rows and before the side seams; without rows, on the bare panel', () => {
    const motif = planOf({ sewing: { applique: true } });
    expect(comesBefore(motif, 'pressRows', 'applique')).toBe(true);
    expect(comesBefore(motif, 'applique', 'sideSeams')).toBe(true);
    const bare = planOf({ sewing: { applique: true }, ribbons: { rows: 0 } });
    expect(comesBefore(bare, 'trim', 'applique')).toBe(true);
    expect(comesBefore(bare, 'applique', 'sideSeams')).toBe(true);
    expect(has(planOf(), 'applique')).toBe(false);
  });

  test.each([2, 3, 5])('rows that go round %s widths are sewn after all seams but one', (widths) => {
    const plan = planOf({ cut: { kind: 'gathered', widths }, ribbons: { where: 'round' } });
    const first = stepOf(plan, 'firstSeams');
    expect(first.sentences[0]?.params['seams']).toBe(widths - 1);
    expect(comesBefore(plan, 'firstSeams', 'chalkRows')).toBe(true);
    expect(comesBefore(plan, 'stitchRibbon', 'sideSeams')).toBe(true);
    expect(
      stepOf(plan, 'sideSeams').sentences.find(({ code }) => code === 'sideSeams.sew')?.params['seams'],
    ).toBe(1);
  });

  test('one width has no seam but the last: rows go round it flat', () => {
    const plan = planOf({
      cut: { kind: 'gathered', widths: 1 },
      cloth: { width: '108 in' },
      ribbons: { where: 'round' },
    });
    expect(has(plan, 'firstSeams')).toBe(false);
    expect(stepOf(plan, 'chalkRows').after).toEqual(['trim']);
  });

  test('every seam is sewn once: first ones and last ones make up all, rows or no rows', () => {
    for (const rows of [0, 4])
      for (const where of ['round', 'front and back', 'front'])
        for (const widths of [1, 2, 4]) {
          const plan = planOf({ cut: { kind: 'gathered', widths }, ribbons: { where, rows } });
          const seams = plan.sewing.steps
            .flatMap(({ sentences }) => sentences)
            .filter(({ code }) => code === 'firstSeams.round' || code === 'sideSeams.sew')
            .reduce((sum, { params }) => sum + Number(params['seams']), 0);
          expect(seams).toBe(plan.skirt.sideSeams);
        }
  });

  test('a skirt off the grain hangs a day before its rows are chalked', () => {
    const plan = planOf({ cut: { kind: 'flared', hemAtFold: '28 in' }, cloth: { width: '60 in' } });
    expect(plan.skirt.hang.mustHang).toBe(true);
    expect(stepOf(plan, 'hang').wait.value).toBe(24 * 60);
    expect(comesBefore(plan, 'hang', 'chalkRows')).toBe(true);
    expect(has(planOf({ cut: { kind: 'gathered' } }), 'hang')).toBe(false);
  });

  test('the needle is threaded for each change of colour from row to row', () => {
    const threadings = (colours: readonly string[], rows: number) => {
      const thread = stepOf(planOf({ ribbons: { rows, colours } }), 'stitchRibbon').sentences.find(
        ({ code }) => code === 'stitchRibbon.thread',
      );
      return thread?.params['changes'];
    };
    expect(threadings(['red'], 6)).toMatchObject({ value: 1 });
    expect(threadings(['red', 'white'], 6)).toMatchObject({ value: 6 });
  });
});

describe('cautions', () => {
  const shortly = (plan: Plan, caution: Caution) =>
    plan.sewing.steps.findIndex(({ cautions }) => cautions.includes(caution));
  const firstWhere = (plan: Plan, wanted: (step: Step) => boolean) => plan.sewing.steps.findIndex(wanted);

  test(
    'iron, blades, needle, spray and flame each have theirs at or before the first step that uses them',
    patience,
    () => {
      fc.assert(
        fc.property(anyRequest, (raw) => {
          const plan = planOf(raw);
          const uses: readonly (readonly [Caution, (step: Step) => boolean])[] = [
            ['hotIron', ({ station }) => station === 'iron'],
            ['needle', ({ station }) => station === 'machine' || station === 'overlocker'],
            ['shears', ({ id }) => ['straighten', 'cut', 'trim', 'cutRibbon'].includes(id)],
            ['spray', (step) => codes(step).includes('holdRibbon.spray')],
            ['flame', (step) => codes(step).includes('cutRibbon.flame')],
            ['pins', (step) => codes(step).some((code) => /pin/i.test(code))],
            ['hotWater', ({ id }) => id === 'prewash'],
          ];
          for (const [caution, isUse] of uses) {
            const use = firstWhere(plan, isUse);
            if (use < 0) continue;
            const told = shortly(plan, caution);
            expect(told, caution).toBeGreaterThanOrEqual(0);
            expect(told, caution).toBeLessThanOrEqual(use);
          }
        }),
        { numRuns: runs(200) },
      );
    },
  );

  test('every step at the iron after the rows are on warns of satin', () => {
    for (const step of planOf().sewing.steps.filter(({ station }) => station === 'iron'))
      expect(
        step.cautions.some(
          (each) => each === 'satinIron' || (each === 'hotIron' && step.id === 'pressCloth'),
        ),
      ).toBe(true);
  });

  test('flame and spray in one plan are never without a notice', patience, () => {
    fc.assert(
      fc.property(anyRequest, (raw) => {
        const plan = planOf(raw);
        const both = shortly(plan, 'flame') >= 0 && shortly(plan, 'spray') >= 0;
        const told = plan.notices.some(({ notice }) => notice.code === 'supplies.flameAndSpray');
        expect(told).toBe(both);
      }),
      { numRuns: runs(200) },
    );
  });

  test('a hem near the floor warns of stairs and fire', () => {
    const long = planOf({ body: { waistToHem: '39 in', waistToFloor: '40 in' } });
    expect(stepOf(long, 'finish').cautions).toContain('longHem');
    expect(stepOf(planOf(), 'finish').cautions).not.toContain('longHem');
  });
});

describe('time', () => {
  test('a beginner’s six-row skirt is four to seven hours of hands-on work, and its waiting is told apart', () => {
    const { hands, wait } = planOf().sewing;
    expect(hands.value / 60).toBeGreaterThan(4);
    expect(hands.value / 60).toBeLessThan(7);
    expect(wait.value).toBeGreaterThan(120);
  });

  const sewnRibbon = ({ ribbons }: SkirtPlan): number =>
    ribbons.rows
      .flatMap(({ lines }) => lines)
      .reduce((sum, { upper, lower }) => sum + lengthOf(upper) + lengthOf(lower), 0);

  test('more rows never take less time, nor more skill more', patience, () => {
    const skills = ['experienced', 'practised', 'beginner'] as const;
    fc.assert(
      fc.property(anyRequest, fc.integer({ min: 0, max: 10 }), (raw, rows) => {
        const hands = (count: number, skill: string) =>
          planOf({
            ...raw,
            ribbons: { ...raw.ribbons, rows: count, spacing: 'even' },
            sewing: { ...raw.sewing, skill },
          });
        const few = hands(rows, 'beginner');
        const more = hands(rows + 1, 'beginner');
        // Rows that found no room are not sewn; spread over tiers, more rows can lie on narrower ones and be less ribbon.
        if (more.ribbons.rows.length > few.ribbons.rows.length && sewnRibbon(more) > sewnRibbon(few))
          expect(more.sewing.hands.value).toBeGreaterThan(few.sewing.hands.value);
        const bySkill = skills.map((skill) => hands(rows, skill).sewing.hands.value);
        expect(bySkill.toSorted((a, b) => a - b)).toEqual(bySkill);
      }),
      { numRuns: runs(100) },
    );
  });

  test('a longer skirt, or a wider one, never takes less time', () => {
    const ascending = (raws: readonly RawRequest[]) => {
      const times = raws.map((raw) => planOf(raw).sewing.hands.value);
      expect(times.toSorted((a, b) => a - b)).toEqual(times);
    };
    ascending(
      [24, 28, 32, 36].map((inch) => ({ body: { waistToHem: `${inch} in` }, cut: { kind: 'gathered' } })),
    );
    ascending([1, 2, 3, 4, 5].map((widths) => ({ cut: { kind: 'gathered', widths } })));
  });
});

describe('what a first-time maker stumbled over', () => {
  const numberIn = (step: Step, code: SentenceCode, name: string): number => {
    const param = step.sentences.find((each) => each.code === code)?.params[name];
    if (typeof param !== 'object') throw new Error(`no ${name} in ${code}`);
    return param.value;
  };

  test('on a curve the side dots lie above their lines, on the drafted panel', () => {
    const plan = planOf({ cut: { hemAtFold: '20 in' } });
    const { apex } = plan.skirt.panels[0].shape;
    const mark = stepOf(plan, 'mark');
    for (const [code, radius] of [
      ['mark.curveWaist', apex?.waistRadius ?? NaN],
      ['mark.curveHem', apex?.hemRadius ?? NaN],
    ] as const) {
      expect(numberIn(mark, code, 'across')).toBeCloseTo(radius * Math.sin(apex?.halfSweep ?? NaN), 6);
      const rise = radius * (1 - Math.cos(apex?.halfSweep ?? NaN));
      expect(Math.abs(numberIn(mark, code, 'up') - rise)).toBeLessThanOrEqual(inches(1 / 16) + 1e-9);
    }
    expect(codes(mark)).not.toContain('mark.casingEnd');
    expect(codes(mark)).toContain('mark.curveCut');
  });

  test('on a curve the bottom is a cut length and a rise below the top edge', () => {
    const { marks, hang, panels } = planOf({ cut: { hemAtFold: '20 in' } }).skirt;
    expect(marks.bottom.value).toBeCloseTo(marks.cutLength.value + hang.extraDepth.value, 6);
    const ys = panels[0].shape.cut.flatMap((each) => (each.kind === 'line' ? [each.from.y, each.to.y] : []));
    const lowest = (panels[0].shape.apex?.hemRadius ?? NaN) - (panels[0].shape.apex?.waistRadius ?? NaN);
    expect(marks.bottom.value).toBeGreaterThan(lowest);
    expect(Math.min(...ys)).toBeLessThan(0);
  });

  test('whole widths are sewn inside their selvages, so that strips cut for the usable width are long enough', () => {
    const plan = planOf({ cut: { kind: 'gathered' }, ribbons: { where: 'round' } });
    const { selvage } = plan.cloth.fabric;
    for (const [id, code] of [
      ['firstSeams', 'firstSeams.round'],
      ['sideSeams', 'sideSeams.sew'],
    ] as const)
      expect(numberIn(stepOf(plan, id), code, 'seam')).toBeCloseTo(
        selvage.value + plan.skirt.sideSeamAllowance.value,
        6,
      );
    const flaredPlan = planOf();
    expect(numberIn(stepOf(flaredPlan, 'sideSeams'), 'sideSeams.sew', 'seam')).toBe(
      flaredPlan.skirt.sideSeamAllowance.value,
    );
  });

  test('a seam that ribbons will lie over has its edges finished first', () => {
    const cut = { kind: 'gathered', wholeWidths: false };
    expect(codes(stepOf(planOf({ cut, ribbons: { where: 'round' } }), 'firstSeams'))).toContain(
      'firstSeams.finish',
    );
  });

  test('it is tried on before its hem is sewn', () => {
    expect(comesBefore(planOf(), 'threadElastic', 'hem')).toBe(true);
  });

  test('pinned work says that pins come out before the needle, and liquids have their caution', () => {
    expect(stepOf(planOf(), 'stitchRibbon').cautions).toContain('pins');
    expect(stepOf(planOf({ ribbons: { hold: 'glue' } }), 'holdRibbon').cautions).toContain('liquid');
    expect(stepOf(planOf(), 'cutRibbon').cautions).toContain('liquid');
    expect(stepOf(planOf({ sewing: { overlocker: true } }), 'finishEdges').cautions).toContain('overlocker');
  });
});
