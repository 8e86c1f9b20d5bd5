import { CommanderError } from 'commander';
import { CannotRun, COULD_NOT_RUN, FINE } from './exit.ts';
import { program, refusal } from './program.ts';
import { reasonOf } from './read.ts';
import type { Terminal } from './terminal.ts';
import { commandSpeaker, terminalLanguage } from './words.ts';

/** Runs one command and tells its exit code. Whatever goes wrong is a line for the person, never a stack. */
export async function run(argv: readonly string[], terminal: Terminal): Promise<number> {
  const speaker = await commandSpeaker(terminalLanguage(terminal.environment, argv));
  let code = FINE;
  const top = program({ terminal, speaker }, (ended) => {
    code = ended;
  });
  const fail = (message: string): number => {
    for (const line of message.split('\n')) terminal.note(`ribbonwright: ${line}\n`);
    return COULD_NOT_RUN;
  };
  if (argv.length === 0) {
    top.outputHelp({ error: true });
    return COULD_NOT_RUN;
  }
  try {
    await top.parseAsync(argv, { from: 'user' });
    return code;
  } catch (error) {
    if (error instanceof CannotRun) return fail(error.message);
    if (!(error instanceof CommanderError))
      return fail(speaker.text(speaker.words.command.unexpected, { reason: reasonOf(error) }));
    const message = refusal(error, speaker);
    return message === null ? FINE : fail(message);
  }
}
