import { exampleRequest } from '@ribbonwright/engine';
import { describe, expect, test } from 'vitest';
import { planned } from './planned.ts';

describe('a kept document is planned once', () => {
  const document = exampleRequest('en');

  test('the same document has the same plan, a changed one its own', () => {
    expect(planned(document)).toBe(planned(document));
    expect(planned({ ...document, name: 'another' })).not.toBe(planned(document));
  });

  test('a plan knows whose it is', () => {
    const found = planned(document);
    expect(found.ok && found.plan.request.wearer).toBe('Robin');
  });

  test('what can’t be read says why, and throws nothing', () => {
    const found = planned({ ...document, body: { waist: 'wide' } });
    expect(found.ok ? [] : found.errors.map(({ path }) => path)).toContain('body.waist');
  });
});
