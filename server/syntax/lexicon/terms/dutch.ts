import { joined } from "../joined.ts";
import type { TermTable } from "./term-table.ts";

/** Dutch terms: from memory, no source. */
export const DUTCH_TERMS: TermTable = {
  noteValues: {
    "1/1": "hele noten",
    "1/2": "halve noten | halven",
    "1/4": "kwarten | kwart | kwartnoten | in kwartnoten",
    "1/8": "achtsten | achtste | achtste noten | in achtsten",
    "1/16": "zestienden | zestiende | zestiende noten | in zestienden | 16en | 16den",
    "1/32": "tweeëndertigsten",
    "1/12": "triolen | triool | achtstetriolen | in triolen",
    "1/24": "sextolen",
  },
  directions: {
    up: "omhoog | alleen omhoog | stijgend | opwaarts | naar boven",
    down: "omlaag | alleen omlaag | dalend | naar beneden",
    "up and down": joined(
      "op en neer | omhoog en omlaag | stijgend en dalend | op en af | heen en terug | naar boven en beneden",
    ),
    "back and forth": "heen en weer",
  },
  rhythms: {
    even: "gelijkmatig",
    dotted: joined(
      "gepunteerd | gepunteerde | gepunteerd ritme | gepuncteerd | gepunteerde ritmes | in gepunteerd ritme",
      "lang kort",
    ),
    "reverse dotted": "omgekeerd gepunteerd | kort lang",
    swung: "geswingd | met swing | swingend",
  },
  patterns: {
    thirds: "tertsen | in tertsen | gebroken tertsen | tertsenladder | toonladder in tertsen",
    fourths: "in kwarten",
    fifths: "kwinten | in kwinten",
    sixths: "sexten | in sexten | gebroken sexten",
    sevenths: "septimen | in septimen",
    octaves: "gebroken octaven | in octaven",
    threes: "groepjes van drie | groepjes van 3 | in drieën",
    fours: "groepjes van vier | groepjes van 4 | in vieren",
    tenths: "decimen | in decimen",
    fives: "groepjes van vijf | groepjes van 5 | in vijven",
  },
  groups: "groepjes van | groepen van",
  slow: joined(
    "langzaam | heel langzaam | heel erg langzaam | héél langzaam | rustig tempo | langzaam tempo | half tempo",
    "op half tempo | slakkentempo | supertraag | traag | heel traag | in slow motion",
  ),
  manners: {
    "hands together": joined(
      "handen samen | twee handen | beide handen | handen tegelijk | met twee handen | met beide handen",
    ),
    "hands separate": joined(
      "handen apart | handen los | elke hand apart | handen afzonderlijk | losse handen | hand voor hand",
    ),
    "left hand": joined(
      "linkerhand | linker hand | alleen links | alleen linkerhand | links | linkerhand alleen | linkerhand apart",
    ),
    "right hand": joined(
      "rechterhand | rechter hand | alleen rechts | alleen rechterhand | rechts | rechterhand alleen",
      "rechterhand apart",
    ),
    "at the frog": "aan de slof",
    "at the tip": "aan de punt",
    "whole bows": "hele streek | hele streken",
    "up bow": "opstreek",
    "down bow": "afstreek",
    "by heart": joined(
      "uit het hoofd | van buiten | uit 't hoofd | uit hoofd | uit mijn hoofd | zonder bladmuziek | zonder muziek",
    ),
    "at sight": "van blad",
    "by ear": "op gehoor | op het gehoor",
    "upper half": "bovenste helft van de stok | bovenhelft",
    "lower half": "onderste helft van de stok | onderhelft",
    "middle of the bow": "midden van de stok | in het midden van de stok",
    "contrary motion": "tegenbeweging | in tegenbeweging",
    "similar motion": "parallelle beweging | parallelbeweging",
    "with mute": "met demper | met sourdine",
  },
  octave: "octaven | octaaf | oct | oct.",
  degrees: "noten | tonen",
  fullRange: "hele omvang | volledige omvang",
  twelfth: "duodecime",
  numbers: "twee | drie | vier",
  minutes: "minuten | minuut | min | min. | minuutjes",
  hours: "uur | uren | u",
  amounts: {
    15: "kwartier | een kwartier | kwartiertje | 1/4 uur | kwartiertjes",
    30: "half uur | een half uur | halfuur | half uurtje | half uur lang | 1/2 uur | ruim half uur",
    45: "drie kwartier | drie kwartier lang | 3/4 uur",
    60: "een uur | uurtje | een uurtje | 1 uurtje",
    90: "anderhalf uur",
  },
  each: "elk | ieder | per stuk",
  about: "ca | ca. | circa | ongeveer | zo'n",
};
