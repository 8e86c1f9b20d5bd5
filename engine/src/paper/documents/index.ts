import { booklet } from './booklet.ts';
import { card } from './card.ts';
import { foundLayPaper } from './foundLay.ts';
import { layPaper } from './layPaper.ts';
import type { Paper, PaperInput, PaperName } from './paperSet.ts';
import { paperNames } from './paperSet.ts';
import { ribbonList } from './ribbonList.ts';
import { shoppingList } from './shoppingList.ts';

export {
  buyLength,
  clothName,
  clothTitle,
  leftTexts,
  lengthTitle,
  restsOf,
  savedNotes,
  savedText,
  shelfTitle,
  unusedTexts,
  usedLength,
  wayNotices,
  wayRemarks,
} from './clothTexts.ts';
export { noticeLead, ofCloth } from './noticeTexts.ts';
export { lengthPictures } from './chalkBlocks.ts';
export { shelfTexts } from './shelfTexts.ts';
export { classLayPaper, classTitle, type ClassPaperInput } from './classLay.ts';
export { classCards } from './classCards.ts';
export { namesOnTable, toldPieces } from './laidPieces.ts';
export { meetsText, patternTexts } from './patternTexts.ts';
export { buyText } from './shoppingList.ts';
export { cheaperThan, fromTexts, layRemarks, wayLengths } from './wayTexts.ts';
export { haveLines, haveTitle, haveWorkings } from './haveTexts.ts';
export { subtitle } from './card.ts';
export { cardFigures } from './cardParts/figures.ts';
export { riseTexts } from './cardParts/rises.ts';
export { threadCaption, threadName, underText } from './threadTexts.ts';
export { rowPlace, stripsText } from './strips.ts';
export { paperNames, titleOf, type Paper, type PaperInput, type PaperName } from './paperSet.ts';

/** Every paper of the set. A new one is its file and a line here. */
const papers: Readonly<Record<PaperName, (input: PaperInput) => Paper['document']>> = {
  card,
  lay: (input) => (input.laid ? foundLayPaper(input, input.laid) : layPaper(input)),
  ribbons: ribbonList,
  shopping: shoppingList,
  sewing: booklet,
};

export const makePaper = (name: PaperName, input: PaperInput): Paper => ({
  name,
  document: papers[name](input),
});

/** The whole set, in the order of use. */
export const paperSet = (input: PaperInput): Paper[] => paperNames.map((name) => makePaper(name, input));
