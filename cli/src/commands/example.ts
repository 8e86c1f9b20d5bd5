import { exampleRequest } from '@ribbonwright/engine';
import { FINE } from '../exit.ts';
import type { Session } from '../session.ts';

/** Prints a ready request to start from. */
export function example({ terminal, speaker }: Session): number {
  terminal.out(`${JSON.stringify(exampleRequest(speaker.language), null, 2)}\n`);
  return FINE;
}
