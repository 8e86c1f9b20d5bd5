import { describe, expect, test } from 'vitest';
import { planOf, type RawRequest } from '../testing/requests.ts';
import { inches } from '../units/index.ts';
import type { Sentence, SentenceCode, Step, StepId } from './index.ts';
import { measuresOf } from './marks/piece.ts';

type Plan = ReturnType<typeof planOf>;
const stepOf = ({ sewing }: Plan, id: StepId): Step => {
  const found = sewing.steps.find((step) => step.id === id);
  if (!found) throw new Error(`no step ${id}`);
  return found;
};
const ids = (plan: Plan): StepId[] => plan.sewing.steps.map(({ id }) => id);
const codes = (plan: Plan, id: StepId): SentenceCode[] => stepOf(plan, id).sentences.map(({ code }) => code);
const said = (plan: Plan, id: StepId, code: SentenceCode): Sentence => {
  const found = stepOf(plan, id).sentences.find((each) => each.code === code);
  if (!found) throw new Error(`${id} does not say ${code}`);
  return found;
};
const number = (plan: Plan, id: StepId, code: SentenceCode, name: string): number => {
  const value = said(plan, id, code).params[name];
  return typeof value === 'object' ? value.value : Number(value);
};
const child = { age: 8, waist: '23 in', hip: '26 in', waistToHem: '22 in', height: '50 in' };

describe('tiers', () => {
  const tiered = (more: RawRequest = {}) => planOf({ cut: { kind: 'tiered' }, ...more });

  test('each tier is chalked by its strips, and gathered to the one above once its strips are a ring', () => {
    const plan = tiered();
    const marks = stepOf(plan, 'mark').sentences.filter(({ code }) => code === 'mark.tier');
    expect(marks.map(({ params }) => params['strips'])).toEqual(
      plan.skirt.rounds.map(({ panels }) => panels.length),
    );
    const order = ids(plan);
    const at = (id: StepId) => order.indexOf(id);
    expect(at('pressRows')).toBeLessThan(at('joinStrips'));
    expect(at('joinStrips')).toBeLessThan(at('gather'));
    expect(at('gather')).toBeLessThan(at('sewTiers'));
    expect(stepOf(plan, 'gather').stitch?.length.value).toBeGreaterThanOrEqual(4);
    expect(order).not.toContain('sideSeams');
  });

  test('rows that go round go on before the last join of each tier', () => {
    const plan = tiered({ ribbons: { where: 'round', rows: 3 } });
    const joins = plan.skirt.rounds.reduce((sum, { seams }) => sum + seams, 0);
    expect(said(plan, 'firstJoins', 'firstJoins.strips').params['seams']).toBe(
      joins - plan.skirt.rounds.length,
    );
    expect(said(plan, 'joinStrips', 'joinStrips.sew').params['seams']).toBe(plan.skirt.rounds.length);
  });

  test('a row that covers a tier seam goes on after that seam, its ends turned under', () => {
    const rounds = tiered({ ribbons: { where: 'round', rows: 14 } });
    const row = rounds.ribbons.rows.find(({ onSeam }) => onSeam !== null);
    expect(row?.onSeam?.value).toBeGreaterThan(0);
    expect(stepOf(rounds, 'seamRows').after).toContain('sewTiers');
    expect(number(rounds, 'seamRows', 'seamRows.chalk', 'below')).toBe(row?.onSeam?.value);
    expect(codes(rounds, 'seamRows')).toContain('seamRows.lap');
    // It is no row of the flat panels.
    expect(number(rounds, 'chalkRows', 'chalkRows.lowerEdge', 'rows')).toBe(13);
  });
});

describe('panels by their own measures', () => {
  test('widths are those of the drawn panel, raw side to raw side', () => {
    const { skirt } = planOf({ cut: { kind: 'flared', hemline: 'straight' } });
    const of = measuresOf(skirt.panels[0].shape, skirt.margin.value);
    expect(of.top).toBeCloseTo(2 * skirt.marks.waistQuarter.value, 1);
    expect(of.hem).toBeCloseTo(2 * skirt.marks.hemQuarter.value, 1);
    expect(of.hip).toBeNull();
  });

  test('gores are sewn in their order; narrow allowances are pressed to one side, wide ones opened', () => {
    const gored = (sideSeam: string) => planOf({ cut: { kind: 'gored', sideSeam } });
    expect(codes(gored('1/2 in'), 'panelSeams')[0]).toBe('panelSeams.order');
    expect(codes(gored('1/2 in'), 'finishEdges')).toContain('finishEdges.pressOpen');
    expect(codes(gored('1/4 in'), 'finishEdges')).toContain('finishEdges.pressAside');
  });

  test('a fitted gore has its hip line', () => {
    const fitted = planOf({ cut: { kind: 'gored' }, waist: { kind: 'plain waistband' } });
    const top = number(fitted, 'mark', 'mark.piece', 'top');
    const hip = number(fitted, 'mark', 'mark.pieceHip', 'hip');
    expect(hip).toBeGreaterThan(top);
    expect(hip).toBeLessThan(number(fitted, 'mark', 'mark.piece', 'hem'));
  });

  test('a circle is swung at the radii of its drawn piece, allowances with them', () => {
    const plan = planOf({ cut: { kind: 'circle', fraction: 'full' }, waist: { kind: 'separate casing' } });
    const { apex, topAllowance, hemAllowance } = plan.skirt.panels[0].shape;
    expect(number(plan, 'mark', 'mark.swingTopSewn', 'rawTop')).toBeCloseTo(
      (apex?.waistRadius ?? NaN) - topAllowance,
      6,
    );
    expect(number(plan, 'mark', 'mark.swingHem', 'rawHem')).toBeGreaterThanOrEqual(
      (apex?.hemRadius ?? NaN) + hemAllowance,
    );
    expect(ids(plan).indexOf('hang')).toBeLessThan(ids(plan).indexOf('chalkRows'));
    // Its margin stays on while it hangs.
    expect(stepOf(plan, 'trim').after).toEqual(['hang']);
  });

  test.each([
    ['full', 2, 'mark.swingHalf'],
    ['full', 1, 'mark.swingSlit'],
    ['1/4', 1, 'mark.swingSquare'],
    ['3/4', 2, 'mark.swingSides'],
  ] as const)('%s of a circle in %s: how its sides lie', (fraction, pieces, code) => {
    const plan = planOf({ cut: { kind: 'circle', fraction, pieces }, cloth: { width: '108 in' } });
    expect(codes(plan, 'mark')).toContain(code);
  });
});

describe('a wrap', () => {
  test('has its free edges turned in and no closing seam; ribbons turn in with the edge', () => {
    const plan = planOf({ cut: { kind: 'wrap' }, ribbons: { where: 'round' } });
    expect(ids(plan)).not.toContain('panelSeams');
    expect(stepOf(plan, 'chalkRows').after).toEqual(['finishEdges']);
    expect(codes(plan, 'faceEdges')[0]).toBe('faceEdges.rows');
    expect(codes(plan, 'hem')).toContain('hem.stitchAcross');
    expect(codes(plan, 'band')).toContain('band.ties');
  });

  test('one that buttons has them sewn on, and no ties', () => {
    const plan = planOf({ cut: { kind: 'wrap', closes: 'buttons' } });
    expect(ids(plan)).toContain('fasten');
    expect(ids(plan)).not.toContain('ties');
  });
});

describe('waists', () => {
  test('a cord’s holes are made before the casing is turned; on a child it is caught, with a caution', () => {
    const waist = { kind: 'drawstring' };
    const [grown, young] = [planOf({ waist }), planOf({ waist, body: child })];
    expect(stepOf(grown, 'casing').after).toEqual(['cordEyelets']);
    expect(codes(grown, 'threadCord')).not.toContain('threadCord.catch');
    expect(stepOf(grown, 'threadCord').cautions).not.toContain('cord');
    expect(codes(young, 'threadCord')).toContain('threadCord.catch');
    expect(stepOf(young, 'threadCord').cautions).toContain('cord');
  });

  test('a zip wants more than a narrow allowance', () => {
    const waist = { kind: 'plain waistband' };
    expect(codes(planOf({ waist }), 'opening')).toContain('opening.widen');
    const wide = planOf({ waist, cut: { kind: 'flared', sideSeam: '5/8 in' } });
    expect(codes(wide, 'opening')).not.toContain('opening.widen');
    expect(number(wide, 'opening', 'opening.zipBaste', 'below')).toBeCloseTo(
      (wide.skirt.waist.closure?.depth.value ?? NaN) - wide.skirt.waist.above.value,
      6,
    );
  });

  test('a flat front is stiffened and darted or gathered in front alone, its elastic caught at the sides', () => {
    const plan = planOf({ waist: { kind: 'flat front', takeUp: 'darts' } });
    expect(codes(plan, 'bandPrepare')).toContain('bandPrepare.stiffenFront');
    expect(codes(plan, 'darts')).toContain('darts.markFront');
    expect(codes(plan, 'threadElastic')).not.toContain('threadElastic.pin');
    expect(codes(plan, 'closeElastic')).toEqual([
      'closeElastic.evenBack',
      'closeElastic.sides',
      'closeElastic.gaps',
    ]);
  });

  test('a stretch band is sewn with a zigzag; each waist is tried on before the hem', () => {
    const band = planOf({ waist: { kind: 'stretch band' } });
    expect(stepOf(band, 'band').stitch?.stitch).toBe('304');
    for (const kind of ['stretch band', 'plain waistband', 'drawstring', 'separate casing', 'flat front']) {
      const all = planOf({ waist: { kind } });
      const tried = all.sewing.steps.findIndex(({ sentences }) =>
        sentences.some(({ code }) => code.endsWith('.tryOn')),
      );
      expect(tried, kind).toBeGreaterThan(0);
      expect(tried, kind).toBeLessThan(ids(all).indexOf('hem'));
    }
  });
});

describe('extras', () => {
  test('pocket bags go on before the seam that closes round them', () => {
    const flat = planOf({ extras: { pockets: {} } });
    expect(stepOf(flat, 'sideSeams').after).toContain('pockets');
    expect(said(flat, 'sideSeams', 'seams.pocket').params['bags']).toBe(2);
    const round = planOf({ extras: { pockets: {} }, ribbons: { where: 'round' } });
    expect(stepOf(round, 'firstSeams').after).toContain('pockets');
    for (const id of ['firstSeams', 'sideSeams'] as const)
      expect(said(round, id, 'seams.pocket').params['bags']).toBe(1);
  });

  test('tucks are sewn with stitches that come out, and how to let them down is written at the end', () => {
    const plan = planOf({ extras: { tucks: { count: 2 } }, body: child });
    expect(stepOf(plan, 'tucks').stitch?.length.value).toBeGreaterThanOrEqual(4);
    expect(number(plan, 'tucks', 'tucks.chalk', 'lines')).toBe(
      2 * (plan.skirt.extras.tucks?.depth.value ?? NaN),
    );
    expect(codes(plan, 'finish')).toContain('finish.letDown');
    const deep = planOf({ extras: { tucks: { how: 'deep hem' } }, body: child });
    expect(ids(deep)).not.toContain('tucks');
    expect(codes(deep, 'finish')).toContain('finish.letDownHem');
  });

  test('a lining narrower than an ungathered top is not sewn to it all round', () => {
    const wide = planOf({ cut: { kind: 'gathered' }, extras: { lining: {} } });
    expect(codes(wide, 'lining')).toContain('lining.hang');
    expect(codes(wide, 'casing')).not.toContain('casing.lining');
  });
});

describe('bodies', () => {
  test('what is unlike is made at the top, by its own numbers, with cloth left for what is raised', () => {
    const plan = planOf({ body: { wears: 'seated' } });
    const { rises } = plan.body;
    expect(codes(plan, 'mark')[1]).toBe('mark.riseRoom');
    expect(number(plan, 'mark', 'mark.riseRoom', 'room')).toBe(rises.back.value);
    expect(number(plan, 'mark', 'mark.lowered', 'by')).toBe(-rises.front.value);
    expect(said(plan, 'mark', 'mark.lowered').params['place']).toBe('front');
    expect(codes(plan, 'cut')).toContain('cut.topsApart');
    expect(codes(planOf(), 'mark').filter((code) => /rise|raised|lowered/.test(code))).toEqual([]);
  });

  test('worn sitting, the hem is kept clear of wheels', () => {
    expect(stepOf(planOf({ body: { wears: 'seated' } }), 'finish').cautions).toContain('wheels');
    expect(stepOf(planOf(), 'finish').cautions).not.toContain('wheels');
  });
});

test('an edge that is turned once is not turned under by nothing', () => {
  const once = planOf({ cut: { kind: 'circle', fraction: 'full' }, cloth: { width: '60 in' } });
  expect(codes(once, 'hem')[0]).toBe('hem.once');
  expect(number(once, 'hem', 'hem.once', 'depth')).toBe(inches(1 / 4));
});
