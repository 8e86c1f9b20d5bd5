import { COULD_NOT_RUN, FINE } from './exit.ts';
import { run } from './run.ts';
import { realTerminal } from './terminal.ts';

// A closed pipe (`ribbonwright plan … | head`) is the reader's wish, not a fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exit(error.code === 'EPIPE' ? FINE : COULD_NOT_RUN);
});

process.exitCode = await run(process.argv.slice(2), realTerminal());
