/** Words of the papers: headings, columns, captions. */
export interface PaperWords {
  readonly card: string;
  readonly lay: string;
  readonly ribbonList: string;
  readonly shoppingList: string;
  readonly booklet: string;
  /** `{cut}`, `{length}`. */
  readonly titleFor: string;
  readonly titlePlain: string;
  readonly madeOn: string;
  readonly pageOf: string;
  readonly markHeading: string;
  readonly markHeadingWhole: string;
  readonly markCaption: string;
  readonly markCaptionWhole: string;
  readonly markCaptionWidths: string;
  readonly rowsHeading: string;
  readonly rowsCaption: string;
  readonly numbersHeading: string;
  readonly noticesHeading: string;
  readonly what: string;
  readonly value: string;
  readonly howGot: string;
  readonly row: string;
  readonly ribbon: string;
  readonly fromRawEdge: string;
  readonly fromHem: string;
  readonly cutStrips: string;
  readonly stripsEach: string;
  readonly waistMark: string;
  readonly panelWidth: string;
  readonly hemMark: string;
  readonly casingEnd: string;
  readonly hemEnd: string;
  readonly casingFold: string;
  /** In its place where the waist is sewn on. */
  readonly waistSeam: string;
  /** `{below}`: from the edge of the cloth to the line that a body which is not level is measured from. */
  readonly levelLine: string;
  readonly downFromLine: string;
  /** `{casing}`, `{beyond}`. */
  readonly curveCaptionSewn: string;
  /** `{name}`: what top and hem would be called alike. */
  readonly nameAtWaist: string;
  readonly nameAtHem: string;
  /** `{date}`. */
  readonly shortAbout: string;
  readonly letDownAbout: string;
  readonly hemFold: string;
  readonly trimHere: string;
  readonly cutHere: string;
  readonly downFromTop: string;
  readonly twoFolds: string;
  readonly oneFold: string;
  readonly centreLine: string;
  readonly foldAndEnds: string;
  readonly sideEdge: string;
  readonly topEdge: string;
  readonly rightSideUp: string;
  readonly rawEdge: string;
  readonly curveHeading: string;
  readonly curveCaption: string;
  readonly hemCurve: string;
  readonly waistCurve: string;
  readonly hemAcross: string;
  readonly waistAcross: string;
  readonly measureUp: string;
  readonly layHeading: string;
  readonly layHeadingNone: string;
  /** `{why}` (`folds`), `{taken}`, `{lay}`, `{buy}`. */
  readonly layCheaper: string;
  readonly rowsElsewhere: string;
  /** Above cloth that is laid besides: the strip beside what was folded, the bolt beyond it, another length. */
  readonly layMore: Readonly<Record<'beside' | 'beyond' | 'opened' | 'another', string>>;
  /** `{distance}`, `{edge}` (`first` or `last`), `{side}` (`on`, `within`, `beyond`): where the middle of a circle lies. */
  readonly swingAlong: string;
  readonly swingAcross: string;
  readonly swingCaption: string;
  readonly otherLays: string;
  readonly layChosen: string;
  /** Whether it is `{named}` yes or no, `{name}`, `{length}`. */
  readonly layFrom: string;
  readonly layDoesNotFit: string;
  readonly clothAfterWash: string;
  readonly clothBeforeWash: string;
  readonly toBuy: string;
  readonly leftOver: string;
  readonly leftOverSize: string;
  readonly printSide: string;
  readonly printUpright: string;
  readonly layers: string;
  readonly haveHeading: string;
  /** `{name}`, `{have}`, `{width}`. */
  readonly haveHeadingOf: string;
  readonly haveHeadingPlain: string;
  readonly haveLongest: string;
  readonly haveFullest: string;
  readonly haveRows: string;
  readonly haveMany: string;
  readonly haveNothing: string;
  readonly haveTakes: string;
  readonly colour: string;
  readonly strip: string;
  readonly length: string;
  readonly ribbonTotal: string;
  readonly cutInOrder: string;
  readonly need: string;
  readonly buy: string;
  readonly price: string;
  readonly total: string;
  readonly unpriced: string;
  readonly pieces: string;
  readonly spools: string;
  readonly cones: string;
  readonly atTheCounter: string;
  readonly threadHeading: string;
  readonly threadCaption: string;
  readonly stitchClass: string;
  readonly seamLength: string;
  readonly needle: string;
  readonly under: string;
  readonly clothColour: string;
  readonly clothCalled: string;
  readonly clothPieces: string;
  readonly threadCloths: string;
  readonly altWornCloths: string;
  readonly overlockThread: string;
  readonly bookletIntro: string;
  readonly drawingsLegend: string;
  readonly timeHands: string;
  readonly timeWait: string;
  readonly timeTotal: string;
  readonly stitchLength: string;
  readonly stitchWidth: string;
  readonly teachings: string;
  /** What something is about, before what there is to say of it. */
  readonly lead: string;
  /** `{one}`, `{other}`: two items of a list whose items have commas. */
  readonly apart: string;
  readonly localRules: string;
  readonly estimate: string;
  readonly chalkedAs: string;
  readonly hoursMinutes: string;
  readonly minutesOnly: string;
  /** `{whole}`, `{half}`. */
  readonly panelWaist: string;
  readonly panelHem: string;
  readonly panelAcross: string;
  /** `{value}`. */
  readonly panelTrim: string;
  readonly panelCurved: string;
  readonly clothFlat: string;
  /** `{along}`, `{across}`. */
  readonly clothFlatWords: string;
  /** `{across}`, `{up}`. */
  readonly curveDot: string;
  readonly clothFirstFold: string;
  readonly clothSecondFold: string;
  readonly clothFolded: string;
  readonly clothPanels: string;
  /** `{cloth}`. */
  readonly clothPanelsWords: string;
  readonly clothCentre: string;
  readonly clothStacked: string;
  readonly markWaistTitle: string;
  readonly markLengthTitle: string;
  readonly markHemTitle: string;
  readonly markJoinTitle: string;
  readonly markWidthsTitle: string;
  readonly cutOpened: string;
  readonly grain: string;
  /** Text equivalents of drawings. */
  readonly altFold: string;
  readonly altPanel: string;
  readonly altLay: string;
  readonly altStep: string;
  readonly wornFront: string;
  readonly wornBack: string;
  readonly wornSide: string;
  readonly altWorn: string;
  readonly altWornRows: string;
  readonly altWornPlain: string;
  readonly altWornHem: string;
  /** What is seen of cut, waist, extras and wearer. */
  readonly altWornSeen: Readonly<
    Record<
      | 'seated'
      | 'expecting'
      | 'tiers'
      | 'seams'
      | 'wrap'
      | 'waist'
      | 'cord'
      | 'closure'
      | 'darts'
      | 'pockets'
      | 'slits'
      | 'tucks',
      string
    >
  >;
  /** The chart of the pieces. */
  readonly piecesHeading: string;
  readonly piecesCaption: string;
  readonly piecesCaptionSwung: string;
  readonly partsHeading: string;
  readonly piece: string;
  readonly pieceToCut: string;
  readonly pieceMeasures: string;
  /** `{count}`, and how many of them are `{mirrored}`. */
  readonly pieceCut: string;
  readonly pieceCutMirrored: string;
  readonly clothOf: Readonly<Record<'skirt' | 'lining' | 'knit', string>>;
  /** `{number}`. */
  readonly tierNumber: string;
  /** `{tier}`, `{strips}`: a strip where several tiers lie on one cloth. */
  readonly tierStrip: string;
  /** Of a piece whose length lies across the bolt. */
  readonly pieceAcross: string;
  /** `{above}`, `{length}`, `{below}`. */
  readonly pieceDepths: string;
  readonly pieceHip: string;
  readonly pieceCurve: string;
  readonly pieceCurveUnlike: string;
  readonly pieceUp: string;
  readonly pieceDown: string;
  readonly pieceQuarters: string;
  readonly pieceNotchesBehind: string;
  readonly pieceCentreNotch: string;
  readonly edgeWaist: string;
  readonly edgeHem: string;
  readonly edgeTierAbove: string;
  readonly edgeTierBelow: string;
  readonly edgeSideSeam: string;
  readonly edgeCentreFront: string;
  readonly edgeCentreBack: string;
  readonly edgeSeam: string;
  readonly edgeFacing: string;
  readonly edgeToSkirt: string;
  readonly edgePocket: string;
  readonly altPieces: string;
  readonly curveCaptionPieces: string;
  readonly rowsHeadingPanels: string;
  /** `{upper}`, `{lower}`, `{below}`. */
  readonly rowOnSeam: string;
  readonly rowBelowSeam: string;
  readonly pieceEach: string;
  readonly risesHeading: string;
  readonly risesCaption: string;
  readonly riseNone: string;
  readonly risePlaces: Readonly<Record<'front' | 'back' | 'left' | 'right', string>>;
  readonly swingTitle: string;
  /** `{waist}`, `{hem}`. */
  readonly swingWords: string;
  readonly piecesOpened: string;
  readonly piecesOpenedWords: string;
}
