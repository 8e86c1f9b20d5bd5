import type { BodyFigureCode, BodyNoticeCode } from '../body/index.ts';
import type { ClothFigureCode, ClothNoticeCode, LayKind, TableEdge } from '../cloth/index.ts';
import type { PresetColour } from '../fields/index.ts';
import type { NoticeLevel } from '../figure/index.ts';
import type { FromClothFigureCode, FromClothNoticeCode, Stage } from '../plan/index.ts';
import type { ChoiceValue, RequestErrorCode, WishKeys, WishRoom } from '../request/index.ts';
import type { RibbonFigureCode, RibbonNoticeCode } from '../ribbon/index.ts';
import type { SeamFigureCode, StitchClass } from '../seams/index.ts';
import type { Caution, SentenceCode, SewingFigureCode, Station, StepId } from '../sewing/index.ts';
import type {
  ClothWeight,
  CutKind,
  ExtraName,
  PanelName,
  PartName,
  SkirtFigureCode,
  SkirtNoticeCode,
  WaistKind,
} from '../skirt/index.ts';
import type { Advice, Item, SuppliesFigureCode, SuppliesNoticeCode } from '../supplies/index.ts';
import type { NumberWords } from '../units/index.ts';
import type { CommandWords } from './command.ts';
import type { PaperWords } from './papers.ts';
import type { TableWords } from './table.ts';
import type { WorkshopWords } from './workshop.ts';

export type FigureCode =
  | BodyFigureCode
  | SkirtFigureCode
  | RibbonFigureCode
  | ClothFigureCode
  | SeamFigureCode
  | SuppliesFigureCode
  | SewingFigureCode
  | FromClothFigureCode;

export type NoticeCode =
  | BodyNoticeCode
  | SkirtNoticeCode
  | RibbonNoticeCode
  | ClothNoticeCode
  | SuppliesNoticeCode
  | FromClothNoticeCode;

/**
 * What a figure is called, and how it is got. In a working `{input}` is that input printed, `{input_name}` what
 * it is called. A figure without a working was measured or chosen.
 */
export type FigureWords = string | readonly [name: string, working: string];

/**
 * All the words of one language. A missing one is a type error. Messages are in ICU form: `{name}` a value,
 * plurals as `{n, plural, one {# row} other {# rows}}`; an apostrophe is written ’.
 */
export interface Catalogue {
  readonly numbers: NumberWords;
  readonly figures: Readonly<Record<FigureCode, FigureWords>>;
  readonly notices: Readonly<Record<NoticeCode, string>>;
  readonly levels: Readonly<Record<NoticeLevel, string>>;
  readonly stages: Readonly<Record<Stage, string>>;
  readonly cuts: Readonly<Record<CutKind, string>>;
  /** One plain sentence for each: what it is, what it asks of her hands, what cloth it eats. */
  readonly cutsAbout: Readonly<Record<CutKind, string>>;
  readonly waists: Readonly<Record<WaistKind, string>>;
  readonly waistsAbout: Readonly<Record<WaistKind, string>>;
  readonly extras: Readonly<Record<ExtraName, string>>;
  /** One plain sentence for each, as of the cuts. */
  readonly extrasAbout: Readonly<Record<ExtraName, string>>;
  readonly weights: Readonly<Record<ClothWeight, string>>;
  readonly panels: Readonly<Record<PanelName | 'round', string>>;
  readonly parts: Readonly<Record<PartName, string>>;
  readonly lays: Readonly<Record<LayKind, string>>;
  readonly tableEdges: Readonly<Record<TableEdge, string>>;
  readonly colours: Readonly<Record<PresetColour, string>>;
  readonly stitches: Readonly<Record<StitchClass, string>>;
  readonly stations: Readonly<Record<Station, string>>;
  readonly steps: Readonly<Record<StepId, string>>;
  readonly sentences: Readonly<Record<SentenceCode, string>>;
  readonly cautions: Readonly<Record<Caution, string>>;
  readonly items: Readonly<Record<Item['what'], string>>;
  readonly advice: Readonly<Record<Advice, string>>;
  readonly errors: Readonly<Record<RequestErrorCode, string>>;
  /** Kinds of values in a document, by the names that JSON Schema has for them. */
  readonly kinds: Readonly<Record<'object' | 'array' | 'string' | 'number' | 'int' | 'boolean', string>>;
  /** What each field of a cut, a waist or an extra is called, and more of it where its name does not say it all. */
  readonly wishes: { readonly [Room in WishRoom]: Readonly<Record<WishKeys[Room], string>> };
  readonly wishHints: { readonly [Room in WishRoom]?: Readonly<Partial<Record<WishKeys[Room], string>>> };
  readonly choices: Readonly<Record<ChoiceValue, string>>;
  readonly papers: PaperWords;
  readonly workshop: WorkshopWords;
  readonly command: CommandWords;
  readonly table: TableWords;
}
