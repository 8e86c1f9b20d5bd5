import { createReadStream, statSync } from 'node:fs';
import { LARGEST_REQUEST } from '@ribbonwright/engine';
import { CannotRun } from './exit.ts';
import type { Session } from './session.ts';

/** Bytes that a request of the largest size in characters may have in UTF-8. */
const MOST_BYTES = 4 * LARGEST_REQUEST;

/** Text of a request from a file, or from standard input for `-`. Stops reading when it is too large to be one. */
export async function readRequest(file: string, session: Session): Promise<string> {
  const { terminal, speaker } = session;
  const { command } = speaker.words;
  if (file !== '-') checkFile(file, session);
  const stream: AsyncIterable<unknown> = file === '-' ? terminal.input : createReadStream(file);
  const chunks: Buffer[] = [];
  let size = 0;
  try {
    for await (const chunk of stream) {
      const bytes = Buffer.from(chunk as Uint8Array);
      size += bytes.length;
      if (size > MOST_BYTES) {
        throw new CannotRun(speaker.text(command.tooBig, { file }));
      }
      chunks.push(bytes);
    }
  } catch (error) {
    if (error instanceof CannotRun) throw error;
    throw new CannotRun(speaker.text(command.cannotRead, { file, reason: reasonOf(error) }));
  }
  return Buffer.concat(chunks).toString('utf8');
}

function checkFile(file: string, { speaker }: Session): void {
  const { command } = speaker.words;
  const found = statSync(file, { throwIfNoEntry: false });
  if (!found) throw new CannotRun(speaker.text(command.notAFile, { file }));
  if (found.isDirectory()) throw new CannotRun(speaker.text(command.isDirectory, { file }));
  if (found.size > MOST_BYTES) throw new CannotRun(speaker.text(command.tooBig, { file }));
}

/** The system's short code for what went wrong, such as EACCES. */
export const reasonOf = (error: unknown): string =>
  error instanceof Error && 'code' in error
    ? String(error.code)
    : error instanceof Error
      ? error.message
      : String(error);
