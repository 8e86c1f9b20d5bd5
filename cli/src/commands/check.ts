import {
  classHasProblems,
  hasProblems,
  isClassText,
  planClass,
  type Notice,
  type Speaker,
} from '@ribbonwright/engine';
import { FINE, PROBLEMS } from '../exit.ts';
import { loadClass, loadSkirt, readDocument, type LoadOptions } from '../load.ts';
import type { Session } from '../session.ts';
import { classNoticeLines, noticeLines } from '../text/notices.ts';
import { styleFor } from '../text/style.ts';

/** Prints a request's problems and cautions, nothing else. */
export async function check(file: string, options: LoadOptions, session: Session): Promise<number> {
  const { terminal } = session;
  const text = await readDocument(file, options, session);
  const style = styleFor(terminal);
  if (isClassText(text)) {
    const { request, speaker } = await loadClass(text, options, session);
    const plan = planClass(request);
    const lines = classNoticeLines(plan, speaker, style, terminal.width);
    terminal.out([...lines, verdictOf(plan.notices, speaker), ''].join('\n'));
    return classHasProblems(plan) ? PROBLEMS : FINE;
  }
  const { plan, speaker } = await loadSkirt(text, options, session);
  const lines = noticeLines(plan, speaker, style, terminal.width);
  terminal.out([...lines, verdictOf(plan.notices, speaker), ''].join('\n'));
  return hasProblems(plan) ? PROBLEMS : FINE;
}

function verdictOf(
  notices: readonly { readonly notice: Notice }[],
  { text, words: { command } }: Speaker,
): string {
  const problems = notices.filter(({ notice }) => notice.level === 'problem').length;
  const cautions = notices.length - problems;
  if (problems > 0) return text(command.problemsFound, { count: problems });
  return cautions > 0 ? text(command.cautionsOnly, { count: cautions }) : command.noProblems;
}
