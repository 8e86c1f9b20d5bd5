import type { Catalogue } from './catalogue.ts';

/** Spaces before : ; ? ! % » and after « are no-break spaces (U+00A0), as are those between a number and its unit. */
export const fr: Catalogue = {
  language: 'Français',
  numbers: { locale: 'fr-CA', inch: 'po', yard: 'vg', centimetre: 'cm', metre: 'm', millimetre: 'mm' },
  figures: {
    'body.waist': 'tour de taille',
    'body.hip': 'tour de hanches',
    'body.waistToHem': 'de la taille à l’ourlet',
    'body.waistToFloor': 'de la taille au sol',
    'body.height': 'stature',
    'body.calf': 'tour de mollet',
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

    'skirt.fullness': 'ampleur',
    'skirt.layers': 'épaisseurs',
    'skirt.leastFlare': 'évasement minimal',
    'skirt.sideSeam': 'marge de couture du côté',
    'skirt.sideSeams': 'bords de couture',
    'skirt.hemAllowance': 'ourlet',
    'skirt.margin': 'pour mettre d’équerre',
    'skirt.finishedLength': ['longueur finie', '{asked} de la taille à l’ourlet'],
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
      'au bord vif',
      'repère {quarter} + {flare} d’évasement × {depth} rabattus ÷ {length} de longueur',
    ],
    'skirt.narrowerEnd': [
      'au bord vif',
      'repère {quarter} − {flare} d’évasement × {depth} rabattus ÷ {length} de longueur',
    ],
    'skirt.cutLength': [
      'longueur à couper',
      '{length} de longueur finie + {casing} de coulisse + {hem} d’ourlet + {margin} pour mettre d’équerre',
    ],
    'skirt.bottom': ['bas sous le bord du haut', '{cut} de longueur à couper + {rise} pour la courbe'],
    'skirt.openingSewn': 'tour du haut, tel que cousu sur un côté très en biais',
    'skirt.hemRoundSewn': 'tour de l’ourlet, tel que cousu sur un côté très en biais',
    'skirt.opening': [
      'tour du haut, de couture à couture',
      '{layers} × {quarter} au repère de taille − {edges} × {seam} de couture',
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
    'skirt.gatheredQuarter': ['repère du quart', '{widths} lés × {cloth} de laize ÷ {layers}'],
    'skirt.trimmedQuarter': ['repère du quart', '({round} de tour + {edges} × {seam} de couture) ÷ {layers}'],
    'skirt.walkWider': [
      'repère d’ourlet qui laisse marcher',
      '({need} pour marcher + {edges} × {seam} de couture) ÷ 4',
    ],
    'skirt.walkShorter': ['plus courte de', '{level} au-dessus du sol − {hemHeight} de l’ourlet au sol'],
    'skirt.walkSlit': 'hauteur de la fente',
    'waist.elastic': 'élastique',
    'waist.elasticEase': 'aisance pour l’élastique',
    'waist.turnUnder': 'rentré',
    'waist.casing': ['coulisse', '{elastic} d’élastique + {ease} d’aisance + {turnUnder} de rentré'],
    'waist.elasticShare': 'part du tour de taille',
    'waist.elasticJoin': 'bouts superposés pour fermer',
    'waist.elasticCut': ['élastique à couper', '{waist} de tour de taille × {share} + {join} pour fermer'],
    'waist.elasticAsked': ['élastique assez long', '{hip} de tour de hanches ÷ {most} + {join} pour fermer'],
    'waist.stretch': [
      'élastique étiré sur les hanches',
      '{hip} de tour de hanches ÷ ({cut} d’élastique − {join} superposés)',
    ],
    'waist.stretchLimit': 'étirement maximal de l’élastique',

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
    'ribbon.clearance': 'à laisser libre sous la coulisse',
    'ribbon.clearTop': 'maximum pour dégager la coulisse',

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
    'cloth.have': 'tissu que vous avez',

    'seams.side': ['une couture de côté', '{sewn} + {casing} de coulisse + {hem} d’ourlet'],
    'seams.round': 'tour de l’ourlet',
    'seams.casingRound': 'tour de la coulisse',
    'seams.edge': 'côté fini',
    'seams.edges': ['en tout', '{count} × {each}'],
    'seams.ribbonEdge': ['à piquer', '{edges} bords × {strips} de bandes'],
    'seams.join': ['fermeture de l’élastique', '{rounds} × {width} d’élastique'],
    'seams.catch': ['arrêt de l’élastique', '{rounds} × {width} d’élastique'],
    'seams.count': 'lignes',
    'seams.rounds': 'passages',
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

    'have.longest': 'la plus longue dans ce tissu',
    'have.fullness': 'la plus ample dans ce tissu',
    'have.count': 'jupes dans ce tissu',
  },
  notices: {
    'body.takesDiffer':
      '{measure} : les deux mesures diffèrent de {difference} ({first} et {second}). {used} sert pour l’instant. Mesurez une troisième fois, mètre ruban bien droit et sans tirer.',
    'body.estimated':
      '{measure} : pas mesuré. Estimation d’après d’autres corps : {estimate}. Mesurez avant de couper.',
    'body.waistToFloorWanted':
      'Chez un enfant, la distance de la taille au sol ne se devine pas d’après la stature. Mesurez-la : de la taille tout droit jusqu’au sol.',
    'body.improbablePair':
      '{firstName} : {first}. {secondName} : {second}. Ces deux mesures vont rarement ensemble. {secondName} : d’habitude environ {expected}, presque toujours entre {least} et {most}. L’une des deux a-t-elle été mal lue, ou notée dans la mauvaise unité ? Si les deux sont justes, continuez.',
    'body.hipBelowWaist':
      'Le tour de hanches ({hip}) est plus petit que le tour de taille ({waist}). Mesurez de nouveau à l’endroit le plus fort des fesses. Si les deux sont justes, continuez : la jupe est coupée pour le plus grand.',
    'body.hemBelowFloor':
      'La jupe serait plus longue ({waistToHem}) que la distance de la taille au sol ({waistToFloor}). Choisissez une longueur plus courte, ou mesurez de nouveau.',
    'body.longHem':
      'L’ourlet tombe à {hemHeight} du sol. Attention dans l’escalier et près d’un feu, ou raccourcissez la jupe.',
    'body.longerThanHeight':
      '{measure} ({length}) : autant que la stature ({height}), ou plus. L’une des deux a été mal lue : mesurez les deux de nouveau.',
    'body.strideNotChecked':
      'Sans la stature ni la distance de la taille au sol, la place pour marcher n’a pas été vérifiée. L’ourlet fait au moins {needed} de tour avant les coutures, comme le veut l’usage. Ajoutez l’une des deux.',
    'body.childStrideNotChecked':
      'Sans la stature de l’enfant, la place pour marcher n’a pas été vérifiée. Ajoutez la stature et la distance de la taille au sol.',
    'body.strideForFloorLength':
      'Sans la distance de la taille au sol de l’enfant, l’ourlet fait {needed} de tour : assez même si la jupe touchait le sol. Ajoutez cette mesure, et il en faudra peut-être moins.',
    'skirt.doesNotGoOn':
      'La jupe ne s’enfile pas : {opening} de tour en haut, et il faut {needed} pour passer les hanches. Choisissez plus d’ampleur.',
    'skirt.hemBelowStride':
      'On ne peut pas marcher avec cet ourlet ({hem} de tour) : un pas demande {needed}. Marquez l’ourlet à {wider}, ou raccourcissez la jupe de {shorter}, ou laissez une fente de {slit}.',
    'skirt.hemBelowStrideWiden':
      'On ne peut pas marcher avec cet ourlet ({hem} de tour) : un pas demande {needed}. Marquez l’ourlet à {wider}.',
    'skirt.hemNarrowWiden':
      'L’ourlet ({hem} de tour) est étroit pour l’escalier et la position assise : {needed} est confortable. Marquez l’ourlet à {wider}.',
    'skirt.hemNarrowForEveryday':
      'L’ourlet ({hem} de tour) est étroit pour l’escalier et la position assise : {needed} est confortable. Marquez l’ourlet à {wider}, ou raccourcissez la jupe de {shorter}, ou laissez une fente de {slit}.',
    'skirt.hemBelowFloor':
      'Le repère d’ourlet ({asked}) est plus étroit que les {floor} d’usage pour une adulte.',
    'skirt.hemNotLevel':
      'L’ourlet droit plongera de {sideExcess} aux coutures de côté, et les rangs s’y rencontrent à un angle de {sideAngle}. Choisissez un ourlet de niveau, ou moins d’évasement.',
    'skirt.curvedHem':
      'Un ourlet droit plongerait de {sideExcess} sur les côtés : la taille et l’ourlet sont donc en courbe. Tracez les courbes avec « mesurez vers le haut à partir de la ligne ». Elles prennent {extraDepth} de tissu en plus.',
    'skirt.hemRipples':
      'L’ourlet en courbe est trop large de {share} là où il se pose, plus que les {limit} qui se résorbent sans se voir. Faites un ourlet plus étroit, résorbez-le avec un fil de fronces, ou posez une parementure.',
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
    'skirt.tooManyWidths':
      'La jupe prendrait {wanted} lés de tissu ; {widths} sont dessinés. Choisissez un tissu plus large ou moins d’ampleur.',
    'skirt.offGrain':
      'Le côté s’écarte de {angle} du droit fil et va s’allonger. Laissez pendre la jupe une journée avant d’égaliser l’ourlet et de tracer les rangs.',
    'waist.elasticOverstretched':
      'L’élastique ({cut}) devrait s’étirer {stretch} fois pour passer {hip} de tour de hanches. Coupez-le à {enough}, ou prenez-en un qui s’étire davantage.',
    'ribbon.noRoom':
      '{rows, plural, one {# rang de ruban demande} other {# rangs de ruban demandent}} {needed}, et il y a {room} de place. Choisissez moins de rangs, un ruban plus étroit, ou laissez-les monter plus haut.',
    'ribbon.rowPastTop':
      '{left, plural, one {# groupe de rangs monterait dans la coulisse et n’a pas pu être placé} other {# groupes de rangs monteraient dans la coulisse et n’ont pas pu être placés}} : les listes et les temps n’en tiennent pas compte. Les rangs doivent finir à {top} de l’ourlet au plus : choisissez moins de rangs, un ruban plus étroit ou de plus petits écarts.',
    'ribbon.rowOnHemStitching':
      'Le rang le plus bas (à {row} de l’ourlet) couvre la piqûre de l’ourlet. À {least}, il la dégage ; ou cousez l’ourlet d’abord, et le ruban en cachera les points.',
    'ribbon.easeWithSteam':
      '{rows, plural, one {# rang suit} other {# rangs suivent}} une courbe. Au rang {row}, les deux bords du ruban diffèrent de {share} : cousez d’abord le bord inférieur, résorbez {takeUp} au bord supérieur de chaque bande, et passez à la vapeur sous une pattemouille.',
    'ribbon.willNotLieFlat':
      '{rows, plural, one {# rang ne sera pas} other {# rangs ne seront pas}} à plat sur la courbe : au rang {row}, les deux bords du ruban diffèrent de {share} (environ {limit} peuvent se résorber). Choisissez un ruban plus étroit, ou reprenez {takeUp} au bord supérieur de chaque bande en petits plis ({tucks}), ou posez-le en morceaux droits.',
    'cloth.panelTooDeep':
      'Un panneau fait {depth} de haut en bas, et le tissu {usable} de laize après lavage : il ne peut pas se couper la taille sur la lisière.',
    'cloth.panelTooWide': 'Un panneau fait {width} de large, et le tissu {usable} après lavage.',
    'cloth.noLayFits':
      'Un panneau ({width} de large, {depth} de long) n’entre d’aucune façon dans ce tissu : {usable} sont utiles après lavage. Choisissez un tissu plus large, une jupe plus courte, un repère d’ourlet plus étroit s’il reste de quoi marcher, ou une jupe froncée de plusieurs lés.',
    'cloth.onlyTwoAlike':
      'Plié en quatre, le tissu donne deux panneaux d’un coup ; cette jupe en a {panels}.',
    'cloth.oddPanels':
      'Les panneaux se coupent par paires ; leur nombre étant impair ({panels}), une épaisseur de la dernière paire reste de trop.',
    'cloth.oneWayCrosswise':
      'La pliure met un imprimé à sens unique tête en bas sur une épaisseur : coupez le long de la pliure et faites faire un demi-tour à l’épaisseur du dessus avant d’épingler.',
    'cloth.printOnItsSide': 'Disposé ainsi ({lay}), l’imprimé à sens unique est couché.',
    'cloth.notEnough':
      'Il y a {have} de tissu, et il en faut {needed} avant lavage. Voyez plus bas ce qu’on peut en faire.',
    'cloth.changeIsRange':
      'Le retrait du tissu n’est connu que par une fourchette ; c’est la valeur haute qui sert. Lavez un carré d’essai pour économiser du tissu.',
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
  cuts: { flared: 'jupe évasée à deux panneaux', gathered: 'jupe froncée' },
  weights: { light: 'léger', medium: 'moyen', heavy: 'lourd' },
  panels: { front: 'devant', back: 'dos', width: 'lé', round: 'tout le tour' },
  lays: {
    'double fold': 'plié en quatre',
    'lengthwise fold': 'plié dans la longueur',
    'crosswise fold': 'plié en travers',
    open: 'ouvert, une épaisseur',
  },
  tableEdges: {
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
    'fold.open': 'Prenez {cloth} de tissu. Étalez-le ouvert, endroit dessous, en une seule épaisseur.',
    'fold.openHeadToTail':
      'Prenez {cloth} de tissu. Étalez-le ouvert, endroit dessous, en une seule épaisseur. Les panneaux se placent tête-bêche.',
    'fold.stack':
      'Coupez d’abord les panneaux en blocs, à part. Pliez ensuite chacun au milieu et posez-les pliure sur pliure : ils se marquent ensemble, à partir des pliures.',
    'fold.wholePanels':
      'Tracez la ligne du milieu de chaque panneau dans le droit fil : les panneaux disposés tête-bêche se marquent entiers, des deux côtés de cette ligne.',
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
    'hang.true':
      'Mesurez à partir de la taille, vers le bas, et égalisez le bord d’ourlet là où il s’est allongé.',
    'chalkRows.rightSide':
      'Ouvrez chaque panneau et posez-le endroit dessus. Les rangs se tracent sur le panneau ouvert, jamais sur les épaisseurs pliées.',
    'chalkRows.fromRaw':
      'Posez la règle au bord vif égalisé et faites un point pour chaque rang aux côtés et tous les 30 cm (12 po) entre les deux. L’ourlet de {hem} est déjà compté dans les chiffres.',
    'chalkRows.lowerEdge':
      'Joignez les points : {rows, plural, one {# ligne} other {# lignes}}. Chaque ligne est le bord INFÉRIEUR de son ruban.',
    'chalkRows.curve':
      'Gardez partout la même distance de l’ourlet en courbe : un point à chaque largeur de main.',
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
  },
  items: {
    cloth: 'Tissu',
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
    washable: 'Ruban lavable à bords tissés : ni armé de fil de fer, ni à bords coupés.',
    dyeLot: 'Tout d’une couleur dans le même bain de teinture : comparez les rouleaux à la lumière du jour.',
    realWidth: 'Vérifiez sa vraie largeur à la règle : les numéros de ruban sont approximatifs.',
    satinNeedle: 'Grosseur 70/10 ou 75/11, pointe aiguë : une aiguille émoussée tire les fils du satin.',
    threadColour:
      'Mettez-le contre le ruban ou le tissu ; un ton plus foncé se voit moins qu’un ton plus clair.',
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
    hemCurve: 'Ourlet, vers le haut',
    waistCurve: 'Taille, vers le haut',
    hemAcross: 'Ourlet, à partir du milieu',
    waistAcross: 'Taille, à partir du milieu',
    measureUp: 'Mesurez vers le haut',
    layHeading: 'Disposez le tissu ainsi : {lay}',
    layCheaper:
      'Façon retenue : {taken}. Autre façon ({lay}) : il faudrait {buy} ; demandez-la dans la demande, sous "cloth", à "lay".',
    layHeadingNone: 'Aucune façon ne convient. Dessiné ici ({lay}), pour voir ce qui manque :',
    rowsElsewhere: 'Tous les rangs sont dans la liste de coupe du ruban.',
    otherLays: 'Les façons de disposer le tissu',
    layChosen: 'retenu',
    layDoesNotFit: 'n’entre pas',
    clothAfterWash: 'Tissu après lavage',
    clothBeforeWash: 'Avant lavage',
    toBuy: 'À acheter',
    leftOver: 'Reste d’un seul tenant',
    leftOverSize: '{across} × {along}',
    printSide: 'imprimé couché',
    printUpright: 'imprimé droit',
    layers: '{layers, plural, one {# épaisseur} other {# épaisseurs}}',
    haveHeading:
      'Avec {have} de tissu avant lavage, disposé de la façon qui en prend le moins, vous pouvez faire',
    haveLongest: 'la plus longue : {length} finie',
    haveFullest: 'la plus ample : {fullness} × la partie la plus large, repère d’ourlet {hem}',
    haveMany:
      '{count, plural, =0 {pas une seule jupe comme prévu} one {# jupe comme prévu} other {# jupes comme prévu}}',
    haveNothing: 'aucune jupe de cette coupe',
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
    localRules: 'Là où elles diffèrent, les règles locales passent avant.',
    estimate: '{value} ± {plusMinus}',
    chalkedAs: '{exact}, tracé à {value}',
    hoursMinutes: '{hours} h {minutes} min',
    minutesOnly: '{minutes} min',
    altFold:
      'Tissu plié, le milieu à gauche. Repère de taille à {waist} de la pliure, repère d’ourlet à {hem} de la pliure, {length} de haut en bas.',
    altPanel:
      'Panneau ouvert, endroit dessus, avec {rows, plural, one {# rang de ruban} other {# rangs de ruban}}. Traits de craie à partir du bord vif : {list}.',
    altLay:
      'Tissu disposé ainsi : {lay}, {layers, plural, one {# épaisseur} other {# épaisseurs}}, {cloth} de long, avec les panneaux dessus.',
    altStep: 'Dessin de l’étape : {title}',
  },
  kinds: {
    object: 'un groupe de valeurs nommées',
    array: 'une liste',
    string: 'un texte entre guillemets',
    number: 'un nombre',
    int: 'un nombre entier',
    boolean: 'true ou false',
  },
  command: {
    about: 'D’un corps aux papiers d’une jupe à rubans : quoi tracer, acheter, couper et coudre.',
    plan: 'affiche la fiche d’une demande, avec ses avis',
    papers: 'écrit les papiers en PDF et en SVG',
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
    optionOf: 'quel schéma : request (demande) ou plan',
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
    badHave: '--have : {value} {reason}',
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
};
