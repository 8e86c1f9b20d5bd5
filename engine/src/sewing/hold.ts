import { figure } from './codes.ts';
import type { Bench } from './bench.ts';
import type { NoticeParam } from '../figure/index.ts';
import { inches } from '../units/index.ts';
import { say, type Sentence } from './sentence.ts';
import type { Caution } from './step.ts';

/** Distance at which temporary spray is held: about 12 in (30 cm). Common practice, no source. */
const SPRAY_DISTANCE = inches(12);
/** Minutes that glue takes to dry. Common practice, no source. */
export const GLUE_DRIES = 15;

type Hold = Bench['ribbonOptions']['hold'];

export function holdSentence(hold: Hold): Sentence {
  const params: Record<string, NoticeParam> =
    hold === 'spray' ? { distance: figure.length(SPRAY_DISTANCE, 'sewing.sprayDistance') } : {};
  return say(`holdRibbon.${hold}`, params);
}

export const holdCautions = (hold: Hold): readonly (Caution | false)[] => [
  hold === 'spray' && 'spray',
  hold === 'pins' && 'pins',
  hold === 'glue' && 'liquid',
];
