import { clothName, type ClassRequest, type Speaker } from '@ribbonwright/engine';
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
  if (searched.isStopped) terminal.note(`${stoppedText(searched, speaker)}\n`);
  return searched;
}

/** That this is the best so far, and which of several cloths were not come to. */
function stoppedText({ plan, left }: Searched, speaker: Speaker): string {
  const { stopped, notLookedAt } = speaker.words.command;
  const cloths = plan.cloths.filter(({ key }) => left.includes(key)).map((each) => clothName(each, speaker));
  const isTold = plan.cloths.length > 1 && cloths.length > 0;
  return isTold ? `${stopped} ${speaker.text(notLookedAt, { cloths: cloths.join(', ') })}` : stopped;
}
