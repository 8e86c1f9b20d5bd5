import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codesOf, draftOf, samples } from '../../testing/drafts.ts';
import { anyRequest } from '../../testing/requests.ts';
import { anyStretchBand } from '../../testing/waists.ts';
import { inches } from '../../units/index.ts';
import { hipNeed } from '../goesOn.ts';

const stretched = (more = {}, body = {}) =>
  draftOf({
    body: { waist: '32 in', hip: '38 in', wears: 'expecting', ...body },
    waist: { kind: 'stretch band', ...more },
  }).skirt;
const every = samples(
  fc.tuple(anyRequest, anyStretchBand).map(([request, waist]) => ({ ...request, waist })),
  draftOf,
  300,
);

// Common practice, no source.
describe('a 32 in waist', () => {
  test('takes 27¼ in of knit round, doubled to 3 in', () => {
    const [part] = stretched().waist.parts;
    expect(part).toMatchObject({ name: 'stretch band', cloth: 'knit', grain: 'down', count: 1 });
    expect(part?.measures[0]?.value).toBeCloseTo(inches(2 * 3 + 2 * 0.375), 6);
    expect(part?.measures[1]?.value).toBeCloseTo(inches(27.25 + 2 * 0.375), 6);
  });

  test('needs no other band, and no elastic', () => {
    expect(codesOf(stretched())).not.toContain('waist.bandForExpecting');
    expect(stretched().waist.elastic).toBeNull();
  });
});

test(
  'it is cautioned of exactly where the stretched band does not pass the hips, with a band that would',
  every(({ skirt, request, context }) => {
    if (request.waist.kind !== 'stretch band') throw new Error(request.waist.kind);
    const { mostStretch, seam } = request.waist;
    const needed = hipNeed(context.body).value;
    const [part] = skirt.waist.parts;
    if (!part) throw new Error('no band');
    const round = part.count * ((part.measures[1]?.value ?? NaN) - 2 * seam);
    const notice = skirt.waist.notices.find(({ code }) => code === 'waist.bandDoesNotReach');
    // Pieces are cut to a mark, so that the band may be a little more.
    if (round * mostStretch < needed) expect(notice).toBeDefined();
    if ((round - (1 + part.count) * context.mark) * mostStretch > needed) expect(notice).toBeUndefined();
    const enough = notice?.params['enough'];
    if (typeof enough === 'object') expect(enough.value * mostStretch).toBeGreaterThanOrEqual(needed - 1e-6);
  }),
);

test('panels that the stretched band reaches are sewn to it as they are; wider ones are gathered first', () => {
  const names = (mostStretch: number) => stretched({ mostStretch }).waist.works.map(({ name }) => name);
  expect(names(3)).not.toContain('gathering rows');
  expect(names(1.5)).toContain('gathering rows');
});
