import { boundsOf, point } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { area, inks, stroke, type Mark } from '../../drawing/index.ts';
import { inkOf } from '../../pictures/clothInks.ts';
import { chalkOn } from '../../pictures/chalkOn.ts';
import { fitPath } from '../../pictures/fit.ts';
import { note } from '../../pictures/steps/wording.ts';
import { halvesOf } from '../panel/sheet.ts';
import { measure, SIZE, WIDTH, type Scene } from './stage.ts';

const LEFT = 6;
const RIGHT = 22;
const TOP = 9;
const TALLEST = 52;
const APART = 4;
/** Of many panels the first few: all are alike. */
const MOST = 3;

/** The panels that the cutting gives, right side up. */
export function openedMarks({ plan, speaker }: Scene): Mark[] {
  const { panels, marks } = plan.skirt;
  const { shape } = panels[0];
  const shown = panels.slice(0, MOST);
  const bounds = boundsOf(shape.cut);
  const room = (WIDTH - LEFT - RIGHT - (shown.length - 1) * APART) / shown.length;
  const scale = Math.min(room / Math.max(1, bounds.width), TALLEST / Math.max(1, bounds.height));
  const [width, height] = [bounds.width * scale, bounds.height * scale];
  const start = LEFT + (WIDTH - LEFT - RIGHT - shown.length * width - (shown.length - 1) * APART) / 2;
  const halves = halvesOf(plan);
  const end = start + shown.length * (width + APART) - APART;
  const drawn = shown.flatMap((panel, i): Mark[] => {
    const { name, number } = panel;
    const ink = inkOf(plan, panel);
    const fit = {
      scale,
      dx: start + i * (width + APART) - bounds.left * scale,
      dy: TOP - bounds.top * scale,
    };
    const middle = fit.dx + (bounds.left + bounds.width / 2) * scale;
    const more = i === shown.length - 1 && panels.length > MOST ? ' …' : '';
    const title = speaker.words.panels[name] + (name === 'width' ? ` ${String(number)}` : '') + more;
    const folds = shape.edges
      .filter(({ turned, finished }) => turned && finished.length > 0)
      .map(({ finished }) =>
        stroke(fitPath(finished, fit), { dash: 'fold', width: mm(0.35), stroke: chalkOn(ink) }),
      );
    return [
      area(fitPath(shape.cut, fit), { fill: ink, width: mm(0.35) }),
      ...folds,
      ...note(point(middle, TOP + height + 4.4), title, { size: SIZE, bold: true, room: room + APART }),
      ...note(point(middle, TOP + height + 9), speaker.length(mm(2 * halves.hem)), { size: SIZE }),
      ...note(point(middle, TOP - 4), speaker.length(mm(2 * halves.waist)), { size: SIZE, ink: inks.grey }),
    ];
  });
  return [
    ...drawn,
    measure(point(end, TOP), point(end, TOP + height), '', -3),
    ...note(point(end + 5.6, TOP + height / 2), speaker.value(marks.bottom), { size: SIZE, align: 'start' }),
  ];
}
