import type { Terminal } from './terminal.ts';

/** Today, or the day that SOURCE_DATE_EPOCH names, for papers that are the same to the byte. */
export function today(environment: Terminal['environment']): Date {
  const epoch = Number(environment['SOURCE_DATE_EPOCH']);
  return environment['SOURCE_DATE_EPOCH'] !== undefined && Number.isFinite(epoch)
    ? new Date(epoch * 1000)
    : new Date();
}
