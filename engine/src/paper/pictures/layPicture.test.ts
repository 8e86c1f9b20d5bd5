import { describe, expect, test } from 'vitest';
import { planOf, requestOf, type RawRequest } from '../../testing/requests.ts';
import { searchPlan } from '../../workshop/index.ts';
import { mm } from '../../units/index.ts';
import { speakerOf } from '../../testing/speakers.ts';
import { placedTexts } from '../drawing/index.ts';
import { layPicture } from './layPicture.ts';
import { swingsOf } from './laySwings.ts';

const body = { waist: '28 in', hip: '36 in', waistToHem: '33 in', waistToFloor: '40 in', height: '65 in' };

function textsOf(raw: RawRequest, swung = false): string[] {
  const plan = planOf({ body, ...raw });
  const room = { width: mm(180), height: mm(150) };
  const look = { skirt: plan.skirt, swung };
  const { marks } = layPicture(plan.cloth.chosen, speakerOf(plan.request), 'large', room, look);
  return placedTexts(marks).map(({ text }) => text);
}

describe('a lay drawn large', () => {
  test('says of every strip which tier it is of', () => {
    const texts = textsOf({ cut: { kind: 'tiered', tiers: 3 } });
    for (const tier of [1, 2, 3])
      expect(texts.some((text) => text.startsWith(`tier ${String(tier)} · strip 1`))).toBe(true);
  });

  test('calls a tier by its place in the skirt, though another is cut from another cloth', () => {
    const contrast = [{ pieces: ['tier 2'] }];
    const texts = textsOf({ cut: { kind: 'tiered', tiers: 3 }, contrast });
    expect(texts.some((text) => text.startsWith('tier 3 · '))).toBe(true);
    expect(texts.some((text) => text.startsWith('tier 2 · '))).toBe(false);
  });

  test('shows the middle that a string swings about, one waist radius from the waist edge', () => {
    const cut = { kind: 'circle', fraction: '3/4' };
    const { skirt, cloth } = planOf({ body, cut });
    const { apex, topAllowance } = skirt.panels[0].shape;
    const swings = swingsOf(cloth.chosen.table);
    expect(swings.length).toBeGreaterThan(0);
    for (const { radius } of swings) expect(radius).toBeCloseTo((apex?.waistRadius ?? NaN) - topAllowance, 3);
    expect(textsOf({ cut }, true).filter((text) => text.startsWith('dot '))).toHaveLength(swings.length);
    expect(textsOf({ cut }).some((text) => text.startsWith('dot '))).toBe(false);
  });

  const request = requestOf({
    body,
    cut: { kind: 'gored', gores: 8 },
    cloth: { lengths: [{ name: 'spring', length: '0.9 m' }, { length: '1.1 m' }] },
  });
  const { skirt, cloth } = searchPlan(request, { seed: 1, evaluations: 500 });
  const lay = cloth.chosen;

  test.each([
    [60, 200],
    [180, 150],
    [180, 40],
    [400, 40],
  ])('on %i by %i mm shows every length that something is cut from', (width, height) => {
    expect(lay.more.map(({ where }) => where)).toContain('another');
    const room = { width: mm(width), height: mm(height) };
    const { marks } = layPicture(lay, speakerOf(request), 'large', room, { skirt });
    const texts = placedTexts(marks).map(({ text }) => text);
    expect(texts.filter((text) => text === 'another length of it')).toHaveLength(lay.more.length);
    for (const { along } of [lay.table, ...lay.more])
      expect(texts).toContain(speakerOf(request).length(along));
  });
});
