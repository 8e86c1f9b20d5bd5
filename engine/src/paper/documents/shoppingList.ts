import type { Item } from '../../supplies/index.ts';
import type { Speaker } from '../../words/index.ts';
import type { PaperDocument } from '../drawing/index.ts';
import {
  bold,
  column,
  flow,
  heading,
  list,
  paragraph,
  plain,
  table,
  type Block,
  type Words,
} from '../layout/index.ts';
import { documentOf, sheetOf, type PaperInput } from './paperSet.ts';
import { tickBoxes } from './ribbonList.ts';
import { threadCaption, threadName, underText } from './threadTexts.ts';

/** What to buy, with what goes wrong at the counter beside it, then the thread by colour and stitch. */
export function shoppingList(input: PaperInput): PaperDocument {
  const { plan, speaker, fonts } = input;
  const { papers } = speaker.words;
  const { items, total, unpriced } = plan.supplies;
  const priced = items.length > unpriced;
  const sum = `${speaker.text(papers.lead, { what: papers.total })} ${speaker.money(total)}${unpriced > 0 ? ` (${speaker.text(papers.unpriced, { count: unpriced })})` : ''}`;
  const blocks: Block[] = [
    heading(1, papers.shoppingList),
    table(
      [
        column('', 0.25),
        column(papers.what, 2),
        column(papers.need, 1),
        column(papers.buy, 1),
        ...(priced ? [column(papers.price, 0.7, 'end')] : []),
      ],
      items.map((item) => [
        tickBoxes(1),
        nameOf(item, speaker),
        item.need ? speaker.value(item.need) : '',
        [bold(buyText(item, speaker))],
        ...(priced ? [item.price ? speaker.money(item.price) : ''] : []),
      ]),
    ),
    ...(priced ? [paragraph([bold(sum)])] : []),
    heading(2, papers.atTheCounter),
    list(adviceLines(items, speaker), 'dot'),
    heading(2, papers.threadHeading),
    paragraph(threadCaption(plan, speaker), { quiet: true, size: 'small' }),
    threadTable(input),
  ];
  return documentOf(input, papers.shoppingList, flow(blocks, sheetOf(input, papers.shoppingList), fonts));
}

/** What can go wrong at the counter: said once for each kind of thing. */
function adviceLines(items: readonly Item[], speaker: Speaker): Words[] {
  const kinds = [...new Map(items.map((item) => [item.what, item.advice])).entries()];
  return kinds
    .filter(([, advice]) => advice.length > 0)
    .map(([what, advice]) => [
      bold(`${speaker.text(speaker.words.papers.lead, { what: speaker.words.items[what] })} `),
      plain(advice.map((code) => speaker.words.advice[code]).join(' ')),
    ]);
}

function nameOf(item: Item, speaker: Speaker) {
  const details = [
    item.name ?? '',
    item.colour ? speaker.colour(item.colour) : '',
    item.width ? speaker.value(item.width) : '',
  ].filter((each) => each !== '');
  return [
    bold(speaker.words.items[item.what]),
    ...(details.length > 0 ? [plain(` · ${details.join(', ')}`)] : []),
  ];
}

/** A length in the shop's words, or a number of pieces. */
export function buyText(item: Item, speaker: Speaker): string {
  const { papers, workshop } = speaker.words;
  if (item.buy.kind === 'length') return item.buy.value > 0 ? speaker.value(item.buy) : workshop.nothing;
  const message =
    { thread: papers.spools, 'overlock thread': papers.cones }[item.what as string] ?? papers.pieces;
  return speaker.text(message, { count: item.buy });
}

function threadTable({ plan, speaker }: PaperInput): Block {
  const { papers, stitches } = speaker.words;
  return table(
    [
      column(papers.colour, 1.3),
      column(papers.stitchClass, 1.2),
      column(papers.seamLength, 0.8),
      column(papers.needle, 0.8),
      column(papers.under, 0.8),
    ],
    plan.supplies.thread.flatMap((total) =>
      total.parts.map((part) => [
        threadName(total, plan, speaker),
        stitches[part.stitch],
        speaker.value(part.seam),
        speaker.value(part.needle),
        underText(part, total, plan, speaker),
      ]),
    ),
  );
}
