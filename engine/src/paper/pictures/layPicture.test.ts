import { describe, expect, test } from 'vitest';
import { planOf, type RawRequest } from '../../testing/requests.ts';
import { mm } from '../../units/index.ts';
import { speakerOf } from '../../testing/speakers.ts';
import { placedTexts } from '../drawing/index.ts';
import { layPicture } from './layPicture.ts';
import { swingsOf } from './laySwings.ts';

const body = { waist: '28 in', hip: '36 in', waistToHem: '33 in', waistToFloor: '40 in', height: '65 in' };

function textsOf(raw: RawRequest, swung = false): string[] {
  const plan = planOf({ body, ...raw });
  const room = { width: mm(180), height: mm(150) };
  const { marks } = layPicture(
    { lay: plan.cloth.chosen, skirt: plan.skirt },
    speakerOf(plan.request),
    'large',
    room,
    { swung },
  );
  return placedTexts(marks).map(({ text }) => text);
}

describe('a lay drawn large', () => {
  test('says of every strip which tier it is of', () => {
    const texts = textsOf({ cut: { kind: 'tiered', tiers: 3 } });
    for (const tier of [1, 2, 3])
      expect(texts.some((text) => text.startsWith(`tier ${String(tier)} · strip 1`))).toBe(true);
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
});
