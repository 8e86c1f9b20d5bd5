import { exampleRequest, parseRequest, planSkirt, speakerFor, usualMark } from '@ribbonwright/engine';
import { expect, test } from 'vitest';
import { itemKeys, shownPrice, whichOf, type Item } from './items.ts';

const items = (change: object = {}): readonly Item[] => {
  const parsed = parseRequest({ ...exampleRequest('en'), ...change });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.errors));
  return planSkirt(parsed.request).supplies.items;
};
function item(what: Item['what'], change: object = {}): Item {
  const found = items(change).find((each) => each.what === what);
  if (!found) throw new Error(`no ${what}`);
  return found;
}
const speaker = (language: 'en' | 'fr', measure: 'inches' | 'metric') =>
  speakerFor({ language, measure, mark: usualMark(measure) });

test('every thing on the list has a tick of its own', () => {
  const keys = itemKeys(items());
  expect(keys.length).toBeGreaterThan(8);
  expect(new Set(keys).size).toBe(keys.length);
});

test('two cloths that are alike in colour and width are ticked one by one', () => {
  const cloth = item('cloth');
  const [one, other] = itemKeys([cloth, cloth]);
  expect(one).not.toBe(other);
  expect(itemKeys([cloth])).toEqual([one]);
});

test('a tick stays when the skirt grows longer', () => {
  const longer = items({ body: { waist: '29 in', hip: '36 in', waistToHem: '36 in' } });
  expect(itemKeys(longer)).toEqual(itemKeys(items()));
});

test('cloth of another colour or width is another thing', () => {
  const key = (cloth: object) => itemKeys([item('cloth', { cloth })])[0];
  expect(new Set([key({}), key({ colour: 'red' }), key({ width: '60 in' })]).size).toBe(3);
});

test('a thing is told by its colour and its width, where it has any', async () => {
  const english = await speaker('en', 'inches');
  const cloth = { colour: 'teal', width: '44 in' };
  expect(whichOf(item('cloth', { cloth }), english)).toBe('teal, 44\u00a0in');
  expect(whichOf(item('pins'), english)).toBe('');
});

test('a price has the decimal mark of the language', async () => {
  expect(shownPrice('12.50', await speaker('en', 'inches'))).toBe('12.50');
  expect(shownPrice('12.50', await speaker('fr', 'metric'))).toBe('12,50');
  expect(shownPrice(undefined, await speaker('fr', 'metric'))).toBe('');
});
