import { hasProblems, type Speaker } from '@ribbonwright/engine';
import { FINE, PROBLEMS } from '../exit.ts';
import { load, type LoadOptions } from '../load.ts';
import { noticeLines } from '../text/notices.ts';
import { styleFor } from '../text/style.ts';
import { terminalWidth } from './plan.ts';

/** Prints a request's problems and cautions, nothing else. */
export async function check(file: string, options: LoadOptions, terminal: Speaker): Promise<number> {
  const { plan, speaker } = await load(file, options, terminal);
  const { command } = speaker.words;
  const lines = noticeLines(plan, speaker, styleFor(process.stdout, process.env), terminalWidth());
  const problems = plan.notices.filter(({ notice }) => notice.level === 'problem').length;
  const cautions = plan.notices.length - problems;
  const verdict =
    problems > 0
      ? speaker.text(command.problemsFound, { count: problems })
      : cautions > 0
        ? speaker.text(command.cautionsOnly, { count: cautions })
        : command.noProblems;
  process.stdout.write([...lines, verdict, ''].join('\n'));
  return hasProblems(plan) ? PROBLEMS : FINE;
}
