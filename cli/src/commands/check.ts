import { hasProblems } from '@ribbonwright/engine';
import { FINE, PROBLEMS } from '../exit.ts';
import { load, type LoadOptions } from '../load.ts';
import type { Session } from '../session.ts';
import { noticeLines } from '../text/notices.ts';
import { styleFor } from '../text/style.ts';

/** Prints a request's problems and cautions, nothing else. */
export async function check(file: string, options: LoadOptions, session: Session): Promise<number> {
  const { terminal } = session;
  const { plan, speaker } = await load(file, options, session);
  const { command } = speaker.words;
  const lines = noticeLines(plan, speaker, styleFor(terminal), terminal.width);
  const problems = plan.notices.filter(({ notice }) => notice.level === 'problem').length;
  const cautions = plan.notices.length - problems;
  const verdict =
    problems > 0
      ? speaker.text(command.problemsFound, { count: problems })
      : cautions > 0
        ? speaker.text(command.cautionsOnly, { count: cautions })
        : command.noProblems;
  terminal.out([...lines, verdict, ''].join('\n'));
  return hasProblems(plan) ? PROBLEMS : FINE;
}
