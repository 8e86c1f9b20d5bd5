import { z } from 'zod';
import type { Fields } from '../fields/index.ts';
import type { Notice } from '../figure/index.ts';
import type { Panel, PanelName, Part, PartName, Skirt } from '../skirt/index.ts';
import { called } from './called.ts';
import { caution } from './codes.ts';
import { clothOptions, type ClothOptions } from './options.ts';

const panelNames = [
  'front',
  'back',
  'width',
  'gore',
  'front gore',
  'side gore',
  'back gore',
  'half circle',
  'quarter circle',
  'part of a circle',
  'left front',
  'right front',
] as const satisfies readonly PanelName[];

const partNames = [
  'casing strip',
  'waistband',
  'waistband back',
  'tie',
  'placket',
  'pocket bag',
  'slit facing',
  'hem facing',
] as const satisfies readonly PartName[];

/** Tiers are counted from the top. */
const tierNames = ['tier 1', 'tier 2', 'tier 3', 'tier 4', 'tier 5'] as const;
/** Gores are counted round the body from the centre front. */
const goreNames = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10].map((number) => `gore ${String(number)}` as const);

/** Pieces of a skirt that may be cut from a cloth of their own. */
const contrastNames = [...panelNames, ...tierNames, ...goreNames, ...partNames] as const;
export type ContrastName = (typeof contrastNames)[number];

const MOST_CLOTHS = 8;

/** Other cloths of one skirt, each described as `cloth` asks: which pieces are cut from each. */
export const contrastOf = <Cloth extends z.ZodType>(cloth: Cloth) =>
  z
    .array(z.strictObject({ pieces: z.array(z.enum(contrastNames)).min(1).max(contrastNames.length), cloth }))
    .max(MOST_CLOTHS)
    .default([]);

export const contrastOptions = (fields: Fields) => contrastOf(clothOptions(fields).prefault({}));

export interface ContrastOptions {
  readonly pieces: readonly ContrastName[];
  readonly cloth: ClothOptions;
}

/** What of a skirt is cut from one of its cloths. */
export interface Share {
  readonly panels: readonly Panel[];
  readonly parts: readonly Part[];
}

interface Shares {
  /** From the skirt's own cloth. */
  readonly own: Share;
  /** From each of the other cloths, in their order; empty where nothing is. */
  readonly others: readonly Share[];
  readonly notices: readonly Notice[];
}

/**
 * Parts a skirt between its cloths. A piece that is named twice is cut from the first cloth that names it. A cloth that
 * would leave nothing to the skirt's own is left out, for then it is the skirt's own.
 */
export function sharesOf(skirt: Skirt, contrast: readonly ContrastOptions[]): Shares {
  const parts = skirt.parts.filter(({ cloth }) => cloth === 'skirt');
  let own: Share = { panels: skirt.panels, parts };
  const notices: Notice[] = [];
  const others = contrast.map(({ pieces, cloth }): Share => {
    const taken: Share = {
      panels: own.panels.filter((panel) => pieces.some((name) => isPanel(skirt, panel, name))),
      parts: own.parts.filter((part) => pieces.some((name) => name === part.name)),
    };
    for (const name of pieces.filter((each) => !isThere(skirt, each)))
      notices.push(caution('cloth.contrastNothing', { ...pieceOf(name), ...called(cloth) }));
    const rest: Share = {
      panels: own.panels.filter((panel) => !taken.panels.includes(panel)),
      parts: own.parts.filter((part) => !taken.parts.includes(part)),
    };
    if (rest.panels.length + rest.parts.length === 0) {
      notices.push(caution('cloth.contrastAll', called(cloth)));
      return { panels: [], parts: [] };
    }
    own = rest;
    return taken;
  });
  return { own, others, notices };
}

/** "tier 2" is a name and a number; the words for the name are in the catalogues. */
function pieceOf(name: ContrastName): { readonly piece: string; readonly number: number } {
  const number = Number(/ (\d+)$/.exec(name)?.[1] ?? 0);
  const plain = name.replace(/ \d+$/, '');
  const isPart = partNames.some((each) => each === plain);
  return { piece: `${isPart ? 'part' : 'panel'} ${plain}`, number };
}

/** Pieces of this skirt that may be cut from a cloth of their own, each with its name for the words; never all that it has. */
export const contrastChoices = (
  skirt: Skirt,
): readonly { readonly name: ContrastName; readonly piece: string }[] =>
  contrastNames.flatMap((name) => {
    if (!isThere(skirt, name) || skirt.panels.every((panel) => isPanel(skirt, panel, name))) return [];
    if (name.startsWith('tier ')) return [{ name, piece: name }];
    return [{ name, piece: `${partNames.some((each) => each === name) ? 'part' : 'panel'} ${name}` }];
  });

const isThere = (skirt: Skirt, name: ContrastName): boolean =>
  skirt.panels.some((panel) => isPanel(skirt, panel, name)) ||
  skirt.parts.some((part) => part.name === name && part.cloth === 'skirt');

function isPanel({ rounds }: Skirt, panel: Panel, name: ContrastName): boolean {
  if (panel.name === 'tier')
    return rounds.some(
      ({ panels }, i) => name === `tier ${String(i + 1)}` && panels.some((each) => each === panel),
    );
  return name === panel.name || name === `${panel.name} ${String(panel.number)}`;
}
