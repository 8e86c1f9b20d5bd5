import { endOf, startOf } from '../../../geometry/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import { dotsOfCurve, type Ordinate, type PanelShape } from '../../../skirt/index.ts';
import type { Speaker } from '../../../words/index.ts';
import { finishedOf, reachOf } from './chalked.ts';
import { panelGroups } from './groups.ts';

/** A panel with the dots of its curves, from the centre out to its raw side. */
interface Curved {
  readonly names: readonly string[];
  readonly waist: readonly Ordinate[];
  readonly hem: readonly Ordinate[];
}

/** Panels with a curved waist or hem, each kind once. A curve that nobody would see has no dots. */
export function curvedPanels(plan: SkirtPlan, speaker: Speaker): Curved[] {
  return panelGroups(plan).flatMap(({ panels }): Curved[] => {
    const { shape } = panels[0];
    const dots = (name: 'waist' | 'hem'): readonly Ordinate[] => dotsAlong(shape, name, plan.request.mark);
    const [waist, hem] = [dots('waist'), dots('hem')];
    const seen = [...waist, ...hem].some(({ up }) => up.value > 0);
    const names = [...new Set(panels.map((panel) => speaker.words.panels[panel.name]))];
    return seen ? [{ names, waist, hem }] : [];
  });
}

/** On a line that is one arc whose lowest point lies on the centre; a top that is not level has none. */
function dotsAlong(
  shape: PanelShape,
  name: 'waist' | 'hem',
  mark: SkirtPlan['request']['mark'],
): readonly Ordinate[] {
  const [arc, ...others] = finishedOf(shape, name);
  if (arc?.kind !== 'arc' || others.length > 0) return [];
  const level = startOf(arc).y - endOf(arc).y;
  if (Math.abs(level) > 0.5) return [];
  return dotsOfCurve(arc.radius, Math.abs(reachOf(shape, name, 'right').at.x), mark);
}
