// SPDX-License-Identifier: MIT
// How garments are put together: a step each. Common practice, no source.
#pragma once

#include "words/message.h"

namespace platewright::messages {

/// Under the table of seams.
inline constexpr Message kBreechesLengths{
    "The breeches along their seams: side {1} mm with the knee band, {2} mm with the waistband "
    "too; "
    "inside leg {3} mm with the knee band. The flats are measured straight down.",
    "La culotte le long de ses coutures : côté {1} mm avec la jarretière, {2} mm avec la ceinture "
    "aussi ; entrejambe {3} mm avec la jarretière. Les vêtements à plat se mesurent d’aplomb.",
    "Die Hose an ihren Nähten entlang: Seite {1} mm mit dem Kniebund, {2} mm auch mit dem Bund; "
    "innere Beinnaht {3} mm mit dem Kniebund. Die flach gelegten Stücke sind senkrecht gemessen."};

/// The coat.
inline constexpr Message kCoatMark{
    "Mark every seam, notch and line with thread through both layers before they are parted; write "
    "the letters on the wrong side.",
    "Marquer au fil chaque couture, cran et ligne à travers les deux épaisseurs avant de les "
    "séparer ; écrire les lettres à l’envers du drap.",
    "Jede Naht, jedes Zeichen und jede Linie mit Faden durch beide Lagen schlagen, ehe sie "
    "getrennt "
    "werden; die Buchstaben auf die linke Seite schreiben."};
inline constexpr Message kCoatCanvas{
    "Baste the canvas to the foreparts and pad it over the breast.",
    "Bâtir la toile sous les devants et la piquer à la poitrine.",
    "Die Einlage unter die Vorderteile heften und über der Brust pikieren."};
inline constexpr Message kCoatPockets{
    "Line the flaps and work their holes. Cut the mouths, sew flap and bag into each, bar the "
    "ends.",
    "Doubler les pattes, faire leurs boutonnières. Fendre les poches, y coudre patte et fond, "
    "arrêter les bouts.",
    "Die Patten füttern und ihre Knopflöcher nähen. Die Taschen einschneiden, Patte und Beutel "
    "einsetzen, die Enden verriegeln."};
inline constexpr Message kCoatLapels{
    "Line the lapels, work their holes and sew them to the front edges.",
    "Doubler les revers, faire leurs boutonnières et les coudre aux bords des devants.",
    "Die Rabatten füttern, ihre Knopflöcher nähen und sie an die Vorderkanten setzen."};
inline constexpr Message kCoatBody{
    "Sew the back seam down to its mark, then the side seams from the waist up; press them open. "
    "Inlays stay uncut.",
    "Coudre le dos jusqu’à sa marque, puis les côtés de la taille vers le haut ; ouvrir au fer. "
    "Les "
    "relarges restent entiers.",
    "Die Rückennaht bis zu ihrem Zeichen schließen, dann die Seitennähte von der Taille aufwärts; "
    "ausbügeln. Einschläge bleiben stehen."};
inline constexpr Message kCoatPleats{
    "Sew the edges of the pleats together, lay the folds on one another and tack them at the hip.",
    "Coudre ensemble les bords des plis, poser les plis l’un sur l’autre et les arrêter à la "
    "hanche.",
    "Die Faltenkanten zusammennähen, die Brüche aufeinanderlegen und an der Hüfte heften."};
inline constexpr Message kCoatShoulders{
    "Sew the shoulders; try the body on before the lining goes in.",
    "Coudre les épaules ; essayer le corps avant de doubler.",
    "Die Schultern schließen; anprobieren, ehe das "
    "Futter "
    "hineinkommt."};
inline constexpr Message kCoatLining{
    "Join the lining by the same letters, baste it in wrong side to wrong side, fell it to edges "
    "and "
    "pleats.",
    "Assembler la doublure par les mêmes lettres, la bâtir envers contre envers, la rabattre aux "
    "bords et aux plis.",
    "Das Futter nach denselben Buchstaben zusammennähen, links auf links einheften, an Kanten und "
    "Falten anstaffieren."};
inline constexpr Message kCoatCollar{
    "Pad the stiff linen to the under collar, sew the two collars round their outer edge, turn "
    "them. "
    "Sew to the neck from the middle of the back outward, notch on shoulder, the lapels’ ends in "
    "the seam; fell the upper collar over it.",
    "Piquer la toile au dessous de collet, coudre les deux collets au bord, retourner. Coudre à "
    "l’encolure du milieu du dos vers les bords, cran sur l’épaule, les bouts des revers dans la "
    "couture ; rabattre le dessus.",
    "Steifleinen auf den Unterkragen pikieren, beide Kragen an der Außenkante verbinden, wenden. "
    "Von der Rückenmitte nach außen an den Hals nähen, Zeichen auf die Schulternaht, die Enden der "
    "Rabatten in die Naht; den Oberkragen darüberstaffieren."};
inline constexpr Message kCoatSleeves{
    "Set the marks on while the upper sleeve lies flat, their ends into its seams; sew fore arm "
    "and "
    "hind arm seams, pull the lining in.",
    "Poser les marques sur le dessus de manche à plat, leurs bouts dans les coutures ; coudre "
    "saignées et coudes, passer la doublure.",
    "Abzeichen aufsetzen, solange der Oberärmel flach liegt, ihre Enden in die Nähte; vordere und "
    "hintere Ärmelnaht schließen, das Futter einziehen."};
inline constexpr Message kCoatCuffs{
    "Close the cuffs to rings and sew them to the hems of the sleeves, their notches on its seams; "
    "turn them up.",
    "Fermer les parements en anneaux, les coudre au bas des manches, crans sur coutures ; les "
    "relever.",
    "Die Aufschläge zum Ring schließen, an die Ärmelsäume nähen, Zeichen auf die Ärmelnähte; "
    "umschlagen."};
inline constexpr Message kCoatSetIn{
    "Set the sleeves in notch on notch, plain under the arm, eased over the crown; fell the lining "
    "over the seam.",
    "Monter les manches cran sur cran, à plat sous le bras, soutenues à la tête ; rabattre la "
    "doublure.",
    "Die Ärmel einsetzen, Zeichen auf Zeichen, unter dem Arm glatt, an der Kugel eingehalten; das "
    "Futter anstaffieren."};
inline constexpr Message kCoatTurnbacks{
    "Face the corners of the skirts, fold them on their lines and fasten them; the hem is level "
    "only "
    "then.",
    "Garnir les coins des basques, les plier sur leurs lignes et les arrêter ; le bas n’est de "
    "niveau "
    "qu’alors.",
    "Die Schoßecken besetzen, an ihren Linien umschlagen und befestigen; erst dann ist der Saum "
    "gerade."};
inline constexpr Message kCoatButtons{
    "Straps and buttons last. Close, well-fulled cloth may be left raw at hems and cuffs; any "
    "other "
    "is turned in.",
    "Pattes d’épaule et boutons en dernier. Un drap serré et bien foulé peut rester à cru aux "
    "bords ; "
    "tout autre se rentre.",
    "Achselklappen und Knöpfe zuletzt. Dichtes, gut gewalktes Tuch darf an Säumen und Aufschlägen "
    "offenkantig bleiben; jedes andere wird eingeschlagen."};

/// The waistcoat.
inline constexpr Message kWaistcoatPockets{
    "Cut the mouths in the foreparts, sew in the lined flaps and the bags.",
    "Fendre les poches des devants, y coudre les pattes doublées et les fonds.",
    "Die Taschen in den Vorderteilen einschneiden, gefütterte Patten und Beutel einsetzen."};
inline constexpr Message kWaistcoatFronts{
    "Sew the facings to the lining, turn the front edges in over a strip of stout linen.",
    "Coudre les parementures à la doublure, rentrer les bords des devants sur une bande de forte "
    "toile.",
    "Die Besätze an das Futter nähen, die Vorderkanten über einen Streifen festes Leinen "
    "einschlagen."};
inline constexpr Message kWaistcoatSeams{
    "Sew side and shoulder seams of cloth and of lining, the back seam of each as far as it is "
    "closed.",
    "Coudre côtés et épaules de l’étoffe et de la doublure, et le dos de chacune jusqu’où il est "
    "fermé.",
    "Seiten- und Schulternähte von Oberstoff und Futter schließen, die Rückennaht von beiden, so "
    "weit "
    "sie geschlossen ist."};
inline constexpr Message kWaistcoatLining{
    "Fell the lining round neck, armholes and hem.",
    "Rabattre la doublure autour de l’encolure, des emmanchures et du bas.",
    "Das Futter an Hals, Armlöchern und Saum anstaffieren."};
inline constexpr Message kWaistcoatHoles{"Work the buttonholes, sew on buttons and tapes.",
                                         "Faire les boutonnières, coudre boutons et rubans.",
                                         "Knopflöcher nähen, Knöpfe und Bänder ansetzen."};

/// Breeches.
inline constexpr Message kBreechesFall{
    "Cut the slits of the fall and face them; set the bearers behind, a bar at the foot of each "
    "slit.",
    "Fendre le pont, garnir les fentes ; poser les dessous derrière, une bride au pied de chaque "
    "fente.",
    "Die Schlitze des Latzes einschneiden und belegen; die Untertritte dahinter setzen, an jedem "
    "Schlitzfuß ein Riegel."};
inline constexpr Message kBreechesPockets{
    "Sew the welts to the mouths of the pockets, then the bags.",
    "Coudre les passepoils aux ouvertures des poches, puis les fonds.",
    "Die Leisten an die Tascheneingriffe nähen, dann die Beutel."};
inline constexpr Message kBreechesLegs{
    "Sew side seams and inner seams mark on mark; leave the side open below, where it is buttoned.",
    "Coudre côtés et entrejambes cran sur cran ; laisser le côté ouvert en bas, où il se boutonne.",
    "Seiten- und Schrittnähte schließen, Zeichen auf Zeichen; die Seite unten offen lassen, wo sie "
    "geknöpft wird."};
inline constexpr Message kBreechesSeat{
    "Join the legs from the front over the fork up the seat, twice; leave what the gusset fills. "
    "Sew the linings by the same letters and baste them in.",
    "Assembler les jambes du devant par la fourche jusqu’au fond, à double couture ; laisser la "
    "place "
    "du soufflet. Assembler les doublures par les mêmes lettres, les bâtir dedans.",
    "Die Beine von vorn über den Schritt zum Gesäß verbinden, doppelt genäht; offen lassen, was "
    "der Zwickel füllt. Das Futter nach denselben Buchstaben nähen und einheften."};
inline constexpr Message kBreechesBand{
    "Gather the seat into the waistband between its notches; line the band, work the eyelets, let "
    "in "
    "the gusset.",
    "Froncer le fond dans la ceinture entre ses crans ; doubler la ceinture, faire les œillets, "
    "poser "
    "le soufflet.",
    "Das Gesäß zwischen den Zeichen in den Bund einreihen; den Bund füttern, Schnürlöcher nähen, "
    "den "
    "Zwickel einsetzen."};
inline constexpr Message kBreechesKnee{
    "Turn in the edges of the knee openings, sew the legs into the bands folded lengthwise; buckle "
    "to the outer "
    "side.",
    "Rentrer les bords des fentes aux genoux, prendre les jambes dans les jarretières pliées en "
    "long ; boucle "
    "en "
    "dehors.",
    "Die Kanten der Knieschlitze einschlagen, die Beine in die längs gefalteten Kniebänder nähen; "
    "Schnalle nach "
    "außen."};
inline constexpr Message kBreechesButtons{
    "Work the holes of band, fall and knees; sew on the buttons when the breeches have been tried "
    "on.",
    "Faire les boutonnières de la ceinture, du pont et des genoux ; les boutons après l’essayage.",
    "Knopflöcher an Bund, Latz und Knien nähen; die Knöpfe erst nach der Anprobe."};

/// Gaiters.
inline constexpr Message kGaitersFaces{
    "Face the edges that open with linen; work the holes before the sides are joined.",
    "Garnir de toile les bords qui s’ouvrent ; faire les boutonnières avant d’assembler.",
    "Die offenen Kanten mit Leinen belegen; die Knopflöcher nähen, ehe die Seiten verbunden "
    "werden."};
inline constexpr Message kGaitersSeams{
    "Sew the front seam from the instep up and the seam behind; open them, stitch them down on "
    "both "
    "sides.",
    "Coudre le devant du cou-de-pied vers le haut, puis le derrière ; ouvrir et piquer des deux "
    "côtés.",
    "Die vordere Naht vom Rist aufwärts schließen, dann die hintere; auseinanderlegen und auf "
    "beiden "
    "Seiten niedernähen."};
inline constexpr Message kGaitersEdges{
    "Turn in top and foot; lay the hole edge on the buttons’ line over the man’s leg before the "
    "buttons go on.",
    "Rentrer le haut et le pied ; poser le bord à boutonnières sur la ligne, sur la jambe même, "
    "avant "
    "les boutons.",
    "Oben und am Fuß einschlagen; die Lochkante am Bein des Mannes auf die Knopflinie legen, ehe "
    "die "
    "Knöpfe angenäht werden."};
inline constexpr Message kGaitersStraps{
    "Sew the foot strap to the inner side and its button to the outer; the garter is loose.",
    "Coudre le sous-pied au côté intérieur, son bouton à l’extérieur ; la jarretière est libre.",
    "Den Steg an die Innenseite nähen, seinen Knopf außen; das Strumpfband bleibt lose."};

}  // namespace platewright::messages
