import type { Speaker } from '@ribbonwright/engine';
import type { Terminal } from './terminal.ts';

/** What every command works with: the terminal, and who speaks about files and options. */
export interface Session {
  readonly terminal: Terminal;
  readonly speaker: Speaker;
}
