import { planJsonSchema, requestJsonSchema } from '@ribbonwright/engine';
import { FINE } from '../exit.ts';
import type { Session } from '../session.ts';

export const schemaNames = ['request', 'plan'] as const;

/** Prints a JSON Schema. */
export function schema(
  { of, measure }: { readonly of: string; readonly measure?: string },
  { terminal }: Session,
): number {
  const made =
    of === 'plan' ? planJsonSchema() : requestJsonSchema(measure === 'metric' ? 'metric' : 'inches');
  terminal.out(`${JSON.stringify(made, null, 2)}\n`);
  return FINE;
}
