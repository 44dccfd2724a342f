// SPDX-License-Identifier: MIT
// What a recruit's own sheets say.
#pragma once

#include "words/message.h"

namespace platewright::messages {

/// Headings.
inline constexpr Message kContents{"Contents", "Sommaire", "Inhalt"};
inline constexpr Message kTheUnit{"The unit", "L’unité", "Die Einheit"};
inline constexpr Message kWhatToGet{"What to get", "À se procurer", "Was zu beschaffen ist"};
inline constexpr Message kWhatToWear{"What to wear when", "Les tenues", "Was wann getragen wird"};
inline constexpr Message kWhereMarksGo{
    "Where the marks go", "La place des marques", "Wo die Abzeichen sitzen"};
inline constexpr Message kPuttingOn{"How to put it on", "Pour s’habiller", "Wie man es anlegt"};
inline constexpr Message kCare{"How to care for it", "L’entretien", "Wie man es pflegt"};
inline constexpr Message kBeforeYouMarch{
    "Before you march", "Avant de marcher", "Bevor du marschierst"};

/// The kit list.
inline constexpr Message kItem{"Item", "Objet", "Stück"};
inline constexpr Message kMaterial{"Material", "Matière", "Stoff"};
inline constexpr Message kQuantity{"Quantity", "Nombre", "Anzahl"};
inline constexpr Message kHow{"How", "Comment", "Wie"};
inline constexpr Message kCost{"Cost", "Prix", "Preis"};
inline constexpr Message kSourceHead{"Source", "Source", "Quelle"};
inline constexpr Message kFirstMuster{
    "Before the first muster", "Avant le premier rassemblement", "Vor der ersten Musterung"};
inline constexpr Message kSeason{"Within the season", "Dans la saison", "Im Laufe des Jahres"};
inline constexpr Message kLater{"Later", "Plus tard", "Später"};
inline constexpr Message kBorrowUntilThen{
    "To be borrowed until then", "À emprunter en attendant", "Bis dahin zu leihen"};
inline constexpr Message kMake{"make", "faire", "nähen"};
inline constexpr Message kBuy{"buy", "acheter", "kaufen"};
inline constexpr Message kBorrow{"borrow", "emprunter", "leihen"};
inline constexpr Counted kPairs{{"{1} pair", "{1} paire", "{1} Paar"},
                                {"{1} pairs", "{1} paires", "{1} Paar"}};
inline constexpr Message kFrom{"from {1}", "chez {1}", "von {1}"};
inline constexpr Message kForOrder{"for {1}", "pour : {1}", "für: {1}"};
inline constexpr Message kStageTotal{"{1} ({2})", "{1} ({2})", "{1} ({2})"};
inline constexpr Message kTotal{"All together: {1}", "En tout : {1}", "Zusammen: {1}"};
inline constexpr Counted kAndWithoutPrice{{"{2}, and {1} thing without a price",
                                           "{2}, et {1} objet sans prix",
                                           "{2}, dazu {1} Stück ohne Preis"},
                                          {"{2}, and {1} things without a price",
                                           "{2}, et {1} objets sans prix",
                                           "{2}, dazu {1} Stücke ohne Preis"}};

/// Orders of dress.
inline constexpr Message kWith{"with {1}", "avec : {1}", "mit: {1}"};
inline constexpr Message kWithout{"without {1}", "sans : {1}", "ohne: {1}"};
inline constexpr Message kAsInFullDress{
    "all that is numbered on the first page; marks once earned",
    "tout ce qui porte un numéro à la première page ; les marques une fois acquises",
    "alles, was auf der ersten Seite eine Nummer hat; Abzeichen, wenn erworben"};

/// The large figures.
inline constexpr Message kFromBehind{"From behind", "De dos", "Von hinten"};
inline constexpr Message kWhenEarned{"Sewn on when they are earned, not before: {1}.",
                                     "À ne coudre qu’une fois acquis : {1}.",
                                     "Erst aufzunähen, wenn sie erworben sind: {1}."};

/// Marks.
inline constexpr Message kAsOrdered{"as ordered", "ordonnance", "Vorschrift"};
inline constexpr Message kWidthOfEach{"width of each", "largeur de chaque", "Breite je Stück"};
inline constexpr Message kBetweenTwo{"free between two", "intervalle", "Abstand"};
inline constexpr Message kBelowLowest{"free below", "libre au-dessous", "frei darunter"};

/// Cautions: a subject, and what is to be said of it.
inline constexpr Message kBlades{"Blades and arms", "Armes", "Waffen"};
inline constexpr Message kBladesWords{
    "Bayonet and sword stay in their scabbards, and the musket unloaded, unless the one who "
    "commands says otherwise. Who may carry, transport or fire what is for local law and the rules "
    "of the event; both go before these pages.",
    "La baïonnette et le sabre restent au fourreau et le fusil déchargé, sauf ordre de celui qui "
    "commande. Ce que chacun peut porter, transporter ou tirer relève de la loi du lieu et du "
    "règlement de la manifestation ; tous deux priment sur ces pages.",
    "Bajonett und Säbel bleiben in der Scheide und das Gewehr ungeladen, solange der Führende "
    "nichts anderes befiehlt. Wer was führen, befördern oder abfeuern darf, sagen das Gesetz des "
    "Ortes und die Regeln der Veranstaltung; beide gehen diesen Blättern vor."};
inline constexpr Message kHeat{"Heat", "Chaleur", "Hitze"};
inline constexpr Message kHeatWords{
    "Wool keeps the sun’s heat in. Drink before you are thirsty, open stock and coat at every "
    "halt, "
    "and fall out in time.",
    "Le drap garde la chaleur. Buvez avant d’avoir soif, ouvrez le col et l’habit à chaque halte, "
    "et "
    "sortez du rang à temps.",
    "Wolle hält die Hitze. Trink, bevor du Durst hast, öffne bei jedem Halt Halsbinde und Rock, "
    "und "
    "tritt rechtzeitig aus."};
inline constexpr Message kOldGarments{"Old garments", "Pièces anciennes", "Alte Stücke"};
inline constexpr Message kOldGarmentsWords{
    "What is old is not for wear: show it to a museum, copy it, and leave it as it is.",
    "Ce qui est ancien ne se porte pas : montrez-le à un musée, copiez-le, et laissez-le tel quel.",
    "Was alt ist, wird nicht getragen: zeig es einem Museum, mach es nach und lass es, wie es "
    "ist."};
inline constexpr Message kDecorations{"Decorations", "Décorations", "Orden"};
inline constexpr Message kDecorationsWords{
    "Wear the marks of the rank and service you have in the unit, and no medal or order that is "
    "given to the living; in many countries the law forbids it.",
    "Portez les marques du grade et de l’ancienneté que vous avez dans l’unité, et aucune médaille "
    "ni "
    "ordre qui se donne de nos jours ; dans bien des pays la loi l’interdit.",
    "Trag die Abzeichen des Grades und der Dienstzeit, die du in der Einheit hast, und keinen "
    "Orden, "
    "der heute verliehen wird; in vielen Ländern verbietet es das Gesetz."};
inline constexpr Message kPrintScale{"Print scale", "Échelle", "Maßstab"};
inline constexpr Message kPrintScaleWords{
    "Print at full size (100 per cent, no fitting to the page). The measures count, not the "
    "picture.",
    "Imprimez en grandeur réelle (100 pour cent, sans ajuster à la page). Les mesures comptent, "
    "non "
    "l’image.",
    "Druck in voller Größe (100 Prozent, nicht an die Seite angepasst). Es gelten die Maße, nicht "
    "das "
    "Bild."};
inline constexpr Message kCheckBar{"50 mm: measure it before you cut anything by these pages.",
                                   "50 mm : mesurez-les avant de rien couper d’après ces pages.",
                                   "50 mm: miss nach, bevor du nach diesen Blättern schneidest."};

}  // namespace platewright::messages
