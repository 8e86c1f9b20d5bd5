import type { BodyField } from './measures.ts';

/** What was typed on the way to a first skirt. It outlives the page's turning to another place and back. */
class Draft {
  name = $state('');
  typed = $state<Record<BodyField, string>>(blank());

  clear(): void {
    this.name = '';
    this.typed = blank();
  }
}

/** Every field of a body, with nothing typed in it. */
export const blank = (): Record<BodyField, string> => ({
  waist: '',
  hip: '',
  waistToHem: '',
  waistToFloor: '',
  height: '',
  calf: '',
  age: '',
});

export const draft = new Draft();
