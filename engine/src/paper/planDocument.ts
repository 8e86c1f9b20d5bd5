import { laidOf, pieceNames } from '../cloth/index.ts';
import type { Figure } from '../figure/index.ts';
import type { FromCloth, SkirtPlan } from '../plan/index.ts';
import type { Speaker } from '../words/index.ts';
import { ofCloth, threadName } from './documents/index.ts';
import { pieceParts } from './planDocument/pieces.ts';
import { saidOf } from './planDocument/fromCloth.ts';
import { saying } from './planDocument/saying.ts';
import { PLAN_VERSION, type PlanDocument } from './planSchema.ts';

/** The plan as a document for machines: every length in millimetres and as its reader sees it. */
export function planDocument(
  plan: SkirtPlan,
  speaker: Speaker,
  fromCloth: readonly FromCloth[] = [],
): PlanDocument {
  const say = saying(speaker);
  const asked = fromCloth.find(({ at }) => at === null);
  const { skirt, stride, ribbons, cloth, supplies, sewing, request } = plan;
  const { hang, waist, marks } = skirt;
  return {
    format: 'ribbonwright.plan',
    version: PLAN_VERSION,
    name: request.name,
    wearer: request.wearer,
    language: request.language,
    measure: request.measure,
    marks: {
      waistQuarter: say.length(marks.waistQuarter),
      hemQuarter: say.length(marks.hemQuarter),
      cutLength: say.length(marks.cutLength),
      casingEnd: say.length(marks.casingEnd),
      hemEnd: say.length(marks.hemEnd),
    },
    skirt: {
      cut: skirt.kind,
      finishedLength: say.length(skirt.finishedLength),
      opening: say.length(skirt.opening),
      hemRound: say.length(skirt.hemRound),
      hemline: hang.shape,
      sideExcess: say.length(hang.sideExcess),
      sideAngle: say.amount(hang.sideAngle),
      casing: say.length(waist.topAllowance),
      hem: say.length(skirt.hemAllowance),
      sideSeam: say.length(skirt.sideSeamAllowance),
      gathered: say.amount(waist.gatherRatio),
      curve:
        hang.shape === 'curved'
          ? { waist: hang.waistOrdinates.map(say.dot), hem: hang.hemOrdinates.map(say.dot) }
          : null,
    },
    ...pieceParts(plan, speaker),
    stride: {
      checked: stride.checked,
      hemNeeded: say.length(stride.needed),
      bare: stride.bare && say.length(stride.bare),
      everyday: stride.everyday && say.length(stride.everyday),
    },
    rows: ribbons.rows.map((row) => ({
      number: row.number,
      band: row.band,
      colour: speaker.colour(row.colour),
      hex: row.colour.hex,
      width: say.length(row.width),
      fromHem: say.length(row.fromHem),
      fromRawEdge: say.length(row.fromRawEdge),
      lengths: row.strips.map(({ panel, number, length }) => ({ panel, number, cut: say.length(length) })),
      curve: row.curve && { share: say.amount(row.curve.share), takeUp: say.length(row.curve.takeUp) },
      round: row.round,
      belowSeam: row.onSeam && say.length(row.onSeam),
    })),
    ribbons: supplies.ribbons.map(({ colour, width, total, strips }) => ({
      colour: speaker.colour(colour),
      hex: colour.hex,
      width: say.length(width),
      total: say.length(total),
      strips: strips.length,
    })),
    cloths: clothParts(plan, speaker),
    lays: cloth.lays.map((lay) => ({
      kind: lay.kind,
      chosen: lay === cloth.chosen,
      fits: lay.fits,
      clothAfterWash: say.length(lay.clothAfter),
      clothBeforeWash: say.length(lay.clothBefore),
      toBuy: say.length(lay.toBuy),
      left: { across: say.length(lay.left.across), along: say.length(lay.left.along) },
      printOnItsSide: lay.printOnItsSide,
      headToTail: lay.headToTail,
      layers: lay.table.layers,
    })),
    elastic: waist.elastic && { width: say.length(waist.elastic.width), cut: say.length(waist.elastic.cut) },
    thread: supplies.thread.map((each) => ({
      colour: threadName({ ...each, overlock: false }, plan, speaker),
      kind: each.overlock ? 'overlock' : 'sewing',
      needle: say.length(each.needle),
      under: say.length(each.under),
      total: say.length(each.total),
      spools: each.spools.value,
      parts: each.parts.map(({ stitch, seam, needle, under }) => ({
        stitch,
        seam: say.length(seam),
        needle: say.length(needle),
        under: say.length(under),
      })),
    })),
    shopping: supplies.items.map((item) => ({
      what: item.what,
      colour: item.colour && speaker.colour(item.colour),
      width: item.width && say.length(item.width),
      need: item.need && say.length(item.need),
      buy: item.buy.kind === 'length' ? say.length(item.buy) : say.amount(item.buy),
      price: item.price && { ...item.price, shown: speaker.money(item.price) },
      advice: item.advice.map((code) => speaker.words.advice[code]),
    })),
    steps: sewing.steps.map((step) => ({
      id: step.id,
      title: speaker.words.steps[step.id],
      after: [...step.after],
      station: step.station,
      sentences: step.sentences.map(speaker.sentence),
      cautions: step.cautions.map((code) => speaker.words.cautions[code]),
      minutes: { hands: say.amount(step.hands), wait: say.amount(step.wait) },
    })),
    time: { hands: say.amount(sewing.hands), wait: say.amount(sewing.wait) },
    notices: plan.notices.map(({ stage, notice, of }) => ({
      stage,
      cloth: ofCloth({ of }, speaker)[0] ?? null,
      level: notice.level,
      code: notice.code,
      text: speaker.notice(notice),
    })),
    workings: workingsOf(plan, speaker),
    fromCloth: asked ? saidOf(asked, speaker) : null,
    fromLengths: fromCloth.flatMap((answer) =>
      answer.at
        ? [{ ...saidOf(answer, speaker), name: answer.at.name, width: say.plain(answer.at.width) }]
        : [],
    ),
  };
}

function clothParts(plan: SkirtPlan, speaker: Speaker): PlanDocument['cloths'] {
  const say = saying(speaker);
  return plan.cloths.map((each) => {
    const { name, colour, washed } = each.options;
    const { chosen } = laidOf(plan, each);
    return {
      name,
      colour: speaker.colour(colour),
      hex: colour.hex,
      pieces: speaker.pieces(pieceNames(plan.skirt, each)),
      washed,
      lay: chosen.kind,
      clothAfterWash: say.length(chosen.clothAfter),
      clothBeforeWash: say.length(chosen.clothBefore),
      toBuy: say.length(chosen.toBuy),
    };
  });
}

function workingsOf({ skirt, stride, ribbons, cloth }: SkirtPlan, speaker: Speaker): Record<string, string> {
  const figures: [string, Figure | null | undefined][] = [
    ['marks.waistQuarter', skirt.marks.waistQuarter],
    ['marks.hemQuarter', skirt.marks.hemQuarter],
    ['marks.cutLength', skirt.marks.cutLength],
    ['skirt.opening', skirt.opening],
    ['skirt.hemRound', skirt.hemRound],
    ['skirt.casing', skirt.waist.topAllowance],
    ['stride.bare', stride.bare],
    ['stride.everyday', stride.everyday],
    ['elastic.cut', skirt.waist.elastic?.cut],
    ...ribbons.rows.flatMap((row, i): [string, Figure][] => [
      [`rows[${String(i)}].fromHem`, row.fromHem],
      [`rows[${String(i)}].fromRawEdge`, row.fromRawEdge],
    ]),
    ...cloth.lays.flatMap((lay, i): [string, Figure][] => [
      [`lays[${String(i)}].clothAfterWash`, lay.clothAfter],
      [`lays[${String(i)}].clothBeforeWash`, lay.clothBefore],
    ]),
  ];
  return Object.fromEntries(
    figures.flatMap(([path, figure]) => {
      const working = figure ? speaker.working(figure) : null;
      return working === null ? [] : [[path, working]];
    }),
  );
}
