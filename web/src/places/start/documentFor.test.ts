import { parseRequest } from '@ribbonwright/engine';
import { expect, test } from 'vitest';
import { documentFor } from './documentFor.ts';

const table = { language: 'fr', measure: 'metric' } as const;
const body = { waist: '71 cm', hip: '92 cm', waistToHem: '84 cm' };

test('a skirt for somebody is read as a request in the table’s language and measure', () => {
  const parsed = parseRequest(documentFor(body, ' Robin ', table));
  expect(parsed.ok && parsed.request).toMatchObject({ wearer: 'Robin', language: 'fr', measure: 'metric' });
});

test('nobody’s name is no name, and one too long still fits', () => {
  expect(documentFor(body, '  ', table)).not.toHaveProperty('wearer');
  expect(parseRequest(documentFor(body, 'x'.repeat(500), table)).ok).toBe(true);
});
