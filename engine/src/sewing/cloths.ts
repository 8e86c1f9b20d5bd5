import { called, laidOf, pieceNames } from '../cloth/index.ts';
import type { Part } from '../skirt/index.ts';
import { mm, type Mm } from '../units/index.ts';
import type { Bench } from './bench.ts';
import { say, type Sentence } from './sentence.ts';

/** One cloth of the skirt as the steps speak of it: how it is called, how it is laid, what the wash does to it. */
interface BenchCloth {
  readonly called: ReturnType<typeof called>;
  readonly washed: boolean;
  readonly plan: Bench['cloth'];
  readonly pieces: readonly string[];
}

/** The skirt's own cloth, then its others; the lining and stretch knit are told of by themselves. */
function clothsOn(bench: Bench): BenchCloth[] {
  const { cloths, skirt } = bench;
  return cloths.map((each): BenchCloth => {
    const plan = laidOf(bench, each);
    return {
      called: called(each.options),
      // Cut from a length that was washed it does not change again.
      washed: each.options.washed || plan.chosen.from?.washed === true,
      plan,
      pieces: pieceNames(skirt, each),
    };
  });
}

export const severalCloths = ({ cloths }: Pick<Bench, 'cloths'>): boolean => cloths.length > 1;

/** Whether any of the skirt's cloths has its first wash before it. */
export const anyUnwashed = (bench: Bench): boolean => clothsOn(bench).some(({ washed }) => !washed);

/** Each cloth with what the wash takes of it. */
export function washSentences(bench: Bench): Sentence[] {
  const all = clothsOn(bench);
  if (all.length === 1)
    return all
      .filter((each) => !each.washed)
      .map(({ plan: { chosen } }) =>
        say('prewash.cloth', { before: chosen.clothBefore, after: chosen.clothAfter }),
      );
  return [
    ...all.map(({ called: name, washed, plan: { fabric, chosen } }) =>
      washed
        ? say('prewash.done', name)
        : say('prewash.each', {
            ...name,
            before: chosen.clothBefore,
            after: chosen.clothAfter,
            lengthwise: fabric.lengthwise,
            crosswise: fabric.crosswise,
          }),
    ),
    say('prewash.apart'),
  ];
}

/** Which cloth what is said of folding is about, where there are others. */
export const ownCloth = (bench: Bench): Sentence[] =>
  severalCloths(bench) ? [say('fold.ownCloth', called(bench.cloths[0].options))] : [];

/** How each cloth but the skirt's own is laid: its drawing has the rest. */
export const laySentences = (bench: Bench): Sentence[] =>
  clothsOn(bench)
    .slice(1)
    .map(({ called: name, plan: { chosen } }) =>
      say('fold.otherCloth', { ...name, lay: chosen.kind, size: chosen.tableCloth }),
    );

/** Which pieces come from which cloth. */
export const cutFromSentences = (bench: Bench): Sentence[] =>
  severalCloths(bench)
    ? clothsOn(bench).map(({ called: name, pieces }) => say('cut.fromCloth', name, pieces))
    : [];

/** How a piece's own cloth is told where it is cut: ‘the same’ is not enough for several. */
export function clothTold(bench: Bench, { name, cloth }: Part): Sentence['params'] {
  const found = bench.cloths.find(({ parts }) => parts.includes(name));
  if (cloth !== 'skirt' || !found || !severalCloths(bench)) return { cloth };
  const { cloth: clothName, colour } = called(found.options);
  return { cloth: 'called', name: clothName, colour };
}

/** Every outline that is chalked and cut, and the length of cloth that is pressed. */
export const outlinesOn = (bench: Bench): number =>
  clothsOn(bench)
    .map(({ plan: { chosen } }) => (chosen.table.layers === 4 ? 1 : chosen.table.pieces.length))
    .reduce((sum, each) => sum + each, 0);
export const clothToPress = (bench: Bench): Mm =>
  mm(clothsOn(bench).reduce((sum, { plan }) => sum + plan.chosen.clothAfter.value, 0));

/** Whether light cloth is sewn to heavy. */
export const weightsDiffer = ({ cloths }: Pick<Bench, 'cloths'>): boolean =>
  cloths.some(({ options }) => options.weight !== cloths[0].options.weight);
