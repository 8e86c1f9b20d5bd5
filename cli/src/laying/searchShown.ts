import type { ClassRequest, Speaker } from '@ribbonwright/engine';
import type { Terminal } from '../terminal.ts';
import type { Asked } from './messages.ts';
import { progressOn } from './progress.ts';
import { search, type Searched } from './search.ts';

/** Searches with a line that tells how far it is; where somebody stops it, that is said. */
export async function searchShown(
  request: ClassRequest,
  asked: Asked,
  speaker: Speaker,
  terminal: Terminal,
): Promise<Searched> {
  const progress = progressOn(terminal, speaker, asked.seconds);
  const searched = await search(request, asked, terminal, progress.show);
  progress.clear();
  if (searched.isStopped) terminal.note(`${speaker.words.command.stopped}\n`);
  return searched;
}
