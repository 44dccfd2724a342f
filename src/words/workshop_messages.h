// SPDX-License-Identifier: MIT
// What the tailor's sheets say.
#pragma once

#include "words/message.h"

namespace platewright::messages {

/// Headings.
inline constexpr Message kTailorsSheets{
    "Tailor’s sheets: {1}.", "Feuilles de coupe : {1}.", "Schneiderblätter: {1}."};
inline constexpr Message kFlats{"Flats", "Vêtements à plat", "Stücke, flach gelegt"};
inline constexpr Message kPlacement{"Placement", "Emplacements", "Wo alles sitzt"};
inline constexpr Message kPieces{"Pieces", "Pièces", "Schnittteile"};
inline constexpr Message kMaterials{"Materials", "Fournitures", "Zutaten"};
inline constexpr Message kFullSize{"All pieces at full size, on tiles",
                                   "Toutes les pièces, grandeur nature, par feuilles",
                                   "Alle Teile in natürlicher Größe, auf Blättern"};
inline constexpr Message kFacingsFullSize{
    "Facings and small parts at full size, on tiles",
    "Parements et petites pièces, grandeur nature, par feuilles",
    "Besatz und kleine Teile in natürlicher Größe, auf Blättern"};
inline constexpr Message kViewAtScale{"{1}   1 : {2}", "{1}   1 : {2}", "{1}   1 : {2}"};

/// The man and the measures of the garments.
inline constexpr Message kTheMan{"The man", "L’homme", "Der Mann"};
inline constexpr Message kMeasureIso{
    "measure (ISO 8559-1)", "mesure (ISO 8559-1)", "Maß (ISO 8559-1)"};
inline constexpr Message kHowTaken{"how it is taken", "comment la prendre", "wie es genommen wird"};
inline constexpr Message kAsDrawn{"drawn for, mm", "dessiné pour, mm", "gezeichnet für, mm"};
inline constexpr Message kSizesRest{
    "Standard sizes: chest by EN 13402-3 (from memory), waist by Hertzer, nape to waist by "
    "Rosenfeld; the rest common practice, no source.",
    "Tailles : poitrine selon les classes S, M et L de EN 13402-3 (de mémoire), taille selon "
    "Hertzer, dos selon Rosenfeld ; le reste est d’usage, sans source.",
    "Größen: Brust nach den Klassen S, M und L der EN 13402-3 (aus dem Gedächtnis), Taille nach "
    "Hertzer, Rücken nach Rosenfeld; das Übrige ist üblich, ohne Quelle."};
inline constexpr Message kGarmentsMeasured{"The garments, measured on the drawings",
                                           "Les vêtements, mesurés sur les dessins",
                                           "Die Stücke, an den Zeichnungen gemessen"};
inline constexpr Message kDimension{"measure", "mesure", "Maß"};
inline constexpr Message kOrdered{"ordered", "ordonné", "befohlen"};
inline constexpr Message kGirthsOfGarments{
    "Girths of the garments, in mm", "Tours des vêtements, en mm", "Weiten der Kleidung, in mm"};
inline constexpr Message kGirth{"girth", "tour", "Umfang"};
inline constexpr Message kOfTheMan{"man", "homme", "Mann"};
inline constexpr Message kEase{"ease", "aisance", "Zugabe"};
inline constexpr Message kFinished{"finished", "fini", "fertig"};
inline constexpr Message kEaseRemark{
    "All round, edge to edge, without pleats and laps; sleeves and knee bands as cut and buckled. "
    "Ease: common practice, no source; try it on a toile.",
    "Tout autour, bord à bord, sans plis ni croisures ; manches et jarretières comme on les coupe "
    "et les boucle. Aisance : d’usage, sans source ; à essayer sur une toile.",
    "Ringsum, Kante an Kante, ohne Falten und Übertritte; Ärmel und Kniebund wie geschnitten und "
    "geschnallt. Zugabe: üblich, ohne Quelle; an einem Probestück anpassen."};
inline constexpr Message kGirthsAreHalf{
    "Girths are half of the garment as it lies; the wedge of the breeches’ seat is not in them. "
    "What both sides have is told of one. Fractions are the nearest eighth; the millimetres "
    "are what was measured. What the order states has moved these drawings, the pieces and the "
    "figure of the plate.",
    "Les tours sont ceux de la moitié du vêtement à plat, sans la pointe du fond de culotte. Ce "
    "que "
    "les deux côtés portent est dit d’un seul. Les fractions sont au huitième le plus "
    "proche ; les millimètres sont ce qui a été mesuré. Ce que l’ordonnance fixe a déplacé ces "
    "dessins, les pièces et la figure de la planche.",
    "Umfänge sind die Hälfte des liegenden Stücks, ohne den Gesäßkeil der Hose. Was beide Seiten "
    "tragen, ist von einer gesagt. Brüche sind das nächste Achtel; die Millimeter "
    "sind gemessen. Was die Vorschrift bestimmt, hat diese Zeichnungen, die Schnittteile und "
    "die Figur der Tafel bewegt."};
inline constexpr Message kSleeveAndArm{
    "The sleeve is measured straight down its outer side, from the shoulder’s seam to the hem; the "
    "arm over the bent elbow to the wrist bone, which the hem leaves free by {1} mm.",
    "La manche est mesurée droit sur son bord extérieur, de la couture d’épaule au bas ; le bras, "
    "par le coude plié jusqu’au poignet, que la manche dégage de {1} mm.",
    "Der Ärmel ist gerade an seiner Außenseite gemessen, von der Schulternaht bis zum Saum; der "
    "Arm über den gebeugten Ellbogen bis zum Handknöchel, den der Saum um {1} mm frei lässt."};

/// Where buttons, holes and marks sit.
inline constexpr Message kButtonsHolesMarks{
    "Buttons, holes and marks", "Boutons, boutonnières et marques", "Knöpfe, Löcher und Abzeichen"};
inline constexpr Message kOnWhat{"on", "sur", "an"};
inline constexpr Message kWhere{"where", "où", "wo"};
inline constexpr Counted kButtonsAcross{
    {"{1} button, {2} mm across", "{1} bouton de {2} mm", "{1} Knopf, {2} mm groß"},
    {"{1} buttons, {2} mm across", "{1} boutons de {2} mm", "{1} Knöpfe, {2} mm groß"}};
inline constexpr Counted kHolesLong{
    {"{1} buttonhole, {2} mm long", "{1} boutonnière de {2} mm", "{1} Knopfloch, {2} mm lang"},
    {"{1} buttonholes, {2} mm long", "{1} boutonnières de {2} mm", "{1} Knopflöcher, {2} mm lang"}};
inline constexpr Counted kLoopsLong{
    {"{1} loop of lace, {2} mm long", "{1} bride de galon de {2} mm", "{1} Litze, {2} mm lang"},
    {"{1} loops of lace, {2} mm long", "{1} brides de galon de {2} mm", "{1} Litzen, {2} mm lang"}};
inline constexpr Message kFromMiddleToMiddle{"{1}; {2} mm ({3}) from middle to middle",
                                             "{1} ; {2} mm ({3}) d’axe en axe",
                                             "{1}; {2} mm ({3}) von Mitte zu Mitte"};
inline constexpr Message kTheFirstFrom{"{1}, the first {2} mm from the end",
                                       "{1}, le premier à {2} mm du bout",
                                       "{1}, der erste {2} mm vom Ende"};
inline constexpr Message kWithinTheEdge{
    "{1}; {2} mm from the edge", "{1} ; à {2} mm du bord", "{1}; {2} mm von der Kante"};
inline constexpr Message kMarksAre{
    "{1} of {2} mm ({3}), the lowest {4} mm above the edge at its middle, {5}",
    "{1} de {2} mm ({3}), la plus basse à {4} mm du bord en son milieu, {5}",
    "{1} zu {2} mm ({3}), das unterste in der Mitte {4} mm über dem Rand, {5}"};
inline constexpr Message kLevelWithIt{"level with it", "parallèle à lui", "gleichlaufend mit ihm"};
inline constexpr Message kAtAngleToIt{"at {1}° to it", "à {1}° de lui", "unter {1}° zu ihm"};
inline constexpr Message kClothBetween{"{1}; {2} mm of cloth between them",
                                       "{1} ; {2} mm de drap entre elles",
                                       "{1}; {2} mm Tuch dazwischen"};
inline constexpr Message kCollarHookAt{
    "1 hook and eye at the seam of the neck, within the front edges so that they meet; common "
    "practice, no source",
    "1 agrafe et sa porte à la couture d’encolure, en deçà des bords qui se joignent ; d’usage, "
    "sans "
    "source",
    "1 Haken mit Öse an der Halsnaht, hinter den Vorderkanten, so dass sie sich treffen; üblich, "
    "ohne Quelle"};
inline constexpr Message kEyeBeneathButton{
    "{1}; beneath it the eye for the hook of the hind corner",
    "{1} ; dessous, la porte pour l’agrafe du coin de derrière",
    "{1}; darunter die Öse für den Haken der hinteren Ecke"};
inline constexpr Message kSewnThroughCorner{"{1}; sewn through the corner to the skirt",
                                            "{1} ; cousu au pan à travers le coin",
                                            "{1}; durch die Ecke an den Schoß genäht"};
inline constexpr Message kHookOfCorner{
    "1 hook, {1} mm above the hem, {2} mm from the edge; its eye beneath the button of the fore "
    "corner. When hooked, the {3} mm of skirt between the corners hang in a loose fold",
    "1 agrafe, à {1} mm de l’ourlet et à {2} mm du bord ; sa porte sous le bouton du coin de "
    "devant. Agrafés, les {3} mm de pan entre les coins pendent en un pli souple",
    "1 Haken, {1} mm über dem Saum, {2} mm von der Kante; seine Öse unter dem Knopf der vorderen "
    "Ecke. Eingehakt hängen die {3} mm Schoß zwischen den Ecken in einer losen Falte"};
inline constexpr Message kOnLeftSleeve{
    "{1}, the wearer’s left sleeve", "{1}, manche gauche", "{1}, linker Ärmel"};
inline constexpr Message kOnRightSleeve{
    "{1}, the wearer’s right sleeve", "{1}, manche droite", "{1}, rechter Ärmel"};

/// Materials: headings, and how each amount comes about.
inline constexpr Message kStuff{"material", "matière", "Stoff"};
inline constexpr Message kColourOrKind{"colour or kind", "couleur ou sorte", "Farbe oder Art"};
inline constexpr Message kAmount{"amount", "quantité", "Menge"};
inline constexpr Message kHowItComes{"how it comes about", "d’où cela vient", "wie es sich ergibt"};
inline constexpr Message kForOneMan{
    "All together, for one man", "En tout, pour un homme", "Zusammen, für einen Mann"};
inline constexpr Message kLayRemark{
    "Soak and dry woollen cloth before it is cut. Each piece is laid at the first free place, "
    "cloth "
    "with the nap running down, linings and linen either way along the grain, also into gaps, the "
    "longest, widest or largest first, whichever takes least (bottom-left filling: Baker, Coffman, "
    "Rivest 1980, from memory). Waste of lace and piping, spare buttons, thread and hooks: common "
    "practice, no source.",
    "Décatir le drap avant de le couper. Chaque pièce est posée à la première place libre, le drap "
    "poil descendant, doublures et toiles dans un sens ou l’autre du droit fil, jusque dans les "
    "vides, les plus longues, les plus larges ou les plus grandes d’abord, au plus économe (Baker, "
    "Coffman, Rivest 1980, de mémoire). Déchet de galon et de passepoil, boutons de rechange, fil "
    "et agrafes : d’usage, sans source.",
    "Wolltuch vor dem Zuschneiden nässen und trocknen. Jedes Teil liegt am ersten freien Platz, "
    "Tuch mit dem Strich nach unten, Futter und Leinen mit dem Fadenlauf hin oder her, auch in "
    "Lücken, die längsten, breitesten oder größten zuerst, was am wenigsten braucht (Baker, "
    "Coffman, Rivest 1980, aus dem Gedächtnis). Verschnitt von Borte und Vorstoß, Ersatzknöpfe, "
    "Garn und Haken: üblich, ohne Quelle."};
inline constexpr Counted kLaySum{
    {"{1} piece, finished {2} m²; laid out {3} m of {4} cloth, {5} % of it in the piece as it is "
     "cut; rounded up to 5 cm",
     "{1} pièce, {2} m² finis ; posée sur {3} m de large {4}, {5} % dans la pièce coupée ; "
     "arrondi à 5 cm",
     "{1} Teil, fertig {2} m²; ausgelegt {3} m bei {4} Breite, {5} % davon im zugeschnittenen "
     "Teil; auf 5 cm aufgerundet"},
    {"{1} pieces, finished {2} m²; laid out {3} m of {4} cloth, {5} % of it in the pieces as they "
     "are cut; rounded up to 5 cm",
     "{1} pièces, {2} m² finis ; posées sur {3} m de large {4}, {5} % dans les pièces coupées ; "
     "arrondi à 5 cm",
     "{1} Teile, fertig {2} m²; ausgelegt {3} m bei {4} Breite, {5} % davon in den zugeschnittenen "
     "Teilen; auf 5 cm aufgerundet"}};
inline constexpr Counted kLoopsSum{{"{1} loop with turn-ins {2} m",
                                    "{1} bride avec rentrés {2} m",
                                    "{1} Litze mit Einschlag {2} m"},
                                   {"{1} loops with turn-ins {2} m",
                                    "{1} brides avec rentrés {2} m",
                                    "{1} Litzen mit Einschlag {2} m"}};
inline constexpr Counted kEdgesSum{{"{1} edge {2} m", "{1} bord {2} m", "{1} Kante {2} m"},
                                   {"{1} edges {2} m", "{1} bords {2} m", "{1} Kanten {2} m"}};
inline constexpr Counted kMarksSum{{"{1} mark {2} m", "{1} marque {2} m", "{1} Abzeichen {2} m"},
                                   {"{1} marks {2} m", "{1} marques {2} m", "{1} Abzeichen {2} m"}};
inline constexpr Message kEndsSum{"ends {1} m", "bouts {1} m", "Enden {1} m"};
inline constexpr Message kWasteSum{"{1} % waste; rounded up to 10 cm",
                                   "{1} % de déchet ; arrondi à 10 cm",
                                   "{1} % Verschnitt; auf 10 cm aufgerundet"};
inline constexpr Counted kButtonsSum{
    {"{1} worn ({4}) + at least {2} spare, in whole dozens {3}",
     "{1} porté ({4}) + au moins {2} de rechange, par douzaines {3}",
     "{1} getragen ({4}) + wenigstens {2} Ersatz, in Dutzenden {3}"},
    {"{1} worn ({4}) + at least {2} spare, in whole dozens {3}",
     "{1} portés ({4}) + au moins {2} de rechange, par douzaines {3}",
     "{1} getragen ({4}) + wenigstens {2} Ersatz, in Dutzenden {3}"}};
inline constexpr Message kNumberOn{"{1} {2}", "{1} {2}", "{1} {2}"};
inline constexpr Message kMillimetres{"{1} mm", "{1} mm", "{1} mm"};
inline constexpr Message kMetalAndSize{"{1}, {2}, {3} mm", "{1}, {2}, {3} mm", "{1}, {2}, {3} mm"};
inline constexpr Message kThreadSum{
    "edges {1} m, two to a seam; {2} m of seam × {3} + {4} buttonholes × {5} m; rounded up to 10 m",
    "bords {1} m, deux par couture ; {2} m de couture × {3} + {4} boutonnières × {5} m ; arrondi à "
    "10 m",
    "Kanten {1} m, zwei je Naht; {2} m Naht × {3} + {4} Knopflöcher × {5} m; auf 10 m "
    "aufgerundet"};
inline constexpr Counted kLeatherSum{{"{2}: {1} of {3} × {4} mm, cut at the line",
                                      "{2} : {1} de {3} × {4} mm, coupé au trait",
                                      "{2}: {1} von {3} × {4} mm, am Strich geschnitten"},
                                     {"{2}: {1} of {3} × {4} mm, cut at the line",
                                      "{2} : {1} de {3} × {4} mm, coupés au trait",
                                      "{2}: {1} von {3} × {4} mm, am Strich geschnitten"}};
inline constexpr Counted kTapesSum{
    {"{1} tape of {2} m", "{1} ruban de {2} m", "{1} Band von {2} m"},
    {"{1} tapes of {2} m", "{1} rubans de {2} m", "{1} Bänder von {2} m"}};
inline constexpr Counted kLacingSum{
    {"{1} lacing of {2} m", "{1} lacet de {2} m", "{1} Schnürband von {2} m"},
    {"{1} lacings of {2} m", "{1} lacets de {2} m", "{1} Schnürbänder von {2} m"}};
inline constexpr Message kCollarHooks{"collar {1}", "collet {1}", "Kragen {1}"};
inline constexpr Message kTurnbackHooks{"turnbacks {1}", "retroussis {1}", "Umschläge {1}"};
inline constexpr Message kPiecesAdded{
    "The pieces, added up", "Les pièces, additionnées", "Die Schnittteile, zusammengezählt"};
inline constexpr Message kPiece{"piece", "pièce", "Teil"};
inline constexpr Message kNumberCut{"cut", "nombre", "Anzahl"};
inline constexpr Message kAreaEach{"m² each", "m² l’une", "m² je Teil"};
inline constexpr Message kAreaAll{"m² all", "m² en tout", "m² zusammen"};
inline constexpr Message kEdgesEach{"edge, m each", "bord, m l’une", "Rand, m je Teil"};
inline constexpr Message kPiecesRemark{
    "Notches across an edge meet those of the piece it is sewn to: coat seams at the hip "
    "button and above, the waistcoat’s at the waist, "
    "the sleeve’s head at the shoulder and the fore arm’s seam, the collar at the shoulder. Ease, "
    "inlays, facings of openings, canvas, pocket bags and straps: common practice, no source.",
    "Les crans d’un bord rencontrent ceux de la pièce voisine : coutures de l’habit au bouton de "
    "taille "
    "et plus haut, de la veste à la taille, tête de manche à l’épaule et à la couture "
    "d’avant-bras, collet à l’épaule. Embu, "
    "relarges, doublures d’ouvertures, toiles, fonds de poche, sous-pieds et jarretières : "
    "d’usage, sans "
    "source.",
    "Zeichen quer zur Kante treffen auf die des angenähten Teils: Rocknähte am Taillenknopf und "
    "darüber, Ärmelkugel an der Schulter und der vorderen Armnaht, Kragen an der Schulter. "
    "Mehrweite, Einschläge, Belege, Einlagen, Taschenbeutel, Stege und Strumpfbänder: üblich, ohne "
    "Quelle."};
inline constexpr Message kAllPieces{"all pieces", "toutes les pièces", "alle Teile"};
inline constexpr Message kWithSamePatterns{
    "with linings and stiff linen cut by the same patterns",
    "avec doublures et toiles fortes coupées sur les mêmes patrons",
    "mit Futter und Steifleinen nach denselben Schnitten"};

/// On the plans of cloth.
inline constexpr Message kLaidOut{
    "Laid out on the cloth", "Placées sur le drap", "Ausgelegt auf dem Tuch"};
inline constexpr Message kLaidSize{
    "{1} wide, {2} m long", "{1} de large, {2} m de long", "{1} breit, {2} m lang"};

/// On pieces: the number in the cutting list before the name, and what to cut.
inline constexpr Message kNumbered{"{1}  {2}", "{1}  {2}", "{1}  {2}"};
inline constexpr Message kCut{"cut {1}", "couper {1}", "{1}-mal zuschneiden"};
inline constexpr Message kCutMirrored{"cut {1}, half of them mirrored",
                                      "couper {1}, dont la moitié en miroir",
                                      "{1}-mal zuschneiden, die Hälfte gespiegelt"};
inline constexpr Message kOnTheFold{
    "{1}, left edge on the fold", "{1}, bord gauche au pli", "{1}, linke Kante im Bruch"};
inline constexpr Message kAndLining{"{1} and lining", "{1} et doublure", "{1} und Futter"};
inline constexpr Message kAndStiffLinen{
    "{1} and stiff linen", "{1} et toile forte", "{1} und Steifleinen"};
inline constexpr Message kAndStiffLinenOnce{
    "{1}; stiff linen once", "{1} ; toile forte une fois", "{1}; Steifleinen einmal"};
inline constexpr Message kAndLiningAndStiffLinen{
    "{1}, lining and stiff linen", "{1}, doublure et toile forte", "{1}, Futter und Steifleinen"};

/// What else is told on a piece: its lining, its ease, its inlay.
inline constexpr Message kLiningOf{"{1}, lining", "{1}, doublure", "{1}, Futter"};
inline constexpr Message kLiningAlike{"its lining ({1}) is cut by the same pattern",
                                      "sa doublure ({1}) se coupe sur le même patron",
                                      "sein Futter ({1}) nach demselben Schnitt"};
inline constexpr Message kLiningWithoutInlay{
    "its lining ({1}) is cut by the same pattern, without the inlay",
    "sa doublure ({1}) se coupe sur le même patron, sans relarge",
    "sein Futter ({1}) nach demselben Schnitt, ohne Einschlag"};
inline constexpr Message kHeadEase{"head {1} mm longer than the hole: ease it in",
                                   "tête plus longue de {1} mm que l’emmanchure : la soutenir",
                                   "Kugel {1} mm länger als das Armloch: einhalten"};
inline constexpr Message kTopGathered{
    "top {1} mm wider than the waistband: gather it in between its notches",
    "haut plus large de {1} mm que la ceinture : le froncer entre ses crans",
    "oben {1} mm weiter als der Bund: zwischen den Zeichen einreihen"};
inline constexpr Message kVentOpenBelow{"middle seam open below its notch: the vent",
                                        "couture du milieu ouverte sous le cran : la fente",
                                        "Mittelnaht unter ihrem Zeichen offen: der Schlitz"};
inline constexpr Message kLegsEasedIn{"leg {1} mm longer than the band: ease it in all round",
                                      "jambe plus longue de {1} mm que la bande : la soutenir",
                                      "Bein {1} mm länger als das Band: ringsum einhalten"};
inline constexpr Message kSkirtsOpenBelow{
    "back seam open below its lowest notch, where the skirts are turned back",
    "couture du dos ouverte sous le dernier cran, où les pans se retroussent",
    "Rückennaht unter dem untersten Zeichen offen, wo die Schöße umgeschlagen sind"};
inline constexpr Message kMouthsNotInLining{"pocket mouths are not cut in the lining",
                                            "les poches ne se fendent pas dans la doublure",
                                            "Taschen werden nicht ins Futter geschnitten"};
inline constexpr Message kMarksOnOneSleeve{
    "marks on the {1} only", "marques seulement {1}", "Abzeichen nur {1}"};
inline constexpr Message kSeatOpenAbove{
    "seat seam open above its notch, for the gusset",
    "couture du fond ouverte au-dessus du cran, pour le soufflet",
    "Gesäßnaht über ihrem Zeichen offen, für den Zwickel"};
inline constexpr Message kHolesOnLeft{"holes on the wearer’s left, buttons on his right",
                                      "boutonnières à gauche de l’homme, boutons à droite",
                                      "Knopflöcher auf der linken Seite des Mannes, Knöpfe rechts"};
inline constexpr Message kInlayAt{"inlay of {1} mm beyond the cut at the side seam",
                                  "relarge de {1} mm au-delà de la coupe à la couture de côté",
                                  "Einschlag von {1} mm über den Schnitt hinaus an der Seitennaht"};
inline constexpr Message kInlayWithin{"inlay of {1} mm at the side seam, from the dotted line on",
                                      "relarge de {1} mm à la couture de côté, dès le pointillé",
                                      "Einschlag von {1} mm an der Seitennaht, ab der Punktlinie"};
inline constexpr Message kInlayRunsOut{
    "inlay of {1} mm at the seat seam, running out at the fork",
    "relarge de {1} mm à la couture du fond, mourant à la fourche",
    "Einschlag von {1} mm an der Gesäßnaht, im Schritt auslaufend"};

/// The key to the lines of pieces, and their scale.
inline constexpr Message kLineCut{"cut here", "couper ici", "hier schneiden"};
inline constexpr Message kLineFinished{"finished edge: add for seams",
                                       "bord fini : ajouter la couture",
                                       "fertige Kante: Naht zugeben"};
inline constexpr Message kLineSeam{"seam", "couture", "Naht"};
inline constexpr Message kLineFold{
    "fold, or line to sew on", "pli ou ligne à coudre", "Bruch oder Ansatzlinie"};
inline constexpr Message kLineInlay{
    "limit of the inlay", "limite du relarge", "Grenze des Einschlags"};
inline constexpr Message kLineSlit{"cut for a pocket or slit",
                                   "fente de poche ou d’ouverture",
                                   "Einschnitt für Tasche oder Schlitz"};
inline constexpr Message kLineGrain{"grain", "droit fil", "Fadenlauf"};
inline constexpr Message kLineNotch{"notch", "cran", "Zeichen"};
inline constexpr Message kLineButton{"button", "bouton", "Knopf"};
inline constexpr Message kLineHole{"buttonhole", "boutonnière", "Knopfloch"};
inline constexpr Message kLineEyelet{"eyelet", "œillet", "Schnürloch"};
inline constexpr Message kSquaresOf{
    "squares of {1} mm", "carreaux de {1} mm", "Quadrate von {1} mm"};
/// Over the pieces: what their dimensions are, and in which order to cut.
inline constexpr Message kPieceMeasures{
    "Dimensions are finished, from seam to seam, along and across the grain; the upper width is "
    "taken where a piece is widest, or under the hole for the arm. Shrink the cloth first. Cut the "
    "long pieces of a cloth before its small ones, with the nap running down.",
    "Cotes finies, de couture à couture, en long et en travers du droit fil ; la largeur du haut "
    "est prise au plus large, ou sous l’emmanchure. Décatir d’abord le drap. Couper les grandes "
    "pièces d’une étoffe avant les petites, le poil vers le bas.",
    "Fertige Maße, von Naht zu Naht, längs und quer zum Fadenlauf; die obere Breite ist an der "
    "weitesten Stelle genommen oder unter dem Armloch. Das Tuch zuerst krumpfen. Von jedem Stoff "
    "die langen Teile vor den kleinen schneiden, den Strich nach unten."};

/// What else the key tells of edges.
inline constexpr Message kLineLetter{"A seam: sewn to the edge with that letter",
                                     "A couture : se coud au bord de même lettre",
                                     "A Naht: an die Kante mit diesem Buchstaben"};
inline constexpr Message kLineHindNotch{
    "notch of a hind edge", "cran d’un bord de derrière", "Zeichen einer hinteren Kante"};

/// The seams, and how the garments are put together.
inline constexpr Message kSeams{"Seams", "Coutures", "Nähte"};
inline constexpr Message kSeam{"seam", "couture", "Naht"};
inline constexpr Message kPiecesHere{"pieces", "pièces", "Teile"};
inline constexpr Message kLengthHere{"mm", "mm", "mm"};
inline constexpr Message kSewnTo{"sewn to", "cousue à", "genäht an"};
inline constexpr Message kSeamEase{"ease", "embu", "Mehrweite"};
inline constexpr Message kMirroredSelf{"{1}, mirrored", "{1}, en miroir", "{1}, gespiegelt"};
inline constexpr Message kSeamsRemark{
    "Lengths along the seam, measured on the pieces; the same letter stands at both edges. Ease is "
    "what the first edge is longer: it is eased in; under a millimetre it is nothing.",
    "Longueurs le long de la couture, mesurées sur les pièces ; la même lettre est aux deux bords. "
    "L’embu est ce dont le premier bord est plus long : il se soutient ; sous un millimètre, ce "
    "n’est rien.",
    "Längen entlang der Naht, an den Teilen gemessen; an beiden Kanten steht derselbe Buchstabe. "
    "Mehrweite ist, um was die erste Kante länger ist: sie wird eingehalten; unter einem "
    "Millimeter ist sie nichts."};
inline constexpr Message kOrderOfWork{
    "Order of work", "Ordre du travail", "Reihenfolge der Arbeit"};
inline constexpr Message kOrderOfWorkRemark{
    "Common practice, no source: the maker’s own order is as good if every seam can still be "
    "reached.",
    "D’usage, sans source : un autre ordre vaut autant, pourvu que chaque couture reste "
    "accessible.",
    "Üblich, ohne Quelle: jede andere Folge ist so gut, solange jede Naht noch zu erreichen ist."};

/// For cutters.
inline constexpr Message kCheckSquare{"all lengths in mm", "longueurs en mm", "alle Längen in mm"};

/// On a piece cut at its finished line.
inline constexpr Message kAtTheLine{"no seam allowance", "sans couture", "ohne Nahtzugabe"};

/// On tiles.
inline constexpr Message kHowTilesLie{"How the tiles lie together",
                                      "Comment les feuilles s’assemblent",
                                      "Wie die Blätter zusammenliegen"};
inline constexpr Message kMeasureSquare{
    "Measure both sides of the square before cutting: print at 100 % (actual size),",
    "Mesurer les deux côtés du carré avant de couper : imprimer à 100 % (taille réelle),",
    "Beide Seiten des Quadrats messen, bevor geschnitten wird: mit 100 % drucken,"};
inline constexpr Message kNeverFit{
    "never “fit to page”. More than 0.5 mm off in 100 mm: stop, and set the printer right.",
    "jamais « ajuster à la page ». Plus de 0,5 mm d’écart sur 100 mm : régler l’imprimante.",
    "nie „an Seite anpassen“. Mehr als 0,5 mm Fehler auf 100 mm: erst den Drucker einstellen."};
inline constexpr Message kTileFoot{
    "{1}; full size; {2}; cut or fold on the chain lines and lay cross on cross",
    "{1} ; grandeur nature ; {2} ; couper ou plier sur les traits mixtes, croix sur croix",
    "{1}; natürliche Größe; {2}; an den Strichpunktlinien schneiden, Kreuz auf Kreuz legen"};
inline constexpr Message kAllowance{
    "{1} mm for seams included", "{1} mm de couture compris", "{1} mm Nahtzugabe enthalten"};
inline constexpr Message kNoAllowance{
    "nothing added for seams", "sans marge de couture", "ohne Nahtzugabe"};
inline constexpr Message kMapPrint{
    "Print at 100 % (actual size). On tile A1 measure the square of 100 mm, and that of 2 in, both "
    "ways, before anything is cut.",
    "Imprimer à 100 % (taille réelle). Sur la feuille A1, mesurer les carrés de 100 mm et de 2 in "
    "dans les deux sens avant de rien couper.",
    "Mit 100 % drucken. Auf Blatt A1 die Quadrate von 100 mm und 2 in in beiden Richtungen messen, "
    "ehe etwas geschnitten wird."};
inline constexpr Message kMapPaste{
    "Lay the tiles cross on cross and paste them where they overlap ({1} mm). All lengths in mm; "
    "{2}.",
    "Poser les feuilles croix sur croix et les coller où elles se recouvrent ({1} mm). Longueurs "
    "en mm ; {2}.",
    "Die Blätter Kreuz auf Kreuz legen und kleben, wo sie sich decken ({1} mm). Längen in mm; "
    "{2}."};
inline constexpr Message kMapHolds{
    "These tiles hold the pieces {1} of the cutting list. The pieces {2} belong to whole garments "
    "and are "
    "not among them: write “whole garments: yes” in the sheet to have them on tiles too, or have "
    "all of them for a cutter or a plotter: platewright pieces FILE -o pieces.dxf (or .svg).",
    "Ces feuilles portent les pièces {1} de la liste de coupe. Les pièces {2} sont celles des "
    "vêtements entiers et n’y sont pas : écrire « whole garments: yes » dans la fiche pour les "
    "avoir aussi par feuilles, ou les tirer "
    "toutes pour une machine à couper ou un traceur : platewright pieces FICHIER -o pieces.dxf (ou "
    ".svg).",
    "Diese Blätter tragen die Teile {1} der Zuschneideliste. Die Teile {2} gehören zu ganzen "
    "Kleidungsstücken und fehlen hier: „whole garments: yes“ im Blatt schreiben, um auch sie auf "
    "Blättern zu haben, oder alle für "
    "Schneidegerät oder Plotter ausgeben: platewright pieces DATEI -o pieces.dxf (oder .svg)."};
inline constexpr Message kMapDrafts{
    "Facings have the ordered shape. Backs, foreparts, sleeves and legs are drafts from the man’s "
    "measures: sew a toile first and fit it.",
    "Les parements ont la forme ordonnée. Dos, devants, manches et jambes sont tracés d’après les "
    "mesures : coudre d’abord une toile et l’essayer.",
    "Rabatten, Kragen und Aufschläge haben die befohlene Form. Rücken, Vorderteile, Ärmel und "
    "Beine folgen den Maßen des Mannes: erst ein Probestück nähen und anpassen."};

}  // namespace platewright::messages
