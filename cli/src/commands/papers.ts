import {
  classHasProblems,
  classOfOne,
  foldDiagram,
  foldStages,
  isCharted,
  isClassText,
  hasProblems,
  laidClass,
  layPicture,
  makePaper,
  panelPicture,
  howMany,
  planClass,
  planLaid,
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
import { fromClothOf, loadClass, loadSkirt, readDocument, type Loaded, type LoadOptions } from '../load.ts';
import { chalkedLengths, layFiles } from '../laying/files.ts';
import type { Asked } from '../laying/messages.ts';
import { readSearch, usualSearch, type SearchOptions } from '../laying/options.ts';
import { searchShown } from '../laying/searchShown.ts';
import type { Session } from '../session.ts';
import type { Terminal } from '../terminal.ts';
import { today } from '../today.ts';
import { writeAll, type OutFile } from '../write.ts';

export interface PapersOptions extends LoadOptions, Partial<SearchOptions> {
  readonly out: string;
}

/** Any option of a search asks for one; without, everything is laid by hand, at once. */
const isSearched = ({ seconds, seed, way }: PapersOptions): boolean =>
  [seconds, seed, way].some((each) => each !== undefined);

/** Writes the papers as PDF, and their drawings as SVG, with a line of progress for each. */
export async function papers(file: string, options: PapersOptions, session: Session): Promise<number> {
  const { terminal } = session;
  const text = await readDocument(file, options, session);
  const wanted = isSearched(options) ? readSearch({ ...usualSearch, ...options }, session) : null;
  if (isClassText(text)) return classPapers(text, wanted, options, session);
  const loaded = await loadSkirt(text, options, session);
  const { speaker } = loaded;
  const { command } = speaker.words;
  const input: PaperInput = {
    ...loaded,
    fromCloth: fromClothOf(loaded, options, session),
    ...(wanted ? await searchedSkirt(loaded, { ...wanted, text, shelf: false }, terminal) : { laid: null }),
    fonts: loadFonts(),
    date: today(terminal.environment),
  };
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
  return hasProblems(input.plan) ? PROBLEMS : FINE;
}

/** The skirt laid as closely as a search finds. */
async function searchedSkirt(
  { plan: { request }, speaker }: Loaded,
  asked: Asked,
  terminal: Terminal,
): Promise<Pick<PaperInput, 'plan' | 'laid'>> {
  const { lays } = await searchShown(classOfOne(request), asked, speaker, terminal);
  const plan = planLaid(request, lays);
  return { plan, laid: laidClass(plan, lays) };
}

/** The papers of a class: its cloths as they are laid by hand, or as a search finds. */
async function classPapers(
  text: string,
  wanted: ReturnType<typeof readSearch> | null,
  options: PapersOptions,
  session: Session,
): Promise<number> {
  const { terminal } = session;
  const { request, speaker } = await loadClass(text, options, session);
  const laid = wanted
    ? await searchShown(request, { ...wanted, text, shelf: true }, speaker, terminal)
    : { plan: planClass(request), shelf: howMany(request, null) };
  await layFiles(laid, speaker, options.out, terminal);
  return classHasProblems(laid.plan) ? PROBLEMS : FINE;
}

/** Drawings that stand for themselves: to put on a wall, a slide or a screen. */
function drawingsOf(input: PaperInput): [string, Drawing][] {
  const { plan, speaker, laid } = input;
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
    ...(laid ? chalkedLengths(laid, speaker) : []),
  ];
}
