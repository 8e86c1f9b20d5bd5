import { describe, expect, test } from 'vitest';
import { codesOf, draftOf, samples } from '../testing/drafts.ts';
import { english } from '../testing/numberWords.ts';
import { anyRequest } from '../testing/requests.ts';
import {
  contains,
  flatten,
  isClosed,
  lengthOf,
  selfIntersects,
  signedAreaOf,
  type Path,
} from '../geometry/index.ts';
import type { PanelShape } from './index.ts';
import { inches, mm, showLength, type Mm } from '../units/index.ts';

const inInches = (length: Mm): string =>
  showLength(length, { system: 'inches', mark: inches(1 / 8), words: english }).replaceAll('\u00a0', ' ');

// Common practice, no source.
describe('the numbers that makers get by hand', () => {
  const beginner = { waist: '30 in', hip: '28 in', waistToHem: '32 in' };

  test('a 30 in waist over 28 in hips marks 11¼ in at the double fold', () => {
    const { marks } = draftOf({ body: beginner }).skirt;
    expect(inInches(marks.waistQuarter.value)).toBe('11¼ in');
  });

  test('a 36 in hip marks 13½ in at the double fold', () => {
    const { skirt } = draftOf({ body: { waist: '29 in', hip: '36 in', waistToHem: '31 in' } });
    expect(inInches(skirt.marks.waistQuarter.value)).toBe('13½ in');
  });

  test('the working of a mark says its hip, its fullness and its four layers', () => {
    const { waistQuarter } = draftOf({ body: { hip: '36 in' } }).skirt.marks;
    const { girth, fullness, layers } = waistQuarter.inputs;
    expect([girth?.value, fullness?.value, layers?.value]).toEqual([inches(36), 1.5, 4]);
    expect(waistQuarter.exact).toBeCloseTo(waistQuarter.value, 9);
  });

  test('a 13 in mark opens to 52 in, before its seams', () => {
    const { skirt } = draftOf({ body: { waist: '28 in', hip: '34 5/8 in' } });
    expect(inInches(skirt.marks.waistQuarter.value)).toBe('13 in');
    const seams = 2 * skirt.sideSeams * skirt.sideSeamAllowance.value;
    expect(inInches(mm(skirt.opening.value + seams))).toBe('52 in');
  });

  test.each([
    ['32 in', '35 in'],
    ['34 in', '37 in'],
  ])('a finished length of %s is cut at %s', (finished, cut) => {
    expect(inInches(draftOf({ body: { waistToHem: finished } }).skirt.marks.cutLength.value)).toBe(cut);
  });

  test('side seams take ¼ in, the hem ¾ in of which ¼ in is turned under, the casing 1¼ in, the margin 1 in', () => {
    const { skirt } = draftOf({ body: beginner });
    expect(inInches(skirt.sideSeamAllowance.value)).toBe('¼ in');
    expect(inInches(skirt.hemAllowance.value)).toBe('¾ in');
    expect(inInches(skirt.hemTurnUnder)).toBe('¼ in');
    expect(inInches(skirt.waist.topAllowance.value)).toBe('1¼ in');
    expect(inInches(skirt.margin.value)).toBe('1 in');
  });

  test('a grown person’s hem mark is 15 in at least, a child’s may be less', () => {
    const small = { waist: '22 in', hip: '24 in', waistToHem: '18 in' };
    expect(draftOf({ body: { ...small, age: 30 } }).skirt.marks.hemQuarter.value).toBeGreaterThanOrEqual(
      inches(15),
    );
    expect(draftOf({ body: { ...small, age: 6 } }).skirt.marks.hemQuarter.value).toBeLessThan(inches(15));
  });

  test('with the hem as high above the floor, a taller person’s hem mark is wider', () => {
    const hemMark = (height: number): number => {
      const waistToFloor = 0.62 * height;
      const body = {
        height: `${String(height)} mm`,
        waistToFloor: `${String(waistToFloor)} mm`,
        waistToHem: `${String(waistToFloor - 250)} mm`,
      };
      return draftOf({ body }).skirt.marks.hemQuarter.value;
    };
    const marks = [1500, 1650, 1800, 1950].map(hemMark);
    expect(marks).toEqual(marks.toSorted((a, b) => a - b));
    expect(new Set(marks).size).toBe(4);
  });
});

const every = samples(anyRequest, draftOf);
const edgeOf = ({ edges }: PanelShape, name: string): Path =>
  edges.find((edge) => edge.name === name)?.finished ?? [];

describe('any skirt', () => {
  test(
    'narrows downwards for nobody, and its hem is level or its side the longer',
    every((drafted) => {
      const { skirt } = drafted;
      expect(skirt.marks.hemQuarter.value).toBeGreaterThanOrEqual(skirt.marks.waistQuarter.value);
      expect(skirt.hemRound.value).toBeGreaterThanOrEqual(skirt.opening.value);
      expect(skirt.hang.sideExcess.value).toBeGreaterThanOrEqual(0);
    }),
  );

  test(
    'is of panels that are sound outlines, each inside the cloth that is cut for it',
    every((drafted) => {
      for (const { shape } of drafted.skirt.panels) {
        const { trimmed, cut, edges } = shape;
        const finished = edges.flatMap((edge) => edge.finished);
        for (const outline of [finished, trimmed, cut]) {
          expect(isClosed(outline)).toBe(true);
          expect(selfIntersects(outline)).toBe(false);
          expect(signedAreaOf(outline)).toBeGreaterThan(0);
        }
        expect(flatten(finished, mm(2)).every((at) => contains(trimmed, at))).toBe(true);
        expect(flatten(trimmed, mm(2)).every((at) => contains(cut, at))).toBe(true);
      }
    }),
  );

  test(
    'has panels whose adjoining seams are equal, as many as it has seams to join them',
    every((drafted) => {
      const { skirt } = drafted;
      for (const { panels, seams } of skirt.rounds) {
        const sides = panels.map(({ shape }) => ({
          left: lengthOf(edgeOf(shape, 'left')),
          right: lengthOf(edgeOf(shape, 'right')),
        }));
        // Drawn from outside, each panel's right side is sewn to the left side of the next; the last closes the round.
        for (let i = 0; i < seams; i++)
          expect(Math.abs((sides[i]?.right ?? 0) - (sides[(i + 1) % sides.length]?.left ?? 0))).toBeLessThan(
            0.1,
          );
        expect(seams).toBe(skirt.overlap ? panels.length - 1 : panels.length);
      }
      expect(skirt.panels.map(({ name, number }) => `${name} ${String(number)}`)).toEqual([
        ...new Set(skirt.panels.map(({ name, number }) => `${name} ${String(number)}`)),
      ]);
    }),
  );

  test(
    'has marks that can be chalked: each falls on the maker’s finest mark',
    every((drafted) => {
      const { skirt, context } = drafted;
      const { waistQuarter, hemQuarter, cutLength } = skirt.marks;
      const chalked =
        skirt.marking === 'at the fold'
          ? [waistQuarter, hemQuarter, cutLength]
          : skirt.marking === 'straight widths'
            ? [cutLength]
            : [];
      for (const { value } of [...chalked, skirt.finishedLength]) {
        const marks = value / context.mark;
        expect(Math.abs(marks - Math.round(marks))).toBeLessThan(1e-6);
      }
    }),
  );

  test(
    'is cut long enough for its length, casing, hem and margin, and wastes less than one mark on it',
    every((drafted) => {
      const { skirt, context } = drafted;
      if (skirt.marking !== 'at the fold' && skirt.marking !== 'straight widths') return;
      const sum =
        skirt.panelLength.value +
        skirt.waist.topAllowance.value +
        skirt.hemAllowance.value +
        skirt.margin.value;
      const more = skirt.marks.cutLength.value - sum;
      expect(more).toBeGreaterThan(-1e-5);
      expect(more).toBeLessThan(context.mark);
      expect(Math.abs(skirt.finishedLength.value - context.body.waistToHem.value)).toBeLessThanOrEqual(
        context.mark / 2 + 1e-6,
      );
    }),
  );

  test(
    'has a hem at least twice as deep as what is turned under in it',
    every((drafted) => {
      const { skirt } = drafted;
      expect(2 * skirt.hemTurnUnder).toBeLessThanOrEqual(skirt.hemAllowance.value + 1e-9);
    }),
  );
});

test('nothing is said of a middling skirt but what is true of it', () => {
  expect(
    codesOf(draftOf({ body: { height: '5 ft 4 in' } }).skirt).filter((code) => code.startsWith('waist')),
  ).toEqual([]);
});
