import { exampleRequest, parseClass, parseRequest } from '@ribbonwright/engine';
import { expect, test } from 'vitest';
import { classFrom, clothCalled } from './fromSkirts.ts';

const robin = exampleRequest('en');
const words = {
  name: 'Class',
  nameOf: (cloth: unknown) => clothCalled(cloth, ({ name }) => name),
};

test('skirts of one cloth share it, and each is what it was by itself', () => {
  const document = classFrom([robin, { ...robin, wearer: 'Sam', cut: { kind: 'gathered' } }], words);
  const parsed = parseClass(document);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.errors));
  const { skirts, cloths } = parsed.request;
  expect(cloths).toHaveLength(1);
  expect(skirts.map(({ label }) => label)).toEqual([robin['wearer'], 'Sam']);
  const alone = parseRequest(robin);
  if (!alone.ok) throw new Error('the example can’t be read');
  expect({ ...skirts[0]?.request, name: '' }).toEqual({ ...alone.request, name: '' });
});

test('cloths that differ keep apart, also where they are called alike', () => {
  const wide = { ...robin, cloth: { ...(robin['cloth'] as object), width: '60 in' } };
  const parsed = parseClass(classFrom([robin, wide, robin], words));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.errors));
  const { skirts, cloths } = parsed.request;
  expect(cloths).toHaveLength(2);
  expect(skirts[0]?.cloth).toBe(skirts[2]?.cloth);
  expect(skirts[0]?.cloth).not.toBe(skirts[1]?.cloth);
});

test('a cloth without a name is called by its colour', () => {
  expect(clothCalled({ name: ' wool ' }, () => 'grey')).toBe('wool');
  expect(clothCalled({ colour: 'teal' }, () => 'teal')).toBe('teal');
  expect(clothCalled({}, ({ hex }) => hex)).toMatch(/^#/);
});
