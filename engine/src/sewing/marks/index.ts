import type { Bench } from '../bench.ts';
import { say, type Sentence } from '../sentence.ts';
import { pieceMarks } from './byPiece.ts';
import { flaredMarks, widthMarks } from './flared.ts';
import { risenRoom, risenTop } from './risen.ts';
import { swungMarks } from './swung.ts';

export { isLevel } from './risen.ts';

const ways = {
  'at the fold': flaredMarks,
  'straight widths': widthMarks,
  'by piece': pieceMarks,
  swung: swungMarks,
} as const satisfies Record<Bench['skirt']['marking'], (bench: Bench) => Sentence[]>;

/** What is chalked before anything is cut, in the way that the draft is marked. */
export function markSentences(bench: Bench): Sentence[] {
  const { skirt } = bench;
  const hasNotches = [...skirt.panels, ...skirt.parts].some(({ shape }) => shape.notches.length > 0);
  return [
    say('mark.chalkScrap'),
    ...risenRoom(bench),
    ...ways[skirt.marking](bench),
    ...risenTop(bench),
    ...(hasNotches ? [say('mark.notches')] : []),
  ];
}
