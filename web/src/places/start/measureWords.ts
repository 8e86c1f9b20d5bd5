import type { Speaker } from '@ribbonwright/engine';
import type { Measure } from './measures.ts';

/** What a measurement is called, as its figure is. */
export function measureName(measure: Measure, { words }: Speaker): string {
  const found = words.figures[`body.${measure}`];
  return typeof found === 'string' ? found : found[0];
}

/** How it is taken, in a sentence. */
export const howTo = (measure: Measure, { words: { table } }: Speaker): string =>
  ({
    waist: table.howWaist,
    hip: table.howHip,
    waistToHem: table.howWaistToHem,
    waistToFloor: table.howWaistToFloor,
    height: table.howHeight,
    calf: table.howCalf,
  })[measure];
