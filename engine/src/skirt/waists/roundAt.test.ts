import { describe, expect, test } from 'vitest';
import { draftOf } from '../../testing/drafts.ts';
import { mm } from '../../units/index.ts';
import { roundAt } from './roundAt.ts';

const { skirt } = draftOf({ body: { waist: '30 in', hip: '38 in' } });
const [round] = skirt.rounds;

describe('the round of a skirt below its top', () => {
  test('is its opening at the top, its hem at the hem, and half of both halfway', () => {
    expect(roundAt(skirt, mm(0)).value).toBeCloseTo(skirt.opening.value, 9);
    expect(roundAt(skirt, round.length).value).toBeCloseTo(round.bottom.value, 9);
    expect(roundAt(skirt, mm(round.length / 2)).value).toBeCloseTo(
      (skirt.opening.value + round.bottom.value) / 2,
      9,
    );
  });

  test('is no more than the narrowest seam between tiers above', () => {
    const wider = {
      ...round,
      top: { ...round.top, value: mm(9000) },
      bottom: { ...round.bottom, value: mm(9000) },
    };
    const tiered = { ...skirt, rounds: [round, wider] as const };
    expect(roundAt(tiered, mm(round.length + 50)).value).toBe(round.bottom.value);
  });
});
