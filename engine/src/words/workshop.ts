import type { LayKind } from '../cloth/index.ts';

/** Words of a class, and of cloth that is laid to chalk from. */
export interface WorkshopWords {
  readonly titlePlain: string;
  readonly layTitle: string;
  readonly classLays: string;
  readonly classCards: string;
  readonly clothPlain: string;
  readonly clothsHeading: string;
  readonly cloth: string;
  readonly skirts: string;
  readonly way: string;
  readonly used: string;
  readonly saved: string;
  /** Why it is not told. */
  readonly savedUnknown: string;
  readonly leftOverHeading: string;
  readonly nothing: string;
  /** `{cloth}`, `{lay}`. */
  readonly clothHeading: string;
  /** The same where it fits in no way: `{cloth}`. */
  readonly clothHeadingNone: string;
  /** Of a way that several `{skirts}` can't be laid in. */
  readonly tooLittleFor: string;
  readonly waysHeading: string;
  readonly asksHeading: string;
  readonly fromBolt: string;
  /** `{name}`, `{length}`. */
  readonly fromLength: string;
  readonly fromLengthPlain: string;
  /** `{cloth}`: which length. */
  readonly lengthPart: string;
  readonly openedOut: string;
  /** `{named}` (`yes`), `{name}`, `{length}`. */
  readonly notCutFrom: string;
  readonly asks: Readonly<Record<LayKind, string>>;
  /** `{pieces}`. */
  readonly outlines: string;
  readonly leastPossible: string;
  /** `{left}`, `{top}`. */
  readonly chalkCaption: string;
  readonly washedCaption: string;
  /** `{at}`, `{step}`, `{edge}`: lines of a pattern that run along the cloth; across it. */
  readonly stripesAt: string;
  readonly bandsAt: string;
  readonly foldOnBand: string;
  readonly stripesFolded: string;
  readonly patternFolded: string;
  /** `{off}`, `{seams}`: `meetsWhole` and `meetsNotch`, each with its `{count}`. */
  readonly patternMeets: string;
  readonly meetsWhole: string;
  readonly meetsNotch: string;
  /** `{from}`, `{to}`. */
  readonly stretch: string;
  readonly number: string;
  readonly whose: string;
  readonly piece: string;
  readonly along: string;
  readonly across: string;
  readonly corners: string;
  /** `{from}`, `{to}`. */
  readonly range: string;
  /** `{along}`, `{across}`. */
  readonly corner: string;
  readonly allRound: string;
  readonly headDown: string;
  readonly onFold: string;
  readonly flaw: string;
  /** Where folded pieces were cut from cloth that is opened out. */
  readonly cutBefore: string;
  /** `{count}`, `{along}`, `{across}`. */
  readonly leftOver: string;
  /** The same in a column: `{count}`, `{across}`, `{along}`. */
  readonly leftOverSize: string;
  /** Of a length at hand, beyond what is folded: `{along}`, `{across}`. */
  readonly uncut: string;
  readonly beneath: string;
  /** `{pieces}`. */
  readonly altChalked: string;
  readonly shelfHeading: string;
  /** `{cloth}`, `{count}`, `{skirts}`. */
  readonly shelfInOrder: string;
  readonly shelfMost: string;
  /** Those that were laid on what is at hand: `{cloth}`, `{skirts}`, `{lay}`. */
  readonly shelfLaid: string;
  /** Whose `{skirts}` found no room on the `{cloth}`, and what to do; whether everybody's `{fits}` with what is bought. */
  readonly shelfOut: string;
}
