import { describe, expect, test } from 'vitest';
import { fieldsFor } from '../../fields/index.ts';
import { inches } from '../../units/index.ts';
import { growthOptions } from './options.ts';

const least = { reference: 'girls', ageMonths: 96, measuredOn: '2026-03-14' };
const options = growthOptions(fieldsFor('in', 'inches'));

describe('a child’s growth in a document', () => {
  test('needs whose reference, an age and a day; the rest is usual', () => {
    expect(options.parse(least)).toEqual({ ...least, months: 12, shortWhen: inches(1) });
    expect(growthOptions(fieldsFor('cm', 'metric')).parse(least).shortWhen).toBe(25);
    for (const name of ['reference', 'ageMonths', 'measuredOn'])
      expect(options.safeParse({ ...least, [name]: undefined }).success).toBe(false);
  });

  test.each([
    { ageMonths: 24 },
    { ageMonths: 240 },
    { ageMonths: 87.5 },
    { reference: 'boys' },
    { months: 1 },
    { months: 60 },
    { shortWhen: '2 cm' },
    { measuredOn: '2028-02-29' },
  ])('%j is read', (change) => {
    expect(options.safeParse({ ...least, ...change }).success).toBe(true);
  });

  test.each([
    { ageMonths: 23.9 },
    { ageMonths: 241 },
    { ageMonths: '96' },
    { reference: 'children' },
    { months: 0 },
    { months: 61 },
    { months: 1.5 },
    { shortWhen: '0 in' },
    { shortWhen: '1 m' },
    { measuredOn: 20260314 },
    { born: '2018-03-14' },
  ])('%j is refused', (change) => {
    expect(options.safeParse({ ...least, ...change }).success).toBe(false);
  });

  test.each(['2027-02-29', '14 March 2026', ''])(
    '%j is no day of the calendar, and that is said',
    (measuredOn) => {
      const { error } = options.safeParse({ ...least, measuredOn });
      expect(error?.issues).toMatchObject([
        { code: 'custom', path: ['measuredOn'], params: { fault: 'date' } },
      ]);
    },
  );
});
