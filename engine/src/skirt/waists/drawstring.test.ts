import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codesOf, draftOf, samples } from '../../testing/drafts.ts';
import { anyRequest } from '../../testing/requests.ts';
import { anyDrawstring } from '../../testing/waists.ts';
import { inches } from '../../units/index.ts';

const drawn = (more = {}, body = {}) =>
  draftOf({ body: { waist: '30 in', hip: '36 in', ...body }, waist: { kind: 'drawstring', ...more } }).skirt;
const every = samples(
  fc.tuple(anyRequest, anyDrawstring).map(([request, waist]) => ({ ...request, waist })),
  draftOf,
  300,
);

test(
  'no end of the cord vanishes when the skirt is spread flat, and a bow can be tied at the waist',
  every(({ skirt, request, context }) => {
    if (request.waist.kind !== 'drawstring') throw new Error(request.waist.kind);
    const { leastEnd, tieEnd } = request.waist;
    const { cord } = skirt.waist;
    if (!cord) throw new Error('no cord');
    expect(cord.freeEnd.value).toBeGreaterThanOrEqual(leastEnd - 1e-6);
    expect((cord.cut.value - context.body.waist.value) / 2).toBeGreaterThanOrEqual(tieEnd - 1e-6);
    expect(cord.cut.value).toBeCloseTo(skirt.opening.value + 2 * cord.freeEnd.value, 6);
  }),
);

test(
  'the casing covers cord and ease, and has its turn-under besides',
  every(({ skirt, request }) => {
    if (request.waist.kind !== 'drawstring') throw new Error(request.waist.kind);
    const { cordWidth, ease, turnUnder } = request.waist;
    expect(skirt.waist.depth).toBeCloseTo(cordWidth + ease, 9);
    expect(skirt.waist.topAllowance.value).toBeCloseTo(cordWidth + ease + turnUnder, 9);
    expect(skirt.waist.elastic).toBeNull();
  }),
);

describe('on a child', () => {
  const child = { age: 8, waist: '22 in', hip: '25 in', waistToHem: '18 in' };

  test('the cord is stitched at the centre back; on a grown person it runs free', () => {
    const names = (body: object) => drawn({}, body).waist.works.map(({ name }) => name);
    expect(names(child)).toContain('cord catch');
    expect(names({})).not.toContain('cord catch');
  });

  test('the published rules are told, and ends that hang too far with a cord that does not', () => {
    expect(codesOf(drawn({}, child))).toContain('waist.cordForChild');
    expect(codesOf(drawn())).not.toContain('waist.cordForChild');
    const notice = drawn({ leastEnd: '5 in' }, child).notices.find(
      ({ code }) => code === 'waist.cordFreeEnds',
    );
    const enough = notice?.params['enough'];
    expect(notice?.level).toBe('caution');
    const opening = drawn({}, child).opening.value;
    expect(typeof enough === 'object' && (enough.value - opening) / 2).toBeLessThanOrEqual(75);
    expect(typeof enough === 'object' && (enough.value - opening) / 2).toBeGreaterThan(75 - inches(1 / 8));
  });
});
