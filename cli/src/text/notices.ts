import {
  ofCloth,
  type ClassPlan,
  type SkirtPlan,
  type Speaker,
  type StagedNotice,
} from '@ribbonwright/engine';
import type { Style } from './style.ts';
import { wrapText } from './table.ts';

/** Problems and cautions, each with what to do about it. */
export const noticeLines = (
  { notices }: Pick<SkirtPlan, 'notices'>,
  speaker: Speaker,
  style: Style,
  width: number,
): string[] => notices.flatMap((each) => linesOf(each, [], speaker, style, width));

/** The same of a class: of whose skirt they are, or of which cloth. */
export const classNoticeLines = (
  { notices }: Pick<ClassPlan, 'notices'>,
  speaker: Speaker,
  style: Style,
  width: number,
): string[] =>
  notices.flatMap((each) =>
    linesOf(
      each,
      [each.label ?? each.cloth].filter((name) => name !== ''),
      speaker,
      style,
      width,
    ),
  );

function linesOf(
  { stage, notice, of }: StagedNotice,
  about: readonly string[],
  speaker: Speaker,
  style: Style,
  width: number,
): string[] {
  const { levels, stages, papers } = speaker.words;
  const what = `${levels[notice.level]} (${[...about, stages[stage], ...ofCloth({ of }, speaker)].join(' · ')})`;
  const [first = '', ...more] = wrapText(
    `${speaker.text(papers.lead, { what })} ${speaker.notice(notice)}`,
    width - 4,
  );
  return [`  ${style[notice.level](first)}`, ...more.map((line) => `    ${line}`)];
}
