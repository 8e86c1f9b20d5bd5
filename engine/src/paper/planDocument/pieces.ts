import { boundsOf } from '../../geometry/index.ts';
import type { SkirtPlan } from '../../plan/index.ts';
import type { Speaker } from '../../words/index.ts';
import { panelTexts } from '../pictures/pieceChart.ts';
import { panelGroups } from '../pictures/pieces/groups.ts';
import type { PlanDocument } from '../planSchema.ts';
import { saying } from './saying.ts';

type PieceParts = Pick<PlanDocument, 'rounds' | 'parts' | 'waist' | 'extras' | 'rises' | 'overlap'>;

/** What is cut: rounds with their panels, other pieces, and what waist and extras ask. */
export function pieceParts(plan: SkirtPlan, speaker: Speaker): PieceParts {
  const say = saying(speaker);
  const { skirt, body } = plan;
  const { waist, extras, overlap } = skirt;
  const { cord, closure, takenUp } = waist;
  const { pockets, slits, lining, tucks } = extras;
  return {
    rounds: roundsOf(plan, speaker),
    parts: skirt.parts.map(({ name, count, mirrored, cloth, measures }) => ({
      name,
      title: speaker.words.parts[name],
      count,
      mirrored,
      cloth,
      measures: measures.map((each) => ({ name: speaker.name(each), value: say.length(each) })),
    })),
    waist: {
      kind: waist.kind,
      build: waist.build,
      topAllowance: say.length(waist.topAllowance),
      above: say.length(waist.above),
      cord: cord && {
        width: say.length(cord.width),
        cut: say.length(cord.cut),
        freeEnd: say.length(cord.freeEnd),
      },
      closure: closure && {
        kind: closure.kind,
        depth: say.length(closure.depth),
        overlap: say.length(closure.overlap),
        buttons: closure.buttons,
      },
      takenUp: takenUp && {
        by: takenUp.by,
        difference: say.length(takenUp.difference),
        darts: takenUp.darts,
        dartWidth: takenUp.dartWidth && say.length(takenUp.dartWidth),
        dartLength: takenUp.dartLength && say.length(takenUp.dartLength),
      },
    },
    extras: {
      pockets: pockets && {
        count: pockets.count.value,
        opening: say.length(pockets.opening),
        below: say.length(pockets.below),
      },
      slits: slits && { count: slits.count.value, where: slits.where, height: say.length(slits.height) },
      lining: lining && {
        length: say.length(lining.length),
        top: say.length(lining.top),
        round: say.length(lining.round),
      },
      tucks: tucks && {
        how: tucks.how,
        count: tucks.count.value,
        depth: say.length(tucks.depth),
        below: say.length(tucks.below),
        letsDown: say.length(tucks.letsDown),
      },
    },
    rises: {
      front: say.length(body.rises.front),
      back: say.length(body.rises.back),
      left: say.length(body.rises.left),
      right: say.length(body.rises.right),
    },
    overlap: overlap && {
      width: say.length(overlap.width),
      facing: say.length(overlap.facing),
      closes: overlap.closes,
    },
  };
}

function roundsOf(plan: SkirtPlan, speaker: Speaker): PlanDocument['rounds'] {
  const say = saying(speaker);
  const groups = panelGroups(plan);
  const words = panelTexts(plan, speaker);
  return plan.skirt.rounds.map((round, i) => ({
    fromHem: say.plain(round.fromHem),
    length: say.plain(round.length),
    top: say.length(round.top),
    bottom: say.length(round.bottom),
    seams: round.seams,
    panels: groups.flatMap(({ round: number, panels, mirrors }, k) => {
      if (number !== i + 1) return [];
      const { width, height } = boundsOf(panels[0].shape.cut);
      return [
        {
          name: panels[0].name,
          title: speaker.words.panels[panels[0].name],
          count: panels.length,
          mirrored: mirrors.length,
          measures: [...(words[k]?.measures ?? [])],
          width: say.plain(width),
          depth: say.plain(height),
        },
      ];
    }),
  }));
}
