import type { SkirtPlan } from '../../plan/index.ts';
import { mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import { drawing } from '../drawing/index.ts';
import type { LivePicture } from './livePicture.ts';
import { ground } from './panel/ground.ts';
import { placedHandles } from './panel/handles.ts';
import { gapWords, ribbon } from './panel/ribbon.ts';
import { sheetOf, WIDTH } from './panel/sheet.ts';
import { linesBelow, words } from './panel/words.ts';

const BELOW = 9;
const LINE = 4.5;

/**
 * One panel opened out, right side up, in the colours of its cloth and ribbons, with its numbers round it and what
 * can be taken hold of. The cloth's whole area is the first mark of the group `cloth`; each row is a group of its own.
 */
export function panelPicture(plan: SkirtPlan, speaker: Speaker): LivePicture {
  const sheet = sheetOf(plan);
  const cloth = plan.request.cloth.colour.hex;
  const { rows } = plan.ribbons;
  const drawn = rows.filter(({ lower }) => lower.length > 0);
  const { papers } = speaker.words;
  return {
    drawing: drawing({
      width: mm(WIDTH),
      height: mm(sheet.to + BELOW + linesBelow(plan, speaker).length * LINE),
      title: papers.rowsHeading,
      description: speaker.text(papers.altPanel, {
        rows: rows.length,
        list: rows.map(({ fromRawEdge }) => speaker.value(fromRawEdge)).join(', '),
      }),
      marks: [
        ground(sheet, cloth),
        ...drawn.map((row) => ribbon(row, sheet, cloth)),
        ...gapWords(drawn, sheet, cloth, speaker.value),
        ...words(plan, speaker, sheet),
      ],
    }),
    handles: placedHandles(plan, sheet),
  };
}
