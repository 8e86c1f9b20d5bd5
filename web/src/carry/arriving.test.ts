import { describe, expect, test } from 'vitest';
import { addressIn, addressWith } from './arriving.ts';

describe('the address of a skirt that arrives', () => {
  test('is the address of the table itself, wherever that is', () => {
    const address = addressWith('1aB-_', { origin: 'http://localhost:5173', pathname: '/table/index.html' });
    expect(address).toBe('http://localhost:5173/table/index.html#/arriving/1aB-_');
    expect(addressIn(address)).toBe('1aB-_');
  });

  test.each([
    ['#/arriving/1abc', '1abc'],
    ['https://elsewhere.example/a/b#/arriving/1abc', '1abc'],
    ['Here it is: <https://elsewhere.example/#/arriving/1abc>, for Robin', '1abc'],
    ['https://elsewhere.example/#/arriving/1abc\n', '1abc'],
    ['https://elsewhere.example/#/arriving/', null],
    ['https://elsewhere.example/#/skirts', null],
    ['1abc', null],
    ['', null],
  ])('in %j', (text, packed) => {
    expect(addressIn(text)).toBe(packed);
  });
});
