import { classJsonSchema, planJsonSchema, requestJsonSchema } from '@ribbonwright/engine';
import { FINE } from '../exit.ts';
import type { Session } from '../session.ts';

export const schemaNames = ['request', 'class', 'plan'] as const;

/** Prints a JSON Schema. */
export function schema(
  { of, measure }: { readonly of: string; readonly measure?: string },
  { terminal }: Session,
): number {
  const system = measure === 'metric' ? 'metric' : 'inches';
  const made =
    of === 'plan' ? planJsonSchema() : of === 'class' ? classJsonSchema(system) : requestJsonSchema(system);
  terminal.out(`${JSON.stringify(made, null, 2)}\n`);
  return FINE;
}
