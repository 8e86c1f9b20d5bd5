import { inches, mm, type Mm } from '../units/index.ts';
import type { Pace, WaistPlace, WayToWear } from './measures.ts';

/** Where the elastic sits. Survey lines are kept by level and never pooled. */
export const waistLevels = ['natural', 'navel', 'hip-bone'] as const;
export type WaistLevel = (typeof waistLevels)[number];

/** Points of the leg whose girth is known. */
export const legPoints = ['ankle', 'calf', 'aboveKnee', 'thigh'] as const;
export type LegPoint = (typeof legPoints)[number];

/** Level above the floor and girth of one leg there, both as shares of height. */
export interface LegShare {
  readonly level: number;
  readonly girth: number;
}

export interface BodySettings {
  readonly waistLevel: WaistLevel;
  readonly adultFromAge: number;
  readonly takeTolerance: Mm;
  readonly nearFloor: Mm;
  /** Sorted by age; the last row whose `fromAge` is not above the wearer's age holds. */
  readonly usualStepShares: readonly { readonly fromAge: number; readonly share: number }[];
  readonly unknownAgeStepShare: number;
  readonly paceFactors: Readonly<Record<Pace, number>>;
  readonly hipHeightShare: number;
  readonly kneeHeightShare: number;
  readonly legShares: Readonly<Record<LegPoint, LegShare>>;
  readonly rises: Readonly<Record<WayToWear, Readonly<Partial<Record<WaistPlace, Mm>>>>>;
  readonly farRise: Mm;
  readonly mostRiseShare: number;
  readonly hipDepthLevel: WaistLevel;
  readonly usualHipDepth: { readonly adult: Mm; readonly adultPlusMinus: Mm; readonly child: Mm };
  readonly likelyHipDepth: { readonly least: Mm; readonly most: Mm };
  readonly sizePlusMinus: Mm;
  readonly everydayEase: Mm;
  readonly adultHemFloor: Mm;
}

/** Every default of the room. */
export const bodySettings: BodySettings = {
  /**
   * The navel: the level of the survey's own waist-to-floor. Against a natural waist it errs on the side of more room to walk,
   * because a lower waist puts the same skirt nearer the floor.
   */
  waistLevel: 'navel',
  /**
   * Years from which a body counts as grown: the median girl stands at 96 % of her height at 20 by then
   * (157.3 of 163.3 cm, CDC growth charts 2000), the median boy at 88 %. NHANES takes hips from 12 years.
   */
  adultFromAge: 13,
  /** Two takes that differ by less agree: half an inch, 12.7 mm. About what army measurers were allowed (from memory). */
  takeTolerance: inches(0.5),
  /** A hem nearer to the floor than this asks for care on stairs and near fire. Common practice, no source. */
  nearFloor: inches(2),
  /**
   * Step over height at a usual pace. Children: 0.429 at 3–4 years, 0.458 at 6–7, 0.443 at 11–14 (Hausdorff et al. 1999; one
   * school study says 0.37 instead). Adults: the rule of thumb for women, first source unknown; measured steps cued long are
   * 0.422–0.433 and short 0.309 (Espy et al. 2010). From 65: 0.403, the longest of the older groups there (0.297–0.403), because
   * the skirt is to leave room.
   */
  usualStepShares: [
    { fromAge: 0, share: 0.43 },
    { fromAge: 6, share: 0.46 },
    { fromAge: 11, share: 0.44 },
    { fromAge: 18, share: 0.413 },
    { fromAge: 65, share: 0.4 },
  ],
  unknownAgeStepShare: 0.413,
  /**
   * Steps of the same people walking slowly, as they prefer and fast: 0.71, 0.856 and 1.048 of leg length (Schulz 2012), so
   * 0.83 and 1.22 times the usual. Cued long steps in another study are only 1.05 times (Espy et al. 2010): sources disagree.
   */
  paceFactors: { easy: 0.83, usual: 1, brisk: 1.22 },
  /** Segment heights of Drillis & Contini, from memory. Army women's hip joint landmark: 0.519 (SD 0.014) of height. */
  hipHeightShare: 0.53,
  /** Same, from memory; the middle of the kneecap of army women: 0.276 (SD 0.009). */
  kneeHeightShare: 0.285,
  /**
   * Means over height of 1,986 women (ANSUR II): levels of the ankle bone, the kneecap and the crotch, girths of
   * ankle, calf, thigh just above the knee and thigh. The survey has no level for the fullest calf (0.20, from memory), and says
   * "just above the kneecap" for the lower thigh: 5 cm above the kneecap's middle (0.276 + 0.030).
   */
  legShares: {
    ankle: { level: 0.0385, girth: 0.1326 },
    calf: { level: 0.2, girth: 0.2293 },
    aboveKnee: { level: 0.306, girth: 0.2462 },
    thigh: { level: 0.4802, girth: 0.3785 },
  },
  /**
   * How much longer the skirt is at a place of the waist than at its base, where it was not measured there. Seated, the lap takes up
   * cloth in front and the seat asks for it behind; a growing belly asks for it in front. Common practice, no source.
   */
  rises: {
    standing: {},
    seated: { front: inches(-2), back: inches(2) },
    expecting: { front: inches(2) },
  },
  /** A level further from the base than this is asked about. Common practice, no source. */
  farRise: mm(100),
  /** No more of the skirt's length than this is added or taken at the top, whatever was measured: the rest is a slip of the tape. */
  mostRiseShare: 0.15,
  /**
   * The trade measures the hip line from the natural waist. From the navel the fullest seat is 147 mm down in the median army woman,
   * from the tenth rib 222 mm (ANSUR II): only the latter lies in the trade's 7 to 9 in, and the longer one leaves an opening that
   * reaches the hip line.
   */
  hipDepthLevel: 'natural',
  /**
   * Where neither hip depth nor height is known. Adults: the middle of "usually 7 to 9 inches below the waistline" (Utah State
   * University Extension 2007-104pr). Children: common practice, no source.
   */
  usualHipDepth: { adult: inches(8), adultPlusMinus: inches(1), child: inches(5) },
  /** An adult's hip depth outside these is asked about: 6 to 10 in, the older texts' 6 and 7 in among them. */
  likelyHipDepth: { least: mm(150), most: mm(250) },
  /** A printed size stands for no less than this either way: sizes are 4 cm of hips apart (EN 13402-3, from memory). */
  sizePlusMinus: mm(20),
  /**
   * What daily life (stairs, sitting) asks beyond the level step: 125 cm measured at the knee of a standard figure, less the 100 cm
   * of the bare model.
   */
  everydayEase: mm(250),
  /** Makers' 15 in at the double fold, four layers, before seams. Common practice, no source. */
  adultHemFloor: inches(60),
};
