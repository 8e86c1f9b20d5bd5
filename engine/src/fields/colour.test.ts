import { describe, expect, test } from 'vitest';
import { colourField, colourKey, preset, presetColours, type PresetColour } from './index.ts';

const names = Object.keys(presetColours) as PresetColour[];

describe('a colour in a document', () => {
  test('every preset is called by its name, as one word or as people write it', () => {
    for (const name of names) {
      expect(colourField.parse(name)).toEqual(preset(name));
      const written = name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
      expect(colourField.parse(` ${written} `)).toEqual(preset(name));
    }
    expect(colourField.parse('dark red')).toEqual(preset('darkRed'));
  });

  test('no two presets look alike, and each is a colour', () => {
    expect(new Set(Object.values(presetColours)).size).toBe(names.length);
    for (const hex of Object.values(presetColours)) expect(hex).toMatch(/^#[0-9a-f]{6}$/);
  });

  test('a colour of the maker’s own, with or without a name', () => {
    expect(colourField.parse('#14716F')).toEqual({ hex: '#14716f', preset: null, name: '#14716f' });
    expect(colourField.parse({ name: 'sea', hex: '#14716F' })).toEqual({
      hex: '#14716f',
      preset: null,
      name: 'sea',
    });
  });

  test.each([
    ['sea'],
    [''],
    ['#fff'],
    ['#14716'],
    ['constructor'],
    ['__proto__'],
    [{ name: 'sea' }],
    [{ name: '', hex: '#14716f' }],
    [{ name: 'sea', hex: 'teal' }],
    [{ name: 'sea', hex: '#14716f', meaning: 'water' }],
    [3],
    [null],
  ])('%j is none', (value) => {
    expect(colourField.safeParse(value).success).toBe(false);
  });

  test('one name and one look are one ribbon at the counter', () => {
    const sea = colourField.parse({ name: 'sea', hex: '#14716F' });
    expect(colourKey(sea)).toBe(colourKey(colourField.parse({ name: 'sea', hex: '#14716f' })));
    expect(colourKey(sea)).not.toBe(colourKey(colourField.parse({ name: 'sea', hex: '#147170' })));
    expect(colourKey(sea)).not.toBe(colourKey(preset('teal')));
  });
});
