// Outside sources: published circle-skirt examples and a table (references 6.1); @flatten-js/core and clipper2-ts for areas,
// lengths, and what lies on what.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, lengthOf, point, rotate, translate, type Path } from '../../geometry/index.ts';
import { draftOf, samples } from '../../testing/drafts.ts';
import { CHORD, referenceArea, referenceCover, referenceLength } from '../../testing/reference.ts';
import { anyBody } from '../../testing/bodies.ts';
import { anyCloth } from '../../testing/cloths.ts';
import { anyCircle } from '../../testing/cuts.ts';
import { anyWaist } from '../../testing/waists.ts';
import { inches, mm, radians } from '../../units/index.ts';

/** The radius before it is rounded to a mark and without seams: what the books print. */
function byTheBook(round: string, fraction: string, waistToHem = '31 in', pieces = 1) {
  const hip = mm(parse(round) - inches(1));
  const { skirt } = draftOf({
    waist: { kind: 'turned casing' },
    body: { waist: `${String(hip)} mm`, hip: `${String(hip)} mm`, waistToHem },
    cut: { kind: 'circle', fraction, pieces },
    mark: '1 mm',
  });
  const radius = skirt.panels[0].shape.apex?.waistRadius ?? NaN;
  const edges = 2 * skirt.sideSeams * skirt.sideSeamAllowance.value;
  const share = fraction === 'full' ? 1 : Number(fraction[0]) / Number(fraction[2]);
  return { skirt, share, radius, ofSeams: edges / (2 * Math.PI * share) };
}
const parse = (text: string): number => Number(text.split(' ')[0]) * (text.endsWith('in') ? inches(1) : 10);

describe('published examples: the radius, once the seams are taken off, up to the next mark', () => {
  test.each([
    // W 27.38 in with its ease, divisor 4.71.
    ['27.38 in', '3/4', 5.81],
    // C 41¼ in, divisor 6.28: printed 6½ in.
    ['41.25 in', 'full', 6.565],
    // W 31½ in, divisor 3.14: printed 10 in.
    ['31.5 in', '1/2', 10.03],
  ])('%s round on %s of a circle is %f in', (round, fraction, inInches) => {
    const { radius, ofSeams } = byTheBook(round, fraction);
    expect(radius - ofSeams).toBeGreaterThanOrEqual(inches(inInches) - 0.13);
    expect(radius - ofSeams).toBeLessThan(inches(inInches) + 1 + 0.13);
  });

  test.each([
    ['1/4', 509.3, 1899.6],
    ['1/2', 254.65, 2999.1],
    ['full', 127.32, 5198.2],
  ])('W 80 cm, L 70 cm, %s of a circle: radius and hem', (fraction, radius, hem) => {
    const drawn = byTheBook('80 cm', fraction, '70 cm');
    expect(drawn.radius - drawn.ofSeams).toBeGreaterThanOrEqual(radius - 0.05);
    expect(drawn.radius - drawn.ofSeams).toBeLessThan(radius + 1.05);
    // A mark more of radius is at most that much more of hem.
    expect(drawn.skirt.hemRound.value).toBeGreaterThanOrEqual(hem - 0.5);
    expect(drawn.skirt.hemRound.value).toBeLessThan(hem + 2 * Math.PI * drawn.share + 0.5);
  });

  test('W/4 laid straight in a quarter circle and then curved is 57 % over; a quarter drawn here is not', () => {
    const { skirt } = byTheBook('80 cm', 'full', '31 in', 4);
    const [waist] = skirt.panels[0].shape.edges;
    const drawn = referenceLength(waist?.finished ?? []);
    const mistaken = (Math.PI / 2) * (800 / 4);
    expect(drawn).toBeGreaterThanOrEqual(800 / 4 - 0.01);
    expect(mistaken / drawn).toBeGreaterThan(1.56);
    expect(mistaken / drawn).toBeLessThan(1.572);
  });
});

describe('against independent geometry', () => {
  const every = samples(
    fc.record({
      body: anyBody.map((body) => ({ ...body, levels: undefined, wears: 'standing' })),
      cut: anyCircle,
      waist: anyWaist,
      cloth: anyCloth,
    }),
    draftOf,
    400,
  );

  test(
    'areas and edges of the pieces',
    every(({ skirt }) => {
      for (const { shape } of skirt.panels) {
        for (const outline of [shape.trimmed, shape.cut])
          expect(areaOf(outline) / referenceArea(outline)).toBeCloseTo(1, 6);
        for (const { finished } of shape.edges)
          expect(lengthOf(finished)).toBeCloseTo(referenceLength(finished), 5);
      }
    }),
  );

  test(
    'the pieces laid side by side about the middle cover the ring, and none lies on the next',
    every(({ skirt }) => {
      const [{ shape }] = skirt.panels;
      if (!shape.apex) throw new Error('a circle has a middle');
      const { waistRadius, hemRadius, halfSweep } = shape.apex;
      const laid: Path[] = skirt.panels.map((panel, i) =>
        rotate(translate(panel.shape.trimmed, 0, waistRadius), radians(2 * halfSweep * i), point(0, 0)),
      );
      const outer = hemRadius + shape.hemAllowance;
      const inner = Math.max(0.01, waistRadius - shape.topAllowance);
      const ring = skirt.panels.length * halfSweep * (outer ** 2 - inner ** 2);
      const slack = 2 * CHORD * laid.reduce((sum, path) => sum + lengthOf(path), 0);
      const { together, common } = referenceCover(laid);
      expect(Math.abs(together - ring)).toBeLessThan(slack);
      if (laid.length > 1) expect(common).toBeLessThan(slack);
    }),
  );
});
