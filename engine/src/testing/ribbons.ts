import fc from 'fast-check';
import { presetColours } from '../fields/index.ts';
import { lengthBetween } from './lengths.ts';
import { percents, some, type Part } from './parts.ts';

const hexColour = fc.integer({ min: 0, max: 0xffffff }).map((n) => `#${n.toString(16).padStart(6, '0')}`);
export const anyColour: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom(...Object.keys(presetColours)),
  hexColour,
  fc.record({ name: fc.constantFrom('sea', 'rust', 'berry'), hex: hexColour }),
);

const aRow = some({ colour: anyColour, width: lengthBetween(4, 60) });
const bands = fc.array(
  fc.oneof(
    { arbitrary: aRow, weight: 4 },
    fc.record({ touching: fc.array(aRow, { minLength: 2, maxLength: 4 }) }),
  ),
  { maxLength: 8 },
);

/** Any composition; gaps are given where they are called for. */
export const anyRibbons: fc.Arbitrary<Part> = fc
  .tuple(
    fc.oneof(fc.constant(undefined), fc.integer({ min: 0, max: 14 }), bands),
    fc.constantFrom('even', 'growing', 'shrinking', 'by hand', undefined),
    fc.array(lengthBetween(0, 120), { minLength: 13, maxLength: 13 }),
    some({
      colours: fc.array(anyColour, { minLength: 1, maxLength: 5 }),
      width: lengthBetween(4, 60),
      lowest: lengthBetween(0, 200),
      highest: lengthBetween(100, 900),
      growth: fc.integer({ min: 100, max: 200 }).map((hundredths) => hundredths / 100),
      overhang: lengthBetween(0, 40),
      where: fc.constantFrom('front and back', 'front', 'back', 'round'),
      hold: fc.constantFrom('pins', 'glue', 'spray'),
      ends: fc.constantFrom('sealant', 'flame', 'none'),
      washed: fc.boolean(),
      easesUnseen: percents(0, 4),
      easesWithCare: percents(4, 12),
    }),
  )
  .map(([rows, spacing, gaps, options]) => {
    const count = rows === undefined ? 6 : typeof rows === 'number' ? rows : rows.length;
    return {
      ...options,
      ...(rows === undefined ? {} : { rows }),
      ...(spacing === undefined ? {} : { spacing }),
      ...(spacing === 'by hand' ? { gaps: gaps.slice(0, Math.max(0, count - 1)) } : {}),
    };
  });
