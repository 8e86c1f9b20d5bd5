import { colourKey, type Colour } from '../../fields/index.ts';
import type { SkirtPlan } from '../../plan/index.ts';
import type { ColouredPart, ThreadTotal } from '../../supplies/index.ts';
import type { Speaker } from '../../words/index.ts';

/** The thread's colour by what it is called: the cloth's, where the skirt has but one. */
export const threadName = ({ colour, overlock }: ThreadTotal, plan: SkirtPlan, speaker: Speaker): string =>
  overlock ? speaker.words.papers.overlockThread : colourName(colour, plan, speaker);

/** How much goes on the bobbin, and in which colour where that is another than the needle's. */
export function underText(part: ColouredPart, of: ThreadTotal, plan: SkirtPlan, speaker: Speaker): string {
  const { underIn, under } = part;
  const isSame = keyOf(underIn) === keyOf(of.colour);
  return isSame ? speaker.value(under) : `${speaker.value(under)} (${colourName(underIn, plan, speaker)})`;
}

/** What threads there are, and for several cloths which of them sews a seam between two. */
export const threadCaption = (
  { cloths, request }: SkirtPlan,
  { words: { papers }, text }: Speaker,
): string =>
  cloths.length === 1
    ? papers.threadCaption
    : `${papers.threadCaption} ${text(papers.threadCloths, { colour: request.supplies.thread.colour })}`;

function colourName(colour: Colour | null, { cloths }: SkirtPlan, speaker: Speaker): string {
  if (colour) return speaker.colour(colour);
  return cloths.length === 1 ? speaker.words.papers.clothColour : speaker.colour(cloths[0].options.colour);
}

const keyOf = (colour: Colour | null): string => (colour ? colourKey(colour) : '');
