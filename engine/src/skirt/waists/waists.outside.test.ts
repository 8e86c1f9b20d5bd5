// Published figures for casings and cords: sewing-guideline sheet 12.150 (separate casing 5¾ in for 2 in elastic; fold-down casing
// 1¼ in for ¾ in), apparel quality-standards manual, "Internal casings" (drawstring tunnel = cord + ¼ in), ASTM F1816-18 (75 mm free).
import { expect, test } from 'vitest';
import { codesOf, draftOf } from '../../testing/drafts.ts';
import { inches } from '../../units/index.ts';

const waistOf = (waist: Record<string, unknown>, body: Record<string, unknown> = {}) =>
  draftOf({ body, waist }).skirt.waist;

test('2 in of elastic with ½ in of ease and ⅝ in seams takes a strip of 5¾ in', () => {
  const { parts } = waistOf({
    kind: 'separate casing',
    elasticWidth: '2 in',
    ease: '1/2 in',
    seam: '5/8 in',
  });
  expect(parts[0]?.measures[0]?.value).toBeCloseTo(inches(5.75), 9);
});

test('¾ in of elastic takes 1¼ in turned, and 1 in takes 1½ in', () => {
  const turned = (elasticWidth: string) => waistOf({ elasticWidth }).topAllowance.value;
  expect(turned('3/4 in')).toBeCloseTo(inches(1.25), 9);
  expect(turned('1 in')).toBeCloseTo(inches(1.5), 9);
});

test.each(['1/4 in', '3/8 in', '1 in'])('the tunnel of a %s cord is ¼ in wider than it', (cordWidth) => {
  const { depth, cord } = waistOf({ kind: 'drawstring', cordWidth });
  expect(depth - (cord?.width.value ?? NaN)).toBeCloseTo(inches(0.25), 9);
});

test('on a child at most 75 mm of cord hang free, spread flat; on a grown person as much as she likes', () => {
  const codes = (age: number, leastEnd: string) =>
    codesOf(waistOf({ kind: 'drawstring', tieEnd: '0 in', leastEnd }, { age, waist: '24 in', hip: '28 in' }));
  expect(codes(9, '70 mm')).not.toContain('waist.cordFreeEnds');
  expect(codes(9, '80 mm')).toContain('waist.cordFreeEnds');
  expect(codes(13, '80 mm')).toContain('waist.cordFreeEnds');
  expect(codes(14, '80 mm')).not.toContain('waist.cordFreeEnds');
});
