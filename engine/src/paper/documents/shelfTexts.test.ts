import { describe, expect, test } from 'vitest';
import { classOf, roster } from '../../testing/classes.ts';
import { speakerOf } from '../../testing/speakers.ts';
import { howMany, planClass } from '../../workshop/index.ts';
import { shelfTexts } from './shelfTexts.ts';

const textsFor = (length: string, bolt = true) => {
  const request = classOf(roster(4, { cloths: { navy: { bolt, lengths: [{ length }] } } }));
  const plan = planClass(request);
  const shelf = howMany(request, null);
  return { lines: shelfTexts(shelf, plan, speakerOf(plan.request)), shelf, plan };
};

describe('what can be cut from the cloth at hand', () => {
  test('says of everybody who has no room that there is none, and what to do', () => {
    const { lines, shelf, plan } = textsFor('2.5 yd');
    const most = shelf[0]?.most.skirts ?? [];
    const out = plan.skirts.map(({ label }) => label).filter((label) => !most.includes(label));
    expect(out.length).toBeGreaterThan(0);
    expect(lines.at(-1)).toContain(out.join(', '));
    expect(lines.at(-1)).toContain('Buy what the lay names, add another length');
  });

  test('where there is no more to buy, nobody is told to buy it', () => {
    const { lines } = textsFor('2.5 yd', false);
    expect(lines.at(-1)).toContain('Add another length');
    expect(lines.join(' ')).not.toContain('Buy');
  });

  test('says nothing of what to do where there is room for all', () => {
    const { lines, plan } = textsFor('40 yd');
    expect(lines).toHaveLength(1);
    for (const { label } of plan.skirts) expect(lines[0]).toContain(label);
  });
});
