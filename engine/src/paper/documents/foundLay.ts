import { mm } from '../../units/index.ts';
import type { ClassPlan } from '../../workshop/index.ts';
import type { PaperDocument } from '../drawing/index.ts';
import { flow, heading, pageBreak, type Block } from '../layout/index.ts';
import { clothBlocks } from './chalkBlocks.ts';
import { clothsTable } from './classLay.ts';
import { foldBlocks, haveBlocks } from './layPaper.ts';
import { documentOf, sheetOf, type PaperInput } from './paperSet.ts';

/** The cutting layout of a skirt whose lay was searched for: what each cloth takes, and each length drawn to chalk from. */
export function foundLayPaper(input: PaperInput, laid: ClassPlan): PaperDocument {
  const { speaker, fonts } = input;
  const { papers, workshop } = speaker.words;
  const of = sheetOf(input, papers.lay);
  const width = mm(of.size.width - 2 * of.margin);
  const blocks: Block[] = [
    heading(1, papers.lay),
    heading(2, workshop.clothsHeading),
    clothsTable({ plan: laid, speaker }),
    ...haveBlocks(input),
    ...laid.cloths.flatMap((cloth, i) => [
      ...(i > 0 ? [pageBreak] : []),
      ...clothBlocks(
        cloth,
        speaker,
        width,
        cloth.shares.some(({ which }) => which === 'own') ? foldBlocks(input) : [],
      ),
    ]),
  ];
  return documentOf(input, papers.lay, flow(blocks, of, fonts));
}
