import type { rangeTexts as english } from "./range-texts.ts";

const SOFT: Readonly<Record<string, string>> = {
  "a valve adds notes below E2, down to C2": "ein Ventil bringt Töne unter E2 hinzu, bis hinab zu C2",
  "above F#6 is altissimo (from memory)": "über Fis6 beginnt das Altissimo-Register (aus dem Gedächtnis)",
  "as tuned in E, with 19 frets; others have more": "in E gestimmt, mit 19 Bünden; andere haben mehr",
  "as tuned in E, with four strings": "in E gestimmt, mit vier Saiten",
  "as tuned in G, with six courses; further ones go down to A1":
    "in G gestimmt, mit sechs Chören; weitere gehen hinab bis A1",
  "many have fewer frets": "viele haben weniger Bünde",
  "many players stop at E6": "bei vielen ist E6 der höchste Ton",
  "many players stop at G6 (from memory)": "bei vielen ist G6 der höchste Ton (aus dem Gedächtnis)",
  "notes far above the frets, which end at D6, are for few players":
    "Töne weit über den Bünden, die bei D6 enden, spielen nur wenige",
  "notes far above the frets, which end at G5, are for few players":
    "Töne weit über den Bünden, die bei G5 enden, spielen nur wenige",
  "read here as written an octave below its sound; some parts are at pitch":
    "hier eine Oktave unter dem Klang gelesen; manche Stimmen sind klingend notiert",
  "read here as written at pitch; some parts are written an octave lower":
    "hier klingend gelesen; manche Stimmen sind eine Oktave tiefer notiert",
  "read here as written in bass clef, at pitch; brass bands write it in treble clef, a major ninth above its sound":
    "hier im Bassschlüssel und klingend gelesen; Brassbands notieren es im Violinschlüssel, eine große None über dem Klang",
  "read here as written in treble clef; many instruments end at Eb3":
    "hier im Violinschlüssel gelesen; viele Instrumente enden bei Es3",
  "sizes differ": "die Größen sind verschieden",
  "smaller ones begin at A2 or F2 (F2 from memory)": "kleinere beginnen bei A2 oder F2 (F2 aus dem Gedächtnis)",
  "smaller ones have fewer keys": "kleinere haben weniger Tasten",
  "some go down to Eb3, and up to C7 as others do (from memory)":
    "manche gehen hinab bis Es3, und wie andere hinauf bis C7 (aus dem Gedächtnis)",
  "some handbooks end it at F#2, others at C2": "in manchen Handbüchern endet der Umfang bei Fis2, in anderen bei C2",
  "some reach D6 (from memory)": "manche erreichen D6 (aus dem Gedächtnis)",
  "some reach G4 (from memory)": "manche erreichen G4 (aus dem Gedächtnis)",
  "some reach down to C2, by a fifth string or an extension":
    "manche reichen hinab bis C2, mit einer fünften Saite oder einer Verlängerung",
  "the highest notes need keys, which many lack; some parts are written an octave higher (from memory)":
    "die höchsten Töne brauchen Klappen, die viele nicht haben; manche Stimmen sind eine Oktave höher notiert (aus dem Gedächtnis)",
  "the lowest notes depend on the valves": "die tiefsten Töne hängen von den Ventilen ab",
  "the manuals of many organs, from memory; others end at F6 or C7":
    "die Manuale vieler Orgeln, aus dem Gedächtnis; andere enden bei F6 oder C7",
  "the top note is from memory": "der höchste Ton ist aus dem Gedächtnis angegeben",
  "top notes depend on the player": "die höchsten Töne hängen davon ab, wer spielt",
  "tubas in F, Eb, C and Bb differ in their lowest notes": "Tuben in F, Es, C und B haben verschiedene tiefste Töne",
  "voices differ: you can declare a range of your own":
    "Stimmen sind verschieden: Du kannst einen eigenen Umfang festlegen",
  "voices differ: you can declare a range of your own; notes are read here as they sound, in whichever clef":
    "Stimmen sind verschieden: Du kannst einen eigenen Umfang festlegen; Töne werden hier gelesen, wie sie klingen, in welchem Schlüssel auch immer",
  "with seven strings; with six it begins at D2": "mit sieben Saiten; mit sechs beginnt der Umfang bei D2",
  "with three valves it ends at F#3, and many players reach C6 (from memory)":
    "mit drei Ventilen endet der Umfang bei Fis3, und viele erreichen C6 (aus dem Gedächtnis)",
  "worked out from the alto recorder, a tone up": "von der Altblockflöte abgeleitet, einen Ganzton höher",
};

export const rangeTexts: typeof english = {
  soft: (clause) => SOFT[clause] ?? clause,
};
