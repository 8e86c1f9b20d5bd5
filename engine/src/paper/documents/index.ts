import { booklet } from './booklet.ts';
import { card } from './card.ts';
import { layPaper } from './layPaper.ts';
import type { Paper, PaperInput, PaperName } from './paperSet.ts';
import { paperNames } from './paperSet.ts';
import { ribbonList } from './ribbonList.ts';
import { shoppingList } from './shoppingList.ts';

export { buyLength, clothName, leftTexts, lengthTitle, savedText, wayRemarks } from './clothTexts.ts';
export { classLayPaper, classTitle, lengthPictures, type ClassPaperInput } from './classLay.ts';
export { namesOnTable, toldPieces } from './laidPieces.ts';
export { buyText } from './shoppingList.ts';
export { haveLines } from './layPaper.ts';
export { shelfTexts } from './shelfTexts.ts';
export { subtitle } from './card.ts';
export { cardFigures } from './cardParts/figures.ts';
export { riseTexts } from './cardParts/rises.ts';
export { threadCaption, threadName, underText } from './threadTexts.ts';
export { rowPlace, stripsText } from './strips.ts';
export { paperNames, titleOf, type Paper, type PaperInput, type PaperName } from './paperSet.ts';

/** Every paper of the set. A new one is its file and a line here. */
const papers: Readonly<Record<PaperName, (input: PaperInput) => Paper['document']>> = {
  card,
  lay: layPaper,
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
