import {
  classHasProblems,
  foldDiagram,
  foldStages,
  isCharted,
  isClassText,
  hasProblems,
  layPicture,
  makePaper,
  panelPicture,
  planClass,
  panelRows,
  pieceChart,
  paperNames,
  wornPicture,
  wornSides,
  writePdf,
  writeSvg,
  type Drawing,
  type Mm,
  type PaperInput,
} from '@ribbonwright/engine';
import { FINE, PROBLEMS } from '../exit.ts';
import { loadFonts } from '../fonts.ts';
import { loadClass, loadSkirt, readDocument, type LoadOptions } from '../load.ts';
import { layFiles } from '../laying/files.ts';
import type { Session } from '../session.ts';
import { today } from '../today.ts';
import { writeAll, type OutFile } from '../write.ts';

export interface PapersOptions extends LoadOptions {
  readonly out: string;
}

/** Writes the papers as PDF, and their drawings as SVG, with a line of progress for each. */
export async function papers(file: string, options: PapersOptions, session: Session): Promise<number> {
  const { terminal } = session;
  const text = await readDocument(file, options, session);
  if (isClassText(text)) return classPapers(text, options, session);
  const loaded = await loadSkirt(text, options, session);
  const { speaker } = loaded;
  const { command } = speaker.words;
  const input: PaperInput = { ...loaded, fonts: loadFonts(), date: today(terminal.environment) };
  const files: OutFile[] = [];
  const progress = (name: string): void => {
    terminal.note(`${speaker.text(command.writing, { file: name })}\n`);
  };
  for (const name of paperNames) {
    progress(`${name}.pdf`);
    const { document } = makePaper(name, input);
    files.push({ name: `${name}.pdf`, content: await writePdf(document, input.fonts) });
  }
  for (const [name, drawing] of drawingsOf(input)) {
    progress(`${name}.svg`);
    files.push({ name: `${name}.svg`, content: writeSvg(drawing, { fonts: input.fonts }) });
  }
  writeAll(options.out, files, speaker);
  terminal.note(`${speaker.text(command.wrote, { count: files.length, folder: options.out })}\n`);
  return hasProblems(loaded.plan) ? PROBLEMS : FINE;
}

/** The papers of a class: its cloths as they are laid by hand, at once. */
async function classPapers(text: string, options: PapersOptions, session: Session): Promise<number> {
  const { request, speaker } = await loadClass(text, options, session);
  const plan = planClass(request);
  await layFiles(plan, speaker, options.out, session.terminal);
  return classHasProblems(plan) ? PROBLEMS : FINE;
}

/** Drawings that stand for themselves: to put on a wall, a slide or a screen. */
function drawingsOf(input: PaperInput): [string, Drawing][] {
  const { plan, speaker } = input;
  const room = { width: 180 as Mm, height: 120 as Mm };
  const [cardPage] = makePaper('card', input).document.pages;
  return [
    ...(cardPage ? [['card', cardPage.drawing] as [string, Drawing]] : []),
    ...(isCharted(plan) ? [] : [['fold', foldDiagram(plan, speaker)] as [string, Drawing]]),
    ['pieces', pieceChart(plan, speaker, room)],
    ['rows', panelRows(plan, speaker)],
    ['panel', panelPicture(plan, speaker).drawing],
    ...foldStages(plan, speaker).map(({ drawing }, i): [string, Drawing] => [
      `fold-${String(i + 1)}`,
      drawing,
    ]),
    ...wornSides.map((side): [string, Drawing] => [`worn-${side}`, wornPicture(plan, speaker, side).drawing]),
    ...[plan.cloth, ...plan.contrast.map(({ cloth }) => cloth)].flatMap(({ lays }, i) =>
      lays.map((lay): [string, Drawing] => [
        `lay-${i === 0 ? '' : `cloth-${String(i + 1)}-`}${lay.kind.replaceAll(' ', '-')}`,
        layPicture({ lay, skirt: plan.skirt }, speaker, 'large', room, {
          swung: plan.skirt.marking === 'swung',
        }),
      ]),
    ),
  ];
}
