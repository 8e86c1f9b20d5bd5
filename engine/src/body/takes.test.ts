import { describe, expect, test } from 'vitest';
import { inches } from '../units/index.ts';
import { bodySettings } from './settings.ts';
import { settled } from './takes.ts';

describe('two takes of one measurement', () => {
  test('round the body the larger counts', () => {
    const hip = settled('hip', [inches(36), inches(36.25)], bodySettings);
    expect(hip.figure.value).toBe(inches(36.25));
    expect(hip.notices).toEqual([]);
  });

  test('along the body the mean counts', () => {
    const hem = settled('waistToHem', [inches(31), inches(31.5)], bodySettings);
    expect(hem.figure.value).toBeCloseTo(inches(31.25), 9);
    expect(hem.notices).toEqual([]);
  });

  test('takes 2 in apart are told with both, whichever came first', () => {
    for (const takes of [
      [inches(29), inches(31)],
      [inches(31), inches(29)],
    ] as const) {
      const { figure, notices } = settled('waist', takes, bodySettings);
      expect(figure.value).toBe(inches(31));
      expect(notices.map(({ code }) => code)).toEqual(['body.takesDiffer']);
      expect(notices[0]?.params).toMatchObject({
        measure: 'waist',
        difference: { value: expect.closeTo(inches(2), 9) as number },
      });
    }
  });

  test('half an inch apart still agrees, a hair more does not', () => {
    const apart = (difference: number) =>
      settled('waist', [inches(30), inches(30 + difference)], bodySettings).notices.length;
    expect(apart(0.5)).toBe(0);
    expect(apart(0.51)).toBe(1);
  });
});
