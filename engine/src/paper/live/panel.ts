import { clothOf } from '../../cloth/index.ts';
import type { SkirtPlan } from '../../plan/index.ts';
import { mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import { drawing, group, type Ink } from '../drawing/index.ts';
import { inkOf } from '../pictures/clothInks.ts';
import { lineOn } from '../pictures/pieces/kinds.ts';
import type { LivePicture } from './livePicture.ts';
import { ground } from './panel/ground.ts';
import { placedHandles } from './panel/handles.ts';
import { gapWords, ribbon } from './panel/ribbon.ts';
import { sheetsOf, WIDTH, type Sheet } from './panel/sheet.ts';
import { linesBelow, words } from './panel/words.ts';

const BELOW = 9;
const LINE = 4.5;

/**
 * Every kind of panel opened out, right side up, in the colours of its cloth and ribbons, with its numbers round it and
 * what can be taken hold of. The whole area of the first panel of the skirt's own cloth is the first mark of the group `cloth`; each row is a
 * group of its own.
 */
export function panelPicture(plan: SkirtPlan, speaker: Speaker): LivePicture {
  const sheets = sheetsOf(plan);
  const inkOn = ({ kind }: Sheet): Ink => inkOf(plan, kind.panels[0]);
  const isOwn = ({ kind }: Sheet): boolean => clothOf(plan.cloths, kind.panels[0]).which === 'own';
  const { rows } = plan.ribbons;
  const { papers } = speaker.words;
  const ribbons = rows.flatMap((row) => {
    const drawn = sheets.all.flatMap((sheet) => {
      const line = lineOn(sheet.kind, row);
      return line ? ribbon(row, line, sheet, inkOn(sheet)) : [];
    });
    return drawn.length > 0 ? [group(`row ${String(row.number)}`, drawn)] : [];
  });
  return {
    drawing: drawing({
      width: mm(WIDTH),
      height: mm(sheets.main.to + BELOW + linesBelow(plan, speaker, sheets).length * LINE),
      title: papers.rowsHeading,
      description: speaker.text(papers.altPanel, {
        rows: rows.length,
        list: rows.map(({ fromRawEdge }) => speaker.value(fromRawEdge)).join(', '),
      }),
      marks: [
        group(
          'cloth',
          sheets.all.filter(isOwn).flatMap((sheet) => ground(sheet, inkOn(sheet))),
        ),
        group(
          'other cloths',
          sheets.all.filter((sheet) => !isOwn(sheet)).flatMap((sheet) => ground(sheet, inkOn(sheet))),
        ),
        ...ribbons,
        ...gapWords(plan, sheets, inkOn, speaker.value),
        ...words(plan, speaker, sheets),
      ],
    }),
    handles: placedHandles(plan, sheets),
  };
}
