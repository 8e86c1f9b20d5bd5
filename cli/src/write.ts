import { mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Speaker } from '@ribbonwright/engine';
import { CannotRun } from './exit.ts';
import { reasonOf } from './read.ts';

export interface OutFile {
  readonly name: string;
  readonly content: Uint8Array | string;
}

/**
 * Writes files into a folder, which is made where it is missing. All are written beside their places first and
 * only then renamed, so that nothing half-written is left and nothing good is lost.
 */
export function writeAll(folder: string, files: readonly OutFile[], speaker: Speaker): void {
  const { command } = speaker.words;
  let at = folder;
  const beside: string[] = [];
  try {
    mkdirSync(folder, { recursive: true });
    for (const { name, content } of files) {
      at = join(folder, name);
      const part = partOf(folder, name);
      beside.push(part);
      writeFileSync(part, content);
    }
    for (const { name } of files) {
      at = join(folder, name);
      renameSync(partOf(folder, name), at);
    }
  } catch (error) {
    for (const part of beside) rmSync(part, { force: true });
    throw new CannotRun(speaker.text(command.cannotWrite, { file: at, reason: reasonOf(error) }));
  }
}

const partOf = (folder: string, name: string): string => join(folder, `.${name}.${String(process.pid)}.part`);
