import type { SkirtPlan } from '../../../plan/index.ts';
import type { Part } from '../../../skirt/index.ts';
import { mm, type Mm } from '../../../units/index.ts';
import type { Speaker } from '../../../words/index.ts';
import {
  bold,
  column,
  figure as picture,
  heading,
  paragraph,
  plain,
  table,
  type Block,
} from '../../layout/index.ts';
import { clothNamed } from '../../pictures/clothInks.ts';
import { partPictures, pieceChart } from '../../pictures/pieceChart.ts';
import { cutText } from '../../pictures/pieces/chartPiece.ts';

/** Width of the card's left half. */
const WIDE = mm(90);

/** The chart of the panels, in place of the marks at the fold. */
export function panelChart(plan: SkirtPlan, speaker: Speaker, tallest: Mm): Block[] {
  const { papers } = speaker.words;
  const swung = plan.skirt.marking === 'swung';
  return [
    heading(3, papers.piecesHeading),
    picture(pieceChart(plan, speaker, { width: WIDE, height: tallest }, { of: 'panels' }), {
      maxHeight: tallest,
    }),
    paragraph(swung ? papers.piecesCaptionSwung : papers.piecesCaption, { size: 'small', quiet: true }),
  ];
}

const THUMB = { width: mm(24), height: mm(12) } as const;

/** Every other piece with its count and what is chalked of it, drawn small where there is room; none where there is none. */
export function partsTable(plan: SkirtPlan, speaker: Speaker, drawn: boolean): Block[] {
  const { parts } = plan.skirt;
  if (parts.length === 0) return [];
  const { papers } = speaker.words;
  const clothIn = ({ name, cloth }: Part): string[] =>
    cloth === 'skirt'
      ? [clothNamed(plan, name, speaker)].filter((each) => each !== '')
      : [papers.clothOf[cloth]];
  const pictures = drawn ? partPictures(plan, speaker, THUMB) : [];
  return [
    heading(3, papers.partsHeading),
    table(
      [
        ...(drawn ? [column('', 1.2)] : []),
        column(papers.piece, 1.3),
        column(papers.pieceToCut, 1),
        column(papers.pieceMeasures, 4.2),
      ],
      alike(parts, speaker).map(({ names: called, part, count, measures, i }) => [
        ...pictures.slice(i, i + 1),
        [bold(capital(called)), ...clothIn(part).map((name) => plain(` (${name})`))],
        capital(cutText(count, part.mirrored ? Math.floor(count / 2) : 0, speaker)),
        measures,
      ]),
    ),
  ];
}

/** Pieces with the same measures share a line: a lining's front and back. */
function alike(parts: readonly Part[], speaker: Speaker) {
  const lines = parts.map((part, i) => ({
    part,
    i,
    count: part.count,
    names: speaker.words.parts[part.name],
    measures: part.measures.map((each) => `${speaker.name(each)} ${speaker.value(each)}`).join(' · '),
  }));
  return lines.reduce<typeof lines>((all, line) => {
    const at = all.findIndex(
      ({ part, measures }) => part.cloth === line.part.cloth && measures === line.measures,
    );
    const found = all[at];
    if (!found) return [...all, line];
    const names = found.names === line.names ? found.names : `${found.names} + ${line.names}`;
    return all.with(at, { ...found, names, count: found.count + line.count });
  }, []);
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
