import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { patience, runs } from '../testing/runs.ts';
import { parseRequestText } from './index.ts';
import { jsonFaultAt } from './jsonFault.ts';

const isJson = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

describe('where JSON goes wrong', () => {
  test.each([
    ['', 0],
    ['hello', 0],
    ['{"a":}', 5],
    ['{"a": position 12}', 6],
    ['{"a": 1,}', 8],
    ['[1 2]', 3],
    ['[1,', 3],
    ['{"body": {"waist": "30 in"', 26],
    ['{"a": "never closed}', 6],
    ['{a: 1}', 1],
    ["{'a': 1}", 1],
    ['[01]', 2],
    ['1 1', 2],
    ['[}', 1],
    ['["tab\tinside"]', 1],
  ])('%j at %i', (text, at) => {
    expect(jsonFaultAt(text)).toBe(at);
  });

  test('is told as line and column', () => {
    const read = (text: string) => {
      const parsed = parseRequestText(text);
      return parsed.ok ? null : parsed.errors.map(({ code, params }) => [code, params['where']]);
    };
    expect(read('{\n  "body": {\n    "waist": 30 in\n')).toEqual([['notJson', '3:17']]);
    expect(read('hello')).toEqual([['notJson', '1:1']]);
    expect(read('\uFEFF{"a":}')).toEqual([['notJson', '1:6']]);
    expect(read('{"body":\n')).toEqual([['notJson', '2:1']]);
  });

  test('is nowhere exactly where the text is JSON', patience, () => {
    const broken = fc
      .tuple(
        fc.json(),
        fc.nat(),
        fc.constantFrom('', '"', '{', '}', '[', ']', ',', ':', ' ', '1', '-', 'e', '\\', 'u', 'null', '\n'),
      )
      .map(([text, at, change]) => {
        const cut = at % (text.length + 1);
        return text.slice(0, cut) + change + text.slice(cut + (at % 3));
      });
    fc.assert(
      fc.property(fc.oneof(fc.json(), broken, fc.string()), (text) => {
        expect(jsonFaultAt(text) === null).toBe(isJson(text));
      }),
      { numRuns: runs(3000) },
    );
  });

  test('what stands before the fault can be ended well', () => {
    // A prefix up to the fault is the beginning of some JSON: no earlier token is to blame.
    expect(jsonFaultAt('{"a": [1, {"b": tru')).toBe(16);
    expect(jsonFaultAt('{"a": [1, {"b": ')).toBe(16);
  });
});
