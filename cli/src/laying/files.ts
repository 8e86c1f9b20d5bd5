import {
  classCards,
  classLayPaper,
  laidFromShelf,
  lengthPictures,
  writePdf,
  writeSvg,
  type ClassPlan,
  type Drawing,
  type HowMany,
  type Speaker,
} from '@ribbonwright/engine';
import { loadFonts } from '../fonts.ts';
import type { Terminal } from '../terminal.ts';
import { today } from '../today.ts';
import { writeAll, type OutFile } from '../write.ts';

/**
 * Writes the cutting layouts and everybody’s cards as PDF, and each length of cloth as SVG, with a line of progress for
 * each.
 */
export async function layFiles(
  { plan, shelf }: { readonly plan: ClassPlan; readonly shelf: readonly HowMany[] },
  speaker: Speaker,
  folder: string,
  terminal: Terminal,
): Promise<void> {
  const { command } = speaker.words;
  const fonts = loadFonts();
  const progress = (name: string): void => {
    terminal.note(`${speaker.text(command.writing, { file: name })}\n`);
  };
  const input = { plan, shelf, speaker, fonts, date: today(terminal.environment) };
  const files: OutFile[] = [];
  for (const [name, make] of [
    ['lay.pdf', classLayPaper],
    [plan.skirts.length > 1 ? 'cards.pdf' : 'card.pdf', classCards],
  ] as const) {
    progress(name);
    files.push({ name, content: await writePdf(make(input), fonts) });
  }
  for (const [name, drawing] of [...chalkedLengths(plan, speaker), ...shelfLengths(plan, shelf, speaker)]) {
    progress(`${name}.svg`);
    files.push({ name: `${name}.svg`, content: writeSvg(drawing, { fonts }) });
  }
  writeAll(folder, files, speaker);
  terminal.note(`${speaker.text(command.wrote, { count: files.length, folder })}\n`);
}

/** Each length of each cloth, drawn to chalk from, under the name of its file. */
export const chalkedLengths = ({ cloths }: ClassPlan, speaker: Speaker): [string, Drawing][] =>
  cloths.flatMap((cloth, at) =>
    lengthPictures(cloth, speaker).map((drawing, i): [string, Drawing] => [
      `lay-${String(at + 1)}-${String(i + 1)}`,
      drawing,
    ]),
  );

/** The same of skirts that what is at hand is enough for, where it is not for all. */
const shelfLengths = (plan: ClassPlan, shelf: readonly HowMany[], speaker: Speaker): [string, Drawing][] =>
  laidFromShelf(plan, shelf)
    .flatMap((some) => lengthPictures(some, speaker))
    .map((drawing, i) => [`shelf-${String(i + 1)}`, drawing]);
