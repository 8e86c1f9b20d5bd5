import type { Speaker } from '@ribbonwright/engine';
import type { Measure } from './measures.ts';

/** Every measurement that a tape takes; the start asks for fewer. */
type Taken = Measure | 'hipDepth' | 'thigh';

/** What a measurement is called, as its figure is. */
export function measureName(measure: Taken, { words }: Speaker): string {
  const found = words.figures[`body.${measure}`];
  return typeof found === 'string' ? found : found[0];
}

/** How it is taken, in a sentence. */
export const howTo = (measure: Taken, { words: { table } }: Speaker): string =>
  ({
    waist: table.howWaist,
    hip: table.howHip,
    waistToHem: table.howWaistToHem,
    waistToFloor: table.howWaistToFloor,
    height: table.howHeight,
    calf: table.howCalf,
    hipDepth: table.howHipDepth,
    thigh: table.howThigh,
  })[measure];
