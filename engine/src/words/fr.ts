import type { Catalogue } from './catalogue.ts';

/** Spaces before : ; ? ! % » and after « are no-break spaces (U+00A0), as are those between a number and its unit. */
export const fr: Catalogue = {
  numbers: { locale: 'fr-CA', inch: 'po', yard: 'vg', centimetre: 'cm', metre: 'm', millimetre: 'mm' },
  figures: {
    'body.waist': 'tour de taille',
    'body.hip': 'tour de hanches',
    'body.waistToHem': 'de la taille à l’ourlet',
    'body.waistToFloor': 'de la taille au sol',
    'body.height': 'stature',
    'body.calf': 'tour de mollet',
    'body.hipDepth': 'de la taille à la ligne des hanches',
    'body.thigh': 'tour de cuisse',
    'body.levelFront': 'de la taille au sol au milieu devant',
    'body.levelBack': 'de la taille au sol au milieu dos',
    'body.levelLeft': 'de la taille au sol du côté gauche',
    'body.levelRight': 'de la taille au sol du côté droit',
    'body.largerOfTwo': ['la plus grande des deux mesures', 'la plus grande de {first} et {second}'],
    'body.meanOfTwo': ['à mi-chemin des deux mesures', '({first} + {second}) ÷ 2'],
    'body.takesDifference': ['écart entre les deux mesures', '{larger} − {smaller}'],
    'body.waistToFloorFromHeight': [
      'de la taille au sol, estimé d’après la stature',
      '{start} + {slope} × {measure_name} {measure}',
    ],
    'body.heightFromWaistToFloor': [
      'stature, estimée de la taille au sol',
      '{start} + {slope} × {measure_name} {measure}',
    ],
    'body.hipFromWaist': [
      'tour de hanches, estimé d’après le tour de taille',
      '{start} + {slope} × {measure_name} {measure}',
    ],
    'body.hipFromSize': ['tour de hanches, d’après la taille imprimée', '({from} + {to}) ÷ 2'],
    'body.hipAsWaist': 'tour de hanches, pas mesuré : le tour de taille en tient lieu',
    'body.sizeFrom': 'taille imprimée, de',
    'body.sizeTo': 'taille imprimée, à',
    'body.halfLeft': 'moitié gauche des hanches',
    'body.halfRight': 'moitié droite des hanches',
    'body.hipFromHalves': [
      'tour de hanches, d’après ses deux moitiés',
      '{left} de moitié gauche + {right} de moitié droite',
    ],
    'body.hipHalf': ['moitié du tour de hanches', '{hip} de tour de hanches ÷ 2'],
    'body.hipSide': ['ce côté des hanches', '{hip} de tour de hanches × {half} ÷ {sum}'],
    'body.hipDepthShare': 'de la taille à la ligne des hanches, en part de la stature',
    'body.hipDepthFromHeight': [
      'de la taille à la ligne des hanches, d’après la stature',
      '{height} de stature × {depthShare}',
    ],
    'body.usualHipDepth': 'de la taille à la ligne des hanches, d’habitude',
    'body.floorFromLevels': ['de la taille au sol, à mi-chemin de deux endroits', '({first} + {second}) ÷ 2'],
    'body.rise': ['plus long en haut à cet endroit', '{level} d’ici au sol − {base}'],
    'body.usualRise': 'plus long en haut à cet endroit, comme d’habitude',
    'body.noRise': 'rien de plus en haut à cet endroit',
    'body.mostRiseShare': 'le plus qui se fait en haut, en part de la longueur',
    'body.riseHeld': [
      'plus long en haut à cet endroit, autant que possible',
      '{waistToHem} de la taille à l’ourlet × {share}',
    ],
    'body.lineStart': 'part fixe de la règle tirée de l’enquête',
    'body.lineSlope': 'part proportionnelle de la règle tirée de l’enquête',
    'body.expected': ['habituel pour ce corps', '{start} + {slope} × {measure}'],
    'body.least': ['le moins qu’on voit d’habitude', '{start} + {slope} × {measure}'],
    'body.most': ['le plus qu’on voit d’habitude', '{start} + {slope} × {measure}'],
    'body.hemHeight': [
      'hauteur de l’ourlet au-dessus du sol',
      '{waistToFloor} de la taille au sol − {waistToHem} de la taille à l’ourlet',
    ],
    'body.atFloor': 'au ras du sol',
    'body.usualStepShare': 'pas habituel, en part de la stature',
    'body.paceFactor': 'effet de l’allure sur le pas',
    'body.stepShare': ['pas, en part de la stature', '{usualShare} × {paceFactor}'],
    'body.step': ['longueur d’un pas', '{height} de stature × {stepShare}'],
    'body.hipHeightShare': 'articulation de la hanche, en part de la stature',
    'body.hipHeight': ['articulation de la hanche au-dessus du sol', '{height} de stature × {hipShare}'],
    'body.kneeHeightShare': 'genou, en part de la stature',
    'body.kneeHeight': ['genou au-dessus du sol', '{height} de stature × {kneeShare}'],
    'body.legLevelShare': 'niveau sur la jambe, en part de la stature',
    'body.legLevel': ['niveau sur la jambe', '{height} de stature × {levelShare}'],
    'body.legGirthShare': 'tour de jambe, en part de la stature',
    'body.legGirth': ['tour de jambe', '{height} de stature × {girthShare}'],
    'body.calfGirthShare': 'tour de mollet, en part de la stature',
    'body.legGirthFromCalf': ['tour de jambe, d’après le mollet', '{calf} × {girthShare} ÷ {calfShare}'],
    'body.thighGirthShare': 'tour de cuisse, en part de la stature',
    'body.legGirthFromThigh': ['tour de jambe, d’après la cuisse', '{thigh} × {girthShare} ÷ {thighShare}'],
    'body.legGirthFromBoth': ['tour de jambe, d’après mollet et cuisse', '({fromCalf} + {fromThigh}) ÷ 2'],
    'body.legGirthBetween': [
      'tour de jambe à ce niveau',
      '{lowGirth} + ({highGirth} − {lowGirth}) × ({level} − {lowLevel}) ÷ ({highLevel} − {lowLevel})',
    ],
    'body.stepGap': [
      'écart des jambes à ce niveau',
      '{step} de pas × (1 − {level} ÷ {hipHeight} à la hanche)',
    ],
    'body.bareHem': ['place minimale pour un pas', '2 × {gap} entre les jambes + {leg} autour d’une jambe'],
    'body.everydayEase': 'supplément pour l’escalier et la position assise',
    'body.everydayHem': [
      'place pour marcher tous les jours',
      '{bare} pour un pas + {ease} pour l’escalier et la position assise',
    ],
    'body.levelForHem': [
      'hauteur au-dessus du sol où l’on peut marcher',
      '{lowLevel} + ({highLevel} − {lowLevel}) × ({lowNeed} − {around}) ÷ ({lowNeed} − {highNeed})',
    ],
    'body.adultHemFloor': 'ourlet minimal d’usage pour une adulte',
    'body.noNeedKnown': 'pas d’ourlet minimal connu',
    'body.noStepsTaken': 'personne ne marche avec',
    'body.growth': 'croissance sur la même courbe de référence',
    'body.heightAfter': ['stature à ce moment-là', '{height} de stature + {growth} de croissance'],
    'body.waistToFloorAfter': [
      'de la taille au sol à ce moment-là',
      '{measure} de la taille au sol × {after} de stature à ce moment-là ÷ {height} de stature',
    ],
    'body.waistToHemAfter': [
      'de la taille à l’ourlet à ce moment-là, au même niveau',
      '{measure} de la taille à l’ourlet × {after} de stature à ce moment-là ÷ {height} de stature',
    ],
    'body.hemRise': [
      'remontée de l’ourlet',
      '{longer} de la taille à l’ourlet à ce moment-là − {waistToHem} de la taille à l’ourlet',
    ],
    'body.keepFor': [
      'réserve pour la croissance',
      '{longer} de la taille à l’ourlet à ce moment-là − {waistToHem} de la taille à l’ourlet',
    ],
    'body.shortWhen': 'remontée qui rend la jupe trop courte',
    'body.riseAllowed': [
      'remontée qui rend la jupe trop courte, réserve lâchée',
      '{shortWhen} de remontée + {kept} de réserve',
    ],
    'body.heightWhenShort': [
      'stature à laquelle la jupe est trop courte',
      '{height} de stature × ({waistToHem} de la taille à l’ourlet + {rise} de remontée) ÷ {waistToHem} de la taille à l’ourlet',
    ],
    'body.monthsUntilShort': 'mois au bout desquels la jupe est trop courte',
    'body.fitMonths': 'mois pendant lesquels la jupe doit aller',

    'skirt.fullness': 'ampleur',
    'skirt.layers': 'épaisseurs',
    'skirt.leastFlare': 'évasement minimal',
    'skirt.sideSeam': 'marge de couture du côté',
    'skirt.sideSeams': 'bords de couture',
    'skirt.hemAllowance': 'ourlet',
    'skirt.margin': 'pour mettre d’équerre',
    'skirt.finishedLength': ['longueur finie', '{asked} de la taille à l’ourlet'],
    'skirt.panelLength': [
      'longueur des panneaux',
      '{finished} de longueur finie − {above} de taille au-dessus des panneaux',
    ],
    'skirt.panelLengthTucked': [
      'longueur des panneaux',
      '{finished} de longueur finie − {above} de taille au-dessus des panneaux + {tucks} pris dans les plis',
    ],
    'skirt.seamSide': ['une couture', '{sewn} + {casing} en haut + {hem} d’ourlet'],
    'skirt.seamLine': 'côté fini',
    'skirt.topQuarter': [
      'repère de taille à partir de la pliure',
      '{girth_name} {girth} × {fullness} ÷ {layers} épaisseurs',
    ],
    'skirt.hemQuarter': [
      'repère d’ourlet à partir de la pliure',
      'la plus grande de {floor} (minimum d’usage), {flare} (repère de taille + évasement), {stride} (place pour marcher)',
    ],
    'skirt.hemOfFlare': ['repère d’ourlet à partir de la pliure', '{flare} (repère de taille + évasement)'],
    'skirt.hemOfFloor': [
      'repère d’ourlet à partir de la pliure',
      'la plus grande de {floor} (minimum d’usage), {flare} (repère de taille + évasement)',
    ],
    'skirt.hemOfStride': [
      'repère d’ourlet à partir de la pliure',
      'la plus grande de {flare} (repère de taille + évasement), {stride} (place pour marcher)',
    ],
    'skirt.hemQuarterAsked': 'repère d’ourlet, comme demandé',
    'skirt.hemQuarterEqual': ['repère d’ourlet, aussi large que celui de la taille', '{top}'],
    'skirt.hemFloor': 'repère d’ourlet minimal d’usage',
    'skirt.hemFromFlare': ['repère de taille + évasement', '{top} au repère de taille + {flare} d’évasement'],
    'skirt.hemFromStride': [
      'repère d’ourlet pour pouvoir marcher',
      '({need} pour marcher + {edges} × {seam} de couture) ÷ {layers} épaisseurs',
    ],
    'skirt.hemStrideUnknown': 'place pour marcher, non calculée',
    'skirt.widerEnd': [
      'au bord vif, plus large que son repère',
      'repère {quarter} + {flare} d’évasement × {depth} rabattus ÷ {length} de longueur',
    ],
    'skirt.narrowerEnd': [
      'au bord vif, plus étroit que son repère',
      'repère {quarter} − {flare} d’évasement × {depth} rabattus ÷ {length} de longueur',
    ],
    'skirt.cutLength': [
      'longueur à couper',
      '{length_name} {length} + {casing_name} {casing} + {hem} d’ourlet + {margin} pour mettre d’équerre',
    ],
    'skirt.bottom': ['bas sous le bord du haut', '{cut} de longueur à couper + {rise} pour la courbe'],
    'skirt.openingSewn': 'tour du haut, tel que cousu sur un côté très en biais',
    'skirt.hemRoundSewn': 'tour de l’ourlet, tel que cousu sur un côté très en biais',
    'skirt.opening': [
      'tour du haut, de couture à couture',
      '{layers} × {quarter} au repère de taille − {edges} × {seam} de couture',
    ],
    'skirt.openingOfStrips': [
      'tour du haut, de couture à couture',
      '{strips} bandes × {strip} − {edges} × {seam} de couture',
    ],
    'skirt.hemOfStrips': [
      'tour de l’ourlet, de couture à couture',
      '{strips} bandes × {strip} − {edges} × {seam} de couture',
    ],
    'skirt.hemRound': [
      'tour de l’ourlet, de couture à couture',
      '{layers} × {quarter} au repère d’ourlet − {edges} × {seam} de couture',
    ],
    'skirt.hipEase': 'aisance pour l’enfiler',
    'skirt.openingNeeded': [
      'nécessaire pour passer les hanches',
      '{hip} de tour de hanches + {ease} d’aisance',
    ],
    'skirt.openingNeededUnsure': [
      'nécessaire pour passer les hanches',
      '{hip} de tour de hanches + {unsure} parce qu’il est estimé + {ease} d’aisance',
    ],
    'skirt.hipUnsure': 'les hanches peuvent avoir en plus',
    'skirt.flareAtFold': [
      'évasement à partir de la pliure',
      '{hem} au repère d’ourlet − {top} au repère de taille',
    ],
    'skirt.sideExcess': [
      'côté plus long que le milieu de',
      '√({length} × {length} + {flare} × {flare}) − {length}',
    ],
    'skirt.levelSide': 'côté aussi long que le milieu',
    'skirt.levelAngle': 'pas d’angle à la couture de côté',
    'skirt.sideAngle': [
      'angle à la couture de côté',
      'deux fois l’inclinaison de {flare} d’évasement sur {length} de longueur',
    ],
    'skirt.levelTolerance': 'écart que personne ne voit',
    'skirt.apexRadius': [
      'rayon de la courbe de taille',
      '{top} au repère de taille × {length} de longueur ÷ ({hem} au repère d’ourlet − {top} au repère de taille)',
    ],
    'skirt.curveRadius': 'rayon de la courbe',
    'skirt.hemRadius': ['rayon de la courbe d’ourlet', '{apex} à la courbe de taille + {length} de longueur'],
    'skirt.ordinate': [
      'à mesurer vers le haut à partir de la ligne',
      '{radius} − √({radius} × {radius} − {across} × {across})',
    ],
    'skirt.ordinateAt': 'distance à partir de la pliure',
    'skirt.extraDepth': 'tissu en plus pour la courbe',
    'skirt.noExtraDepth': 'pas de tissu en plus',
    'skirt.gatherRatio': ['fronces à la taille', '{opening} de tour du haut ÷ {waist} de tour de taille'],
    'skirt.mostGathered': 'maximum de fronces pour ce tissu',
    'skirt.leastGathered': 'minimum pour que cela fronce',
    'skirt.hemExcess': [
      'ourlet trop large là où il se pose',
      '2 × {hem} d’ourlet ÷ ({radius} de rayon − {hem} d’ourlet)',
    ],
    'skirt.casingShort': [
      'coulisse trop courte là où elle se pose',
      '2 × {casing} de coulisse ÷ ({apex} de rayon − {casing} de coulisse)',
    ],
    'skirt.easedLimit': 'se résorbe sans se voir',
    'skirt.easedByRow': 'résorbé par une piqûre à grands points',
    'skirt.offGrain': 'écart du côté au droit fil',
    'skirt.widths': [
      'lés de tissu',
      '{round} de tour ÷ ({cloth} de laize − 2 × {seam} de couture), arrondi au-dessus',
    ],
    'skirt.widthsAsked': 'lés de tissu, comme demandé',
    'skirt.fullRound': ['tour voulu par l’ampleur', '{girth_name} {girth} × {fullness}'],
    'skirt.roundFloor': ['tour minimal d’usage', '{layers} × {quarter}'],
    'skirt.roundNeeded': [
      'tour nécessaire',
      'la plus grande de {full} (ampleur), {step} (place pour marcher), {floor} (minimum d’usage), {hip} (pour l’enfiler)',
    ],
    'skirt.fullTurn': 'tour complet (2 × π)',
    'skirt.circleFraction': 'part du cercle',
    'skirt.circleRadius': [
      'rayon de la courbe de taille',
      '({round} de tour + {edges} × {seam} de couture) ÷ ({turn} × {fraction} de cercle)',
    ],
    'skirt.circleRadiusWider': [
      'rayon de la courbe de taille',
      '{hand} selon le tour + {more} pour que le haut cousu ne serre pas',
    ],
    'skirt.circleRadiusMore': 'en plus, pour les coutures et un haut qui remonte',
    'skirt.circleQuarter': [
      'quart du tour de tissu',
      '{turn} × {fraction} de cercle × {radius} de rayon ÷ {layers}',
    ],
    'skirt.tiers': 'volants',
    'skirt.tierHeight': 'hauteur finie du volant',
    'skirt.tierTopRound': [
      'tour du premier volant',
      'la plus grande de {full} (ampleur), {least} (pour la taille)',
    ],
    'skirt.tierNextRound': ['tour que doit avoir le volant', '{above} au-dessus × {ratio}'],
    'skirt.tierRatio': 'fois l’ampleur du volant du dessus',
    'skirt.tierRatioAsked': 'fois l’ampleur du volant du dessus, comme demandé',
    'skirt.tierRatioWidened': 'fois l’ampleur du volant du dessus, pour marcher',
    'skirt.tierStrips': [
      'bandes du volant',
      '{round} de tour ÷ ({cloth} de laize − 2 × {seam} de couture), arrondi au-dessus',
    ],
    'skirt.tierStripsMost': 'le plus de bandes par volant',
    'skirt.tierStrip': [
      'largeur d’une bande',
      '({round} de tour + {edges} × {seam} de couture) ÷ {strips} bandes',
    ],
    'skirt.tierStripWhole': 'largeur d’une bande, celle du tissu',
    'skirt.tierRound': [
      'tour du volant, de couture à couture',
      '{strips} bandes × {strip} − {edges} × {seam} de couture',
    ],
    'skirt.tierQuarter': ['repère du quart', '{strips} bandes × {strip} ÷ {layers}'],
    'skirt.tierSeam': 'marge de couture entre les volants',
    'skirt.tierSeamEdges': 'bords cousus à un autre volant',
    'skirt.tierCutLength': [
      'longueur à couper, une bande de chaque volant',
      '{length} de longueur finie + {above} au-dessus + {hem} d’ourlet + {edges} × {seam} entre les volants',
    ],
    'skirt.tierCutLengthTrimmed': [
      'longueur à couper, une bande de chaque volant',
      '{length} de longueur finie + {above} au-dessus + {hem} d’ourlet + {edges} × {seam} entre les volants + {tiers} × {margin} pour mettre d’équerre',
    ],
    'skirt.stripJoin': ['un assemblage', '{sewn} + {above} au-dessus + {below} au-dessous'],
    'skirt.gatheredQuarter': ['repère du quart', '{widths} lés × {cloth} de laize ÷ {layers}'],
    'skirt.trimmedQuarter': ['repère du quart', '({round} de tour + {edges} × {seam} de couture) ÷ {layers}'],
    'skirt.walkWider': [
      'repère d’ourlet qui laisse marcher',
      '({need} pour marcher + {edges} × {seam} de couture) ÷ 4',
    ],
    'skirt.walkShorter': ['plus courte de', '{level} au-dessus du sol − {hemHeight} de l’ourlet au sol'],
    'skirt.gores': 'pans',
    'skirt.otherGores': 'autres pans',
    'skirt.frontGore': 'pan devant pour une unité d’un autre',
    'skirt.goreUnits': [
      'pans, celui du devant compté selon sa largeur',
      '{front} pour le devant + {others} autres',
    ],
    'skirt.goreHalf': [
      'demi-pan, du milieu au bord à cru',
      '{round} de tour ÷ {units} pans ÷ 2 + {seam} de couture',
    ],
    'skirt.frontGoreHalf': [
      'demi-pan devant, du milieu au bord à cru',
      '{round} de tour × {front} ÷ {units} pans ÷ 2 + {seam} de couture',
    ],
    'skirt.goreOnStraight': [
      'demi-pan à la ligne de hanches, du milieu au bord à cru',
      '{top} en haut + ({hem} à l’ourlet − {top}) × {level} ÷ {length} de longueur',
    ],
    'skirt.frontHemAsked': 'ourlet du pan devant, comme demandé',
    'skirt.frontHemHeld': 'ourlet du pan devant, autant que la place le permet',
    'skirt.frontHemHalf': [
      'demi-pan devant à l’ourlet, du milieu au bord à cru',
      '{hem} d’ourlet ÷ 2 + {seam} de couture',
    ],
    'skirt.otherHemHalf': [
      'demi-pan de chaque autre à l’ourlet, du milieu au bord à cru',
      '({round} de tour − {hem} au pan devant) ÷ {others} autres ÷ 2 + {seam} de couture',
    ],
    'skirt.goresQuarter': [
      'un quart du tour, bords à cru de tous les pans',
      '2 × ({front} au demi-pan devant + {others} × {other} à chaque autre demi-pan) ÷ {layers}',
    ],
    'skirt.goresRound': [
      'tour des pans, de couture à couture',
      '{layers} × {quarter} − {edges} × {seam} de couture',
    ],
    'skirt.goresTop': ['tour du haut', 'la plus grande de {full} (ampleur), {round} (pour l’enfiler)'],
    'skirt.fittedTop': ['tour du haut, de couture à couture, comme la taille le demande', '{round}'],
    'skirt.fittedTopWider': 'tour du haut, plus large que la taille pour les hanches',
    'skirt.hipMore': 'aisance pour bouger',
    'skirt.hipWanted': ['tour à la ligne de hanches', '{needed} pour passer les hanches + {more} d’aisance'],
    'skirt.hipLevel': 'ligne de hanches sous le haut des panneaux',
    'skirt.belowHip': ['sous la ligne de hanches', '{length} de longueur − {level}'],
    'skirt.hemRoundMost': 'évasement maximal des panneaux',
    'skirt.roundAndFlare': ['tour au-dessus + évasement', '{round} de tour + {flare} d’évasement'],
    'skirt.hemRoundAsked': 'tour de l’ourlet, comme demandé',
    'skirt.hemWanted': [
      'tour de l’ourlet',
      'la plus grande de {floor} (minimum d’usage), {flare} (évasement), {step} (place pour marcher)',
    ],
    'skirt.hemWantedFloor': [
      'tour de l’ourlet',
      'la plus grande de {floor} (minimum d’usage), {flare} (évasement)',
    ],
    'skirt.hemWantedStep': [
      'tour de l’ourlet',
      'la plus grande de {flare} (évasement), {step} (place pour marcher)',
    ],
    'skirt.hemWantedFlare': ['tour de l’ourlet', '{flare} (évasement)'],
    'skirt.goreSewnHalf': 'demi-panneau, du milieu à la couture',
    'skirt.goreApex': [
      'rayon de la courbe des hanches, mené jusqu’à la taille',
      '{hip} au demi-tour de hanches × {below} au-dessous ÷ ({hem} au demi-ourlet − {hip}) − {level}',
    ],
    'skirt.goreWaistAcross': 'demi-taille d’un pan, en ligne droite',
    'skirt.goreWaistUp': 'côté au-dessus du milieu',
    'skirt.goreWaistCurve': [
      'rayon de la courbe de taille',
      '({across} × {across} + {up} × {up}) ÷ (2 × {up})',
    ],
    'skirt.facing': 'parementure des bords libres',
    'skirt.facingUnder': 'rentré',
    'skirt.facingDepth': ['tissu au-delà d’un bord libre', '{facing} de parementure + {under} de rentré'],
    'skirt.freeEdge': 'bord libre fini',
    'skirt.facingLine': ['un bord à parementure', '{sewn} + {casing} en haut + {hem} d’ourlet'],
    'skirt.overlapAsked': 'croisure à la taille, comme demandé',
    'skirt.overlapShare': 'part du tour',
    'skirt.overlapOfWaist': ['croisure à la taille', '{round} de tour × {share}'],
    'skirt.overlapLeast': 'croisure minimale d’usage',
    'skirt.overlapMost': ['croisure d’un tour entier', '{round}'],
    'skirt.overlap': ['croisure à la taille', '{flat} à plat − {round} de tour'],
    'skirt.wrapTop': ['tour du haut, à plat', '{round} de tour + {overlap} de croisure'],
    'skirt.wrapTopWider': 'tour du haut, à plat, élargi pour couvrir les hanches',
    'skirt.wrapHips': ['à la ligne de hanches, à plat', '{hips} de tour + {overlap} de croisure ÷ 2'],
    'skirt.wrapOverHips': [
      'ourlet qui couvre les hanches',
      '{flat} en haut + ({hips} aux hanches − {flat}) × {length} de longueur ÷ {level} jusqu’aux hanches',
    ],
    'skirt.wrapAbove': [
      'ourlet minimal',
      'la plus grande de {flat} (haut), {over} (pour couvrir les hanches)',
    ],
    'skirt.wrapFloor': ['tour minimal d’usage avec sa croisure', '{floor} × {flat} à plat ÷ {round} de tour'],
    'skirt.wrapFlare': 'ourlet pour une unité du haut',
    'skirt.wrapFlareTimes': ['ourlet d’après le haut', '{flat} en haut × {times}'],
    'skirt.wrapFlared': [
      'ourlet pour l’évasement',
      'la plus grande de {times} (d’après le haut), {plus} (haut + évasement), {over} (pour couvrir les hanches)',
    ],
    'skirt.wrapClosedAtHem': [
      'tour de l’ourlet sans sa croisure',
      '{hem} d’ourlet × {round} de tour ÷ {flat} à plat',
    ],
    'skirt.wrapBackHalf': ['demi-dos, du milieu au bord à cru', '{round} de tour ÷ 4 + {seam} de couture'],
    'skirt.wrapFrontHalf': [
      'demi-devant, du milieu au bord à cru',
      '({flat} à plat ÷ 2 − {round} de tour ÷ 4 + {seam} de couture + {facing} de parementure) ÷ 2',
    ],
    'skirt.wrapQuarter': [
      'un quart de tout le tissu du tour, bords à cru',
      '{back} au demi-dos ÷ 2 + {front} au demi-devant',
    ],
    'skirt.wrapRound': [
      'tour à plat, d’un bord libre à l’autre',
      '{layers} × {quarter} − 4 × {seam} de couture − 2 × {facing} de parementure',
    ],
    'skirt.overlapAtHem': ['croisure à l’ourlet', '{overlap} × {hem} d’ourlet ÷ {flat} en haut'],
    'skirt.opensBy': ['ouverture par un pas', '{need} pour marcher − {hem} d’ourlet + {overlap} de croisure'],
    'skirt.overlapMore': [
      'croisure qui suffirait',
      '{need} pour marcher × {flat} en haut ÷ {hem} d’ourlet − {round} de tour',
    ],
    'skirt.wrapWider': ['ourlet qui suffirait', '{need} pour marcher'],
    'skirt.tieWidth': 'lien, largeur finie',
    'skirt.tieCut': ['lien, largeur à couper', '2 × ({width} + {seam} de couture)'],
    'skirt.tieBow': 'pour le nœud',
    'skirt.tieAsked': 'un lien, comme demandé',
    'skirt.tieLength': ['un lien fini', '{waist} de tour de taille + {bow} pour le nœud'],
    'skirt.tieLine': ['couture d’un lien', '{long} + {width} au bout'],
    'skirt.tieJoin': ['raccord d’un lien', '{cut}'],
    'skirt.walkSlit': 'hauteur de la fente',
    'skirt.pocketCount': 'poches',
    'skirt.hand': 'tour de main',
    'skirt.handUsual': 'tour de main d’usage',
    'skirt.handShare': 'part de la stature',
    'skirt.handOfHeight': ['tour de main d’un enfant', '{height} de stature × {share}'],
    'skirt.pocketEase': 'place pour la main',
    'skirt.pocketBagEase': 'place à côté de la main',
    'skirt.pocketOpening': ['ouverture de poche', '{hand} de main ÷ 2 + {ease} d’aisance'],
    'skirt.pocketBagWidth': ['largeur du fond de poche', '{hand} de main ÷ 2 + {ease} d’aisance'],
    'skirt.pocketHeadroom': 'fond de poche au-dessus et au-dessous de l’ouverture',
    'skirt.pocketBelow': 'ouverture sous la ligne du haut',
    'skirt.pocketSeam': 'valeur de couture à la poche',
    'skirt.pocketDroop': 'fond de poche sous son bord droit',
    'skirt.pocketSeamLine': ['bord droit du fond de poche', '{opening} d’ouverture + 2 × {headroom}'],
    'skirt.pocketBagLine': 'contour du fond de poche',
    'skirt.pocketBagDepth': [
      'profondeur sous le haut de l’ouverture',
      '{opening} d’ouverture + {headroom} + {hang} sous son bord droit',
    ],
    'skirt.pocketCutWidth': ['largeur à couper', '{width} + 2 × {seam} de couture'],
    'skirt.pocketCutLength': [
      'longueur à couper',
      '{line} de bord droit + {hang} au-dessous + 2 × {seam} de couture',
    ],
    'skirt.slitCount': 'fentes',
    'skirt.slitAsked': 'fente, comme demandé',
    'skirt.slitMost': 'fente, aussi haute que la jupe le permet',
    'skirt.slitShare': 'part d’usage de la longueur',
    'skirt.slitUsual': ['fente d’usage', '{length} de longueur finie × {share}'],
    'skirt.slitFacing': 'parementure de la fente',
    'skirt.slitUnder': 'rentré de la parementure',
    'skirt.slitEnd': 'couture aux bouts de la parementure',
    'skirt.slitTack': 'bride d’arrêt',
    'skirt.slitEdge': ['un bord de fente', '2 × {height} + {tack} de bride'],
    'skirt.slitFacingWidth': [
      'largeur à couper',
      '{facing} de parementure + {seam} de couture + {under} de rentré',
    ],
    'skirt.slitFacingLength': ['longueur à couper', '{height} de fente + 2 × {end} aux bouts'],
    'skirt.tierLength': 'longueur de cet étage de panneaux',
    'skirt.belowWaist': ['panneaux, plis faits', '{panel} de panneaux − {tucks} pris dans les plis'],
    'skirt.liningClothWidth': 'laize de la doublure',
    'skirt.liningSelvage': 'lisière de la doublure',
    'skirt.liningShorter': 'plus courte que la jupe de',
    'skirt.liningLength': ['longueur de la doublure', '{skirt} de jupe − {shorter} de moins'],
    'skirt.liningLeast': ['longueur de la doublure', '{skirt} de jupe ÷ 3'],
    'skirt.liningHem': 'ourlet de la doublure',
    'skirt.liningSeam': 'valeur de couture de la doublure',
    'skirt.liningStarts': 'doublure cousue sous la ligne du haut',
    'skirt.liningTop': [
      'tour minimal en haut de la doublure',
      'la plus grande de {full} (ampleur), {hip} (pour l’enfiler)',
    ],
    'skirt.liningNeed': [
      'tour minimal en bas de la doublure',
      'la plus grande de {top} (son haut), {step} (place pour marcher)',
    ],
    'skirt.liningLevel': 'ourlet de la doublure au-dessus du sol',
    'skirt.liningTopLine': 'tour du haut de la doublure',
    'skirt.liningHemLine': 'tour de l’ourlet de la doublure',
    'skirt.liningTopQuarter': [
      'repère du haut de la doublure, au pli',
      '({round} de tour + {edges} × {seam} de couture) ÷ {layers} épaisseurs',
    ],
    'skirt.liningHemQuarter': [
      'repère d’ourlet de la doublure, au pli',
      '({round} de tour + {edges} × {seam} de couture) ÷ {layers} épaisseurs',
    ],
    'skirt.liningRound': [
      'tour de la doublure, de couture à couture',
      '{layers} × {quarter} de repère − {edges} × {seam} de couture',
    ],
    'skirt.liningTopCurve': 'courbe du haut, relevée au côté de',
    'skirt.liningHemCurve': 'courbe de l’ourlet, relevée au côté de',
    'skirt.liningBody': 'doublure, de sa couture à son ourlet',
    'skirt.liningCut': [
      'longueur à couper',
      '{finished} de longueur finie + {seam} de couture + {hem} d’ourlet',
    ],
    'skirt.liningSide': ['une couture de la doublure', '{sewn} + {seam} de couture + {hem} d’ourlet'],
    'skirt.liningWidths': 'lés de doublure',
    'skirt.liningWidth': ['largeur à couper', '{round} de tour ÷ {widths} lés + 2 × {seam} de couture'],
    'skirt.liningOfWidths': [
      'tour de la doublure, de couture à couture',
      '{widths} × ({width} − 2 × {seam} de couture)',
    ],
    'skirt.hemDeepened': ['ourlet', '{hem} d’ourlet + {more} à rallonger'],
    'skirt.inTucks': ['pris dans les plis', '2 × {count} × {depth}'],
    'skirt.tuckCount': 'plis de croissance',
    'skirt.tuckDepth': 'profondeur d’un pli',
    'skirt.tuckSpace': 'à plat entre deux plis',
    'skirt.tuckBelow': 'premier pli sous la ligne du haut',
    'skirt.tuckReach': 'les plis vont, sur le panneau à plat, jusqu’à',
    'skirt.tuckLine': 'tour à la hauteur du pli',
    'skirt.tuckRoom': 'place pour les plis',
    'skirt.tuckExcess': [
      'la ligne du bas d’un pli est plus longue de',
      '2 × {depth} × ({bottom} en bas − {top} en haut) ÷ {length} de longueur',
    ],
    'skirt.letsDown': ['réserve pour rallonger', '{need} {need_name}'],
    'skirt.letsDownAsked': 'comme demandé',
    'skirt.letsDownUsual': 'd’usage pour un enfant',
    'skirt.letsDownMost': 'le plus que cette longueur permette',
    'waist.elastic': 'élastique',
    'waist.elasticEase': 'aisance pour l’élastique',
    'waist.turnUnder': 'rentré',
    'waist.casing': ['coulisse', '{elastic} d’élastique + {ease} d’aisance + {turnUnder} de rentré'],
    'waist.nothingAbove': 'au-dessus des panneaux',
    'waist.casingRound': 'tour de la coulisse',
    'waist.elasticJoinLine': ['fermeture de l’élastique', '{rounds} × {width} d’élastique'],
    'waist.elasticCatchLine': ['arrêt de l’élastique', '{rounds} × {width} d’élastique'],
    'waist.rounds': 'passages',
    'waist.elasticShare': 'part du tour de taille',
    'waist.elasticJoin': 'bouts superposés pour fermer',
    'waist.elasticCut': ['élastique à couper', '{waist} de tour de taille × {share} + {join} pour fermer'],
    'waist.elasticAsked': ['élastique assez long', '{hip} de tour de hanches ÷ {most} + {join} pour fermer'],
    'waist.stretch': [
      'élastique étiré sur les hanches',
      '{hip} de tour de hanches ÷ ({cut} d’élastique − {join} superposés)',
    ],
    'waist.stretchLimit': 'étirement maximal de l’élastique',
    'waist.seam': 'couture de la bande',
    'waist.stripEase': 'aisance de la bande, pour ses deux épaisseurs',
    'waist.stripWidth': [
      'largeur de la bande, coupée',
      '2 × {elastic} d’élastique + {ease} d’aisance + 2 × {seam} de couture',
    ],
    'waist.stripHeight': ['hauteur de la bande pliée', '({width} de bande − 2 × {seam} de couture) ÷ 2'],
    'waist.pieces': 'morceaux',
    'waist.pieceLength': [
      'longueur de chaque morceau, coupé',
      '{long} en tout ÷ {pieces} + 2 × {seam} de couture',
    ],
    'waist.bandHeight': 'hauteur de la ceinture, finie',
    'waist.bandHeld': 'hauteur de la ceinture, autant que la jupe en permet',
    'waist.bandWidth': ['largeur de la ceinture, coupée', '2 × {height} finie + 2 × {seam} de couture'],
    'waist.bandEase': 'aisance à la taille',
    'waist.band': ['tour de la ceinture', '{waist} de tour de taille + {ease} d’aisance'],
    'waist.bandOverlap': 'croisement des bouts de la ceinture',
    'waist.bandLaid': ['ceinture à plat', '{band} de tour + {overlap} de croisement'],
    'waist.joinLine': ['fermeture de la bande', '{width} de bande'],
    'waist.bandSeamLine': ['couture de la ceinture', '{band}'],
    'waist.bandFoldLine': ['fixation de la ceinture pliée', '{band}'],
    'waist.bandEndLine': ['fermeture d’un bout de la ceinture', '{height} de ceinture'],
    'waist.hipLine': 'sous le haut de ses panneaux',
    'waist.roundLength': 'longueur de ses panneaux',
    'waist.roundAtHip': [
      'tour de la jupe aux hanches',
      '{top} en haut + ({bottom} en bas − {top}) × {level} ÷ {length} de longueur',
    ],
    'waist.roundMeasured': 'tour de la jupe aux hanches, mesuré sur les panneaux',
    'waist.openingAsked': 'ouverture, depuis le haut de la taille',
    'waist.openingSpread': [
      'ouverture qui laisse passer les hanches',
      '({needed} autour des hanches − {band} de ceinture) ÷ 2',
    ],
    'waist.openingHipDepth': [
      'ouverture, depuis le haut de la taille',
      '{hipDepth} de la taille à la ligne de hanches',
    ],
    'waist.openingDepth': [
      'ouverture, depuis le haut de la taille',
      'la plus grande de {hipDepth} (de la taille à la ligne de hanches), {spread} (pour passer les hanches)',
    ],
    'waist.openingBelow': ['ouverture sous la ceinture', '{depth} d’ouverture − {height} de ceinture'],
    'waist.zipLine': ['pose de la glissière, des deux côtés', '2 × {below} d’ouverture'],
    'waist.placketWidth': 'patte de fente, finie',
    'waist.placketLength': ['patte le long des deux bords', '2 × {below} d’ouverture'],
    'waist.placketLine': ['pose de la patte', '2 × {below} d’ouverture'],
    'waist.buttonholeLine': 'tour d’une boutonnière',
    'waist.buttonLine': 'pose d’un bouton',
    'waist.difference': ['à résorber à la taille', '{top} de panneaux − {band} de ceinture'],
    'waist.darts': 'pinces',
    'waist.dartMost': 'pince la plus large qui reste plate',
    'waist.dartWidth': ['largeur d’une pince en haut', '{difference} à résorber ÷ {darts} pinces'],
    'waist.dartLength': 'longueur d’une pince',
    'waist.dartLine': 'couture d’une pince',
    'waist.gatherLine': ['un rang de fronces', '{top} de tour du haut'],
    'waist.gatheredOnto': ['fronces sur la ceinture', '{top} de panneaux ÷ {band} de ceinture'],
    'waist.ungathered': 'fronces à la taille : aucune, tout est plat',
    'waist.cord': 'largeur du cordon',
    'waist.cordEase': 'aisance pour le cordon',
    'waist.cordCasing': ['coulisse du cordon', '{cord} de cordon + {ease} d’aisance + {turnUnder} de rentré'],
    'waist.cordTieEnd': 'bout à nouer',
    'waist.cordLeastEnd': 'bout toujours visible',
    'waist.cordTied': ['cordon qui se noue à la taille', '{waist} de tour de taille + 2 × {tieEnd} à nouer'],
    'waist.cordSpread': ['cordon de la jupe à plat', '{opening} de tour du haut + 2 × {leastEnd} visibles'],
    'waist.cordCut': [
      'cordon à couper',
      'la plus grande de {tied} (pour nouer), {spread} (pour ne pas disparaître)',
    ],
    'waist.cordFree': [
      'libre à chaque bout, jupe à plat',
      '({cut} de cordon − {opening} de tour du haut) ÷ 2',
    ],
    'waist.cordFreeMost': 'le plus qui pend libre chez un enfant',
    'waist.cordShortEnough': ['cordon assez court pour un enfant', '{opening} de tour du haut + 2 × {most}'],
    'waist.eyeletLine': 'tour d’un trou pour le cordon',
    'waist.cordCatchLine': ['arrêt du cordon', '{rounds} × {cord} de cordon'],
    'waist.frontShare': 'part de la taille plate devant',
    'waist.flatFront': ['devant plat de la ceinture', '{waist} de tour de taille × {share}'],
    'waist.frontTopShare': 'part des panneaux devant',
    'waist.frontTop': ['haut des panneaux devant', '{opening} de tour du haut × {share}'],
    'waist.backTop': ['haut des panneaux derrière', '{opening} de tour du haut − {front} devant'],
    'waist.flatRound': [
      'tour du haut qui s’enfile',
      '2 × ({needed} autour des hanches − {front} de devant plat)',
    ],
    'waist.flatLaid': ['ceinture à plat', '{front} devant + {back} derrière'],
    'waist.backWaist': ['taille derrière', '{waist} de tour de taille − {front} de devant plat'],
    'waist.backElastic': [
      'élastique à couper, pour le dos',
      '({waist} de tour de taille − {front} de devant plat) × {share} + 2 × {join} à prendre',
    ],
    'waist.backStretch': [
      'élastique du dos étiré sur les hanches',
      '({hip} de tour de hanches − {front} de devant plat) ÷ ({cut} d’élastique − 2 × {join} pris)',
    ],
    'waist.backElasticAsked': [
      'élastique assez long pour le dos',
      '({hip} de tour de hanches − {front} de devant plat) ÷ {most} + 2 × {join} à prendre',
    ],
    'waist.stretchShare': 'part du tour de taille, pour la maille',
    'waist.stretchBand': ['tour de la bande extensible', '{waist} de tour de taille × {share}'],
    'waist.stretchBandReach': ['bande extensible étirée', '{band} de bande × {most}'],
    'waist.stretchBandAsked': ['bande extensible qui suffit', '{needed} autour des hanches ÷ {most}'],

    'ribbon.width': 'largeur du ruban',
    'ribbon.lowest': 'rang le plus bas, à partir de l’ourlet',
    'ribbon.highest': 'haut du rang le plus haut, à partir de l’ourlet',
    'ribbon.highestUsual': 'haut du rang le plus haut, à partir de l’ourlet',
    'ribbon.gap': 'espace',
    'ribbon.lowestRow': [
      'bord inférieur à partir de l’ourlet fini',
      '{lowest} pour le rang le plus bas, sur un repère',
    ],
    'ribbon.nextRow': [
      'bord inférieur à partir de l’ourlet fini',
      '{below} au rang du dessous + {width} de ruban + {gap} d’espace',
    ],
    'ribbon.fromRawEdge': [
      'trait de craie à partir du bord vif égalisé',
      '{fromHem} à partir de l’ourlet + {hem} d’ourlet',
    ],
    'ribbon.fromTierEdge': [
      'trait de craie à partir du bord vif du volant',
      '{fromHem} à partir de l’ourlet − {tier} jusqu’à la couture du volant + {seam} de couture',
    ],
    'ribbon.tierFromHem': 'couture du volant, à partir de l’ourlet',
    'ribbon.tierSeam': 'couture du volant',
    'ribbon.belowSeam': 'bord du bas sous la couture du volant',
    'ribbon.onSeamAt': 'centré sur la couture',
    'ribbon.clearTopDipped': [
      'maximum pour dégager la taille',
      '{length} de panneau − {dips} où la taille descend − {depth} − {clearance} à laisser libre',
    ],
    'ribbon.dip': 'creux de la taille',
    'ribbon.noTop': 'maximum pour dégager la taille : il n’y a pas de place',
    'ribbon.openingFrom': 'bas de l’ouverture',
    'ribbon.openingTo': 'haut de l’ouverture',
    'ribbon.slitTo': 'fin de la fente',
    'ribbon.growthTucks': 'pris par les plis de croissance',
    'ribbon.waistStitching': 'piqûre de la taille',
    'ribbon.across': 'panneau le long du rang',
    'ribbon.acrossRound': 'tous les panneaux le long du rang',
    'ribbon.overhang': 'supplément à chaque bout',
    'ribbon.stripLength': [
      'bande de ruban',
      '{across} le long du rang + 2 × {overhang} de supplément à chaque bout',
    ],
    'ribbon.total': 'ruban en tout',
    'ribbon.strips': 'bandes',
    'ribbon.radius': 'rayon du rang',
    'ribbon.curveShare': ['écart entre les deux bords du ruban', '{width} de ruban ÷ {radius} de rayon'],
    'ribbon.takeUp': 'ruban à résorber au bord supérieur',
    'ribbon.tuck': 'absorbé par un petit pli',
    'ribbon.tucks': ['petits plis', '{takeUp} ÷ {tuck}, arrondi au-dessus'],
    'ribbon.easeLimit': 'se résorbe à la vapeur, avec soin',
    'ribbon.room': ['place pour les rangs', '{highest} − {lowest}'],
    'ribbon.roomNone': 'pas de place pour des rangs',
    'ribbon.roomNeeded': 'largeurs de ruban additionnées',
    'ribbon.hemStitching': 'minimum pour dégager la piqûre de l’ourlet',
    'ribbon.clearance': 'à laisser libre sous la taille',
    'ribbon.clearTop': [
      'maximum pour dégager la taille',
      '{length} de panneau − {depth} − {clearance} à laisser libre',
    ],

    'cloth.width': 'laize du rouleau',
    'cloth.selvage': 'lisière',
    'cloth.selvages': 'lisières',
    'cloth.change': 'retrait au lavage',
    'cloth.changeMeasured': ['retrait au lavage, mesuré', '1 − {after} ÷ {before}'],
    'cloth.squareBefore': 'carré d’essai avant lavage',
    'cloth.squareAfter': 'carré d’essai après lavage',
    'cloth.changeUpper': 'retrait au lavage, valeur haute',
    'cloth.changeDone': 'déjà lavé',
    'cloth.usable': ['laize utile', '{width} de laize × (1 − {change}) − {selvages} × {selvage} de lisière'],
    'cloth.beforeWash': ['tissu avant lavage', '{needed} ÷ (1 − {change})'],
    'cloth.toBuy': ['tissu à acheter', '{needed}, jusqu’au prochain pas de {step} du magasin'],
    'cloth.step': 'pas de coupe du magasin',
    'cloth.least': 'longueur minimale du magasin',
    'cloth.panelWidth': 'panneau à l’endroit le plus large',
    'cloth.panelDepth': 'panneau de haut en bas',
    'cloth.panels': 'panneaux',
    'cloth.pairs': 'paires',
    'cloth.layers': 'épaisseurs',
    'cloth.rows': 'rangées de panneaux',
    'cloth.more': 'panneaux de plus',
    'cloth.doubleWidth': ['longueur de tissu', '{panels} × {width} de largeur de panneau'],
    'cloth.foldedWidth': ['laize utile, tissu plié', '{usable} ÷ 2'],
    'cloth.stacked': ['longueur de tissu', '{panels} × {depth} de longueur de panneau'],
    'cloth.pairsStacked': [
      'longueur de tissu',
      '{layers} épaisseurs × {pairs} × {step} de longueur de panneau',
    ],
    'cloth.pairsAbreast': [
      'longueur de tissu',
      '{layers} épaisseurs × {pairs} × {step} de largeur de panneau',
    ],
    'cloth.rowsStacked': ['longueur de tissu', '{rows} × {depth} de longueur de panneau'],
    'cloth.abreast': ['longueur de tissu', '{width} de largeur de panneau + {more} × {step}'],
    'cloth.headToTail': ['longueur de tissu', '{width} de largeur de panneau + {more} × {step}, tête-bêche'],
    'cloth.nest': 'décalage du panneau suivant',
    'cloth.leftWidth': ['reste à côté des panneaux', '{usable} − {used}'],
    'cloth.nothingLeft': 'rien ne reste à côté des panneaux',
    'cloth.leftLength': 'longueur du reste',
    'cloth.across': 'pris dans la laize',
    'cloth.asTheyLie': 'longueur de tissu, comme les pièces sont posées',
    'cloth.asTheyLieTwice': 'longueur de tissu, deux fois ce que prennent les pièces une fois le tissu plié',
    'cloth.otherPieces': 'ce qu’ajoutent les autres pièces',
    'cloth.between': 'place pour les ciseaux entre les pièces',
    'cloth.foundUsed': 'longueur de tissu, jusqu’au bout de la dernière pièce',
    'cloth.foundAfter': 'longueur de tissu, tous les coupons ensemble',
    'cloth.foundBefore': 'tissu avant lavage, tous les coupons ensemble',
    'cloth.repeat': 'un rapport du motif, après lavage',
    'cloth.withRepeat': ['avec un rapport pour rafraîchir le bout', '{used} + {repeat}'],
    'cloth.nothingToBuy': 'rien à acheter : ce qu’il y a suffit',
    'cloth.byHand': 'placé à la main, une jupe après l’autre',
    'cloth.savedLength': ['tissu économisé', '{byHand} à la main − {found}'],
    'cloth.leastPossible': 'aucun placement de cette sorte ne prend moins de',
    'cloth.leftPiece': 'reste d’un seul tenant',
    'cloth.withWashed': ['tissu tel qu’il est avant lavage', '{unwashed} + {washed}'],
    'cloth.allWashed': 'longueur de tissu, prise toute sur des coupons déjà lavés',
    'cloth.washedUsed': 'dont des coupons déjà lavés',
    'cloth.matchedWithin': 'plus grand écart sur la piqûre',
    'cloth.withOthers': ['longueur de tissu', '{panels} pour les panneaux + {others} pour les autres pièces'],
    'cloth.have': 'tissu que vous avez',

    'seams.round': 'tour de l’ourlet',
    'seams.edges': ['en tout', '{count} × {each}'],
    'seams.ribbonEdge': ['à piquer', '{edges} bords × {strips} de bandes'],
    'seams.count': 'lignes',
    'seams.total': 'bandes additionnées',

    'thread.ratio': 'fil par longueur de couture',
    'thread.seam': 'couture',
    'thread.share': 'part du fil',
    'thread.waste': 'perte',
    'thread.tail': 'bout de fil',
    'thread.starts': 'bouts de fil',
    'thread.needle': ['fil d’aiguille', '{seam} × {ratio} × {share} × (1 + {waste}) + {tails} × {tail}'],
    'thread.under': ['fil du dessous', '{seam} × {ratio} × {share} × (1 + {waste}) + {tails} × {tail}'],
    'thread.total': 'fil',
    'thread.sum': ['fil en tout', '{needle} + {under}'],
    'supplies.spool': 'sur une bobine',
    'supplies.spools': ['bobines', '{total} ÷ {spool}, arrondi au-dessus'],
    'supplies.cones': 'cônes, un par fil de la surjeteuse',
    'supplies.spare': 'pour les essais',
    'supplies.withSpare': ['ruban, morceau d’essai compris', '{total} de bandes + {spare} pour les essais'],
    'supplies.step': 'pas de coupe du magasin',
    'supplies.least': 'longueur minimale du magasin',
    'supplies.buy': ['à acheter', '{need}, jusqu’au prochain pas de {step} du magasin'],
    'supplies.pieces': 'pièces',
    'supplies.pieceWidth': 'la pièce en travers',
    'supplies.pieceHeight': 'la pièce de haut en bas',
    'supplies.knit': ['maille extensible', '{pieces} × {height}'],
    'supplies.bandPiece': 'plus longue pièce de la ceinture',
    'supplies.interfacingWidth': 'laize à la vente',
    'supplies.zip': ['fermeture à glissière', '{opening} d’ouverture − {band} de ceinture'],
    'supplies.boltWidth': 'laize du rouleau',

    'sewing.setUp': 'préparation',
    'sewing.perMetre': 'par mètre',
    'sewing.perPiece': 'par pièce',
    'sewing.pieces': 'pièces',
    'sewing.length': 'mètres',
    'sewing.skill': 'part du temps d’une débutante',
    'sewing.hands': [
      'temps de travail',
      '({setUp} de préparation + {count} × {each} + {metres} m × {metre}) × {share}',
    ],
    'sewing.wait': 'attente',
    'sewing.handsTotal': 'temps de travail',
    'sewing.waitTotal': 'attente',
    'sewing.steps': 'étapes',
    'sewing.stitchLength': 'longueur de point',
    'sewing.zigzagWidth': 'largeur de point',
    'sewing.sprayDistance': 'distance de vaporisation',
    'sewing.threadingOpening': 'ouverture pour l’élastique',
    'sewing.rows': 'rangs',
    'sewing.strips': 'bandes',
    'sewing.trimOff': [
      'à retrancher',
      '{cutLength} à la coupe − {length} de longueur finie − {hem} d’ourlet − {casing} de coulisse',
    ],
    'sewing.rawLength': [
      'de bord vif à bord vif',
      '{length} de longueur finie + {hem} d’ourlet + {casing} de coulisse',
    ],
    'sewing.casingLine': [
      'ligne de coulisse sous le bord du haut',
      '{casing} de coulisse + {rise} pour la courbe',
    ],
    'sewing.hemLine': [
      'ligne d’ourlet sous le bord du haut',
      'ligne de coulisse {casingLine} + {length} de longueur finie',
    ],
    'sewing.seamFromSelvage': [
      'couture à partir du bord de la lisière',
      '{selvage} de lisière + {seam} de marge de couture',
    ],
    'sewing.acrossCurve': 'à partir du milieu',
    'sewing.beyondHem': [
      'à couper au-delà de la courbe d’ourlet',
      '{cut} de longueur à couper − {length} de longueur finie − {casing} de coulisse',
    ],
    'sewing.hemStitching': 'ourlet, plié',
    'sewing.casingStitching': 'coulisse, pliée',
    'sewing.hangHours': 'heures de suspension',
    'sewing.threadChanges': 'enfilages de l’aiguille',
    'sewing.turnUnder': 'rentré',
    'sewing.pieceWidth': 'largeur de la bande',
    'sewing.pieceTop': 'largeur le long de la ligne du haut, d’un bord vif à l’autre',
    'sewing.pieceHem': 'largeur à la ligne d’ourlet, d’un bord vif à l’autre',
    'sewing.pieceHip': 'largeur à la ligne des hanches, d’un bord vif à l’autre',
    'sewing.pieceHipLine': 'ligne des hanches sous la ligne du haut',
    'sewing.pieceLength': 'longueur à couper',
    'sewing.pieceDip': 'courbe, plus basse au milieu de',
    'sewing.topRadius': 'rayon de la ligne du haut',
    'sewing.hemRadius': ['rayon de la ligne d’ourlet', '{radius} en haut + {length} de long'],
    'sewing.rawTopRadius': [
      'rayon de la coupe en haut',
      '{radius} de la ligne du haut − {top} au-dessus d’elle',
    ],
    'sewing.rawHemRadius': [
      'rayon de la coupe à l’ourlet',
      '{hemRadius} de la ligne d’ourlet + {beyond} au-delà',
    ],
    'sewing.chord': 'en ligne droite d’un côté à l’autre à l’ourlet',
    'sewing.lowered': 'haut abaissé de',
    'sewing.riseRoom': 'place pour le haut relevé',
    'sewing.openingBelow': [
      'ouverture sous la ligne du haut',
      '{depth} depuis le haut de la taille − {above} de taille',
    ],
    'sewing.tierSeam': 'marge de couture du volant',
    'sewing.eyeletDown': 'trou sous la pliure de la coulisse',
    'sewing.eyeletAside': 'trou à côté du milieu',
    'sewing.tuckLines': ['entre les deux lignes d’un pli', '2 × {depth} de profondeur'],

    'have.cloth': 'tissu qu’il y a',
    'have.longest': 'la plus longue dans ce tissu',
    'have.left': ['reste après la plus longue', '{hand} − {takes}'],
    'have.fullness': 'la plus ample dans ce tissu',
    'have.count': ['jupes comme prévu', '{hand} ÷ {planned} chacune, sans le reste'],
    'have.none': 'jupes comme prévu',
    'have.rows': 'le plus de rangs sur la plus longue',
    'have.shortest': 'jupe la plus courte',
    'have.missing': ['tissu qui manque', '{needed} − {hand}'],
  },
  notices: {
    'body.takesDiffer':
      '{measure} : les deux mesures diffèrent de {difference} ({first} et {second}). {used} sert pour l’instant. Mesurez une troisième fois, mètre ruban bien droit et sans tirer.',
    'body.estimated':
      '{measure} : pas mesuré. Estimation d’après d’autres corps : {estimate}. Mesurez avant de couper.',
    'body.waistToFloorWanted':
      'Chez un enfant, la distance de la taille au sol ne se devine pas d’après la stature. Mesurez-la : de la taille tout droit jusqu’au sol.',
    'body.hipWanted':
      'Le tour de hanches d’un enfant ne se devine pas. Le tour de taille ({hip}) en tient lieu, et la jupe pourrait être trop serrée à enfiler. Mesurez autour de la partie la plus forte des fesses avant de couper.',
    'body.halvesDiffer':
      'Les deux moitiés des hanches font {sum}, et le tour entier {hip} : {difference} d’écart. {used} sert pour l’instant. Mesurez de nouveau, les deux moitiés du milieu devant au milieu dos, à la même hauteur.',
    'body.hipDepthUnusual':
      'De la taille à la ligne des hanches : {hipDepth}. D’habitude, c’est 15 à 25 cm (6 à 10 po), moins si la jupe se porte plus bas que la taille naturelle. Mesurez sur le côté jusqu’à la partie la plus forte des fesses. Si c’est juste, continuez.',
    'body.levelFar':
      '{measure} ({level}) : {difference} d’écart avec le reste ({base}). L’une des deux a-t-elle été mal lue ? Si les deux sont justes, continuez : la différence se fait en haut, et l’ourlet tombe de niveau.',
    'body.improbablePair':
      '{firstName} : {first}. {secondName} : {second}. Ces deux mesures vont rarement ensemble. {secondName} : d’habitude environ {expected}, presque toujours entre {least} et {most}. L’une des deux a-t-elle été mal lue, ou notée dans la mauvaise unité ? Si les deux sont justes, continuez.',
    'body.hipBelowWaist':
      'Le tour de hanches ({hip}) est plus petit que le tour de taille ({waist}). Mesurez de nouveau à l’endroit le plus fort des fesses. Si les deux sont justes, continuez : la jupe est coupée pour le plus grand.',
    'body.hemBelowFloor':
      'La jupe serait plus longue ({waistToHem}) que la distance de la taille au sol ({waistToFloor}). Choisissez une longueur plus courte, ou mesurez de nouveau.',
    'body.longHem':
      'L’ourlet tombe à {hemHeight} du sol. Attention dans l’escalier et près d’un feu, ou raccourcissez la jupe.',
    'body.seatedHem':
      'En position assise, l’ourlet tombe à {hemHeight} du repose-pied. Tenez-le loin des roues et des repose-pieds : raccourcissez la jupe, ou rentrez-la sur les côtés.',
    'body.longerThanHeight':
      '{measure} ({length}) : autant que la stature ({height}), ou plus. L’une des deux a été mal lue : mesurez les deux de nouveau.',
    'body.strideNotChecked':
      'Sans la stature ni la distance de la taille au sol, la place pour marcher n’a pas été vérifiée. L’ourlet fait au moins {needed} de tour avant les coutures, comme le veut l’usage. Ajoutez l’une des deux.',
    'body.childStrideNotChecked':
      'Sans la stature de l’enfant, la place pour marcher n’a pas été vérifiée. Ajoutez la stature et la distance de la taille au sol.',
    'body.strideForFloorLength':
      'Sans la distance de la taille au sol de l’enfant, l’ourlet fait {needed} de tour : assez même si la jupe touchait le sol. Ajoutez cette mesure, et il en faudra peut-être moins.',
    'body.growsShort':
      'La jupe sera trop courte vers la date suivante : {date}, moins de {months, plural, one {# mois} other {# mois}} après la mesure de la stature. {wanted, plural, one {# mois} other {# mois}} après cette mesure, l’ourlet sera remonté de {rise}. Un pli de croissance ou un ourlet plus profond de {keep} en tout, lâché à temps, garde la jupe à son niveau.',
    'body.growthNotForecast':
      'La croissance n’est pas comptée : {why, select, notMeasured {il faut une stature mesurée} age {la référence va de 2 à 20 ans} other {la stature est loin de ce qui est habituel à {age, plural, one {# mois} other {# mois}}}}. Vérifiez la stature et l’âge en mois. Si les deux sont justes, prévoyez la croissance à votre idée.',
    'skirt.doesNotGoOn':
      'La jupe ne s’enfile pas : {opening} de tour en haut, et il faut {needed} pour passer les hanches. Choisissez plus d’ampleur.',
    'skirt.hemRoundWidened':
      'L’ourlet demandé ({asked} de tour) est plus étroit que ce que demande la jupe au-dessus ({above}). Il est fait de cette largeur.',
    'skirt.hemRoundCapped':
      'Ces panneaux ne s’évasent pas jusqu’à {asked} de tour d’ourlet : ils se coucheraient comme un cercle. {most} sont dessinés ; pour plus, choisissez plus de pans ou une jupe cercle.',
    'skirt.hemRoundBelowFloor':
      'L’ourlet ({asked} de tour) est plus étroit que les {floor} d’usage pour une adulte.',
    'skirt.frontHemHeld':
      'Un ourlet de {asked} au pan devant ne laisse pas de place aux autres, ou le rétrécit. Il est fait de {held}.',
    'skirt.overlapHeld': 'Une croisure de {asked} fait plus d’un tour. Elle est faite de {held}.',
    'skirt.overlapOpens':
      'Dans un grand pas l’ourlet s’ouvre de {opens}, et seuls {overlap} s’y croisent : le portefeuille s’ouvre. Faites une croisure de {more} à la taille, ou un ourlet de {wider} à plat.',
    'skirt.hemBelowStride':
      'On ne peut pas marcher avec cet ourlet ({hem} de tour) : un pas demande {needed}. {by, select, mark {Marquez l’ourlet à {wider}} other {Donnez-lui {wider} de tour}}, ou raccourcissez la jupe de {shorter}, ou laissez une fente de {slit}.',
    'skirt.hemBelowStrideWiden':
      'On ne peut pas marcher avec cet ourlet ({hem} de tour) : un pas demande {needed}. {by, select, mark {Marquez l’ourlet à {wider}} other {Donnez-lui {wider} de tour}}.',
    'skirt.hemNarrowWiden':
      'L’ourlet ({hem} de tour) est étroit pour l’escalier et la position assise : {needed} est confortable. {by, select, mark {Marquez l’ourlet à {wider}} other {Donnez-lui {wider} de tour}}.',
    'skirt.hemNarrowForEveryday':
      'L’ourlet ({hem} de tour) est étroit pour l’escalier et la position assise : {needed} est confortable. {by, select, mark {Marquez l’ourlet à {wider}} other {Donnez-lui {wider} de tour}}, ou raccourcissez la jupe de {shorter}, ou laissez une fente de {slit}.',
    'skirt.hemBelowFloor':
      'Le repère d’ourlet ({asked}) est plus étroit que les {floor} d’usage pour une adulte.',
    'skirt.hemNotLevel':
      'L’ourlet droit plongera de {sideExcess} aux coutures de côté, et les rangs s’y rencontrent à un angle de {sideAngle}. Choisissez un ourlet de niveau, ou moins d’évasement.',
    'skirt.curvedHem':
      'Un ourlet droit plongerait de {sideExcess} sur les côtés : la taille et l’ourlet sont donc en courbe. Tracez les courbes avec « mesurez vers le haut à partir de la ligne ». Elles prennent {extraDepth} de tissu en plus.',
    'skirt.hemRipples':
      'L’ourlet en courbe est trop large de {share} là où il se pose, plus que les {limit} qu’une piqûre à grands points résorbe. Faites un ourlet plus étroit, ou posez une parementure.',
    'skirt.casingTight':
      'La coulisse en courbe est trop courte de {share} là où elle se pose, plus que les {limit} qui s’étirent sans se voir. Crantez son bord vif tous les 2 à 5 cm (1 à 2 po), ou remplacez les {casing} rabattus par une bande rapportée ou une parementure coupée sur la même courbe.',
    'skirt.hemWidened':
      'Le repère d’ourlet demandé ({asked}) est plus étroit que le repère de taille ({top}). L’ourlet est fait aussi large que la taille.',
    'skirt.flareCapped':
      'Un repère d’ourlet à {asked} dépasse le demi-cercle par panneau. {capped} est dessiné ; pour plus, choisissez une jupe cercle.',
    'skirt.bunched':
      'Le haut de la jupe fait {ratio} fois le tour de taille ; au-delà de {most} fois, les fronces d’un tissu {weight} font des paquets. Choisissez moins d’ampleur ou moins de lés, recoupez les lés, ou prenez un tissu moins épais.',
    'skirt.barelyGathered':
      'Le haut de la jupe ne fait que {ratio} fois le tour de taille ; sous {least} fois, il fronce à peine. Il sera presque plat sous l’élastique.',
    'skirt.circleTooWide':
      'Les pièces de ce cercle vont jusqu’à {radius} de son centre, et le tissu a {cloth} de laize : elles n’y tiennent pas. {more, select, yes {Coupez en plus de morceaux, ou prenez} other {Prenez}} un tissu plus large, une jupe plus courte ou une plus petite part de cercle.',
    'skirt.circleDrops':
      'Sur un cercle, le tissu tombe par endroits en droit fil et ailleurs en biais, où il s’allonge. Laissez pendre la jupe une journée avant d’égaliser l’ourlet et de tracer les rangs.',
    'skirt.tierBunched':
      'Le volant {tier} a {ratio} fois l’ampleur de celui du dessus ; au-delà de {most} fois, un tissu {weight} fait des bourrelets dans la couture. Choisissez moins, ou un tissu plus léger.',
    'skirt.tooManyStrips':
      'Le volant {tier} prendrait {wanted} bandes de tissu ; {strips} sont dessinées. Choisissez un tissu plus large ou moins d’ampleur.',
    'skirt.tierList':
      '{list, select, ratios {Ampleur d’un volant à l’autre} other {Parts de la longueur}} : {given, plural, one {# nombre écrit} other {# nombres écrits}}, et il en faut {needed, plural, one {#} other {#}}. Ce qui manque a sa valeur habituelle, ce qui est en trop est laissé de côté.',
    'skirt.tooManyWidths':
      'La jupe prendrait {wanted} lés de tissu ; {widths} sont dessinés. Choisissez un tissu plus large ou moins d’ampleur.',
    'skirt.offGrain':
      'Le côté s’écarte de {angle} du droit fil et va s’allonger. Laissez pendre la jupe une journée avant d’égaliser l’ourlet et de tracer les rangs.',
    'waist.heldDown':
      'Une taille haute de {asked} prendrait plus de la moitié d’une jupe longue de {length}. Elle est dessinée à {height} : choisissez-en une plus basse, ou une jupe plus longue.',
    'waist.bandLongerThanTop':
      'Les panneaux font {top} en haut et la ceinture où ils se cousent {band} : trop pour être soutenu. Choisissez plus d’ampleur, ou moins d’aisance à la ceinture.',
    'waist.dartsTooDeep':
      '{darts} pinces doivent résorber {difference} : {width} chacune, et au-delà de {most} la pointe d’une pince fait une bosse. Froncez plutôt le haut, ou choisissez moins d’ampleur.',
    'waist.openingTooShort':
      'L’ouverture ({depth}) est trop courte pour les hanches, qui demandent {needed} pour passer. Faites-la de {enough} depuis le haut de la taille.',
    'waist.tightAtHip':
      'À la ligne de hanches, {hipDepth} sous la taille, la jupe fait {round} de tour et les hanches demandent {needed}. Aucune ouverture n’y change rien : choisissez plus d’ampleur, ou une coupe plus large aux hanches.',
    'waist.backTooShort':
      'Le devant tenu à plat ({front}), la ceinture s’ouvre à {laid} et les hanches demandent {needed}. Choisissez plus d’ampleur, ou un devant plat plus grand.',
    'waist.backOverstretched':
      'Le devant reste plat ({front}), si bien que l’élastique du dos ({cut}) devrait s’étirer {stretch} fois pour passer {hip} de tour de hanches. Coupez-le à {enough}, ou prenez-en un qui s’étire davantage.',
    'waist.cordForChild':
      'Un cordon sur un vêtement d’enfant peut s’accrocher aux jeux et aux portes. Les règles publiées pour les cordons de taille des vêtements d’extérieur d’enfants (ASTM F1816-18, tailles 2T à 16) laissent pendre au plus {most} à chaque bout, vêtement à plat, sans nœud ni embout, et veulent le cordon cousu au milieu du dos. Elles ne parlent pas des jupes : suivez-les par prudence. L’EN 14682 va jusqu’à 14 ans et laisse de côté les vêtements religieux ou de fête portés un temps limité sous surveillance. Les règles de chez vous passent avant. Une coulisse élastiquée n’a pas de bouts libres.',
    'waist.cordFreeEnds':
      'La jupe à plat, {freeEnd} de cordon pendent à chaque bout, et chez un enfant {most} au plus devraient pendre. Coupez le cordon à {enough} au plus, ou prenez une coulisse élastiquée.',
    'waist.bandForExpecting':
      'La taille ({waist}) va grandir, et celle de la jupe est faite pour elle comme elle est. Une bande extensible suit le ventre : dessous, ou par-dessus.',
    'waist.bandDoesNotReach':
      'La bande s’étire à {reach} et les hanches demandent {needed}. Coupez-la à {enough} de tour, ou prenez une maille qui s’étire davantage.',
    'skirt.pocketsNeedSideSeams':
      'Il n’y a pas de couture sur le côté pour y faire une poche : les poches sont laissées de côté. Choisissez une coupe, ou un nombre de pièces, avec une couture de chaque côté.',
    'skirt.pocketsNoRoom':
      'Le côté est trop court pour une poche : une ouverture de {opening} et son fond n’ont pas la place entre la taille et l’ourlet ; les poches sont laissées de côté. Une jupe plus longue, ou une main plus petite, a la place.',
    'skirt.pocketsNeedSeam':
      'Une poche demande {seam} de valeur de couture sur le côté ; cette jupe a {has}. Mettez les coutures de côté à {seam}.',
    'skirt.pocketsOneSide': 'Un seul côté a une couture où faire une poche : une seule poche est prévue.',
    'skirt.pocketAtOpening':
      'L’ouverture de la taille se fait dans une couture de côté, là où une poche est prévue aussi. Renoncez à la poche de ce côté, ou choisissez une coupe avec une couture derrière.',
    'skirt.pocketMeetsSlit':
      'La fente de {height} monte jusqu’au fond de poche, qui s’y verrait. Faites une fente plus basse, ou au dos, ou renoncez aux poches.',
    'skirt.slitNoSeam':
      'Il n’y a pas de couture {where, select, left {au côté gauche} right {au côté droit} other {au milieu du dos}} à laisser ouverte : pas de fente à cet endroit. Choisissez-en un autre, ou une autre coupe.',
    'skirt.slitTooLow':
      'L’ourlet ({hem} de tour) est étroit, il faut {needed}, et une fente de {height} n’aide pas assez. Montez-la à {slit}, ou {by, select, mark {marquez l’ourlet à {wider}} other {donnez à l’ourlet {wider} de tour}}.',
    'skirt.slitHeld': 'Une fente de {wish} irait jusque dans la taille. Elle s’arrête à {most}.',
    'skirt.slitAcrossTiers':
      'La fente de {height} est plus longue que le dernier étage ({tier}) et rencontre sa couture froncée. Raccourcissez-la, ou allongez le dernier étage.',
    'skirt.liningHeld':
      'Plus courte de {shorter}, il ne resterait presque rien de la doublure. Elle fait {length} de long.',
    'skirt.tucksNoForecast':
      'La croissance n’est pas prévue pour ce corps : {usual} sont gardés pour rallonger. Ajoutez la stature, l’âge en mois et le jour de la mesure, ou dites combien garder.',
    'skirt.letsDownHeld':
      '{need} pour rallonger, c’est trop pour une jupe de cette longueur. {most} sont gardés.',
    'skirt.tucksHeld':
      'La jupe est trop courte pour tous les plis demandés. Plis : {count}, de {depth} de profondeur chacun.',
    'skirt.tucksNoRoom':
      'Les plis descendent à {reach} sur le panneau, et il y a de la place jusqu’à {room}. Choisissez moins de plis, ou un ourlet profond.',
    'skirt.tuckOnCurve':
      'La jupe s’évase tant que la ligne du bas de chaque pli est plus longue de {excess} que celle du haut, et le pli grimace. Résorbez-la à la main, ou gardez la longueur à la taille : cousez la coulisse plus bas et relâchez-la là.',
    'skirt.deepHemLeftOut':
      'Cette coupe a son propre ourlet étroit ({hem}) : pas d’ourlet profond de {letsDown}. Choisissez des plis, ou donnez un ourlet à la coupe.',
    'waist.needsRound':
      'Cette jupe s’enroule et se croise : une coulisse élastiquée n’y a pas de tour fermé. Prenez une ceinture plate, ou une autre coupe.',
    'waist.elasticOverstretched':
      'L’élastique ({cut}) devrait s’étirer {stretch} fois pour passer {hip} de tour de hanches. Coupez-le à {enough}, ou prenez-en un qui s’étire davantage.',
    'ribbon.noRoom':
      '{rows, plural, one {# rang de ruban demande} other {# rangs de ruban demandent}} {needed}, et il y a {room} de place. Choisissez moins de rangs, un ruban plus étroit, ou laissez-les monter plus haut.',
    'ribbon.rowPastTop':
      '{left, plural, one {# groupe de rangs monterait dans la coulisse et n’a pas pu être placé} other {# groupes de rangs monteraient dans la coulisse et n’ont pas pu être placés}} : les listes et les temps n’en tiennent pas compte. Les rangs doivent finir à {top} de l’ourlet au plus : choisissez moins de rangs, un ruban plus étroit ou de plus petits écarts.',
    'ribbon.rowOnHemStitching':
      'Le rang le plus bas (à {row} de l’ourlet) couvre la piqûre de l’ourlet. À {least}, il la dégage ; ou cousez l’ourlet d’abord, et le ruban en cachera les points.',
    'ribbon.rowAcrossPocket':
      '{rows, plural, one {Le rang {row} traverse} other {Le rang {row} et d’autres traversent}} l’ouverture de la poche (de {from} à {to} de l’ourlet) et la fermerait. Placez les rangs plus bas, ou la poche plus haut.',
    'ribbon.rowAcrossSlit':
      '{rows, plural, one {Un rang s’arrête} other {{rows} rangs s’arrêtent}} à la fente, qui monte à {to} de l’ourlet : coupez-y le ruban, ses bouts sont pris sous la parementure.',
    'ribbon.rowAcrossTierSeam':
      '{rows, plural, one {Le rang {row} touche} other {Le rang {row} et d’autres touchent}} la couture de deux volants (à {seam} de l’ourlet) : la moitié du ruban reposerait sur des fronces. Placez son bord du bas à {centred} pour qu’il couvre la couture, ou écartez-le.',
    'ribbon.easeWithSteam':
      '{rows, plural, one {# rang suit} other {# rangs suivent}} une courbe. Au rang {row}, les deux bords du ruban diffèrent de {share} : cousez d’abord le bord inférieur, résorbez {takeUp} au bord supérieur de chaque bande, et passez à la vapeur sous une pattemouille.',
    'ribbon.willNotLieFlat':
      '{rows, plural, one {# rang ne sera pas} other {# rangs ne seront pas}} à plat sur la courbe : au rang {row}, les deux bords du ruban diffèrent de {share} (environ {limit} peuvent se résorber). Choisissez un ruban plus étroit, ou reprenez {takeUp} au bord supérieur de chaque bande en petits plis ({tucks}), ou posez-le en morceaux droits.',
    'have.tooNarrow':
      'Même très courte, aucune jupe de cette coupe n’y entre : {usable} de laize sont utiles après lavage. Prenez un tissu plus large, une jupe moins ample, ou une coupe en pièces plus nombreuses et plus étroites ; ce coupon ira pour des poches, une ceinture ou d’autres petites pièces.',
    'have.tooShort':
      'Même une jupe de {shortest} n’y entre pas : il y faut {needed}, et il y a {have}.{planned, select, none {} other { Comme prévu, la jupe en prend {planned}.}} Trouvez un coupon plus long ou plus large ; ou prenez une jupe moins ample, ou une autre coupe. Ce coupon ira pour des poches, une ceinture ou d’autres petites pièces.',
    'have.shorten':
      'Comme prévu, la jupe prend {needed} avant lavage : {missing} de plus que ce qu’il y a. Faites-la longue de {longest}, le plus que permet ce tissu, ou trouvez cette longueur en plus.',
    'have.shortenOrLess':
      'Comme prévu, la jupe prend {needed} avant lavage : {missing} de plus que ce qu’il y a. Faites-la longue de {longest}, le plus que permet ce tissu ; ou gardez sa longueur, avec une ampleur de {fullness} × ; ou trouvez cette longueur en plus.',
    'have.tooWide':
      'Comme prévu, la jupe n’y entre d’aucune façon : {usable} de laize sont utiles après lavage. Faites-la longue de {longest}, le plus que permet ce tissu, ou prenez un tissu plus large.',
    'have.noRows':
      'Pas un seul rang du ruban habituel ne trouve place sur la plus longue. Prenez un ruban plus étroit, ou un coupon plus long.',
    'have.spoilt':
      'Il y a des endroits abîmés : ce qui est dit ici se coupe dans la plus longue partie entre eux, {clear}. Un plan serré peut y trouver plus de place.',
    'cloth.nobodyThisWay':
      'Aucune de ces jupes ne peut être placée de cette façon sur un tissu de cette largeur.',
    'cloth.otherWay':
      'Impossible de cette façon ({lay}) : {wearers}. Là, c’est la façon qui prend le moins de tissu.',
    'cloth.apart':
      'Impossibles à couper dans le tissu plié ({lay}), donc coupées en une seule épaisseur dans le tissu ouvert : des pièces de {wearers}.',
    'cloth.flawBeyond':
      'L’endroit abîmé {number} du coupon {at}{length, select, nobody {} other { («\u00a0{length}\u00a0»)}} est au-delà de ce coupon\u00a0: rien ne l’évite. Mesurez-le encore, depuis le début du coupon et depuis son bord.',
    'cloth.byEye':
      'Posé à la main : {asked, select, pattern {le motif ne se raccorde pas} between {rien n’est laissé entre les pièces} other {le motif ne se raccorde pas, et rien n’est laissé entre les pièces}}. Un plan cherché, en une épaisseur ou plié une fois, en tient compte s’il trouve la place.',
    'cloth.noWay':
      '{wearer} : les pièces sont trop grandes pour ce tissu, de quelque façon qu’on le pose. Prenez un tissu plus large, ou une coupe en plus de pièces.',
    'cloth.notEnoughFor':
      '{wearer, select, nobody {} other {{wearer} : }}il faut {needed} de tissu, et {why, select, unlike {à la main aucun coupon ne convient\u00a0: celui qui est assez long est trop étroit, ou abîmé par endroits} none {il n’y a ni coupon ni rouleau} other {aucun coupon n’en a autant de reste}}. {why, select, sought {} none {} other {Un plan plus serré peut se contenter de moins, ou se servir de plusieurs coupons\u00a0: cherchez-en un. Sinon, }}{why, select, sought {Trouvez-en} none {Trouvez-en} other {trouvez-en}} plus, ou coupez la jupe dans un autre tissu.',
    'cloth.panelTooDeep':
      'Un panneau fait {depth} de haut en bas, et le tissu {usable} de laize après lavage : il ne peut pas se couper la taille sur la lisière.',
    'cloth.panelTooWide': 'Un panneau fait {width} de large, et le tissu {usable} après lavage.',
    'cloth.noLayFits':
      'Un panneau ({width} de large, {depth} de long) n’entre d’aucune façon dans ce tissu : {usable} sont utiles après lavage. Choisissez un tissu plus large, une jupe plus courte, un repère d’ourlet plus étroit s’il reste de quoi marcher, ou une jupe froncée de plusieurs lés.',
    'cloth.onlyTwoAlike':
      'Plié en quatre, le tissu donne deux panneaux d’un coup ; cette jupe en a {panels}.',
    'cloth.liningTooNarrow':
      'Une pièce de la doublure fait {width} sur {depth}, et son tissu {usable} après lavage : prenez-en un plus large.',
    'cloth.notAlike':
      'Le double pli est fait pour deux panneaux pareils, tracés depuis leur milieu ; ceux-ci se coupent pièce par pièce.',
    'cloth.notOnFold':
      '{panels, plural, one {Un panneau a} other {# panneaux ont}} deux côtés différents et pas de pièce en miroir : on ne peut pas les couper sur un pli.',
    'cloth.pieceTooLarge':
      'Une pièce de {width} sur {depth} ne tient pas entre les lisières : le tissu fait {usable} après lavage.',
    'cloth.oddPanels':
      'Les panneaux se coupent par paires ; leur nombre étant impair ({panels}), une épaisseur de la dernière paire reste de trop.',
    'cloth.oneWayCrosswise':
      'La pliure met un imprimé à sens unique tête en bas sur une épaisseur : coupez le long de la pliure et faites faire un demi-tour à l’épaisseur du dessus avant d’épingler.',
    'cloth.printOnItsSide': 'Disposé ainsi ({lay}), l’imprimé à sens unique est couché.',
    'cloth.notEnough':
      'Il y a {have} de tissu, et il en faut {needed} avant lavage. Voyez ce qu’on peut en faire, ou trouvez-en plus.',
    'cloth.changeIsRange':
      'Le retrait du tissu n’est connu que par une fourchette ; c’est la valeur haute qui sert. Lavez un carré d’essai pour économiser du tissu.',
    'cloth.onNoLayout':
      'Cette jupe n’est pas tout entière sur un plan de coupe. Voyez pourquoi auprès des plans, avant de tracer.',
    'cloth.laidByHand':
      'Placées à la main, les pièces se touchent, les motifs tombent comme ils viennent, et une seule longueur sert. Cherchez un plan serré pour en tenir compte.',
    'cloth.contrastNothing':
      'Cette jupe n’a pas de pièce « {piece}{number, plural, =0 {} one { #} other { #}} » à couper dans {cloth, select, none {le tissu {colour}} other {{cloth} ({colour})}}. Prenez une autre pièce.',
    'cloth.contrastAll':
      'Tout serait coupé dans {cloth, select, none {le tissu {colour}} other {{cloth} ({colour})}}, et rien dans celui de la jupe ; il est laissé de côté. Faites-en le tissu de la jupe.',
    'cloth.shrinkApart':
      '{cloth, select, none {Le tissu {colour}} other {{cloth} ({colour})}} perd encore {lengthwise} en longueur et {crosswise} en largeur au premier lavage, et {otherCloth, select, none {le tissu {otherColour}} other {{otherCloth} ({otherColour})}} {otherLengthwise} et {otherCrosswise} : cousus ensemble sans lavage, leurs coutures fronceraient. Lavez et séchez chaque tissu avant de couper.',
    'cloth.weighApart':
      '{cloth, select, none {Le tissu {colour}} other {{cloth} ({colour})}} est {weight} et celui de la jupe {own}. Là où ils sont cousus ensemble, choisissez l’aiguille d’après le plus lourd, repassez d’après le plus léger, et essayez une couture sur des chutes.',
    'cloth.rowHardlySeen':
      '{rows, plural, one {Le rang {row} ne se voit guère} other {# rangs à partir du rang {row} ne se voient guère}} de l’autre bout d’une pièce : {ribbon} sur {cloth, select, none {le tissu {colour}} other {{cloth} ({colour})}}. Si ce n’est pas voulu, prenez un autre ruban ou un autre tissu.',
    'cloth.notEnoughAtHand':
      'Le tissu qu’il y a ne suffit pas : pas de place trouvée pour {count, plural, one {# pièce} other {# pièces}} ({piece}). Achetez-en, ou prenez une jupe plus courte ou moins ample.',
    'cloth.foldTurnsPrint':
      'Plié en travers, un imprimé à sens unique serait la tête en bas sur une épaisseur. Placez-le à plat, ou pliez-le en long.',
    'cloth.matchInOneLayer':
      'Un motif qui doit se raccorder aux coutures se coupe sur une seule épaisseur, ou plié une fois si les panneaux sont tous sur la pliure ou vont par deux, traversés par le motif aux mêmes endroits. Ici, il ne se plie pas ainsi. Placez-le à plat.',
    'cloth.flawOnFold':
      'On ne sait qu’à la fin où sera la pliure : les défauts du rouleau ne peuvent pas être évités. Placez-le à plat, ou pliez-le en long.',
    'cloth.notFoldedInFour':
      'Rien ici ne peut être cherché en quatre épaisseurs : il y faut deux panneaux pareils de chaque jupe, un imprimé qui va dans les deux sens et une seule longueur de tissu sans défaut. Prenez un autre placement.',
    'cloth.seamNotMatched':
      '{wearer, select, nobody {} other {{wearer}\u00a0: }}Le motif ne se raccorde pas là où {closes, select, yes {les deux bords de {before} {beforeNumber} se cousent ensemble} other {{before} {beforeNumber} se coud à {after} {afterNumber}}}\u00a0: mettez cette couture là où elle se voit le moins.',
    'cloth.cantMatch':
      'Aucune place où le motif se raccorde n’a été trouvée. Prenez plus de tissu, ou laissez tomber le motif comme il vient.',
    'cloth.layWished':
      'Disposés comme demandé ({wished}), les panneaux n’entrent pas ; le plan continue avec : {taken}.',
    'supplies.unwashedRibbon':
      'Le ruban n’a pas été lavé et peut rétrécir quand la jupe le sera. Lavez le tissu et le ruban avant de couper, chacun à part.',
    'supplies.flame':
      'Les bouts de ruban se scellent à la flamme : adultes seulement, rien qui brûle à côté, et les règles locales d’abord. L’anti-effilochage liquide le fait sans feu.',
    'supplies.flameAndSpray':
      'Aérosol et flamme ne vont jamais ensemble, ni dans la même pièce ni au même moment. Arrêtez les bouts de ruban au liquide anti-effilochage, ou à la flamme un autre jour dans une autre pièce.',
  },
  levels: { caution: 'Attention', problem: 'Problème' },
  stages: { body: 'Corps', cut: 'Coupe', ribbons: 'Rubans', cloth: 'Tissu', supplies: 'Fournitures' },
  cuts: {
    flared: 'jupe évasée à deux panneaux',
    gathered: 'jupe froncée',
    gored: 'jupe à pans',
    tiered: 'jupe à volants',
    circle: 'jupe cercle',
    wrap: 'jupe portefeuille',
  },
  weights: { light: 'léger', medium: 'moyen', heavy: 'lourd' },
  panels: {
    front: 'devant',
    back: 'dos',
    width: 'lé',
    gore: 'pan',
    'front gore': 'pan devant',
    'side gore': 'pan de côté',
    'back gore': 'pan dos',
    tier: 'bande de volant',
    circle: 'cercle',
    'half circle': 'demi-cercle',
    'quarter circle': 'quart de cercle',
    'part of a circle': 'partie du cercle',
    'left front': 'devant gauche',
    'right front': 'devant droit',
    round: 'tout le tour',
  },
  parts: {
    'casing strip': 'bande de coulisse',
    waistband: 'ceinture',
    'waistband back': 'dos de la ceinture',
    'stretch band': 'bande extensible',
    tie: 'lien',
    placket: 'bande de fente',
    'pocket bag': 'fond de poche',
    'slit facing': 'parementure de fente',
    'hem facing': 'parementure d’ourlet',
    'lining front': 'doublure devant',
    'lining back': 'doublure dos',
    'lining width': 'lé de doublure',
  },
  extras: {
    pockets: 'poches',
    slits: 'fentes',
    lining: 'doublure',
    tucks: 'place pour grandir',
  },
  extrasAbout: {
    pockets:
      'Des fonds cousus dans les coutures de côté, à la taille de la main. Quelques coutures en courbe avant de fermer les côtés ; un reste de tissu suffit.',
    slits:
      'Des coutures laissées ouvertes depuis l’ourlet, pour marcher dans une jupe étroite. Chaque bord reçoit une bande de parementure ; très peu de tissu.',
    lining:
      'Une jupe toute simple d’une étoffe plus légère à l’intérieur, un peu plus courte. Une seconde jupe à coudre, plus facile ; autant de sa propre étoffe qu’une jupe étroite.',
    tucks:
      'De la longueur gardée en plis sous la taille, ou dans un ourlet profond, et relâchée quand l’enfant grandit. Des coutures droites tout autour ; autant de longueur de tissu en plus.',
  },
  waists: {
    'turned casing': 'coulisse repliée',
    'separate casing': 'coulisse rapportée',
    'flat front': 'devant plat, dos élastiqué',
    drawstring: 'cordon coulissant',
    'plain waistband': 'ceinture plate',
    'stretch band': 'bande extensible',
  },
  waistsAbout: {
    'turned casing':
      'Le bord du haut est replié à l’intérieur et l’élastique y passe. La plus facile ; un peu plus de deux largeurs d’élastique de tissu, en longueur.',
    'separate casing':
      'Une bande du même tissu est cousue en haut, pliée, et l’élastique y passe. Trois tours de piqûre, et la bonne manière pour un haut en courbe ; une bande aussi longue que le tour du haut, un peu plus de deux fois la largeur de l’élastique.',
    'flat front':
      'Une ceinture au devant lisse et entoilé, avec l’élastique derrière seulement. Devant et dos se font à part et se rejoignent aux côtés : plus d’étapes qu’une coulisse ; deux bandes, et de l’entoilage pour le devant.',
    drawstring:
      'Le bord du haut est replié à l’intérieur et un cordon y passe, noué devant. Deux petits trous à finir avant de replier ; pas d’autre tissu que le bord replié, et un cordon. Pour les adultes : aux enfants, l’élastique convient mieux.',
    'plain waistband':
      'Une ceinture ferme autour de la taille, avec une glissière ou une fente, et un bouton. La plus nette et la plus exigeante à coudre ; une bande de la longueur de la taille, et son entoilage.',
    'stretch band':
      'Une bande de maille extensible en double, sous un ventre qui grandit ou par-dessus, et douce quand on est assise. On étire la bande en la cousant aux panneaux ; pas de tissu de jupe, une bande de maille moins longue que le tour de taille.',
  },
  cutsAbout: {
    flared:
      'Deux panneaux, devant et dos, plus larges à l’ourlet qu’à la taille. Des lignes droites à tracer, deux coutures ; le tissu de deux panneaux côte à côte.',
    gathered:
      'Des longueurs droites de tissu cousues en tube et froncées à la taille. Rien à dessiner ; le plus de tissu pour sa longueur.',
    gored:
      'De quatre à dix panneaux, étroits à la taille et larges à l’ourlet, lisses sur les hanches. Des courbes à tracer et de longues coutures à assembler ; placés tête-bêche, ils perdent peu de tissu.',
    tiered:
      'Des tours de bandes droites, chacun froncé sur celui du dessus. Chaque bande est un rectangle, mais il y a beaucoup de coutures et de longues fronces ; un tissu étroit suffit, et le volant du bas en prend le plus.',
    circle:
      'Un anneau de tissu, ou une part d’anneau, qui tombe en plis sans fronces. Des arcs à tracer à la ficelle et un ourlet qui doit pendre avant d’être plié ; un tissu large, dont il reste beaucoup entre les courbes.',
    wrap: 'Un dos et deux devants qui se croisent et se nouent ; pas de fermeture, et elle suit la taille qui change. Deux coutures et deux bords à parementure ; la croisure prend du tissu en plus.',
  },
  lays: {
    'double fold': 'plié en quatre',
    'lengthwise fold': 'plié dans la longueur',
    'crosswise fold': 'plié en travers',
    open: 'ouvert, une épaisseur',
  },
  tableEdges: {
    'cut edge': 'bord coupé',
    selvage: 'lisière',
    selvages: 'lisières',
    fold: 'pliure',
    'two folds': 'deux pliures',
    'fold and two ends': 'une pliure et deux bouts coupés',
    'two ends': 'deux bouts coupés',
    'raw end': 'bout coupé',
  },
  colours: {
    red: 'rouge',
    darkRed: 'rouge foncé',
    pink: 'rose',
    orange: 'orange',
    gold: 'doré',
    yellow: 'jaune',
    lightGreen: 'vert clair',
    green: 'vert',
    darkGreen: 'vert foncé',
    teal: 'sarcelle',
    turquoise: 'turquoise',
    lightBlue: 'bleu clair',
    blue: 'bleu',
    navy: 'bleu marine',
    purple: 'violet',
    plum: 'prune',
    brown: 'brun',
    beige: 'beige',
    white: 'blanc',
    grey: 'gris',
    black: 'noir',
  },
  stitches: { '301': 'point droit', '304': 'point zigzag', '504': 'surjet à trois fils' },
  stations: {
    table: 'à la table',
    machine: 'à la machine',
    overlocker: 'à la surjeteuse',
    iron: 'au fer',
    wash: 'au lavage',
  },
  steps: {
    measure: 'Mesurer deux fois',
    colourTest: 'Essayer les couleurs',
    prewash: 'Laver avant de couper',
    pressCloth: 'Repasser le tissu',
    straighten: 'Mettre les bouts d’équerre',
    fold: 'Plier le tissu',
    mark: 'Tracer les lignes de coupe à la craie',
    cut: 'Couper les panneaux',
    trim: 'Mettre les panneaux d’équerre et les égaliser',
    hang: 'Laisser pendre',
    chalkRows: 'Tracer les rangs de ruban à la craie',
    cutRibbon: 'Couper le ruban',
    testStitch: 'Régler la machine et essayer le point',
    firstSeams: 'Coudre toutes les coutures de côté sauf une',
    holdRibbon: 'Poser le ruban sur ses lignes',
    stitchRibbon: 'Piquer le ruban',
    pressRows: 'Repasser les rangs',
    applique: 'Appliquer le motif',
    sideSeams: 'Coudre les côtés',
    finishEdges: 'Surfiler les bords',
    hem: 'Coudre l’ourlet',
    casing: 'Coudre la coulisse',
    threadElastic: 'Passer l’élastique et essayer la jupe',
    closeElastic: 'Fermer l’élastique et la coulisse',
    finish: 'Finir',
    firstJoins: 'Coudre les coutures que les rangs couvrent',
    pockets: 'Coudre les fonds de poche',
    darts: 'Coudre les pinces',
    panelSeams: 'Assembler les panneaux',
    joinStrips: 'Joindre les bandes de chaque volant',
    gather: 'Coudre les rangs de fronces',
    sewTiers: 'Accrocher volant à volant',
    seamRows: 'Piquer le ruban sur les coutures des volants',
    faceEdges: 'Rentrer les bords libres',
    slits: 'Poser la parementure des fentes',
    opening: 'Faire l’ouverture',
    tucks: 'Coudre les plis de croissance',
    lining: 'Faire la doublure',
    casingStrip: 'Coudre la bande de coulisse',
    ties: 'Faire les liens',
    bandPrepare: 'Préparer la ceinture',
    band: 'Coudre la ceinture',
    cordEyelets: 'Faire les trous du cordon',
    threadCord: 'Passer le cordon et essayer la jupe',
    fasten: 'Coudre ce qui la ferme',
  },
  sentences: {
    'measure.string': 'Nouez une ficelle là où sera l’élastique, et mesurez à partir d’elle.',
    'measure.numbers':
      'Tour de taille {waist}, tour de hanches {hip} à l’endroit le plus fort, de la taille à l’ourlet {length}.',
    'measure.twice':
      'Prenez toutes les mesures une deuxième fois ; là où les deux diffèrent, mesurez une troisième fois.',
    'colourTest.dab':
      'Avant que tissu et ruban aillent à l’eau, tamponnez chaque couleur soutenue avec un chiffon blanc mouillé, et séchez au fer.',
    'colourTest.apart':
      'Si le chiffon prend la couleur, lavez cette pièce à part jusqu’à ce que l’eau reste claire, ou choisissez-en une autre.',
    'colourTest.cloths':
      'Faites l’essai sur chaque tissu : une couleur soutenue peut tacher le tissu pâle cousu à elle.',
    'prewash.each':
      'Lavez et séchez {cloth, select, none {le tissu {colour}} other {{cloth} ({colour})}} : {before} devraient laisser {after}, car il perd {lengthwise} en longueur et {crosswise} en largeur. Mesurez ce qu’il y a.',
    'prewash.done':
      '{cloth, select, none {Le tissu {colour}} other {{cloth} ({colour})}} a déjà eu son lavage : on ne compte plus sur un retrait.',
    'prewash.apart': 'La première fois, lavez chaque tissu à part, tous comme la jupe sera lavée.',
    'pressCloth.weights':
      'Les tissus n’ont pas le même poids : réglez le fer pour le plus léger, et essayez sur une chute de chacun.',
    'prewash.edges':
      'Surfilez les deux bouts coupés au point zigzag ou à la surjeteuse, pour qu’ils ne s’effilochent pas au lavage.',
    'prewash.cloth': 'Lavez et séchez le tissu. {before} devraient laisser {after} ; mesurez ce qu’il y a.',
    'prewash.ribbon': 'Lavez le ruban à part, dans un filet, et séchez-le à plat.',
    'prewash.asWorn': 'Lavez comme la jupe sera lavée.',
    'pressCloth.flat': 'Repassez le tissu bien à plat, dans le droit fil et non en travers.',
    'straighten.thread':
      'Tirez un fil de trame, ou déchirez, pour trouver le vrai bout, et coupez le long de ce fil.',
    'straighten.square':
      'Posez les bouts l’un sur l’autre : s’ils ne tombent pas bord à bord, tirez le tissu par les coins trop courts jusqu’à ce qu’ils y tombent.',
    'fold.double':
      'Prenez {cloth} de tissu. Pliez-le en deux bord à bord, bout sur bout, endroit contre endroit, puis encore en deux : quatre épaisseurs, lisières ensemble.',
    'fold.doubleEdges':
      'Trouvez le bord à DEUX PLIURES : c’est le milieu des deux panneaux. Le bord à UNE PLIURE et DEUX BOUTS COUPÉS est leur côté. Marquez à partir des deux pliures.',
    'fold.lengthwise':
      'Prenez {cloth} de tissu. Pliez-le dans la longueur, lisière sur lisière, bord à bord, endroit contre endroit. Chaque panneau se coupe le milieu sur la pliure.',
    'fold.crosswise':
      'Prenez {cloth} de tissu. Pliez-le en travers, bout sur bout, bord à bord, endroit contre endroit. Les panneaux se coupent dans les deux épaisseurs.',
    'fold.crosswiseTurn':
      'L’imprimé a un sens : coupez le long de la pliure, et faites faire un demi-tour à l’épaisseur du dessus pour que les deux imprimés aillent dans le même sens.',
    'fold.open': 'Prenez {cloth} de tissu. Étalez-le ouvert, endroit dessus, en une seule épaisseur.',
    'fold.openHeadToTail':
      'Prenez {cloth} de tissu. Étalez-le ouvert, endroit dessus, en une seule épaisseur. Les panneaux se placent tête-bêche.',
    'fold.stack':
      'Coupez d’abord les panneaux en blocs, à part. Pliez ensuite chacun au milieu et posez-les pliure sur pliure : ils se marquent ensemble, à partir des pliures.',
    'fold.wholePanels':
      'Tracez la ligne du milieu de chaque panneau dans le droit fil : les panneaux disposés tête-bêche se marquent entiers, des deux côtés de cette ligne.',
    'fold.pattern':
      '{fold, select, offMiddle {Que la pliure soit sur le motif là où le plan de coupe le dit, même si les lisières ne tombent pas ensemble} onBand {Que la pliure soit sur une bande, comme le dit le plan de coupe} other {Gardez les lisières l’une sur l’autre}}\u00a0; épinglez {pattern, select, stripes {rayure sur rayure} bands {bande sur bande} other {rayure sur rayure et bande sur bande}} à travers les deux épaisseurs.',
    'fold.lengths': 'Les autres longueurs se placent de même\u00a0; chacune a son plan de coupe.',
    'fold.grain': 'Lissez chaque épaisseur jusqu’à ce que les pliures soient droites, sans une vague.',
    'mark.chalkScrap':
      'Essayez votre craie sur une chute de ce tissu : elle doit partir à la brosse ou au lavage.',
    'mark.fromFold': 'Mesurez chaque repère à partir du bord plié, qui est le milieu.',
    'mark.fromCentre':
      'Mesurez chaque repère des deux côtés de la ligne du milieu. Pour le panneau tête en bas, le bord du haut est à l’autre bord du tissu.',
    'mark.waist':
      'Tracez à la craie une ligne à {casingLine} sous le bord du haut : la coulisse s’y plie. Sur cette ligne, faites un point à {waistQuarter} du milieu.',
    'mark.casingEnd':
      'Au-dessus de la ligne de coulisse, le côté repart vers l’extérieur, jusqu’à {casingEnd} au bord du haut : une fois rabattu, il est bien à plat.',
    'mark.hem':
      'Tracez à la craie une ligne à {hemLine} sous le bord du haut : l’ourlet s’y plie. Sur cette ligne, faites un point à {hemQuarter} du milieu.',
    'mark.hemEnd':
      'Sous la ligne d’ourlet, le côté rentre vers l’intérieur, jusqu’à {hemEnd} au bord égalisé : une fois relevé, il est bien à plat.',
    'mark.bottom': 'Tracez le bord du bas à {bottomLine} sous le bord du haut.',
    'mark.join': 'Joignez les deux points à la règle : c’est le côté.',
    'mark.curve':
      'Entre les deux, reportez les points du tableau de votre fiche, mesurés vers le haut à partir de chaque ligne, et joignez-les.',
    'mark.curveWaist':
      'Tracez une ligne à {casingLine} sous le bord du haut, d’équerre à la pliure. La pliure de la coulisse part de là et remonte vers le côté : faites un point à {across} du milieu, {up} au-dessus de la ligne.',
    'mark.curveHem':
      'Tracez une ligne à {hemLine} sous le bord du haut, d’équerre à la pliure. La pliure de l’ourlet part de là et remonte vers le côté : faites un point à {across} du milieu, {up} au-dessus de la ligne.',
    'mark.curveCut':
      'C’est sur ces courbes que la coulisse et l’ourlet se PLIENT. Coupez au-delà : {casing} au-dessus de la courbe de coulisse et {beyond} sous la courbe d’ourlet, mesurés d’équerre à la courbe tout du long.',
    'mark.curveJoin':
      'Joignez les deux points du côté à la règle et prolongez la ligne tout droit jusqu’aux deux courbes de coupe : c’est le côté.',
    'mark.through':
      'Piquez une épingle à travers toutes les épaisseurs à chaque point et reportez-le à la craie sur chaque panneau.',
    'mark.widths':
      'Tracez à la craie {panels, plural, one {un lé droit} other {# lés droits}}, de {cutLength} de long, de lisière à lisière.',
    'cut.pinLayers':
      '{layers, plural, one {Épinglez le tissu ou posez des poids} other {Épinglez ensemble les # épaisseurs à l’intérieur des lignes, pour qu’aucune ne glisse,}} avant de couper.',
    'cut.smooth': 'Coupez à longs coups de ciseaux, tissu à plat sur la table, la lame du bas posée dessus.',
    'cut.slitFold': 'Au côté, fendez l’unique pliure le long de son pli : cela fait deux panneaux.',
    'cut.tear': 'Un coton qui se déchire droit peut se déchirer en travers.',
    'cut.frontBack':
      'Marquez le devant, le dos et le haut, sur l’envers, avec du ruban adhésif ou une épingle de sûreté.',
    'trim.square':
      'Mettez les bords vifs d’équerre et retranchez jusqu’à {trimOff} en bas ; en haut, une lisière droite reste telle quelle.',
    'trim.curve': 'Égalisez le bord de l’ourlet à {hem} au-delà de sa courbe, tout du long.',
    'trim.check': 'De bord vif à bord vif, chaque panneau mesure maintenant {length} au milieu.',
    'trim.beforeRows':
      'Faites-le avant de tracer un seul rang : les rangs se mesurent à partir du bord égalisé.',
    'hang.day': 'Épinglez les panneaux à un cintre par la taille et laissez-les pendre {hours} heures.',
    'hang.leave':
      'Laissez-leur la marge de l’ourlet pendant qu’ils pendent : elle s’égalise ensuite, en une fois.',
    'trim.hung':
      'Maintenant qu’ils ont pendu, mesurez {length} sous la ligne du haut, tout du long{top, select, risen { (d’où elle serait si rien n’était relevé ni abaissé)} other {}} : c’est la ligne d’ourlet. Égalisez le bord d’ourlet à {hem} au-dessous.',
    'hang.true':
      'Mesurez à partir de la taille, vers le bas, et égalisez le bord d’ourlet là où il s’est allongé.',
    'chalkRows.rightSide':
      'Ouvrez chaque panneau et posez-le endroit dessus. Les rangs se tracent sur le panneau ouvert, jamais sur les épaisseurs pliées.',
    'chalkRows.fromRaw':
      'Posez la règle au bord vif égalisé et faites un point pour chaque rang aux côtés et tous les 30 cm (12 po) entre les deux. L’ourlet de {hem} est déjà compté dans les chiffres.',
    'chalkRows.lowerEdge':
      'Joignez les points : {rows, plural, one {# ligne} other {# lignes}}. Chaque ligne est le bord INFÉRIEUR de son ruban.',
    'chalkRows.fromRawCurve':
      'Posez la règle au bord vif égalisé, d’équerre à la courbe, et faites un point pour chaque rang aux côtés et à chaque largeur de main entre les deux : partout la même distance de l’ourlet. L’ourlet de {hem} est déjà compté dans les chiffres.',
    'chalkRows.both': 'Posez les panneaux ensemble par les côtés : les lignes doivent se rejoindre.',
    'cutRibbon.strips':
      'Coupez {strips, plural, one {# bande} other {# bandes}} d’après la liste de coupe, la plus longue d’abord, et épinglez à chacune le numéro de son rang.',
    'cutRibbon.round':
      'Coupez {rows, plural, one {une longueur} other {une longueur pour chacun des # rangs}} d’après la liste de coupe ; chacune fait tout le tour.',
    'cutRibbon.sealant':
      'Arrêtez chaque bout coupé avec une goutte de liquide anti-effilochage, et laissez sécher.',
    'cutRibbon.flame':
      'Un adulte peut arrêter les bouts en polyester en les passant près d’une petite flamme, loin de tout.',
    'cutRibbon.none':
      'Touchez peu aux bouts coupés : ils s’effilochent tant que la couture de côté ne les tient pas.',
    'testStitch.needle':
      'Mettez une aiguille fine et pointue : une grosse ou une émoussée tire des fils dans le satin.',
    'testStitch.bobbin':
      'Remplissez une canette de la couleur du tissu ; elle reste en place pour tous les rubans.',
    'testStitch.bobbinCloths':
      'Remplissez une canette de la couleur de chaque tissu : sous un ruban va celle du tissu sur lequel il est posé.',
    'testStitch.threadCloths':
      '{colour, select, own {Cousez tous les tissus avec un fil de la couleur du tissu de la jupe.} outer {Cousez chaque tissu avec un fil de sa couleur, et une couture entre deux tissus avec celui du tissu qui est au-dessus ou dehors.} other {Cousez chaque tissu avec un fil de sa couleur, et une couture entre deux tissus avec celui du plus foncé : il se voit moins.}}',
    'testStitch.weights':
      'Des tissus de poids différents se rencontrent : là où ils sont cousus ensemble, choisissez l’aiguille d’après le plus lourd, et faites une couture d’essai à travers les deux.',
    'testStitch.scrap':
      'Piquez une dizaine de centimètres de ruban sur une chute. Si le ruban fronce, desserrez le fil du dessus ou allongez le point.',
    'firstSeams.round':
      'Cousez {seams, plural, one {une couture de côté} other {toutes les coutures de côté sauf une (#)}} avec une marge de couture de {seam}, et couchez au fer vers le dos : les rangs font le tour d’une seule longueur.',
    'firstSeams.finish': 'Surfilez ou surjetez ses bords dès maintenant : les rubans passeront dessus.',
    'holdRibbon.lay':
      'Posez chaque bande, bord inférieur sur son trait de craie, avec le même supplément à chaque bout.',
    'holdRibbon.pins':
      'Tenez-la avec des pinces aux bouts et des épingles à côté du ruban, pas à travers le satin. Espacez-les tant que le ruban ne bouge pas.',
    'holdRibbon.glue':
      'Tenez-la avec des points de colle à tissu lavable sous le milieu du ruban, et laissez sécher avant de coudre.',
    'holdRibbon.spray':
      'Tenez-la avec de la colle temporaire en aérosol : vaporisez l’envers du ruban à environ {distance}, légèrement, puis posez-le. Couvrez la table et le sol autour.',
    'holdRibbon.touching':
      'Là où des rangs se touchent, posez d’abord celui du bas et faites toucher le suivant à son bord supérieur.',
    'stitchRibbon.order': 'Commencez par le rang le plus bas.',
    'stitchRibbon.edge': 'Piquez au ras du bord inférieur de la bande, puis du bord supérieur.',
    'stitchRibbon.sameWay': 'Cousez les deux bords dans le même sens, sinon le ruban vrille et gondole.',
    'stitchRibbon.thread':
      'Enfilez l’aiguille de la couleur de chaque ruban : {changes, plural, one {# enfilage} other {# enfilages}} dans cet ordre des rangs.',
    'stitchRibbon.ease':
      'Sur une courbe, cousez d’abord le bord inférieur ; résorbez ensuite le bord supérieur, à plat sous vos doigts.',
    'pressRows.cool':
      'Repassez les rangs à fer doux, sous une pattemouille, sur l’envers. Un fer chaud marque le satin et le fait fondre.',
    'applique.place':
      'Posez le motif sur le panneau encore à plat, par-dessus les rangs là où il les couvre.',
    'applique.web':
      'Avec du thermocollant double face, dessinez-le en miroir sur le papier, et collez-le au fer sous une pattemouille.',
    'applique.stitch': 'Piquez tout autour avant de coudre les côtés.',
    'seams.pattern':
      'Raccordez le motif : endroit contre endroit, épinglez chacune de ses lignes sur la même ligne de l’autre panneau le long de la piqûre, de l’ourlet vers le haut, et regardez-le sur l’endroit avant de coudre.',
    'sideSeams.match':
      'Endroit contre endroit, faites correspondre et épinglez d’abord chaque rang aux côtés, puis le haut et l’ourlet.',
    'sideSeams.sew':
      'Cousez {seams, plural, one {la couture de côté} other {les # coutures de côté}} de l’ourlet vers le haut avec une marge de couture de {seam}, et des points d’arrêt aux deux bouts.',
    'sideSeams.mirror':
      'Suivez le bord coupé là où il change de sens, à la ligne d’ourlet et à la ligne de coulisse.',
    'sideSeams.catch': 'Les bouts du ruban sont pris dans la couture ; coupez-les au ras de ses bords.',
    'finishEdges.overlock': 'Surjetez ensemble les deux bords de la couture, sans rien couper.',
    'finishEdges.zigzag':
      'Surfilez les bords de la couture au point zigzag, l’aiguille tombant à droite juste hors du bord.',
    'finishEdges.selvage':
      'Les lisières restent, dans la couture : une couture dont le bord est la lisière n’a pas besoin d’être surfilée.',
    'finishEdges.press': 'Couchez les coutures vers le dos, au fer.',
    'hem.turn':
      'Rentrez le bord vif de {turnUnder}, puis relevez l’ourlet de {depth}, sur sa ligne ; repassez, et épinglez à partir des coutures de côté.',
    'hem.stitch': 'Piquez tout le tour, au ras du pli intérieur (tour : {round}).',
    'hem.curve': 'Dans la courbe, répartissez le surplus également, une épingle à chaque largeur de main.',
    'casing.turn':
      'Rentrez le bord du haut, puis rabattez la coulisse sur sa ligne : {depth} de profondeur, {casing} de tissu en tout ; repassez et épinglez.',
    'casing.selvage':
      'En haut, une lisière ne s’effiloche pas et peut rester sans rentré : la coulisse est alors aussi profonde que son tissu.',
    'casing.curve': 'Faites de petits crans dans le bord vif de la coulisse en courbe, pour qu’il s’ouvre.',
    'casing.stitch':
      'Piquez tout le tour au ras du pli du bas, et laissez {opening} d’ouverture à une couture de côté pour l’élastique.',
    'threadElastic.cut': 'Coupez {cut} d’élastique de {width} de large.',
    'threadElastic.thread':
      'Retenez un bout à côté de l’ouverture avec une épingle de sûreté, passez l’autre dans la coulisse avec une deuxième, sans le laisser vriller.',
    'threadElastic.pin': 'Superposez les bouts et fermez-les avec une épingle de sûreté.',
    'threadElastic.tryOn':
      'Épinglez l’ourlet sur sa ligne et essayez la jupe avant de coudre : elle doit passer les hanches, tenir, et tomber à {length} de long. Sinon, changez maintenant l’élastique ou la ligne d’ourlet.',
    'closeElastic.join':
      'Ôtez l’épingle, superposez les bouts à plat, piquez-les quatre fois au zigzag, puis laissez-les rentrer dans la coulisse.',
    'closeElastic.even':
      'Répartissez les fronces également le long de l’élastique épinglé, coutures de côté sur les côtés, avant de le fermer.',
    'closeElastic.opening': 'Piquez ensuite l’ouverture pour la fermer, l’élastique étiré à plat.',
    'closeElastic.catch':
      'Arrêtez l’élastique en piquant de haut en bas à travers la coulisse, {seams, plural, one {à la couture} other {à chacune des # coutures}}, pour qu’il ne roule pas.',
    'finish.ends': 'Coupez les fils et retirez toutes les épingles ; comptez-les.',
    'finish.press': 'Repassez la jupe ; le satin à fer doux et sous une pattemouille.',
    'finish.note': 'Mesurez la taille, la longueur et l’ourlet finis, et notez-les pour la prochaine.',
    'measure.stringWaist': 'Nouez une ficelle là où sera le haut de la jupe, et mesurez à partir d’elle.',
    'measure.seated':
      'Prenez les longueurs en position assise, comme la jupe sera portée : de la ficelle le long de la cuisse et par-dessus le genou, jusqu’à l’ourlet.',
    'measure.expecting':
      'Prenez le tour de taille là où il sera, sous le ventre ou par-dessus, et encore une fois juste avant de couper.',
    'prewash.others':
      'Lavez aussi le tissu de doublure et la maille extensible, chacun comme le dit son étiquette.',
    'fold.lengthwisePieces':
      'Prenez {cloth} de tissu. Pliez-le dans la longueur, lisière sur lisière, bord à bord, endroit contre endroit. Les pièces se coupent dans les deux épaisseurs ; celles que le plan de coupe montre contre la pliure se coupent le milieu sur elle.',
    'mark.top':
      'Tracez à la craie une ligne à {casingLine} sous le bord du haut : la taille s’y coud. Sur cette ligne, faites un point à {waistQuarter} du milieu, et montez le côté tout droit à partir de ce point.',
    'mark.curveTop':
      'Tracez une ligne à {casingLine} sous le bord du haut, d’équerre à la pliure. La couture de la taille part de là et remonte vers le côté : faites un point à {across} du milieu, {up} au-dessus de la ligne.',
    'mark.curveCutSewn':
      'La taille se COUD sur la courbe du haut, l’ourlet se PLIE sur celle du bas. Coupez au-delà : {casing} au-dessus de la courbe du haut et {beyond} sous la courbe d’ourlet, mesurés d’équerre à la courbe tout du long.',
    'mark.riseRoom':
      'Sur ce corps, le bord du haut n’est pas de niveau. Tracez d’abord une ligne à {room} sous le bord du tissu où vient le haut : c’est le « bord du haut » des mesures données ici, et ce qui est relevé va au-dessus.',
    'mark.raised':
      'Relevez le bord du haut, et toutes ses lignes avec lui, de {by} {place, select, front {au milieu devant} back {au milieu dos} left {au côté gauche} other {au côté droit}}.',
    'mark.lowered':
      'Abaissez le bord du haut, et toutes ses lignes avec lui, de {by} {place, select, front {au milieu devant} back {au milieu dos} left {au côté gauche} other {au côté droit}}.',
    'mark.riseJoin':
      'Joignez ces points par une courbe douce, panneau contre panneau, d’équerre au milieu devant et au milieu dos ; là où rien n’est dit, le bord reste comme il était. Ce qui diffère se fait en haut : l’ourlet reste de niveau. Marquez le devant et le dos, la gauche et la droite.',
    'mark.riseTopTier': 'Seul le volant du haut prend cette forme.',
    'mark.piece':
      'Tracez {pieces, plural, one {une pièce} other {# pièces}} ({piece}) : {top} de large le long de la ligne du haut, {hem} le long de la ligne d’ourlet, d’un côté à l’autre à bord vif et en suivant la courbe s’il y en a une, la moitié de part et d’autre du milieu quand les deux moitiés sont pareilles ; {length} de long au milieu d’un bord vif à l’autre.',
    'mark.pieceHip':
      'À la ligne des hanches, {down} sous la ligne du haut, la même pièce ({piece}) a {hip} de large en suivant la courbe : joignez haut, hanches et ourlet sur les côtés.',
    'mark.pieceCurve':
      '{edges, select, both {Le haut et l’ourlet de cette pièce ({piece}) sont de légères courbes, au plus bas au milieu : entre les bouts de ses coutures, la ligne du haut y descend de {top} et la ligne d’ourlet de {hem}.} top {Le haut de cette pièce ({piece}) est une légère courbe, au plus bas au milieu : entre les bouts de ses coutures, il y descend de {top}.} other {L’ourlet de cette pièce ({piece}) est une légère courbe, au plus bas au milieu : entre les bouts de ses coutures, il y descend de {hem}.}}',
    'mark.pieceLines':
      'Sur chaque pièce la ligne du haut, où la coulisse se plie, est à {top} sous le bord vif du haut, et la ligne d’ourlet, où l’ourlet se plie, {length} plus bas. Les marges de couture sont dans les largeurs.',
    'mark.pieceLinesSewn':
      'Sur chaque pièce la ligne du haut, où la taille se coud, est à {top} sous le bord vif du haut, et la ligne d’ourlet, où l’ourlet se plie, {length} plus bas. Les marges de couture sont dans les largeurs.',
    'mark.tier':
      'Volant {tier}, compté du haut : {strips, plural, one {une bande} other {# bandes}} de {width} de large en travers du tissu et de {length} d’un bord vif à l’autre.',
    'mark.notches':
      'Reportez chaque cran du dessin : un trait sur un devant, deux sur un dos. Là où des pièces se rencontrent, les mêmes crans se rencontrent.',
    'mark.swingPoint':
      'Pour {pieces, plural, one {l’unique pièce} other {chacune des # pièces}} ({piece}), marquez le centre d’où se tracent tous ses arcs : à {radius} au-dessus de la ligne du haut, là où le plan de coupe l’a. S’il tombe hors du tissu, marquez-le sur la table, et que le tissu ne bouge pas.',
    'mark.swingString':
      'Tenez le bout d’un ruban à mesurer qui ne s’étire pas sur le point, la craie au chiffre, et faites-le tourner bien tendu : un point à chaque largeur de main, puis joignez-les.',
    'mark.swingTop': 'Le haut : coupez à {rawTop} du point ; la coulisse se plie à {radius}.',
    'mark.swingTopSewn': 'Le haut : coupez à {rawTop} du point ; la taille se coud à {radius}.',
    'mark.swingHem':
      'L’ourlet : coupez à {rawHem} du point ; l’ourlet se plie à {hemRadius} et a {hem} de profondeur.',
    'mark.swingHalf': 'Les deux côtés sont sur une seule droite qui passe par le point.',
    'mark.swingSlit':
      'Fendez-le le long d’une seule droite de l’ourlet au haut, dans le droit fil : c’est sa couture, au dos.',
    'mark.swingSquare': 'Les deux côtés sont d’équerre l’un à l’autre, au point.',
    'mark.swingSides':
      'Les deux bouts de la ligne de coupe de l’ourlet sont à {chord} l’un de l’autre, en ligne droite ; joignez chacun au point : ce sont les côtés.',
    'fold.ownCloth': 'Commencez par {cloth, select, none {le tissu {colour}} other {{cloth} ({colour})}}.',
    'fold.otherCloth':
      'Posez ensuite {cloth, select, none {le tissu {colour}} other {{cloth} ({colour})}} ({size}) comme le montre son propre plan de coupe : {lay}.',
    'cut.fromCloth':
      '{cloth, select, none {Dans le tissu {colour}} other {Dans {cloth} ({colour})}}, coupez : {pieces}.',
    'cut.label':
      'Écrivez sur du ruban adhésif, à l’envers de chaque pièce, ce qu’elle est, son numéro et où est son haut, dès qu’elle quitte la table.',
    'cut.more':
      'Ce qui n’a pas de place à côté des panneaux se coupe dans le reste, en une seule épaisseur, comme le montre le plan de coupe.',
    'cut.part':
      '{cloth, select, lining {Dans le tissu de doublure, coupez} knit {Dans la maille extensible, l’élasticité dans la longueur, coupez} called {{name, select, none {Dans le tissu {colour}} other {Dans {name} ({colour})}}, coupez} other {Dans le même tissu, coupez}} {pieces, plural, one {une pièce} other {# pièces}} ({part}), {width} de large et {length} de long.',
    'cut.shapedPart':
      '{cloth, select, lining {Dans le tissu de doublure, coupez} called {{name, select, none {Dans le tissu {colour}} other {Dans {name} ({colour})}}, coupez} other {Dans le même tissu, coupez}} une pièce ({part}) le milieu sur une pliure : {top} depuis la pliure en haut, {hem} depuis la pliure à l’ourlet, {length} de long.',
    'cut.shapedCurve':
      'Son bord du haut monte de {top} de la pliure au côté, son bord d’ourlet de {hem}, en courbes douces.',
    'trim.checkRisen':
      'De bord vif à bord vif, chaque panneau mesure maintenant {length} au milieu, avec ce dont le haut y a été relevé ou abaissé.',
    'trim.strips':
      'Posez une équerre aux bouts de chaque bande : coins d’équerre, toutes les bandes d’un volant de la même longueur.',
    'hem.once':
      'Surfilez ou surjetez le bord vif, puis relevez l’ourlet une seule fois, de {depth}, sur sa ligne ; repassez et épinglez.',
    'hem.turnAt':
      'Rentrez le bord vif de {turnUnder}, puis relevez l’ourlet de {depth}, sur sa ligne ; repassez, et épinglez d’une couture à l’autre.',
    'hem.stitchAcross':
      'Piquez-le d’un bord à parementure à l’autre, au ras du pli intérieur ({round} en tout).',
    'hem.stitchSlits':
      'Piquez-le au ras du pli intérieur {slits, plural, one {d’un seul trait, d’un bord à parementure de la fente à l’autre} other {en # longueurs, chacune du bord à parementure d’une fente à celui de la suivante}} ({round} en tout), avec un point d’arrêt aux deux bouts.',
    'finish.letDown':
      'Notez pour plus tard : {tucks, plural, one {le pli garde} other {les # plis gardent}} {letsDown} de longueur. Quand la jupe devient courte, retirez les longs points{tucks, plural, one {} other { d’un pli après l’autre}} et effacez la marque à la vapeur.',
    'finish.letDownHem':
      'Notez pour plus tard : l’ourlet profond garde {letsDown} de longueur. Quand la jupe devient courte, défaites-le et effacez la marque à la vapeur.',
    'finish.expecting':
      'Essayez-la de nouveau à mesure que le ventre grandit : l’ourlet remonte devant. La taille demandera peut-être plus de large.',
    'finish.short':
      'Notez aussi : telle qu’elle est, la jupe devient trop courte vers le {date}. Regardez-la de nouveau avant cette date.',
    'finish.wrap':
      'Pour la mettre, posez le devant gauche contre le corps et sortez son lien par l’ouverture du côté droit ; posez le devant droit par-dessus, son bord à gauche. Passez les liens derrière, l’un au-delà de l’autre, ramenez-les devant et nouez-les à gauche.',
    'pockets.mark':
      'À chaque poche, marquez l’ouverture sur les deux bords du côté : elle commence à {below} sous {top, select, fold {la pliure de la coulisse} other {la ligne où la taille se coud}} et mesure {opening}.',
    'pockets.lay':
      'Endroit contre endroit, épinglez chacun des {pieces, plural, one {# fond de poche} other {# fonds de poche}} à son côté, bord droit sur bord, bout du haut à {headroom} au-dessus de l’ouverture, le fond posé sur le panneau.',
    'pockets.sew':
      'Cousez-le le long du bord droit, à un cheveu de moins que {seam} du bord, pour que la couture roule vers l’intérieur ; surfilez les bords ensemble.',
    'pockets.press':
      'Couchez le fond au fer vers l’extérieur, loin du panneau, et piquez-le sur la marge tout près de la couture.',
    'slits.face':
      'Endroit contre endroit, cousez une bande de parementure le long de chaque bord ouvert {where, select, both {aux deux côtés} left {au côté gauche} right {au côté droit} other {au milieu dos}}, sur la ligne de la couture : du haut de la fente, à {height} au-dessus de la ligne d’ourlet, jusqu’au-delà de cette ligne.',
    'slits.rows':
      'Les bouts des rubans à la fente se prennent sous la parementure ; un rang qui la traverse s’y coupe d’abord.',
    'slits.turn':
      'Rabattez la bande vers l’intérieur le long de la couture et repassez ; rentrez son bord libre et piquez-le à {facing} du bord.',
    'slits.tack':
      'En haut de la fente, piquez en aller-retour à travers les deux parementures, pour que la couture ne se déchire pas.',
    'tucks.chalk':
      'Pour le {tucks, plural, one {pli} other {premier pli}}, tracez deux lignes tout autour : l’une à {below} sous {top, select, fold {la pliure de la coulisse} other {la ligne où la taille se coud}}, l’autre {lines} plus bas.',
    'tucks.next':
      'Pour {tucks, plural, one {# pli} other {# plis}} en tout, laissez {space} entre la ligne du bas de l’un et la ligne du haut du suivant.',
    'tucks.sew':
      '{tucks, plural, one {Pliez-le} other {Pliez chacun}} envers contre envers pour que ses deux lignes se rejoignent, épinglez, et piquez dessus tout autour : {depth} de profondeur. Les longs points se retirent facilement.',
    'tucks.press': 'Couchez les plis au fer vers l’ourlet.',
    'lining.sew':
      'Cousez {seams, plural, one {la couture} other {les # coutures}} de la doublure, endroit contre endroit, surfilez les bords et repassez.',
    'lining.open':
      'Laissez sa couture ouverte en haut aussi loin que l’ouverture de la jupe, et rentrez-y ses bords sur l’envers.',
    'lining.hem': 'Relevez son ourlet de {hem} et piquez-le.',
    'lining.inside':
      'Glissez la doublure dans la jupe, envers contre envers, couture sur couture, milieu sur milieu.',
    'lining.baste':
      'Bâtissez son bord du haut à la jupe tout autour, à {starts} sous la pliure de la coulisse.',
    'lining.basteEdge': 'Bâtissez son bord du haut à celui de la jupe tout autour.',
    'lining.pleat':
      'Là où elle est plus large que ce qui la porte, épinglez-la aux quarts et couchez le reste en petits plis réguliers.',
    'lining.hang':
      'La doublure est plus étroite que le haut non froncé. Rentrez son bord du haut, et cousez-la à la main au rentré de la coulisse, seulement aux coutures, au milieu devant et au milieu dos, pour que la jupe s’ouvre encore assez pour s’enfiler.',
    'lining.hangSeam':
      'La doublure est plus étroite que le haut non froncé. Rentrez son bord du haut, et cousez-la à la main à la marge de couture du haut, seulement aux coutures, au milieu devant et au milieu dos, pour que la jupe s’ouvre encore assez pour s’enfiler.',
    'chalkRows.fromTier':
      'Sur un volant qui n’est pas celui du bas, mesurez à partir du bord vif inférieur de ce volant : sa marge de couture est comptée dans les chiffres.',
    'cutRibbon.edge':
      'Coupez {rows, plural, one {une longueur} other {une longueur pour chacun des # rangs}} d’après la liste de coupe ; chacune va d’un bord libre à l’autre.',
    'applique.stitchFlat': 'Piquez tout autour tant que c’est encore à plat.',
    'seamRows.chalk':
      'Tracez une ligne à {below} sous la couture du volant, tout autour : c’est le bord INFÉRIEUR du ruban qui la couvre{rows, plural, one {} other {, à chacune des # coutures}}.',
    'seamRows.each':
      'Rang {row} : tracez sa ligne à {below} sous la couture de son volant, tout autour : c’est le bord INFÉRIEUR du ruban.',
    'seamRows.lay': 'Posez le ruban par-dessus la couture, le bord inférieur sur la ligne.',
    'seamRows.lap':
      'La jupe est déjà fermée en rond : commencez à une couture au dos, laissez {overhang} libres, et à la fin rentrez le ruban et posez-le sur son début.',
    'seamRows.meet':
      'Les bandes du volant sont déjà jointes : rentrez les deux bouts de chaque ruban pour qu’ils se touchent aux coutures.',
    'seamRows.stitch':
      'Piquez les deux bords dans le même sens, celui du bas d’abord, la marge de couture couchée vers le haut sous le ruban.',
    'firstJoins.round':
      'Cousez {seams, plural, one {une couture} other {# coutures}} avec une marge de couture de {seam} et laissez la dernière ouverte : les rangs font le tour d’une seule longueur.',
    'firstJoins.across':
      'Cousez {seams, plural, one {la couture} other {les # coutures}} avec une marge de couture de {seam} : les rangs vont d’une seule longueur d’un bord libre à l’autre.',
    'firstJoins.strips':
      'Joignez bout à bout les bandes de chaque volant, {seams, plural, one {une couture} other {# coutures}} en tout avec une marge de couture de {seam}, et laissez à chaque volant une couture ouverte : les rangs se posent à plat.',
    'firstJoins.finish':
      'Surfilez ou surjetez chaque bord à part et ouvrez ces coutures au fer dès maintenant : les rubans passeront dessus.',
    'firstJoins.finishAside':
      'Surfilez ou surjetez les bords et couchez ces coutures d’un côté dès maintenant : les rubans passeront dessus.',
    'panelSeams.order':
      'Posez les pièces côte à côte dans leur ordre autour du corps, endroit dessus, et cousez chacune à sa voisine.',
    'panelSeams.match':
      'Endroit contre endroit, faites correspondre et épinglez d’abord chaque rang aux coutures, puis les crans, le haut et l’ourlet.',
    'panelSeams.sew':
      'Cousez {seams, plural, one {la couture} other {les # coutures}} de l’ourlet vers le haut avec une marge de couture de {seam}, et des points d’arrêt aux deux bouts.',
    'joinStrips.match':
      'Endroit contre endroit, faites correspondre et épinglez d’abord chaque rang aux coutures.',
    'joinStrips.sew':
      'Endroit contre endroit, cousez les bouts des bandes en un anneau par volant : {seams, plural, one {# couture} other {# coutures}} avec une marge de couture de {seam}.',
    'seams.pocket':
      'À {bags, plural, one {la poche} other {chacune des # poches}}, cousez jusqu’au bas de l’ouverture, pivotez, faites le tour du fond jusqu’au haut de l’ouverture, et continuez la couture vers le haut : fond et couture sont une seule ligne.',
    'seams.slit':
      'Laissez la couture ouverte pour la fente {where, select, both {aux deux côtés} left {au côté gauche} right {au côté droit} other {au milieu dos}} : commencez-la à {height} au-dessus de la ligne d’ourlet au lieu de l’ourlet, avec un point d’arrêt.',
    'seams.opening':
      'Une couture s’arrête à {below} sous la ligne où la taille se coud, avec un point d’arrêt, {where, select, back {au milieu dos} right {au côté droit} other {au côté gauche}}. La jupe s’ouvre là.',
    'finishEdges.overlockApart': 'Surjetez chaque bord de couture à part, sans rien couper.',
    'finishEdges.zigzagApart':
      'Surfilez chaque bord de couture à part au point zigzag, l’aiguille tombant à droite juste hors du bord.',
    'finishEdges.pressOpen': 'Ouvrez les coutures au fer.',
    'finishEdges.pressAside': 'Couchez toutes les coutures du même côté, au fer.',
    'gather.quarters':
      'Marquez les quarts sur les deux bords qui se rencontreront : milieu devant, les deux côtés, milieu dos.',
    'gather.tiers':
      'Le long du haut {tiers, plural, one {du volant} other {de chacun des # volants}} sous le premier, cousez deux rangs de longs points dans la marge de couture.',
    'gather.top':
      'Le long du bord du haut de la jupe, cousez deux rangs de longs points dans la marge de couture.',
    'gather.topFront':
      'Le long du bord du haut du devant, d’un côté à l’autre, cousez deux rangs de longs points dans la marge de couture.',
    'gather.tails':
      'Commencez et finissez à chaque quart, sans point d’arrêt, et laissez de longs fils : ceux d’un tour entier cassent.',
    'sewTiers.order':
      'Commencez par le haut : {seams, plural, one {accrochez le volant du bas à celui du haut} other {accrochez chaque volant à celui du dessus, # coutures en tout}}.',
    'sewTiers.pin': 'Endroit contre endroit, épinglez quart sur quart.',
    'sewTiers.draw':
      'Tirez les fils de canette de chaque quart jusqu’à la longueur du bord du dessus, répartissez les fronces également et épinglez.',
    'sewTiers.ease': 'Les bords sont presque pareils : soutenez le plus long entre les épingles.',
    'sewTiers.sew':
      'Cousez les fronces au-dessus avec une marge de couture de {seam} ; retirez les longs points qui se voient.',
    'sewTiers.finish': 'Surfilez les deux bords ensemble au point zigzag.',
    'sewTiers.overlock': 'Surjetez les deux bords ensemble, sans rien couper.',
    'sewTiers.press': 'Couchez la couture vers le haut, la pointe du fer dans les fronces et non dessus.',
    'faceEdges.rows':
      'Les bouts des rubans se rentrent avec le bord libre : coupez-les d’abord au ras de ce bord.',
    'faceEdges.turn':
      'Rentrez le bord vif, puis chaque bord libre vers l’intérieur sur sa ligne, {facing} de profondeur ; repassez et épinglez.',
    'faceEdges.stitch': 'Piquez au ras du pli intérieur, du bord du haut au bord de l’ourlet.',
    'casing.stitchSeam':
      'Piquez tout le tour au ras du pli du bas, et laissez {opening} d’ouverture à une couture pour l’élastique.',
    'casing.stitchClosed':
      'Piquez tout le tour au ras du pli du bas, sans rien laisser ouvert : le cordon sort par ses trous.',
    'casing.lining': 'Le bord du haut de la doublure est sous la coulisse et se prend dans cette piqûre.',
    'threadElastic.back':
      'Passez-le dans le dos de la ceinture seulement, avec une épingle de sûreté, et épinglez ses bouts dans les coutures de côté de la ceinture.',
    'closeElastic.evenQuarters':
      'Répartissez les fronces également le long de l’élastique épinglé, un quart de la jupe à chaque quart d’élastique, avant de le fermer.',
    'closeElastic.evenBack': 'Répartissez les fronces du dos également le long de l’élastique.',
    'closeElastic.sides':
      'Piquez de haut en bas à travers ceinture et élastique dans les deux coutures de côté, en aller-retour, pour que les bouts tiennent.',
    'closeElastic.gaps': 'Fermez les ouvertures à l’intérieur de la ceinture.',
    'casingStrip.join':
      'Endroit contre endroit, fermez la bande de coulisse en anneau ({joins, plural, one {# couture} other {# coutures}}) et ouvrez au fer.',
    'casingStrip.pin':
      'Marquez les quarts de l’anneau et de la jupe, et épinglez-les endroit contre endroit, une couture de la bande au milieu dos ou à une couture.',
    'casingStrip.sew':
      'Cousez-la au bord du haut tout autour avec une marge de couture de {seam} et couchez la couture vers le haut, dans la bande.',
    'casingStrip.fold':
      'Rentrez son bord vif et rabattez-la vers l’intérieur, {height} de haut, le pli couvrant juste la couture ; repassez et épinglez.',
    'casingStrip.stitch':
      'Sur l’endroit, piquez dans le creux de la couture tout autour, et laissez {opening} d’ouverture pour l’élastique.',
    'ties.make':
      'Faites {ties, plural, one {# lien} other {# liens}} : joignez les morceaux là où le plan de coupe en a plusieurs pour un lien, pliez-le dans la longueur, endroit contre endroit, cousez le long bord et un bout, dégagez les coins, retournez et repassez.',
    'ties.corner':
      'Cousez le bout vif d’un lien à chaque coin du haut de la jupe quand le bord du haut se fait.',
    'bandPrepare.join':
      'Joignez bout à bout les morceaux de la ceinture ({joins, plural, one {# couture} other {# coutures}}) et ouvrez les coutures au fer.',
    'bandPrepare.stiffen':
      'Thermocollez l’entoilage sur l’envers de la ceinture : pressez et levez le fer, sans glisser.',
    'bandPrepare.stiffenFront':
      'Thermocollez l’entoilage sur l’envers du devant de la ceinture seulement : pressez et levez le fer, sans glisser.',
    'bandPrepare.ring':
      'Endroit contre endroit, joignez le devant de la ceinture à son dos aux deux côtés, en anneau ; dans la moitié intérieure de chaque couture de côté, laissez une ouverture large comme l’élastique.',
    'bandPrepare.press':
      'Pliez la ceinture dans la longueur, envers contre envers, et marquez le pli au fer ; rentrez au fer la marge d’un des longs bords.',
    'bandPrepare.mark': 'Marquez son milieu et ses quarts.',
    'band.draw':
      'Tirez les longs points jusqu’à ce que le bord du haut ait la longueur de la ceinture entre ses repères ; répartissez les fronces également.',
    'band.drawFront':
      'Tirez les longs points jusqu’à ce que le devant ait la longueur du devant de la ceinture ; répartissez les fronces également.',
    'band.drawStretched':
      'Tirez les longs points jusqu’à ce que le bord du haut ait la longueur que la bande étirée peut avoir ; répartissez les fronces également.',
    'band.pin':
      'Endroit contre endroit, épinglez le bord non rentré de la ceinture au haut, quart sur quart ; les {overlap} de croisement dépassent d’un bord de l’ouverture.',
    'band.pinWrap':
      'Endroit contre endroit, épinglez le bord non rentré de la ceinture au haut, d’un bord libre à l’autre, quart sur quart.',
    'band.pinSides':
      'Endroit contre endroit, épinglez le bord non rentré de la ceinture au haut : couture de côté sur côté, milieu sur milieu.',
    'band.sew':
      'Cousez avec une marge de couture de {seam} et couchez la couture vers le haut, dans la ceinture.',
    'band.ties':
      'Glissez le bout vif d’un lien dans chaque bout de la ceinture, et laissez dans la ceinture, à la couture du côté droit de celle qui la porte, une ouverture large comme un lien : le lien du dessous sort là.',
    'band.ends':
      'Pliez chaque bout de la ceinture endroit contre endroit, cousez-le en travers, dégagez le coin et retournez-le.',
    'band.fold':
      'Rabattez la ceinture vers l’intérieur, {height} de haut, le bord rentré couvrant juste la couture, et piquez dans le creux de la couture ou cousez à la main.',
    'band.foldBack':
      'Rabattez la ceinture vers l’intérieur, {height} de haut, le bord rentré couvrant juste la couture, et piquez dans le creux de la couture tout autour.',
    'band.ring':
      'Endroit contre endroit, joignez les bouts de la bande extensible en anneau ({joins, plural, one {# couture} other {# coutures}}).',
    'band.doubled':
      'Pliez-la au milieu, envers contre envers, {height} de haut : les deux bords vifs se cousent comme un seul.',
    'band.quarters':
      'Marquez les quarts de la bande et du haut, et épinglez-les endroit contre endroit, quart sur quart.',
    'band.stretch':
      'Cousez la bande au-dessus, avec une marge de couture de {seam}, au zigzag étroit, en étirant la bande d’une épingle à l’autre jusqu’à ce qu’elle soit à plat sur la jupe ; ne tirez jamais la jupe.',
    'band.tryOn':
      'Épinglez l’ourlet sur sa ligne et essayez la jupe avant de le piquer : elle doit s’enfiler, tenir, et tomber à {length} de long.',
    'cordEyelets.mark':
      'Avant de rabattre la coulisse, marquez {holes, plural, one {# trou} other {# trous}} pour le cordon près du milieu devant, à {aside} de lui et {down} sous la ligne de pliure de la coulisse.',
    'cordEyelets.stiffen': 'Thermocollez un bout d’entoilage derrière chaque trou.',
    'cordEyelets.sew':
      'Cousez une petite boutonnière, ou posez un œillet, où passe un cordon de {width} ; dans l’épaisseur extérieure seulement.',
    'threadCord.cut': 'Coupez {cut} de cordon de {width} de large.',
    'threadCord.thread': 'Entrez-le par un trou et sortez-le par l’autre avec une épingle de sûreté.',
    'threadCord.ends':
      'Égalisez les bouts : la jupe à plat, {free} pendent libres à chacun. Nouez-les, ou rentrez-les et cousez, pour qu’ils ne glissent pas dedans.',
    'threadCord.catch':
      'Piquez à travers coulisse et cordon au milieu dos, en aller-retour : le cordon ne peut pas être tiré d’un côté.',
    'threadCord.tryOn':
      'Épinglez l’ourlet sur sa ligne et essayez la jupe : ouverte elle doit passer les hanches, nouée elle doit tenir, et tomber à {length} de long.',
    'fasten.buttonhole':
      'Cousez {holes, plural, one {la boutonnière} other {# boutonnières}} au bout qui vient dessus, {holes, plural, one {longue} other {longues}} comme le bouton est large et épais ; mettez une épingle en travers {holes, plural, one {de son bout avant de la fendre} other {du bout de chacune avant de les fendre}}.',
    'fasten.buttonholeEach':
      'Cousez une boutonnière à chaque bout de la ceinture ({holes} en tout), longue comme son bouton est large et épais ; mettez une épingle en travers du bout de chacune avant de la fendre.',
    'fasten.button':
      'Fermez la jupe comme elle sera portée, marquez à travers la boutonnière et cousez {buttons, plural, one {le bouton} other {# boutons}}.',
    'darts.mark':
      'Marquez {darts, plural, one {# pince} other {# pinces}} à la ligne où la taille se coud, {darts, plural, one {au milieu dos} =2 {les deux au dos, à mi-chemin entre son milieu et les côtés} other {à mi-chemin entre les milieux et les côtés, devant comme dos}} : {width} de large en haut et {length} de long.',
    'darts.markFront':
      'Marquez {darts, plural, one {# pince} other {# pinces}} au devant, à la ligne où la taille se coud, autant de chaque côté du milieu, à égale distance : {width} de large en haut et {length} de long.',
    'darts.sew':
      'Pliez chaque pince endroit contre endroit et cousez du bout large à la pointe ; sortez sur le pli, sans point d’arrêt, et nouez les fils.',
    'darts.press': 'Couchez les pinces vers le milieu, au fer.',
    'opening.zipBaste':
      'Fermez la couture ouverte à longs points sur {below} sous la ligne où la taille se coud, et ouvrez ses marges au fer.',
    'opening.zipLay':
      'Posez la fermeture à glissière face dessous sur les marges, les dents sur la couture, le curseur sous la ligne où la ceinture se coudra ; épinglez et bâtissez.',
    'opening.zipStitch':
      'Au pied à fermeture, piquez d’un côté, en travers sous l’arrêt, et remontez de l’autre ; retirez les longs points et essayez le curseur.',
    'opening.placketOpen':
      'Crantez les marges au bout de l’ouverture, {below} sous la ligne où la taille se coud, pour que les deux bords fassent une seule ligne.',
    'opening.placketBind':
      'Endroit contre endroit, cousez la patte de fente le long des deux bords d’une seule traite ; rentrez son autre bord, rabattez-la et piquez.',
    'opening.placketFold':
      'Repliez la patte dessous du côté qui vient dessus, laissez-la sortie de l’autre, et piquez en travers de son bout inférieur.',
    'mark.freeEdges':
      'Un devant qui finit en bord libre n’est pas pareil des deux côtés : son bord libre se rentre de {facing}, et il est du côté que montre le dessin. La gauche et la droite sont en miroir.',
    'cut.topsApart':
      'Des panneaux coupés ensemble diffèrent en haut : coupez d’abord toutes les épaisseurs sur la ligne la plus haute, puis séparez-les et abaissez l’autre panneau seul.',
    'cut.halvesApart':
      'La gauche et la droite diffèrent en haut : coupez d’abord toutes les épaisseurs sur la ligne la plus haute. Ouvrez ensuite chaque panneau, tracez sur chaque moitié sa propre ligne, et égalisez chaque moitié à celle-ci.',
    'opening.widen':
      'La marge de couture ({seam}) est plus étroite que le ruban d’une fermeture : cousez d’abord une bande de ruban de coton à chaque bord vif de l’ouverture, et servez-vous-en comme marge.',
    'fasten.wrap':
      'Essayez la jupe, croisez-la comme elle sera portée, et marquez où vient chaque bout de sa ceinture : le bout qui vient dessus se boutonne à l’extérieur, celui qui vient dessous à l’intérieur.',
  },
  cautions: {
    shears:
      'Lames : coupez en vous éloignant du corps, fermez-les quand vous les posez, tendez-les la poignée d’abord. Un couteau rotatif se recouvre chaque fois qu’on le pose.',
    hotIron:
      'Fer chaud : posez-le sur son talon, gardez les doigts loin de la vapeur, débranchez-le quand vous partez.',
    satinIron:
      'Fer : doux pour le satin, toujours sous une pattemouille. Posez-le sur son talon et débranchez-le après usage.',
    needle:
      'Machine : les doigts hors du chemin de l’aiguille ; éteignez-la avant d’enfiler ou de changer l’aiguille.',
    spray:
      'Aérosol : fenêtres ouvertes, ni flamme, ni fer chaud, ni cigarette à proximité ; par petits coups ; loin des enfants. Suivez le mode d’emploi et vos règles locales.',
    flame:
      'Flamme : adultes seulement, rien d’inflammable à côté, de l’eau à portée ; jamais dans la même pièce ni au même moment qu’un aérosol. Le liquide anti-effilochage fait le travail sans feu. Suivez vos règles locales.',
    hotWater: 'Lavez comme le demande l’étiquette de la matière la plus fragile.',
    pins: 'Épingles : ôtez chacune avant que l’aiguille l’atteigne ; comptez-les au départ et au retour ; jamais dans la bouche.',
    overlocker:
      'Surjeteuse : sa lame coupe ce que l’aiguille ne ferait que piquer ; doigts et épingles loin d’elle, et éteignez-la avant de l’enfiler.',
    liquid:
      'Anti-effilochage et colle : aérez la pièce, tenez-les loin de la flamme et du fer chaud jusqu’à ce qu’ils soient secs, et suivez l’étiquette.',
    longHem: 'Ourlet long : relevez-le dans l’escalier, et tenez-vous loin du feu.',
    cord: 'Un cordon sur un vêtement d’enfant peut s’accrocher aux portes, aux jeux et aux roues. Gardez ses bouts libres courts, cousez-le au milieu dos, et choisissez un élastique pour les petits. Suivez vos règles locales.',
    wheels:
      'Portée assise : tenez l’ourlet, les rubans et les liens loin des roues, des freins et des repose-pieds, et essayez en mouvement avant de la porter.',
  },
  items: {
    cloth: 'Tissu',
    lining: 'Tissu de doublure',
    knit: 'Maille extensible',
    interfacing: 'Entoilage thermocollant',
    cord: 'Cordon',
    zip: 'Fermeture à glissière',
    buttons: 'Boutons',
    ribbon: 'Ruban',
    elastic: 'Élastique',
    thread: 'Fil à coudre',
    'overlock thread': 'Fil à surjeteuse',
    needles: 'Aiguilles machine fines et pointues',
    chalk: 'Craie tailleur',
    pins: 'Épingles fines et pinces',
    glue: 'Colle à tissu lavable',
    spray: 'Colle temporaire en aérosol pour tissu',
    sealant: 'Liquide anti-effilochage',
  },
  advice: {
    boltWidth: 'Lisez la laize au bout du rouleau : les laizes varient, et le plan est fait pour celle-ci.',
    cutCrooked: 'Si le bout a été coupé de travers, prenez 10 cm (4 po) de plus.',
    noMore:
      'Ce tissu ne se trouve plus, et à la main ce qu’il y a ne suffit pas\u00a0: cherchez un plan plus serré, ou prenez un autre tissu.',
    washable: 'Ruban lavable à bords tissés : ni armé de fil de fer, ni à bords coupés.',
    dyeLot: 'Tout d’une couleur dans le même bain de teinture : comparez les rouleaux à la lumière du jour.',
    realWidth: 'Vérifiez sa vraie largeur à la règle : les numéros de ruban sont approximatifs.',
    satinNeedle: 'Grosseur 70/10 ou 75/11, pointe aiguë : une aiguille émoussée tire les fils du satin.',
    threadColour:
      'Mettez-le contre le ruban ou le tissu ; un ton plus foncé se voit moins qu’un ton plus clair.',
    liningWashes: 'Lisse, légère, et lavable à la même température que la jupe.',
    knitStretches:
      'Bord-côte ou jersey avec élasthanne : il doit s’étirer de moitié et revenir. La largeur donnée va en travers du tissu, dans le sens où il s’étire.',
    interfacingTry: 'Du même poids que le tissu ; collez-en un bout pour voir s’il tient et ne cloque pas.',
    cordEnds: 'Cordon ou ruban de coton lavable ; ses bouts sont noués ou rentrés.',
    zipShortened: 'Cette longueur ou la suivante : une fermeture se raccourcit par le bas.',
    buttonsFlat: 'Plats et lavables ; la boutonnière se fait à leur mesure, achetez-les d’abord.',
    elasticSoft: 'Étirez-le : il doit revenir, et passer largement les hanches.',
    chalkWashesOut: 'Essayez-la sur une chute : elle doit partir à la brosse ou au lavage.',
    pinsFine: 'De grosses épingles laissent des trous dans le satin ; les pinces n’en laissent pas.',
    glueWashable: 'L’étiquette doit dire qu’elle part au lavage.',
    sprayTemporary: 'L’étiquette doit dire temporaire et pour tissu. Demande une pièce aérée et sans flamme.',
    sealantDries: 'Essayez-le sur un bout de ruban : il doit sécher transparent.',
  },
  errors: {
    'length.empty': 'est vide. Écrivez une longueur avec son unité, comme "28 3/8 po" ou "72,5 cm".',
    'length.notALength':
      'n’est pas une longueur. Écrivez un nombre avec son unité, comme "28 3/8 po" ou "72,5 cm".',
    'length.unknownUnit': 'a une unité inconnue. Les unités sont po, pi, vg, mm, cm, m (ou in, ft, yd).',
    'length.noUnit': 'n’a pas d’unité. Écrivez-la, comme "36 po", ou donnez au document ses "units".',
    'length.thousandsSeparator':
      'a un séparateur de milliers. La virgule et le point sont ici des marques décimales : écrivez 1200, sans séparateur.',
    'length.zeroDenominator': 'divise par zéro. Écrivez une fraction comme 3/8.',
    'length.negative': 'est sous zéro. Une longueur est au-dessus de zéro.',
    'length.notFinite': 'n’est pas un nombre qui se mesure.',
    'length.unitOrder':
      'donne ses unités dans un ordre inhabituel. Les plus grandes viennent d’abord : "1 vg 2 po".',
    lengthRange: 'est hors limites. De {least} à {most} serait juste ; était-ce noté dans une autre unité ?',
    percent: 'n’est pas un pourcentage. Écrivez 5 ou "5 %".',
    percentRange: 'est hors limites. De {least} à {most} % serait juste.',
    colour:
      'n’est pas une couleur connue ici. Écrivez l’une de celles-ci, en anglais : {known} ; ou "#14716f" ; ou un nom à vous avec son "hex".',
    currency: 'n’est pas un code de monnaie. Écrivez trois lettres, comme CAD.',
    price: 'n’est pas un prix. Écrivez 12.50.',
    date: 'n’est pas un jour du calendrier. Écrivez l’année, le mois et le jour : "2026-03-14".',
    gaps: 'a {given, plural, one {# espace} other {# espaces}}. Des rangs espacés à la main en demandent {expected}, un de moins que de groupes de rubans.',
    notJson: 'n’est pas du JSON. La lecture s’est arrêtée à la ligne et à la colonne {where}.',
    tooLarge: 'est beaucoup trop gros ({size} caractères). Une demande en a au plus {most}.',
    notAnObject: 'devrait être un seul objet JSON qui contient un "body".',
    missing: 'manque, et n’a pas de valeur par défaut.',
    wrongType: 'n’est pas de la bonne sorte. Il faudrait : {expected}.',
    unknownKey: 'n’est pas un nom connu ici. Noms connus ici : {known}.',
    notOneOf: 'n’est aucun des choix : {values}.',
    outOfRange: 'est hors limites : {bound, select, least {au moins} other {au plus}} {limit}.',
    tooLong: 'est trop long : au plus {limit} caractères.',
    wrongShape: 'n’a aucune des formes qui conviendraient ici. Voyez le schéma.',
    newerVersion: 'a été écrit par une version plus récente. Celle-ci lit la version {known}.',
  },
  wishes: {
    cut: {
      fullness: 'Ampleur',
      leastFlare: 'Évasement minimal',
      hemFloor: 'Repère d’ourlet minimal des couturières',
      hemAtFold: 'Repère d’ourlet à moi',
      hemline: 'Ligne d’ourlet',
      levelTolerance: 'Écart à l’ourlet qui peut rester',
      widths: 'Lés de tissu',
      wholeWidths: 'Employer des lés entiers',
      gores: 'Pans',
      front: 'Pan devant, pour chaque unité des autres',
      frontHem: 'Ourlet du pan devant, à moi',
      hemRound: 'Tour d’ourlet, à moi',
      tiers: 'Volants',
      ratios: 'Chaque volant, pour chaque unité de celui du dessus',
      shares: 'Hauteurs des volants, les unes par rapport aux autres',
      tierSeam: 'Marge de couture entre volants',
      fraction: 'Quelle part d’un cercle',
      pieces: 'Morceaux',
      overlap: 'Croisement à la taille, à moi',
      facing: 'Bord replié des devants',
      closes: 'Se ferme par',
      tieLength: 'Longueur de chaque lien, à moi',
      tieWidth: 'Largeur des liens',
      flare: 'Ourlet, pour chaque unité du haut',
      sideSeam: 'Marge de couture au côté',
      hem: 'Ourlet',
      hemTurnUnder: 'Rentré compris',
      margin: 'Pour l’équerrage',
    },
    waist: {
      elasticWidth: 'Largeur de l’élastique',
      ease: 'Aisance',
      turnUnder: 'Rentré',
      elasticShare: 'Élastique, pour cent de la taille',
      join: 'Chevauchement pour assembler l’élastique',
      mostStretch: 'Jusqu’où il s’étire, de sa propre longueur',
      seam: 'Marge de couture',
      frontShare: 'Devant plat, pour cent de la taille',
      takeUp: 'Ce qui est trop large est repris par',
      dartLength: 'Longueur d’une pince',
      dartMost: 'Pince la plus large',
      cordWidth: 'Largeur du cordon',
      tieEnd: 'Reste à chaque bout pour nouer',
      leastEnd: 'Visible au moins à plat',
      height: 'Hauteur finie',
      opens: 'S’ouvre par',
      openingDepth: 'Longueur de l’ouverture, à moi',
      overlap: 'Croisement des bouts de la ceinture',
      bandShare: 'Bande, pour cent de la taille',
    },
    pockets: {
      count: 'Nombre de poches',
      side: 'Une seule poche : de quel côté',
      hand: 'Tour des jointures, pouce rentré',
      below: 'Sous la ligne du haut',
      seam: 'Marge de couture à la poche',
      cloth: 'Fonds coupés dans',
    },
    slits: { where: 'Où', height: 'Hauteur, à moi', facing: 'Profondeur de sa parementure' },
    lining: {
      shorter: 'Plus courte que la jupe de',
      fullness: 'Ampleur de la doublure',
      seam: 'Marge de couture de la doublure',
      hem: 'Ourlet de la doublure',
    },
    tucks: {
      how: 'Gardé en',
      count: 'Nombre de plis, à moi',
      depth: 'Profondeur d’un pli, à moi',
      months: 'Pour aller pendant tant de mois',
      letsDown: 'À rallonger, à moi',
      below: 'Premier pli sous la ligne du haut',
    },
    liningCloth: { name: 'Tissu de doublure', width: 'Sa laize', selvage: 'Sa lisière', price: 'Son prix' },
  },
  wishHints: {
    cut: {
      fullness: 'Tissu autour du haut pour chaque unité de la partie la plus large.',
      hemAtFold: 'Vide, il est calculé : assez large pour marcher.',
      hemRound: 'Vide, il est calculé : assez large pour marcher.',
      frontHem: 'Les autres pans se partagent le reste.',
      ratios: 'Un nombre pour chaque volant sous le premier, séparés par des espaces : 1,5 1,5',
      shares: 'Un nombre pour chaque volant, du haut vers le bas, séparés par des espaces : 1 1 1,2',
    },
    pockets: { hand: 'Vide, une main courante à cet âge.' },
    slits: { height: 'Vide, aussi haut qu’un pas le demande.' },
    tucks: { months: 'Compte quand la croissance de l’enfant est donnée dans Corps.' },
  },
  choices: {
    auto: 'selon le calcul',
    straight: 'droite',
    level: 'courbe, de niveau',
    '1/4': 'un quart',
    '1/3': 'un tiers',
    '1/2': 'la moitié',
    '3/4': 'trois quarts',
    full: 'le cercle entier',
    ties: 'des liens',
    buttons: 'des boutons',
    gathers: 'des fronces',
    darts: 'des pinces',
    zip: 'une fermeture à glissière',
    placket: 'une fente à patte',
    left: 'gauche',
    right: 'droite',
    skirt: 'le tissu de la jupe',
    lining: 'la doublure',
    sides: 'les deux côtés',
    'left side': 'côté gauche',
    'right side': 'côté droit',
    back: 'dos',
    tucks: 'plis',
    'deep hem': 'un ourlet profond',
  },
  papers: {
    card: 'Fiche',
    lay: 'Plan de coupe',
    ribbonList: 'Liste de coupe des rubans',
    shoppingList: 'Liste d’achats',
    booklet: 'Livret de couture',
    titleFor: 'Jupe à rubans pour {wearer}',
    titlePlain: 'Jupe à rubans',
    madeOn: 'Fait le {date}',
    pageOf: 'Page {page} sur {pages}',
    markHeading: 'Repères de coupe, tissu plié',
    markHeadingWhole: 'Repères de coupe, une moitié du panneau',
    markCaptionWhole:
      'Mesurez des deux côtés de la ligne du milieu. Les lignes en tirets se tracent à la craie, les lignes en tirets et points se plient plus tard.',
    markCaption:
      'Mesurez à partir du bord aux pliures, qui est le milieu. Les lignes en tirets se tracent à la craie, les lignes en tirets et points se plient plus tard.',
    markCaptionWidths:
      'Lés droits : rien ne se marque à la pliure, sauf les quarts de la taille et de l’ourlet.',
    rowsHeading: 'Rangs de ruban, panneau ouvert, endroit dessus',
    rowsCaption:
      'Les chiffres sont au trait de craie, le bord inférieur de chaque ruban, mesuré à partir du bord vif égalisé.',
    numbersHeading: 'Les chiffres et d’où ils viennent',
    noticesHeading: 'À savoir avant de couper',
    what: 'Quoi',
    value: 'Repère',
    howGot: 'Comment on l’obtient',
    row: 'Rang',
    ribbon: 'Ruban',
    fromRawEdge: 'À partir du bord vif',
    fromHem: 'À partir de l’ourlet',
    cutStrips: 'À couper',
    stripsEach: '{count} × {length}',
    waistMark: 'repère de taille {value}',
    panelWidth: 'moitié du panneau {value}',
    hemMark: 'repère d’ourlet {value}',
    casingEnd: '{value} au bord du haut',
    hemEnd: '{value} au bord égalisé',
    casingFold: 'pliure de la coulisse',
    waistSeam: 'couture de la taille',
    levelLine: 'ligne de craie, à {below}',
    downFromLine: 'mesuré vers le bas à partir de la ligne de craie',
    hemFold: 'pliure de l’ourlet',
    trimHere: 'égaliser ici',
    cutHere: 'couper ici',
    downFromTop: 'mesuré vers le bas à partir du bord du haut',
    twoFolds: 'DEUX PLIURES : le milieu',
    oneFold: 'PLIURE : le milieu',
    centreLine: 'LIGNE DU MILIEU du panneau',
    foldAndEnds: 'UNE PLIURE et DEUX BOUTS COUPÉS : le côté',
    sideEdge: 'le côté',
    topEdge: 'bord du haut',
    rightSideUp: 'endroit dessus',
    rawEdge: 'bord vif égalisé',
    curveHeading: 'Mesurez vers le haut à partir de la ligne',
    curveCaption:
      'Chaque ligne est d’équerre à la pliure : pour la taille à la pliure de la coulisse, pour l’ourlet à sa pliure. À chaque distance du milieu, mesurez vers le haut et faites un point. Les points joints sont les pliures ; coupez {casing} au-dessus de l’une et {beyond} sous l’autre, d’équerre à la courbe.',
    curveCaptionSewn:
      'Chaque ligne est d’équerre à la pliure : pour la taille à sa couture, pour l’ourlet à la pliure de l’ourlet. À chaque distance en travers, mesurez vers le haut et marquez un point. Les points joints sont la couture de la taille et la pliure de l’ourlet ; coupez {casing} au-dessus de l’une et {beyond} sous l’autre, d’équerre à la courbe.',
    nameAtWaist: '{name}, à la taille',
    nameAtHem: '{name}, à l’ourlet',
    shortAbout: 'trop courte vers {date}, en mois',
    letDownAbout: 'à rallonger vers {date}, en mois',
    hemCurve: 'Ourlet, vers le haut',
    waistCurve: 'Taille, vers le haut',
    hemAcross: 'Ourlet, à partir du milieu',
    waistAcross: 'Taille, à partir du milieu',
    measureUp: 'Mesurez vers le haut',
    layHeading: 'Disposez le tissu ainsi : {lay}',
    layCheaper:
      '{why, select, folds {Ses marques se font aux plis\u00a0: c’est pourquoi le tissu est plié en quatre ici.} other {Façon retenue\u00a0: {taken}.}} Autre façon ({lay})\u00a0: {free, select, yes {rien à acheter} other {il faudrait {buy}}}\u00a0; demandez-la dans la demande, sous "cloth", à "lay", ou cherchez un plan plus serré.',
    layHeadingNone: 'Aucune façon ne convient. Dessiné ici ({lay}), pour voir ce qui manque :',
    rowsElsewhere: 'Tous les rangs sont dans la liste de coupe du ruban.',
    swingAlong:
      'point {side, select, on {sur le} within {à {distance} du} other {à {distance} au-delà du}} bout {edge, select, first {gauche} other {droit}},',
    swingAcross:
      '{side, select, on {sur le} within {à {distance} du} other {à {distance} au-delà du}} bord {edge, select, first {supérieur} other {inférieur}}',
    swingCaption:
      'Tenez la ficelle au point. S’il tombe hors du tissu, marquez-le sur la table, ou sur du papier collé au bord.',
    layMore: {
      beside: 'le reste à côté, une épaisseur',
      beyond: 'la suite du tissu, une épaisseur',
      opened: 'le même déplié, une épaisseur',
      another: 'un autre coupon du même tissu',
    },
    otherLays: 'Les façons de disposer le tissu',
    layChosen: 'retenue',
    layFrom: 'dans le coupon{named, select, yes { «\u00a0{name}\u00a0»} other {}}, {length}',
    layDoesNotFit: 'ne tient pas',
    clothAfterWash: 'Tissu après lavage',
    clothBeforeWash: 'Avant lavage',
    toBuy: 'À acheter',
    leftOver: 'Reste d’un seul tenant, en long × en travers',
    leftOverSize: '{along} ×\u00a0{across}',
    printSide: 'un imprimé serait couché',
    printUpright: 'un imprimé serait droit',
    layers: '{layers, plural, one {# épaisseur} other {# épaisseurs}}',
    haveHeading:
      'Avec {have} de tissu avant lavage, disposé de la façon qui en prend le moins, vous pouvez faire',
    haveHeadingOf: 'Dans « {name} », {have} de long et {width} de large, vous pouvez faire',
    haveHeadingPlain: 'Dans le coupon de {have} sur {width}, vous pouvez faire',
    haveLongest: 'la plus longue : {length} finie ({lay})',
    haveFullest: 'la plus ample : {fullness} × la partie la plus large, repère d’ourlet {hem}',
    haveRows:
      'le plus de ruban : {rows, plural, one {# rang trouve} other {# rangs trouvent}} place sur la plus longue',
    haveMany:
      '{count, plural, =0 {pas une seule jupe comme prévu} one {# jupe comme prévu} other {# jupes comme prévu}}',
    haveNothing: 'aucune jupe de cette coupe',
    haveTakes: 'la plus longue prend',
    colour: 'Couleur',
    strip: 'Bande pour',
    length: 'À couper',
    ribbonTotal: 'En tout {total} ; achetez {buy}.',
    cutInOrder: 'La plus longue d’abord. Cochez ce qui est coupé, et épinglez-y le numéro de son rang.',
    need: 'Il faut',
    buy: 'Acheter',
    price: 'Prix',
    total: 'Total',
    unpriced: '{count, plural, one {# article sans prix} other {# articles sans prix}}',
    pieces: '{count}',
    spools: '{count, plural, one {# bobine} other {# bobines}}',
    cones: '{count, plural, one {# cône} other {# cônes}}',
    atTheCounter: 'Au comptoir',
    threadHeading: 'Fil par couleur et par point',
    threadCaption: 'Chaque ruban a son propre fil à l’aiguille ; la canette reste de la couleur du tissu.',
    stitchClass: 'Point',
    seamLength: 'Couture',
    needle: 'Aiguille',
    under: 'Dessous',
    clothColour: 'couleur du tissu',
    clothCalled: '{cloth, select, none {tissu {colour}} other {{cloth} ({colour})}}',
    clothPieces: 'On y coupe : {pieces}.',
    threadCloths:
      '{colour, select, own {Tous les tissus sont cousus dans la couleur de celui de la jupe.} outer {Une couture entre deux tissus est cousue dans la couleur de celui qui est au-dessus ou dehors.} other {Une couture entre deux tissus est cousue dans la couleur du plus foncé, qui se voit moins.}}',
    altWornCloths: 'Coupé dans {called} : {pieces}.',
    overlockThread: 'fil à surjeteuse',
    bookletIntro:
      'Environ {hands} de travail, {wait} d’attente. Les temps sont ceux d’une débutante, sauf demande contraire.',
    drawingsLegend: 'Dans les dessins, l’endroit du tissu est teinté et l’envers est hachuré.',
    timeHands: 'travail {time}',
    timeWait: 'attente {time}',
    timeTotal: '{hands} de travail, {wait} d’attente',
    stitchLength: '{stitch}, longueur {length}',
    stitchWidth: '{stitch}, longueur {length}, largeur {width}',
    teachings: 'Ce qu’on m’a enseigné',
    lead: '{what} :',
    apart: '{one}\u00a0; {other}',
    localRules: 'Là où elles diffèrent, les règles locales passent avant.',
    estimate: '{value} ± {plusMinus}',
    chalkedAs: '{exact}, tracé à {value}',
    hoursMinutes: '{hours} h {minutes} min',
    minutesOnly: '{minutes} min',
    panelWaist: 'haut {whole} · {half} à la pliure',
    panelHem: 'bas {whole} · {half} à la pliure',
    panelAcross: 'largeur {whole} · {half} depuis le milieu',
    panelTrim: '{value} de plus, à égaliser',
    panelCurved: 'courbe, {value} plus haut aux côtés',
    clothFlat: 'Le tissu, ouvert',
    clothFlatWords: 'Étalez {along} de tissu bien à plat, {across} de large, endroit dessus.',
    curveDot: 'à {across}, {up} plus haut',
    clothFirstFold: 'La première pliure',
    clothSecondFold: 'La deuxième pliure',
    clothFolded: 'Plié : quel bord est lequel',
    clothPanels: 'Où se placent les panneaux',
    clothPanelsWords: 'Les panneaux se placent ainsi sur {cloth} de tissu.',
    clothCentre: 'La ligne du milieu de chaque panneau',
    clothStacked: 'Panneaux pliés, pliure sur pliure',
    markWaistTitle: 'Tracez le repère de taille',
    markLengthTitle: 'Tracez la longueur',
    markHemTitle: 'Tracez le repère d’ourlet',
    markJoinTitle: 'Joignez les repères',
    markWidthsTitle: 'Tracez les lés',
    cutOpened: 'Coupé et ouvert',
    grain: 'droit fil',
    altFold:
      'Tissu plié, le milieu à gauche. Repère de taille à {waist} de la pliure, repère d’ourlet à {hem} de la pliure, {length} de haut en bas.',
    altPanel:
      'Panneau ouvert, endroit dessus, avec {rows, plural, one {# rang de ruban} other {# rangs de ruban}}. Traits de craie à partir du bord vif : {list}.',
    altLay:
      'Tissu disposé ainsi : {lay}, {layers, plural, one {# épaisseur} other {# épaisseurs}}, {cloth} de long, avec les pièces dessus.',
    altStep: 'Dessin de l’étape : {title}',
    wornFront: 'La jupe portée, vue de devant',
    wornBack: 'La jupe portée, vue de dos',
    wornSide: 'La jupe portée, vue de côté',
    altWorn: 'Une silhouette simple porte la jupe. Tissu : {cloth}. Longueur finie : {length}.',
    altWornRows:
      '{rows, plural, one {# rang de ruban} other {# rangs de ruban}}, à partir de l’ourlet : {list}.',
    altWornPlain: 'Aucun rang de ruban.',
    altWornHem: 'Ourlet au-dessus du sol : {above}.',
    altWornSeen: {
      seated: 'Elle est portée assise.',
      expecting: 'Elle est portée sur un ventre qui s’arrondit.',
      tiers: '{tiers} volants, chacun cousu à celui du dessus.',
      seams: '{seams, plural, one {# couture} other {# coutures}} de la taille à l’ourlet.',
      wrap: 'Elle croise devant : son bord descend de la taille à l’ourlet du côté gauche de la personne et {closes, select, ties {se noue} other {ferme par deux boutons}}.',
      waist:
        'Taille : {build, select, turned {coulisse repliée dans les panneaux} strip {coulisse rapportée de {above}} band {ceinture de {above}} other {ceinture en maille extensible de {above}}}{pulls, select, round {, avec élastique} back {, plate devant, avec élastique derrière} other {}}.',
      cord: 'Un cordon se noue devant.',
      closure:
        'Elle s’ouvre par {kind, select, zip {une fermeture à glissière} other {une fente à patte}} {place, select, back {derrière} other {du côté gauche de la personne}}.',
      darts: '{darts} pinces sous la ceinture.',
      pockets:
        '{count, plural, one {Une poche dans une couture de côté} other {Des poches dans les coutures de côté}}.',
      slits:
        '{where, select, back {Une fente derrière} sides {Une fente de chaque côté} other {Une fente d’un côté}}, haute de {height}.',
      tucks: '{count, plural, one {# pli de croissance} other {# plis de croissance}} sous la taille.',
    },
    piecesHeading: 'Les pièces à couper',
    piecesCaption:
      'À la même échelle, endroit dessus. Les traits pleins se coupent, les tirets se piquent, les tirets et points se plient, le pointillé est le milieu. Les largeurs vont du milieu au bord vif, des pièces droites d’un bord à l’autre ; la longueur à couper est à gauche ; la flèche donne le droit-fil.',
    piecesCaptionSwung:
      'À l’échelle, endroit dessus. Tenez une ficelle au point et faites-la tourner : le rayon court donne le bord de la taille, le long celui de l’ourlet, valeurs comprises. La flèche donne le droit-fil.',
    partsHeading: 'Les autres pièces',
    piece: 'Pièce',
    pieceToCut: 'Couper',
    pieceMeasures: 'Mesures à couper',
    pieceCut: 'couper {count}',
    pieceCutMirrored: 'couper {count}, dont {mirrored} en miroir',
    clothOf: { skirt: 'tissu de la jupe', lining: 'doublure', knit: 'tricot' },
    tierNumber: 'volant {number}',
    tierStrip: 'volant {tier} · bande {strips}',
    pieceAcross: 'dans ce placement, sa longueur va en travers du tissu, d’une lisière à l’autre',
    pieceDepths: '{above} au-dessus, {length} de long, {below} en dessous',
    pieceHip: 'hanches : à {half} du milieu, {down} sous la ligne du haut',
    pieceCurve: '{edge}, au côté : {up}',
    pieceCurveUnlike: '{edge} : {left} à gauche, {right} à droite',
    pieceUp: '{value} plus haut',
    pieceDown: '{value} plus bas',
    pieceQuarters: 'les quarts se crantent une fois les bandes assemblées',
    pieceNotchesBehind: 'deux crans aux coutures derrière les côtés',
    pieceCentreNotch: 'le cran du milieu sur celui de devant seulement',
    edgeWaist: 'taille',
    edgeHem: 'ourlet',
    edgeTierAbove: 'au volant du dessus',
    edgeTierBelow: 'au volant du dessous',
    edgeSideSeam: 'couture de côté',
    edgeCentreFront: 'couture du milieu devant',
    edgeCentreBack: 'couture du milieu dos',
    edgeSeam: 'couture',
    edgeFacing: 'parementure, rabattue',
    edgeToSkirt: 'à la jupe',
    edgePocket: 'à la couture de côté',
    altPieces: 'Pièces à couper : {list}.',
    curveCaptionPieces:
      'Chaque ligne est d’équerre au milieu. À chaque distance du milieu, mesurez vers le haut et faites un point ; les points joints sont la ligne piquée ou pliée. Le bord vif est au-delà, de sa valeur.',
    rowsHeadingPanels: 'Rangs de ruban, panneaux ouverts, endroit dessus',
    rowOnSeam: 'sur la couture des volants {upper} et {lower}, {below} plus bas qu’elle',
    rowBelowSeam: 'couture − {below}',
    pieceEach: 'Chacune : {notes}.',
    risesHeading: 'La ligne du haut n’est pas droite',
    risesCaption: 'Par rapport à la ligne du haut à niveau, en une courbe douce d’un endroit à l’autre :',
    riseNone: 'à niveau',
    risePlaces: { front: 'milieu devant', back: 'milieu dos', left: 'côté gauche', right: 'côté droit' },
    swingTitle: 'Tracer les arcs',
    swingWords:
      'Tenez un bout de ficelle au coin. Avec {waist} de ficelle, tracez le bord de la taille, avec {hem} celui de l’ourlet. Coupez le long des deux.',
    piecesOpened: 'Les pièces, coupées',
    piecesOpenedWords: 'Coupez chaque pièce autant de fois qu’il est dit, et marquez ses crans.',
  },
  kinds: {
    object: 'un groupe de valeurs nommées',
    array: 'une liste',
    string: 'un texte entre guillemets',
    number: 'un nombre',
    int: 'un nombre entier',
    boolean: 'true ou false',
  },
  workshop: {
    titlePlain: 'Atelier',
    layTitle: 'Plan de coupe',
    classLays: 'Plans de coupe de l’atelier',
    classCards: 'Fiches de l’atelier',
    clothPlain: 'le tissu',
    clothsHeading: 'Ce que prend chaque tissu',
    cloth: 'Tissu',
    skirts: 'Jupes',
    way: 'Posé',
    used: 'Utilisé, avant lavage',
    saved: 'Gagné',
    savedUnknown:
      'Là où l’économie n’est pas dite, il n’y a rien à comparer\u00a0: à la main, personne n’évite les endroits abîmés, ne garde de place pour les ciseaux, ne raccorde un motif à coup sûr ni ne coupe une jupe dans plusieurs coupons.',
    leftOverHeading: 'Reste d’un seul tenant, en long × en travers',
    nothing: 'rien',
    clothHeading: '{cloth} : {lay}',
    clothHeadingNone: '{cloth}\u00a0: aucune façon ne convient',
    tooLittleFor: 'Il n’y a pas assez de tissu pour {skirts}.',
    waysHeading: 'Les façons de le poser, côte à côte',
    asksHeading: 'Ce que chaque façon demande aux mains',
    fromBolt: 'Du rouleau',
    fromLength: 'Du coupon « {name} », {length}',
    fromLengthPlain: 'Du coupon, {length}',
    notCutFrom:
      'Rien n’est coupé dans le coupon{named, select, yes { «\u00a0{name}\u00a0»} other {}}, {length}.',
    lengthPart: '{cloth}, partie {number} sur {parts}',
    openedOut: '{cloth}, déplié une fois coupées les pièces du tissu plié',
    asks: {
      'double fold': 'Plié en quatre : chaque ligne est tracée une fois et coupée dans quatre épaisseurs.',
      'lengthwise fold':
        'Plié une fois dans la longueur : chaque ligne est tracée une fois et coupée dans deux épaisseurs. Bien épingler, l’épaisseur du dessous glisse.',
      'crosswise fold':
        'Plié une fois, bout sur bout : coupé dans deux épaisseurs. Un motif serait à l’envers sur l’une d’elles.',
      open: 'Une épaisseur, endroit dessus : chaque pièce est tracée et coupée à part. Dégagez la grande table.',
    },
    outlines: '{pieces, plural, one {# contour à tracer} other {# contours à tracer}}',
    leastPossible: 'on ne peut gagner plus',
    chalkCaption:
      'Nombres aux bords : la distance en long, à partir du bord de gauche ({left}). Nombres aux coins : la distance en travers, à partir du bord du haut ({top}). Tracez les coins, puis joignez-les ; une courbe se trace d’après le tableau de la pièce, sur la fiche de la jupe.',
    washedCaption: 'Toutes les distances sont sur le tissu lavé.',
    stripesAt:
      'Lignes fines en long\u00a0: une rayure du motif à {at} du bord du haut ({edge}), puis une tous les {step}. Vérifiez qu’il y en a une là.',
    bandsAt:
      'Lignes fines en travers\u00a0: une bande du motif à {at} du bord de gauche ({edge}), puis une tous les {step}. Coupez le bout pour qu’une s’y trouve.',
    foldOnBand: 'La pliure, à droite, suit le milieu d’une bande.',
    stripesFolded:
      'Pliez à {from} de la lisière de l’épaisseur du dessus, {on, select, line {au milieu d’une rayure} other {à mi-chemin entre deux rayures}}{isBeyond, select, yes {\u00a0: la lisière du dessous dépasse de {beyond}} other {, lisière sur lisière}}. Seules des rayures pareilles des deux côtés se plient ainsi\u00a0; coupez les autres sur une seule épaisseur.',
    patternFolded:
      'Pliez de sorte que le motif tombe sur lui-même, et épinglez {pattern, select, stripes {rayure sur rayure} bands {bande sur bande} other {rayure sur rayure et bande sur bande}} à travers les deux épaisseurs avant de tracer et de couper.',
    patternMeets: 'Lu sur ce plan, à la piqûre le motif se raccorde à {off} près {seams}.',
    meetsWhole:
      '{count, plural, one {sur toute la longueur de # couture} other {sur toute la longueur de # coutures}}',
    meetsNotch:
      '{count, plural, one {au cran, sinon à l’ourlet, de # couture} other {au cran, sinon à l’ourlet, de # coutures}} dont les bords n’ont pas la même pente',
    stretch: 'De {from} à {to} en long',
    number: 'Nº',
    whose: 'Pour',
    piece: 'Pièce',
    along: 'En long',
    across: 'En travers',
    corners: 'Coins : en long · en travers',
    range: 'de {from} à {to}',
    corner: '{along} · {across}',
    allRound: 'droite tout autour',
    headDown: 'ourlet d’abord',
    onFold: 'sur la pliure',
    flaw: 'abîmé',
    cutBefore: 'déjà coupé',
    leftOver:
      '{count, plural, one {reste {along} × {across}} other {restent {count} fois {along} × {across}}}',
    leftOverSize: '{count, plural, one {{along} × {across}} other {{count} fois {along} × {across}}}',
    beneath:
      'De l’épaisseur du dessous, une bande le long de sa lisière reste intacte\u00a0: {along} × {across}.',
    uncut: 'Au-delà, {along} × {across} du coupon restent intacts.',
    altChalked: 'Le tissu tel qu’il est posé, les pièces tracées dessus : {pieces}.',
    shelfHeading: 'Avec ce qu’il y a sur l’étagère',
    shelfInOrder:
      '{cloth} : {count, plural, =0 {pas une jupe dans l’ordre de la liste} one {# jupe dans l’ordre de la liste : {skirts}} other {# jupes dans l’ordre de la liste : {skirts}}}',
    shelfMost:
      '{cloth} : {count, plural, =0 {pas une jupe} one {# jupe au plus : {skirts}} other {# jupes au plus, les plus petites d’abord : {skirts}}}',
    shelfLaid: '{cloth}, ce qu’il y a, pour {skirts}\u00a0: {lay}',
    shelfOut:
      '{cloth} : pas de place trouvée pour {skirts}. {fits, select, byEye {À la main, sans ce que demande le tissu, il y en a. Ajoutez un coupon} yes {Achetez ce que disent les plans de coupe, ajoutez un coupon} other {Ajoutez un coupon}}, raccourcissez une jupe ou faites-la moins ample, ou cherchez plus longtemps.',
  },
  command: {
    about: 'D’un corps aux papiers d’une jupe à rubans : quoi tracer, acheter, couper et coudre.',
    plan: 'affiche la fiche d’une demande, avec ses avis',
    papers: 'écrit les papiers en PDF et en SVG',
    lay: 'cherche la façon la plus serrée de poser une jupe, ou toutes les jupes d’un atelier, sur son tissu',
    check: 'affiche les problèmes et les mises en garde d’une demande, rien d’autre',
    example: 'affiche une demande toute prête pour commencer',
    schema: 'affiche le schéma JSON d’une demande, ou du plan',
    requestArgument: 'fichier de la demande, ou - pour l’entrée standard',
    optionJson: 'affiche le plan entier en JSON',
    optionOut: 'dossier où écrire',
    optionPaper: 'format du papier : letter ou a4',
    optionHave: 'longueur de tissu que vous avez, comme "2 m" : dit ce qu’on peut en faire',
    optionLanguage: 'langue des mots : en ou fr',
    optionMeasure: 'mesures affichées : inches (pouces) ou metric (métriques)',
    optionOf: 'quel schéma : request (demande), class (atelier) ou plan',
    optionExampleOf: 'quel exemple : skirt (jupe) ou class (atelier)',
    optionSeconds:
      'combien de temps chercher, en secondes\u00a0; ce qui est trouvé d’ici là dépend de la vitesse de la machine et peut changer d’une fois à l’autre',
    optionPapersSeconds:
      'chercher d’abord des façons plus serrées de poser le tissu, pendant tant de secondes (10 si --seed ou --way est donné)',
    optionSeed: 'où la recherche commence, un nombre entier',
    optionWay: 'ne placer que d’une façon',
    optionLayJson: 'affiche en JSON comment tout est posé',
    optionLayOut: 'dossier où écrire les plans de coupe et les fiches, en PDF et en SVG',
    optionHelp: 'affiche cette aide',
    optionVersion: 'affiche la version',
    helpCommand: 'affiche l’aide d’une commande',
    examples: 'Exemples :',
    usage: 'Utilisation :',
    optionsHeading: 'Options :',
    argumentsHeading: 'Arguments :',
    commandsHeading: 'Commandes :',
    exitCodes:
      'Se termine par 0 quand tout va bien, par 1 quand il y a des problèmes, par 2 quand rien n’a pu se faire.',
    noProblems: 'Aucun problème, aucune mise en garde.',
    cautionsOnly: 'Aucun problème ; {count, plural, one {# mise en garde} other {# mises en garde}}.',
    problemsFound: '{count, plural, one {# problème trouvé} other {# problèmes trouvés}}.',
    writing: 'écriture de {file}',
    wrote: '{count, plural, one {# fichier écrit} other {# fichiers écrits}} dans {folder}',
    cannotRead: 'impossible de lire {file} : {reason}',
    cannotWrite: 'impossible d’écrire {file} : {reason}',
    isDirectory: '{file} est un dossier. Nommez le fichier de la demande.',
    notAFile: 'il n’y a pas de fichier {file}',
    tooBig: '{file} est beaucoup trop gros pour une demande',
    noLength: 'n’est pas une longueur de tissu.',
    badHave: '--have : {value} {reason}',
    badNumber: '{name} : {value} n’est pas un nombre de 0 à {most}',
    isClass: '{file} est un atelier : prenez lay, papers ou check, ou donnez le fichier d’une jupe',
    searching: '{seconds} s sur {of} · {cloth}, {lay} · à acheter : {buy}',
    stopped: 'Arrêté. Voici le meilleur trouvé jusque-là.',
    notLookedAt: 'Pas encore cherché, placé à la main\u00a0: {cloths}.',
    unknownCommand: 'commande inconnue : {name}',
    unexpected: 'il est arrivé quelque chose qui n’aurait pas dû arriver : {reason}',
    errorIn: '{path} : {read} {fault}',
    document: 'le document',
    missingArgument: 'il manque le nom du fichier de la demande ; - lit l’entrée standard',
    unknownOption: 'option inconnue : {name}',
    optionNeedsValue: 'l’option {name} demande une valeur',
    tooManyArguments: 'trop d’arguments : une demande à la fois',
    badChoice: '{value} n’est pas un choix de {name} : {values}',
    timeHeading: 'Temps',
  },
  table: {
    tableName: 'Ribbonwright',
    skip: 'Aller à la jupe',
    placesName: 'Lieux',
    partsOfTheJob: 'Parties du travail',
    skirts: 'Jupes',
    people: 'Personnes',
    shelf: 'Étagère',
    workshops: 'Ateliers',
    workshop: 'Atelier',
    start: 'À partir de mes mesures',
    beside: 'Côte à côte',
    arriving: 'Une jupe arrive',
    body: 'Corps',
    cut: 'Coupe',
    ribbons: 'Rubans',
    cloth: 'Tissu',
    supplies: 'Mercerie',
    sew: 'Couture',
    undo: 'Annuler',
    redo: 'Refaire',
    undone: 'Annulé.',
    redone: 'Refait.',
    nothingToUndo: 'Il n’y a rien à annuler.',
    nothingToRedo: 'Il n’y a rien à refaire.',
    settings: 'Réglages',
    language: 'Langue',
    measure: 'Mesurer en',
    inches: 'pouces',
    metric: 'centimètres',
    theme: 'Éclairage',
    themeAuto: 'comme l’appareil',
    themeLight: 'de jour',
    themeDark: 'à la lampe',
    ownPlace: 'Tout reste dans ce navigateur, sur cet appareil. Personne d’autre ne le voit.',
    durableAsking: 'Demande au navigateur de tout garder…',
    durableGranted: 'Le navigateur garde tout jusqu’à ce que vous l’effaciez.',
    durableRefused:
      'Le navigateur n’a pas promis de tout garder\u00a0: quand l’appareil manque de place, il peut effacer. Enregistrez aussi les jupes en fichiers.',
    nothingKept:
      'Ce navigateur ne garde rien\u00a0: quand la page se ferme, tout disparaît. Enregistrez les jupes en fichiers.',
    storeFull:
      'Il n’y a plus de place sur cet appareil\u00a0: le dernier changement n’est pas encore gardé. Il est toujours ici\u00a0: enregistrez la jupe en fichier, ou faites de la place et essayez de nouveau.',
    storeFailed:
      'Le navigateur n’a pas pu garder le dernier changement. Il est toujours ici\u00a0: enregistrez la jupe en fichier, ou essayez de nouveau.',
    saveAsFile: 'Enregistrer en fichier',
    tryAgain: 'Essayer de nouveau',
    newerTable: 'Une version plus récente de cette table est prête.',
    openNewer: 'L’ouvrir',
    needsName: 'demande un nom.',
    hungToo: 'Elle est maintenant accrochée à côté de {name}.',
    noSuchSkirt: 'Cette jupe n’est pas ici. Elle a été retirée, ou elle est sur un autre appareil.',
    unreadable: 'Cette jupe ne peut pas être lue',
    notFetched:
      'Cette partie n’a pas pu être chargée. Connectez-vous une fois, ensuite elle fonctionne hors ligne.',
    how: 'comment\u00a0?',
    typedFault: '«\u00a0{typed}\u00a0» {fault}',
    emptyFault: 'Ce champ {fault}',
    pickColour: 'Choisir une couleur\u00a0:',
    mixColour: 'une couleur à moi',
    handles: 'Ce qui se déplace dans le dessin',
    handleRow: 'rang {number}, depuis l’ourlet',
    handleGap: 'espace sous le rang {number}',
    handleLength: 'longueur finie',
    handleWaistMark: 'repère de taille au pli',
    handleHemMark: 'repère d’ourlet au pli',
    handleCasing: 'hauteur de la coulisse',
    handleHem: 'hauteur de l’ourlet',
    handleTier: 'couture sous le volant {number}, depuis l’ourlet',
    handleOverlap: 'croisure à la taille',
    handleBand: 'hauteur de la ceinture',
    handleOpening: 'profondeur de l’ouverture',
    handleSlit: 'hauteur de la fente',
    handlePocket: 'ouverture de poche, sous la taille',
    handleTuck: 'profondeur d’un pli',
    lookAt: 'Regarder',
    viewFront: 'devant',
    viewBack: 'dos',
    viewSide: 'côté',
    viewFlat: 'panneau à plat',
    viewPieces: 'tous les morceaux',
    viewFolds: 'pli par pli',
    printPicture: 'imprimer ce dessin',
    stageOf: '{stage} sur {stages}',
    before: 'Précédent',
    after: 'Suivant',
    settled: 'réglé',
    settle: 'C’est réglé',
    settleAnd: 'C’est réglé\u00a0: passer à {next}',
    unsettle: 'Pas réglé, finalement',
    noticesHere: '{count, plural, one {chose à savoir} other {choses à savoir}}',
    more: 'Plus',
    whoFor: 'Pour qui',
    namePlaceholder: 'un nom, si vous voulez',
    isExample: 'Cette jupe est un exemple.',
    takeFrom: 'Prendre les mesures de',
    chooseSomebody: 'choisir quelqu’un',
    keepPerson: 'Garder ces mesures dans Personnes',
    personKept: 'Gardé dans Personnes.',
    howWaist:
      'Nouez une ficelle là où sera l’élastique et laissez-la se placer. Mesurez autour, sans serrer, deux doigts dessous.',
    howHip: 'Autour de la partie la plus forte, pieds joints, ruban bien horizontal.',
    howWaistToHem: 'De la ficelle, tout droit sur le côté, jusqu’où sera l’ourlet.',
    howWaistToFloor: 'De la ficelle tout droit jusqu’au sol, avec les chaussures qu’elle portera.',
    howHeight: 'Contre un mur, sans chaussures, un livre à plat sur la tête.',
    howCalf: 'Autour de la partie la plus forte du mollet, debout.',
    howHipDepth: 'Sur le côté, de la ficelle jusqu’à la hauteur où les hanches ont été mesurées.',
    howThigh: 'Autour d’une cuisse, à l’endroit le plus fort, debout.',
    howLevels:
      'De la ficelle tout droit jusqu’au sol, avec les chaussures : au milieu devant, au milieu dos et de chaque côté. N’importe lesquelles suffisent.',
    howLevelFront: 'Au milieu devant, par-dessus le ventre, de la ficelle tout droit jusqu’au sol.',
    howLevelBack: 'Au milieu dos, par-dessus les fesses, de la ficelle tout droit jusqu’au sol.',
    howLevelLeft: 'Du côté gauche, par-dessus la hanche, de la ficelle jusqu’au sol.',
    howLevelRight: 'Du côté droit, par-dessus la hanche, de la ficelle jusqu’au sol.',
    howHalves:
      'À la ligne des hanches, du milieu devant au milieu dos en passant par un côté ; puis par l’autre.',
    howSize: 'Les deux nombres imprimés pour les hanches sur l’étiquette de vêtements qui vont bien.',
    howSeated:
      'Asseyez-vous comme dans la jupe. De la ficelle, le long de la cuisse, par-dessus le genou, jusqu’où sera l’ourlet.',
    howExpecting:
      'Nouez la ficelle là où la taille de la jupe se portera maintenant. Le devant est coupé plus long pour le ventre.',
    levelsHeading: 'Si le devant, le dos ou les côtés diffèrent',
    halvesHeading: 'Si les deux hanches diffèrent',
    halfLeft: 'moitié gauche des hanches',
    halfRight: 'moitié droite des hanches',
    sizeHeading: 'Si les hanches ne peuvent pas être mesurées : la taille sur une étiquette',
    sizeFrom: 'hanches sur l’étiquette, de',
    sizeTo: 'hanches sur l’étiquette, à',
    wears: 'Portée',
    wearsStanding: 'debout, en marchant',
    wearsSeated: 'assise',
    wearsExpecting: 'enceinte',
    skirtName: 'Comment cette jupe s’appelle',
    teachings: 'Enseignements',
    teachingsHint:
      'Une place libre pour ce que vous avez appris. Cela reste avec cette jupe et ne s’imprime que si vous le dites.',
    teachingsPrint: 'L’imprimer aussi',
    moreMeasures: 'Pour vérifier la marche : sol, taille du corps, âge',
    moreLengths: 'Pour vérifier la marche : sol et taille du corps',
    age: 'Âge en années',
    ageHint: 'Pour un enfant, ou quelqu’un qui grandit encore. Vide, on compte une personne adulte.',
    pace: 'Pas',
    paceEasy: 'tranquille',
    paceUsual: 'habituel',
    paceBrisk: 'vif',
    secondTakes: 'Mesuré une seconde fois',
    secondHint: 'Deux mesures qui diffèrent sont signalées.',
    secondOf: '{measure}, seconde mesure',
    walkingHeading: 'Enfiler et marcher',
    cutKind: 'Coupe',
    marksHeading: 'Repères à la craie',
    tapNumber: 'Touchez un nombre pour voir d’où il vient.',
    waistHeading: 'Taille : {waist}',
    waistKind: 'Taille',
    extrasHeading: 'Poches, fentes, doublure, de quoi grandir',
    growthHeading: 'Un enfant qui grandit',
    growthTell: 'Dire comment l’enfant grandit',
    growthReference: 'Référence de croissance',
    growthGirls: 'filles',
    growthBoys: 'garçons',
    growthMonths: 'Âge en mois, le jour des mesures',
    growthDay: 'Mesuré le',
    growthFit: 'Pour aller pendant tant de mois',
    growthShortOn: 'Elle sera trop courte le {date}.',
    growthShort: 'Trop courte quand l’ourlet est remonté de',
    growthHint:
      'Avec la hauteur mesurée ce jour-là, l’outil prévoit quand la jupe sera trop courte (référence d’enfants des États-Unis, de 2 à 20 ans).',
    liningClothHeading: 'Tissu de la doublure',
    edgesHeading: 'Ourlet, coutures et équerrage',
    chalkTo: 'Marquer à la craie au plus près de',
    rowsHeading: 'Rangs, jusqu’à l’ourlet',
    rowName: 'Rang {number}',
    rowColour: 'Couleur du rang {number}',
    rowWidth: 'Largeur',
    rowFromHem: 'Depuis l’ourlet',
    addRow: 'Ajouter un rang',
    repeatRow: 'Un autre pareil au-dessus',
    removeRow: 'L’enlever',
    touchBelow: 'Touche le rang du dessous',
    rowUp: 'Monter',
    rowDown: 'Descendre',
    noRows: 'Pas encore de rubans.',
    spacing: 'Espaces',
    spacingEven: 'égaux',
    spacingGrowing: 'croissants vers le haut',
    spacingShrinking: 'décroissants vers le haut',
    spacingByHand: 'à la main',
    growth: 'Chaque espace sur celui du dessous',
    lowest: 'Rang du bas depuis l’ourlet',
    highest: 'Bord du haut depuis l’ourlet',
    highestHint: 'Vide, les rangs prennent le bas de la jupe.',
    where: 'Où',
    whereBoth: 'devant et dos',
    whereFront: 'devant seulement',
    whereBack: 'dos seulement',
    whereRound: 'tout autour d’une pièce',
    holdHeading: 'Tenir et coudre',
    hold: 'Tenir avec',
    holdPins: 'des épingles',
    holdGlue: 'de la colle lavable',
    holdSpray: 'de la colle en aérosol',
    ends: 'Bouts coupés',
    endsSealant: 'produit d’arrêt',
    endsFlame: 'flamme (adultes seulement)',
    endsNone: 'tels quels',
    overhang: 'En plus à chaque bout',
    ribbonWashed: 'Le ruban est lavé, ou ne change pas',
    ribbonTotals: 'Ruban en tout',
    fromShelf: 'De l’étagère',
    chooseFromShelf: 'choisir',
    nothingOnShelf: 'Rien sur l’étagère pour l’instant.',
    clothColour: 'Couleur du tissu',
    clothName: 'Comment il s’appelle',
    otherCloths: 'Autres tissus de cette jupe',
    otherClothsAbout:
      'Des volants, des panneaux, une ceinture ou d’autres pièces peuvent se couper dans un tissu à eux.',
    otherClothAdd: 'Couper quelque chose dans un autre tissu',
    otherClothAway: 'Enlever ce tissu',
    otherClothPieces: 'On y coupe',
    clothWidth: 'Laize',
    clothWeight: 'En main',
    clothWashed: 'Il a été lavé',
    shrinkLength: 'Retrait au lavage, en longueur, pour cent',
    shrinkWidth: 'Retrait au lavage, en largeur, pour cent',
    shrinkHint: '5\u00a0% si vous ne savez pas. Mieux\u00a0: lavez un carré et mesurez-le.',
    oneWay: 'L’imprimé a un sens',
    selvage: 'Lisière à laisser',
    shopStep: 'Le magasin coupe à',
    shopLeast: 'Le magasin coupe au moins',
    choosePhoto: 'Prendre ou choisir une photo',
    photoHint:
      'Elle remplit les dessins sur cet appareil seulement\u00a0; elle ne fait pas partie du fichier de la jupe.',
    removePhoto: 'Retirer la photo',
    photoColour: 'Prendre la couleur de la photo',
    photoBad: 'Ce n’est pas une image que le navigateur peut lire.',
    layHeading: 'Façons de le placer',
    layTaken: 'retenue',
    layTake: 'Le placer ainsi',
    layCheaper:
      '{why, select, folds {Ses marques se font aux plis\u00a0: c’est pourquoi il est plié en quatre. Autre} other {Autre}} façon ({lay})\u00a0: {free, select, yes {rien à acheter} other {il faudrait {buy}}}.',
    layAuto: 'Choix automatique',
    layTooSmall: 'ne tient pas',
    layBuy: 'À acheter',
    layHeadToTail: 'Les panneaux sont placés tête-bêche.',
    layUses: 'utilise {used}',
    layView: 'Façon de montrer le tissu',
    layWhole: 'en entier',
    layChalk: 'mesures à tracer',
    closerHeading: 'Un plan plus serré',
    closerAbout:
      'Des milliers d’emplacements sont essayés pour chaque pièce. Vous pouvez continuer entre-temps, et arrêter quand vous voulez.',
    closerLook: 'Chercher un plan plus serré',
    closerMore: 'Chercher encore',
    lookFor: 'Pendant combien de temps',
    lookShort: '20\u00a0secondes',
    lookMiddle: '1\u00a0minute',
    lookLong: '5\u00a0minutes',
    lookSpent: 'Recherche en cours\u00a0: {spent} sur {of} secondes.',
    lookPlace: '{cloth}, {lay}',
    lookStop: 'Arrêter, avec le meilleur plan trouvé',
    lookBest:
      '{lay}\u00a0: utilise {used}, à acheter {buy}{isCompared, select, yes {\u00a0; économie par rapport au plan fait à la main\u00a0: {saved}} other {}}.',
    lookProven: 'On ne peut rien économiser de plus.',
    lookBetter:
      'Un plan plus serré est trouvé{some, select, yes {, pour\u00a0: {cloths}} other {}}\u00a0; il est dessiné ici et gardé.',
    lookMinded:
      'Un plan est trouvé qui tient compte du motif, de la place et des endroits abîmés{some, select, yes {, pour\u00a0: {cloths}} other {}}\u00a0; il est dessiné ici et gardé.',
    lookNothing: 'Rien de plus serré n’a été trouvé que la meilleure des façons faites à la main.',
    lookFailed: 'La recherche s’est interrompue. Essayez encore.',
    closerUsed: 'Vous coupez selon le plan serré.',
    closerByHand: 'Vous coupez selon le plan fait à la main.',
    closerUse: 'Prendre le plan serré',
    closerHand: 'Revenir au plan fait à la main',
    closerStale: 'La jupe a changé\u00a0: le plan serré trouvé pour elle ne vaut plus.',
    closerForget: 'L’oublier',
    piecesInWords: 'Les pièces en mots',
    leftToShelf: 'Ranger le reste sur l’étagère',
    leftOnShelf: 'Le reste est sur l’étagère.',
    leftCalled: 'reste de {name}',
    remnantsHeading: 'Coupons à portée de main',
    remnantsAbout:
      'Les coupons de ce tissu que vous avez. Le premier sert d’abord, puis le suivant\u00a0; le reste vient du rouleau. Le plan serré en tient compte.',
    remnantsOnShelf: 'Sur l’étagère, le plus ancien d’abord. Touchez ce qui doit servir\u00a0:',
    haveAsk: 'Que faire de',
    clothLong: '{length} de long',
    clothWide: '{width} de large',
    haveAbout:
      'Ce que permet chaque longueur à portée de main, le reste comme prévu ; sur l’étagère, la plus ancienne d’abord. Touchez-en une :',
    remnantTake: 'Couper dans',
    remnantNumber: 'Coupon {number}',
    remnantAway: 'Ne pas l’utiliser',
    remnantName: 'Son nom',
    remnantLength: 'Sa longueur',
    remnantWidth: 'Sa largeur',
    remnantWashed: 'Il est déjà lavé',
    remnantAdd: 'Ajouter un coupon',
    boltToo: 'On peut aussi couper du rouleau',
    flawNumber: 'Endroit abîmé {number}',
    flawAdd: 'Ajouter un endroit abîmé',
    flawAway: 'L’enlever',
    flawAlong: 'Depuis le début',
    flawAcross: 'Depuis le bord',
    flawLength: 'Longueur',
    flawWidth: 'Largeur',
    patternHeading: 'Rayures, carreaux, place pour les ciseaux',
    patternHas: 'Le tissu a des rayures ou un raccord',
    patternAcross: 'Raccord en largeur',
    patternAcrossHint: 'D’une rayure à la suivante dans la largeur. Laissez vide si rien ne se répète.',
    patternAlong: 'Raccord en longueur',
    patternAlongHint: 'D’une bande à la suivante dans la longueur. Laissez vide si rien ne se répète.',
    patternFromEdge: 'Première rayure, depuis le bord',
    patternFromStart: 'Première bande, depuis le début',
    patternMatch: 'Les motifs doivent se suivre aux coutures de côté',
    scissorsRoom: 'Espace entre les pièces',
    scissorsHint: 'Pour les ciseaux. Sans espace, une seule coupe sépare deux pièces.',
    workshopsHint:
      'Plusieurs jupes placées d’un coup sur leurs tissus. Ouvrez le fichier d’un atelier, ou composez-en un avec les jupes qui sont ici.',
    classOpen: 'Ouvrir le fichier d’un atelier',
    classExample: 'Un exemple',
    classSkirts: '{count, plural, one {# jupe} other {# jupes}}',
    classTake: 'L’enlever',
    classTaken: '{name} a été enlevé.',
    noClasses: 'Pas encore d’atelier.',
    noSuchClass: 'Cet atelier n’est pas ici.',
    classFromSkirts: 'Avec les jupes qui sont ici',
    classFromHint: 'Les jupes d’un même tissu y sont placées ensemble.',
    classMake: 'Les placer ensemble',
    className: 'Nom de l’atelier',
    classLay: 'Les placer toutes',
    classLayAbout:
      'Chaque tissu est déjà placé à la main, jupe après jupe. Chercher plus longtemps les rapproche.',
    classLayAll: 'Les placer toutes d’un coup',
    classStale: 'L’atelier a changé\u00a0: le plan serré trouvé pour lui ne vaut plus.',
    standOutHint: 'Touchez un nom\u00a0: ses pièces ressortent dans les dessins.',
    washHeading: 'Lavage et magasin',
    inBasket: 'Dans le panier',
    inBasketCount: '{count} sur {all} dans le panier',
    printList: 'imprimer cette liste',
    haveJump: 'Il en reste trop peu\u00a0?',
    haveQuestion: 'Il ne reste que cette longueur de tissu\u00a0:',
    haveHint: 'Mètres ou verges, comme 1,6\u00a0m ou 1 3/4\u00a0vg. Ce qu’on peut en faire est dit aussitôt.',
    haveTake: 'Compter avec {have}',
    haveTaken: 'La jupe est prévue avec {have} de tissu.',
    haveForget: 'Compter comme s’il y en avait assez',
    pricesHeading: 'Prix',
    priceYard: '{what}\u00a0: prix de la verge',
    priceMetre: '{what}\u00a0: prix du mètre',
    threadOf: 'Une couture entre deux tissus est cousue dans la couleur',
    threadOfChoices: {
      darker: 'du plus foncé',
      outer: 'de celui du dessus ou du dehors',
      own: 'du tissu de la jupe, comme tout le reste',
    },
    priceSpool: '{what}\u00a0: prix d’une bobine',
    priceCone: '{what}\u00a0: prix d’un cône',
    priceEach: '{what}\u00a0: prix',
    currency: 'Monnaie',
    currencyHint: 'Ses trois lettres, comme CAD, USD ou EUR.',
    papersHeading: 'Papiers',
    papersHint: 'Des fichiers PDF à imprimer ou à garder. Ils sont faits sur cet appareil.',
    makePaper: 'En faire un PDF\u00a0: {paper}',
    makePapers: '{count, plural, one {Faire # papier} other {Faire # papiers}}',
    makingPapers: 'En cours\u00a0: {paper}. {made} sur {of}.',
    stopPapers: 'Arrêter',
    papersMade: 'C’est fait. Si votre navigateur ne les a pas tous enregistrés, enregistrez-les ici\u00a0:',
    papersFailed:
      'Les papiers n’ont pas pu être faits. Essayez de nouveau\u00a0; sinon, imprimez cette page.',
    stepOf: 'Étape {step} sur {steps}',
    wholeTime: 'En tout\u00a0: {time}',
    stepDone: 'C’est fait\u00a0: à la suivante',
    stepIsDone: 'C’est fait',
    stepNotDone: 'Pas fait, finalement',
    stepSaid: '{position}\u00a0: {title}',
    allSteps: 'Toutes les étapes\u00a0: {done} sur {steps} faites',
    stepNumbers: 'Les nombres de cette étape',
    setMachine: 'Réglage de la machine',
    printStep: 'imprimer cette étape',
    timers: 'Minuteries',
    timerStart: 'Lancer une minuterie\u00a0: {time}',
    timerLeft: 'Temps restant\u00a0: {step}',
    timerUntil: 'jusqu’à {time}',
    timerStop: 'Arrêter la minuterie',
    timerOver: '{step}\u00a0: l’attente est finie.',
    timerClear: 'Ranger la minuterie',
    keepAwake: 'Garder l’écran allumé',
    awakeNever: 'Ce navigateur ne peut pas garder l’écran allumé\u00a0: réglez-le dans votre appareil.',
    awakeRefused: 'L’appareil ne l’a pas permis\u00a0: l’écran peut s’éteindre.',
    finishedHeading: 'Elle est finie',
    finishedText: 'Toutes les pages sont tournées. Revoyez les étapes qui ne sont pas cochées, s’il y en a.',
    finishedAll: 'Toutes les étapes sont cochées.',
    notes: 'Ce qu’elle mesure une fois finie, et ce qu’il faut changer la prochaine fois',
    notesHint: 'Gardé avec cette jupe, sur cet appareil.',
    startHint: 'Trois mesures, et les premiers repères à la craie sont là.',
    toTheMarks: 'Aux repères à la craie',
    stillMissing: 'Il manque quelque chose ou c’est illisible : voir ci-dessus.',
    tapePicture: 'Où mesurer : 1 autour de la taille, 2 autour des hanches, 3 de la taille à l’ourlet',
    skirtCalled: 'Nom',
    hemRoundName: 'Tour de l’ourlet',
    rowsOfRibbon: 'Rangs de ruban',
    clothToBuy: 'Tissu à acheter',
    costInAll: 'Coût en tout',
    broughtBack: 'C’est revenu.',
    bringBack: 'Le ramener',
    anExample: 'Un exemple',
    bringInHeading: 'Faire entrer une jupe',
    bringInHint:
      'Le fichier d’une jupe, ou une photo de son code. On peut aussi déposer des fichiers sur cette page.',
    bringInFile: 'Choisir un fichier',
    bringInCode: 'Prendre ou choisir une photo d’un code',
    broughtIn: '{name} est ici.',
    pastedText: 'ce qui a été collé',
    notBroughtIn: '{name} n’est pas entré ; rien n’a changé ici :',
    codeNotFound: 'Aucun code de jupe sur cette image. Tenez-la droite et près, en bonne lumière.',
    openSkirt: 'La mettre sur la table',
    copySkirt: 'En faire une pareille',
    copyOf: '{name}, une autre',
    keepVersionOf: 'Garder comme version',
    versionName: 'Nom de cette version',
    versionHint: 'Elle reste comme elle est ; vous continuez avec l’autre.',
    versionIs: 'cette version : {version}',
    putBeside: 'La mettre à côté d’une autre',
    takeSkirtAway: 'L’enlever de la corde',
    skirtTaken: '{name} a été enlevée de la corde.',
    showCode: 'La montrer comme code',
    codeHint:
      'Photographiez-le avec un autre de vos appareils : la jupe y apparaît. Qui le photographie a aussi les mesures.',
    codeTitle: 'Code de {name}',
    codeTooLong: 'Cette jupe est trop grande pour un code : déplacez-la en fichier.',
    touchedOn: 'touchée {day}',
    lineIsEmpty: 'Aucune jupe n’est accrochée ici.',
    personalHint:
      'Les mesures sont personnelles : elles restent dans ce navigateur et ne sont dans aucun fichier sauf ceux que vous enregistrez.',
    addPerson: 'Ajouter quelqu’un',
    personName: 'Prénom ou nom',
    personNote: 'Note à garder',
    savePerson: 'Garder ces mesures-là',
    changePerson: 'Modifier',
    takePersonAway: 'Retirer',
    takePersonAndSkirts: 'Retirer avec toutes les jupes faites pour {name}',
    personAndSkirtsTaken: '{name} et toutes les jupes faites à ce nom ont été retirées.',
    personTaken: '{name} a été retirée.',
    skirtForPerson: 'Faire une jupe',
    saveEverybody: 'Enregistrer tout le monde en fichier',
    peopleFile: 'personnes.json',
    nobodyYet: 'Personne pour l’instant.',
    leaveIt: 'Laisser',
    shelfHint: 'Le tissu et le ruban que vous avez. On peut le choisir partout où l’on choisit une couleur.',
    addCloth: 'Ajouter un tissu',
    addRibbon: 'Ajouter un ruban',
    shelfCalled: 'Ce que c’est',
    shelfColour: 'Sa couleur',
    shelfWidth: 'Sa largeur',
    shelfLength: 'Combien il y en a',
    shelfWashed: 'Il est déjà lavé',
    shelfCloths: 'Tissus',
    shelfRibbons: 'Rubans sur l’étagère',
    takeOffShelf: 'L’enlever de l’étagère',
    shelfTaken: '{name} a été enlevé de l’étagère.',
    besideHint: 'Celle-ci ou celle-là ? Les deux sont dessinées à une même échelle.',
    differs: 'En quoi elles diffèrent',
    alike: 'Ce qui est pareil',
    noDifference: 'Elles sont pareilles en tout ce qui est dit ici.',
    compareWith: 'À côté',
    chooseSkirt: 'choisir une jupe',
    arrivingHint: 'Elle n’est pas encore gardée. La garder parmi vos jupes ?',
    keepHere: 'La garder et l’ouvrir',
    arrivedBroken: 'Ce qui est arrivé n’est pas lisible comme jupe ; rien n’a changé ici.',
  },
};
