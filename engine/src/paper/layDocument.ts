import type { ClothLength, FoundCloth, FoundTable, Rest } from '../cloth/index.ts';
import { flatten } from '../geometry/index.ts';
import { mm } from '../units/index.ts';
import type { Speaker } from '../words/index.ts';
import {
  laidFromShelf,
  toldBeside,
  type ClassPlan,
  type HowMany,
  type PlannedCloth,
} from '../workshop/index.ts';
import { clothName, namesOnTable } from './documents/index.ts';
import { numbered } from './pictures/chalk/numbered.ts';
import { saying } from './planDocument/saying.ts';

/** Version of the lay document: raised when a field changes its meaning or goes. Fields may be added. */
const LAY_VERSION = 1;

export type LayDocument = ReturnType<typeof layDocument>;

/**
 * How every cloth of a class (or of a skirt by itself) is laid, as a document for machines: every length in millimetres
 * and as its reader sees it. On a table x runs along the cloth from its start, y across it from its upper edge.
 */
export function layDocument(plan: ClassPlan, speaker: Speaker, shelf: readonly HowMany[] = []) {
  const nameOf = (key: string): string => {
    const found = plan.cloths.find((cloth) => cloth.key === key);
    return found ? clothName(found, speaker) : key;
  };
  return {
    format: 'ribbonwright.lay' as const,
    version: LAY_VERSION,
    name: plan.request.name,
    language: plan.request.language,
    measure: plan.request.measure,
    cloths: plan.cloths.map((cloth) => ({
      name: clothName(cloth, speaker),
      skirts: cloth.shares.map(({ skirt }) => skirt.label),
      chosen: cloth.chosen.kind,
      ways: cloth.ways.map((way) => wayOf(way, cloth, speaker)),
    })),
    shelf: shelf.map(({ cloth: key, inOrder, most }) => ({
      cloth: nameOf(key),
      inOrder: inOrder.skirts,
      most: most.skirts,
      /** How they lie, where not everybody's skirt fits on that cloth. */
      laid: laidFromShelf(
        plan,
        shelf.filter((each) => each.cloth === key),
      ).map((some) => ({
        skirts: some.shares.map(({ skirt }) => skirt.label),
        ...wayOf(some.chosen, some, speaker),
      })),
    })),
    notices: toldBeside(plan, shelf).map(({ stage, label, notice }) => ({
      stage,
      skirt: label,
      level: notice.level,
      code: notice.code,
      text: speaker.notice(notice),
    })),
  };
}

function wayOf(way: FoundCloth, cloth: PlannedCloth, speaker: Speaker) {
  const say = saying(speaker);
  // Where nothing is laid there is no length to tell; where some of a class are, it is theirs.
  const isLaid = way.fits || way.tables.length > 0;
  const length = (figure: FoundCloth['clothAfter']) => (isLaid ? say.length(figure) : null);
  return {
    way: way.kind,
    fits: way.fits,
    clothAfter: length(way.clothAfter),
    clothBefore: length(way.clothBefore),
    toBuy: length(way.toBuy),
    byHand: way.byHand && say.length(way.byHand),
    saved: way.saved && say.length(way.saved),
    lowerBound: length(way.lowerBound),
    proven: way.proven,
    evaluations: way.evaluations,
    notices: way.notices.map(({ level, code, params }) => ({
      level,
      code,
      text: speaker.notice({ level, code, params }),
    })),
    tables: way.tables.map((table) => tableOf(table, cloth, speaker)),
  };
}

function tableOf(table: FoundTable, cloth: PlannedCloth, speaker: Speaker) {
  const say = saying(speaker);
  const nameOf = namesOnTable(cloth, speaker);
  return {
    from: lengthOf(table.from, speaker),
    along: say.plain(table.along),
    across: say.plain(table.across),
    used: say.plain(table.used),
    layers: table.layers,
    /** Whether it is cloth of a table before it, opened out once its pieces were cut; then where they were. */
    opened: table.where === 'opened',
    cut: (table.cut ?? []).map((outline) => flatten(outline, mm(0.5)).map(({ x, y }) => [tidy(x), tidy(y)])),
    edges: { top: table.top, bottom: table.bottom, left: table.left, right: table.right },
    leftOver: table.leftOver && {
      x: say.plain(table.leftOver.x),
      y: say.plain(table.leftOver.y),
      along: say.plain(table.leftOver.along),
      across: say.plain(table.leftOver.across),
      ...restOf(table.leftOver, speaker),
    },
    /** What of a length at hand lies beyond all its tables. */
    uncut: table.uncut && restOf(table.uncut, speaker),
    /** What of a lower layer reaches beyond the upper one, where stripes are folded off the middle. */
    beneath: table.beneath && restOf(table.beneath, speaker),
    pieces: numbered(table).map(({ number, piece, box, corners }) => ({
      number,
      wearer: piece.wearer,
      name: nameOf(piece),
      onFold: piece.onFold,
      turned: piece.turned,
      along: [say.plain(box.left), say.plain(box.right)],
      across: [say.plain(box.top), say.plain(box.bottom)],
      corners: corners.map(({ x, y }) => ({ along: say.plain(mm(x)), across: say.plain(mm(y)) })),
      /** Corners of straight lines that keep within 0.5 mm of the outline. */
      outline: flatten(piece.outline, mm(0.5)).map(({ x, y }) => [tidy(x), tidy(y)]),
    })),
  };
}

/** As a tape measures it once it is cut out and opened, and how many of that size. */
const restOf = ({ opened, count }: Rest, speaker: Speaker) => ({
  opened: { along: saying(speaker).plain(opened.along), across: saying(speaker).plain(opened.across) },
  count,
});

const tidy = (value: number): number => Math.round(value * 1000) / 1000 + 0;

const lengthOf = ({ name, length, washed }: ClothLength, speaker: Speaker) => ({
  name,
  washed,
  length: length === null ? null : saying(speaker).plain(length),
});
