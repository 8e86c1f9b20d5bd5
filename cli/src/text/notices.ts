import type { SkirtPlan, Speaker } from '@ribbonwright/engine';
import type { Style } from './style.ts';
import { wrapText } from './table.ts';

/** Problems and cautions, each with what to do about it. */
export function noticeLines({ notices }: SkirtPlan, speaker: Speaker, style: Style, width: number): string[] {
  const { levels, stages, papers } = speaker.words;
  return notices.flatMap(({ stage, notice }) => {
    const [first = '', ...more] = wrapText(
      `${speaker.text(papers.lead, { what: `${levels[notice.level]} (${stages[stage]})` })} ${speaker.notice(notice)}`,
      width - 4,
    );
    return [`  ${style[notice.level](first)}`, ...more.map((line) => `    ${line}`)];
  });
}
