import type { Bench } from './bench.ts';
import { dartSteps, faceSteps, finishEdges } from './construct.ts';
import { panelsReady } from './cutting.ts';
import { liningSteps } from './extras/lining.ts';
import { pocketSteps } from './extras/pockets.ts';
import { slitSteps } from './extras/slits.ts';
import { tuckSteps } from './extras/tucks.ts';
import { firstSeams, lastSeams } from './joins.ts';
import { panelsDone, ribbonSteps } from './ribbonSteps.ts';
import { seamRowSteps } from './rows.ts';
import type { Step, StepId } from './step.ts';
import { gatherSteps, tierSteps } from './tiers.ts';
import { openingSteps } from './waists/index.ts';
import { seamsInTurn } from './works.ts';

/** While the panels lie flat: pockets wait for the rows unless seams are sewn before these; darts come last. */
export function panelSteps(bench: Bench): Step[] {
  const { first, last } = seamsInTurn(bench);
  const ready: readonly StepId[] = [panelsReady(bench), 'testStitch'];
  const early = first.length > 0 ? pocketSteps(bench, ready) : [];
  const seams = firstSeams(bench, goOn(early, ready));
  const edges = seams.length > 0 && last.length === 0 ? finishEdges(bench, goOn(seams, ready)) : [];
  const rows = ribbonSteps(bench);
  const done: readonly StepId[] = [panelsDone(bench), 'testStitch'];
  const late = first.length > 0 ? [] : pocketSteps(bench, done);
  const darts = dartSteps(bench, goOn(late, done));
  return [...early, ...seams, ...edges, ...rows, ...late, ...darts];
}

/** From finished panels to a skirt without waist and hem. */
export function bodySteps(bench: Bench, after: readonly StepId[]): Step[] {
  const seams = lastSeams(bench, after);
  const edges = seams.length > 0 ? finishEdges(bench, goOn(seams, after)) : [];
  const joined = goOn(edges, after);
  const gather = gatherSteps(bench, joined);
  const tiers = tierSteps(bench, goOn(gather, joined));
  const hung = goOn(tiers, goOn(gather, joined));
  const rows = seamRowSteps(bench, hung);
  const beside = [
    ...faceSteps(bench, joined),
    ...slitSteps(bench, goOn(rows, hung)),
    ...openingSteps(bench, joined),
    ...tuckSteps(bench, joined),
  ];
  const all = [...seams, ...edges, ...gather, ...tiers, ...rows, ...beside];
  const waits = all.map(({ id }) => id).filter((id) => !all.some((step) => step.after.includes(id)));
  return [...all, ...liningSteps(bench, waits.length > 0 ? waits : after)];
}

/** What comes next waits for the last of these, where there are any. */
const goOn = (steps: readonly Step[], after: readonly StepId[]): readonly StepId[] => {
  const last = steps.at(-1);
  return last ? [last.id] : after;
};
