import { expect, test } from 'vitest';
import { planOf } from '../../testing/requests.ts';
import { clothJobOf, wantedOf } from '../job/wanted.ts';
import type { LayKind } from '../options.ts';
import { stripOf } from './strip.ts';

test.each<[LayKind, string, string]>([
  ['open', '1799.5 mm', '0 mm'],
  ['open', '1795 mm', '8 mm'],
  ['lengthwise fold', '1799 mm', '0 mm'],
  ['lengthwise fold', '1792 mm', '8 mm'],
])(
  '%s: %s beside 1800 mm, %s between pieces: what the narrower has not is kept clear',
  (way, width, between) => {
    const lengths = [
      { length: '1 m', width: '1800 mm' },
      { length: '1 m', width },
    ];
    const plan = planOf({ cloth: { width: '1500 mm', between, lengths, bolt: false } });
    const wanted = wantedOf(plan.skirt, [], 'own', 'wearer');
    if (!wanted) throw new Error('a skirt takes cloth');
    const { lengths: laid, keepOut, width: across } = stripOf(clothJobOf(plan.request.cloth, [wanted]), way);
    const [, narrower] = laid;
    if (!narrower) throw new Error('two lengths');
    // Pieces keep the room between them to what is kept clear: it stands so much farther out.
    const room = plan.request.cloth.between;
    const reaching = keepOut.filter((outline) => {
      const [xs, ys] = [outline.map(({ x }) => x), outline.map(({ y }) => y)];
      const isAlong = Math.min(...xs) <= narrower.start && Math.max(...xs) >= narrower.end;
      const [low, high] = [Math.min(...ys) - room, Math.max(...ys) + room];
      const isBeside =
        way === 'open'
          ? low < narrower.high + 0.01 && low > narrower.high - 0.01 && high > across
          : high > narrower.low - 0.01 && high < narrower.low + 0.01 && low < 0;
      return isAlong && isBeside;
    });
    expect(reaching).toHaveLength(1);
  },
);

test.each([true, false])(
  'of a length at hand what its end may be trimmed by is left, and a hole lies anywhere within that (match: %s)',
  (match) => {
    const flaw = { along: '400 mm', across: '300 mm', length: '50 mm', width: '50 mm' };
    const cloth = { width: '1500 mm', washed: true, pattern: { along: '80 mm', match }, bolt: false };
    const plan = planOf({ cloth: { ...cloth, lengths: [{ length: '1 m', flaws: [flaw] }] } });
    const { lengths } = stripOf(clothJobOf(plan.request.cloth, []), 'open');
    const [laid] = lengths;
    const trimmed = match ? 80 : 0;
    expect((laid?.end ?? NaN) - (laid?.start ?? NaN)).toBeCloseTo(1000 - trimmed, 6);
    const xs = laid?.flaws.flatMap((corners) => corners.map(({ x }) => x - laid.start)) ?? [];
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([400 - trimmed, 450]);
  },
);
