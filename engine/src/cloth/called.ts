import type { ClothOptions } from './options.ts';

/** What a cloth is called, for the words: its name (`none` where it has none) and its colour. */
export const called = ({ name, colour }: Pick<ClothOptions, 'name' | 'colour'>) => ({
  cloth: name === '' ? 'none' : name,
  colour: colour.preset === null ? colour.name : `colour ${colour.preset}`,
});
