import { colourKey } from '../../fields/index.ts';
import type { RibbonTotal } from '../../ribbon/index.ts';
import { mm } from '../../units/index.ts';
import { drawing, rectangle, type Drawing, type PaperDocument } from '../drawing/index.ts';
import {
  bold,
  column,
  flow,
  heading,
  paragraph,
  plain,
  table,
  together,
  type Block,
} from '../layout/index.ts';
import { patternsOf } from '../pictures/cloth.ts';
import { documentOf, sheetOf, type PaperInput } from './paperSet.ts';
import { groupText, rowPlace, stripGroups } from './strips.ts';

/** Every strip of ribbon to cut, by colour and width, longest first, with a box to tick. */
export function ribbonList(input: PaperInput): PaperDocument {
  const { plan, speaker, fonts } = input;
  const { papers } = speaker.words;
  const blocks: Block[] = [
    heading(1, papers.ribbonList),
    paragraph(papers.cutInOrder, { quiet: true }),
    ...plan.supplies.ribbons.map((total) => together(...ribbonBlocks(total, input))),
  ];
  return documentOf(input, papers.ribbonList, flow(blocks, sheetOf(input, papers.ribbonList), fonts));
}

function ribbonBlocks(total: RibbonTotal, { plan, speaker }: PaperInput): Block[] {
  const { papers, panels } = speaker.words;
  const name = speaker.colour(total.colour);
  const item = plan.supplies.items.find(
    ({ what, colour, width }) =>
      what === 'ribbon' &&
      colour !== null &&
      colourKey(colour) === colourKey(total.colour) &&
      width?.value === total.width.value,
  );
  const rows = plan.ribbons.rows
    .filter(
      (row) => colourKey(row.colour) === colourKey(total.colour) && row.width.value === total.width.value,
    )
    .flatMap((row) => stripGroups(row).map((group) => ({ row, group })))
    .sort((a, b) => b.group.length.value - a.group.length.value);
  const patternOf = patternsOf(plan.ribbons.rows.map(({ colour }) => colour));
  const swatch = drawing({
    width: mm(14),
    height: mm(4.5),
    title: name,
    description: name,
    marks: [
      rectangle(0.3, 0.3, 13.4, 3.9, {
        fill: total.colour.hex,
        pattern: patternOf(total.colour),
        width: mm(0.2),
      }),
    ],
  });
  return [
    heading(2, `${name} · ${speaker.value(total.width)}`),
    table(
      [
        column('', 0.45),
        column(papers.row, 0.4),
        column(papers.strip, 1),
        column(papers.length, 0.9),
        column(papers.fromRawEdge, 0.9),
        column(papers.howGot, 2.6),
      ],
      // Strips that are cut alike share a line: a box to tick for each.
      rows.map(({ row, group }) => [
        tickBoxes(group.strips.length),
        String(row.number),
        [...new Set(group.strips.map(({ panel }) => panels[panel]))].join(', '),
        [bold(groupText(group, speaker))],
        rowPlace(row, plan.skirt, speaker),
        speaker.working(group.length) ?? '',
      ]),
    ),
    table(
      [column('', 0.3), column('', 2)],
      [
        [
          swatch,
          [plain(speaker.text(papers.ribbonTotal, { total: total.total, buy: item?.buy ?? total.total }))],
        ],
      ],
    ),
  ];
}

/** Boxes to tick, as a small drawing for a table's cell. */
export const tickBoxes = (count: number): Drawing =>
  drawing({
    width: mm(4.6 * count),
    height: mm(4),
    title: '',
    description: '',
    marks: Array.from({ length: count }, (_, i) =>
      rectangle(0.3 + 4.6 * i, 0.3, 3.4, 3.4, { width: mm(0.3) }),
    ),
  });
