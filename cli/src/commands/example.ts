import { exampleClass, exampleRequest } from '@ribbonwright/engine';
import { FINE } from '../exit.ts';
import type { Session } from '../session.ts';

export const exampleNames = ['skirt', 'class'] as const;

/** Prints a ready request to start from. */
export function example({ of }: { readonly of: string }, { terminal, speaker }: Session): number {
  const ready = of === 'class' ? exampleClass(speaker.language) : exampleRequest(speaker.language);
  terminal.out(`${JSON.stringify(ready, null, 2)}\n`);
  return FINE;
}
