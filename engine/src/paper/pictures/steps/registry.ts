import type { StepId } from '../../../sewing/index.ts';
import { applique } from './each/applique.ts';
import { casing } from './each/casing.ts';
import { chalkRows } from './each/chalkRows.ts';
import { closeElastic } from './each/closeElastic.ts';
import { colourTest } from './each/colourTest.ts';
import { cut } from './each/cut.ts';
import { cutRibbon } from './each/cutRibbon.ts';
import { finish } from './each/finish.ts';
import { finishEdges } from './each/finishEdges.ts';
import { firstSeams } from './each/firstSeams.ts';
import { fold } from './each/fold.ts';
import { hang } from './each/hang.ts';
import { hem } from './each/hem.ts';
import { holdRibbon } from './each/holdRibbon.ts';
import { mark } from './each/mark.ts';
import { measure } from './each/measure.ts';
import { pressCloth } from './each/pressCloth.ts';
import { pressRows } from './each/pressRows.ts';
import { prewash } from './each/prewash.ts';
import { sideSeams } from './each/sideSeams.ts';
import { stitchRibbon } from './each/stitchRibbon.ts';
import { straighten } from './each/straighten.ts';
import { testStitch } from './each/testStitch.ts';
import { threadElastic } from './each/threadElastic.ts';
import { trim } from './each/trim.ts';
import { opening } from './each/opening.ts';
import { lining } from './each/lining.ts';
import { casingStrip } from './each/casingStrip.ts';
import { ties } from './each/ties.ts';
import { bandPrepare } from './each/bandPrepare.ts';
import { band } from './each/band.ts';
import { cordEyelets } from './each/cordEyelets.ts';
import { threadCord } from './each/threadCord.ts';
import { fasten } from './each/fasten.ts';
import { panelSeams } from './each/panelSeams.ts';
import { joinStrips } from './each/joinStrips.ts';
import { gather } from './each/gather.ts';
import { sewTiers } from './each/sewTiers.ts';
import { seamRows } from './each/seamRows.ts';
import { faceEdges } from './each/faceEdges.ts';
import { slits } from './each/slits.ts';
import { darts } from './each/darts.ts';
import { pockets } from './each/pockets.ts';
import { tucks } from './each/tucks.ts';
import type { Draw } from './picture.ts';

/** Every step's drawing; a step without one is a type error. */
export const pictures: Readonly<Record<StepId, Draw>> = {
  measure,
  colourTest,
  prewash,
  pressCloth,
  straighten,
  fold,
  mark,
  cut,
  trim,
  hang,
  chalkRows,
  cutRibbon,
  testStitch,
  firstSeams,
  holdRibbon,
  stitchRibbon,
  pressRows,
  applique,
  sideSeams,
  finishEdges,
  hem,
  casing,
  threadElastic,
  closeElastic,
  finish,
  firstJoins: firstSeams,
  pockets,
  darts,
  panelSeams,
  joinStrips,
  gather,
  sewTiers,
  seamRows,
  faceEdges,
  slits,
  opening,
  tucks,
  lining,
  casingStrip,
  ties,
  bandPrepare,
  band,
  cordEyelets,
  threadCord,
  fasten,
};
