import type { Ordinate } from '../../../skirt/index.ts';
import { mm } from '../../../units/index.ts';
import { bold, column, heading, paragraph, table, together, type Block } from '../../layout/index.ts';
import { curvedPanels } from '../../pictures/pieces/dots.ts';
import type { Speaker } from '../../../words/index.ts';
import type { PaperInput } from '../paperSet.ts';

/** Dots of the curves of a level hem, of each panel that has curves of its own. */
export function curveTables(input: PaperInput): Block[] {
  const { marking, hang } = input.plan.skirt;
  // A string swings its own curves.
  if (marking === 'swung') return [];
  if (marking === 'by piece') return pieceCurves(input);
  return hang.shape === 'curved' ? [curveTable(input)] : [];
}

function curveTable({ plan, speaker }: PaperInput): Block {
  const { papers } = speaker.words;
  const { waist, marks, finishedLength, hang } = plan.skirt;
  const casing = waist.topAllowance;
  const beyond = speaker.length(mm(marks.cutLength.value - finishedLength.value - casing.value));
  return dotsBlock(
    {
      heading: papers.curveHeading,
      caption: speaker.text(waist.build === 'turned' ? papers.curveCaption : papers.curveCaptionSewn, {
        casing,
        beyond,
      }),
    },
    hang.waistOrdinates,
    hang.hemOrdinates,
    { speaker },
  );
}

/** One line for each curve: at each distance across from the centre, how far up. */
function pieceCurves({ plan, speaker }: PaperInput): Block[] {
  const { papers } = speaker.words;
  const told = new Map<
    string,
    { readonly names: Set<string>; readonly line: string; readonly dots: string }
  >();
  for (const { names, ...curves } of curvedPanels(plan, speaker))
    for (const [line, dots] of [
      [papers.edgeWaist, curves.waist],
      [papers.edgeHem, curves.hem],
    ] as const) {
      if (dots.every(({ up }) => up.value === 0)) continue;
      const text = dotsText(dots, speaker);
      const found = told.get(`${line} ${text}`);
      if (found) for (const each of names) found.names.add(each);
      else told.set(`${line} ${text}`, { names: new Set(names), line, dots: text });
    }
  const lines = [...told.values()].map(({ names, line, dots }) => [
    `${[...names].join(' + ')} · ${line}`,
    dots,
  ]);
  if (lines.length === 0) return [];
  return [
    together(
      heading(3, papers.curveHeading),
      paragraph(papers.curveCaptionPieces, { size: 'small', quiet: true }),
      table([column('', 1), column('', 3)], lines),
    ),
  ];
}

const dotsText = (dots: readonly Ordinate[], { text, length, words: { papers } }: Speaker): string =>
  dots.map(({ across, up }) => text(papers.curveDot, { across: length(across), up })).join(' · ');

function dotsBlock(
  said: { readonly heading: string; readonly caption: string },
  waist: readonly Ordinate[],
  hem: readonly Ordinate[],
  { speaker }: Pick<PaperInput, 'speaker'>,
): Block {
  const { papers } = speaker.words;
  const most = Math.max(hem.length, waist.length);
  const lines = (across: string, up: string, dots: readonly Ordinate[]) =>
    dots.length === 0
      ? []
      : [
          [
            across,
            ...padded(
              dots.map((dot) => speaker.length(dot.across)),
              most,
            ),
          ],
          [
            [bold(up)],
            ...padded(
              dots.map((dot) => speaker.value(dot.up)),
              most,
            ),
          ],
        ];
  return together(
    heading(3, said.heading),
    ...(said.caption === '' ? [] : [paragraph(said.caption, { size: 'small', quiet: true })]),
    table(
      [column('', 2), ...Array.from({ length: most }, () => column('', 1, 'middle'))],
      [
        ...lines(papers.waistAcross, papers.waistCurve, waist),
        ...lines(papers.hemAcross, papers.hemCurve, hem),
      ],
    ),
  );
}

const padded = (cells: readonly string[], length: number): string[] => [
  ...cells,
  ...Array.from({ length: Math.max(0, length - cells.length) }, () => ''),
];
