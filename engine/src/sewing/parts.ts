import { lengthOf } from '../geometry/index.ts';
import type { Part } from '../skirt/index.ts';
import { mm, type Mm } from '../units/index.ts';
import type { Bench } from './bench.ts';
import { clothTold } from './cloths.ts';
import { say, type Sentence } from './sentence.ts';

/** Every piece that is not a panel, with the cloth that it is cut from: the skirt's own first. */
export function partSentences(bench: Bench): Sentence[] {
  const { skirt, cloth } = bench;
  const sentences = (['skirt', 'lining', 'knit'] as const).flatMap((each) =>
    skirt.parts
      .filter((part) => part.cloth === each && part.count > 0)
      .flatMap((part) => partSentence(bench, part)),
  );
  return cloth.chosen.more.length > 0 ? [...sentences, say('cut.more')] : sentences;
}

/** Two measures are a width and a length; more are those of half a shaped piece, from its centre fold. */
function partSentence(bench: Bench, piece: Part): Sentence[] {
  const { name, count, measures } = piece;
  const from = clothTold(bench, piece);
  const [first, second, third, topCurve, hemCurve] = measures;
  if (!first || !second) return [];
  const part = `part ${name}`;
  if (!third) return [say('cut.part', { ...from, pieces: count, part, width: first, length: second })];
  return [
    say('cut.shapedPart', { ...from, part, top: first, hem: second, length: third }),
    ...(topCurve && hemCurve ? [say('cut.shapedCurve', { top: topCurve, hem: hemCurve })] : []),
  ];
}

/** The scissors' way round all of them. */
export const roundParts = ({ skirt }: Bench): Mm =>
  mm(skirt.parts.reduce((sum, { count, shape }) => sum + count * lengthOf(shape.cut), 0));
