import { expect, test } from 'vitest';
import { portFrom } from './port.ts';

test.each([
  [undefined, 8080],
  ['', 8080],
  ['0', 0],
  ['3000', 3000],
  ['65535', 65_535],
  ['65536', null],
  ['-1', null],
  ['80.5', null],
  ['http', null],
])('PORT=%s', (text, port) => {
  expect(portFrom(text)).toBe(port);
});
