import {
  classLayPaper,
  lengthPictures,
  writePdf,
  writeSvg,
  type ClassPlan,
  type Speaker,
} from '@ribbonwright/engine';
import { loadFonts } from '../fonts.ts';
import type { Terminal } from '../terminal.ts';
import { today } from '../today.ts';
import { writeAll, type OutFile } from '../write.ts';

/** Writes the cutting layouts as PDF, and each length of cloth as SVG, with a line of progress for each. */
export async function layFiles(
  plan: ClassPlan,
  speaker: Speaker,
  folder: string,
  terminal: Terminal,
): Promise<void> {
  const { command } = speaker.words;
  const fonts = loadFonts();
  const progress = (name: string): void => {
    terminal.note(`${speaker.text(command.writing, { file: name })}\n`);
  };
  progress('lay.pdf');
  const paper = classLayPaper({ plan, speaker, fonts, date: today(terminal.environment) });
  const files: OutFile[] = [{ name: 'lay.pdf', content: await writePdf(paper, fonts) }];
  for (const [at, cloth] of plan.cloths.entries())
    for (const [i, drawing] of lengthPictures(cloth, speaker).entries()) {
      const name = `lay-${String(at + 1)}-${String(i + 1)}.svg`;
      progress(name);
      files.push({ name, content: writeSvg(drawing, { fonts }) });
    }
  writeAll(folder, files, speaker);
  terminal.note(`${speaker.text(command.wrote, { count: files.length, folder })}\n`);
}
