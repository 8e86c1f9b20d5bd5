import { CommanderError } from 'commander';
import { CannotRun, COULD_NOT_RUN, FINE } from './exit.ts';
import { program, refusal } from './program.ts';
import { reasonOf } from './read.ts';
import { commandSpeaker, terminalLanguage } from './words.ts';

const argv = process.argv.slice(2);
const speaker = commandSpeaker(terminalLanguage(process.env, argv));

/** A closed pipe (`ribbonwright plan … | head`) is the reader's wish, not a fault. */
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exit(error.code === 'EPIPE' ? FINE : COULD_NOT_RUN);
});

const fail = (message: string): void => {
  process.stderr.write(`ribbonwright: ${message}\n`);
  process.exitCode = COULD_NOT_RUN;
};

try {
  const top = program(speaker, (code) => {
    process.exitCode = code;
  });
  if (argv.length === 0) {
    top.outputHelp({ error: true });
    process.exitCode = COULD_NOT_RUN;
  } else await top.parseAsync(argv, { from: 'user' });
} catch (error) {
  if (error instanceof CannotRun) fail(error.message);
  else if (error instanceof CommanderError) {
    const message = refusal(error, speaker);
    if (message !== null) fail(message);
  } else fail(speaker.text(speaker.words.command.unexpected, { reason: reasonOf(error) }));
}
