import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const SAMPLES = new URL("../../samples", import.meta.url).pathname;

/** Each journal of the samples in one text: its declarations before its days. */
export function sampleJournals(): readonly string[] {
  const files = readdirSync(SAMPLES, { recursive: true, encoding: "utf8" }).filter((path) =>
    path.endsWith(".practice"),
  );
  return files.filter((path) => !path.includes("year")).map((path) => readFileSync(join(SAMPLES, path), "utf8"));
}

/** A journal in German, with something of everything; invented. */
export const GERMAN_JOURNAL = `-- Erfundenes Tagebuch.
player Wiebke
instrument Altblockflöte
instrument Geige
pitch A=415, Vallotti
names german
hide notes
note value 8ths
usual articulation gestoßen
piece "Abendlied" as Abendlied: g-Moll, 48 bars, goal quarter=72, due 2026-05-09
piece "Reigen": last note G4, 1 flat, range D4 to G5
movement "Abendlied" 2 "Gigue": B-Dur, goal quarter=60
concert "Vorspiel" on 2026-05-09: "Abendlied"
study "Triolen": B-Dur
aim d-Moll melodisch, Terzen, Achtel at 96 by 2026-04-30
set "Zeile 4 klatschen" by 2026-04-09
pattern "Zickzack": 1 3 2 4, step 2
scale "Wald": 1 b2 3 4 5 b6 7
focus "Daumen"
phase "Kapelle"
activity "Hören"
articulation "weich": single
outcome "geht so": nearly
2026-03-02 Mon, 40 min
warm-up, 5 min
  lange Töne on f' c'', 3 min
groundwork, 20 min
  D-Dur: D E Fis G A H C D, 2 sharps
  d-Moll melodisch, Terzen, gestoßen, Achtel at 60 clean, 66 clean 5 in a row, 72 uneven
    -- bis cis'' hakt es noch, müde
  B-Dur > Es-Dur > As-Dur, gebunden, slow
  C-Dur, T T S T T T S, Viertel at 60 clean
pieces, 15 min
  Abendlied, bars 1-16, at 54 clean
  Reigen, 8 min

2026-03-16 Mon, 30 min
session 19:30, 40 min
groundwork, 15 min
  fis-Moll harmonisch: fis gis a h cis d eis fis
  g-Moll arpeggio, 2 oct, gebunden, at 54 clean, 60 nearly
  d-Moll melodisch, Terzen, gebunden, Achtel at 66 clean, 69 clean
  d-Moll melodisch, Terzen, gestoßen, Achtel at 66 clean, 72-76 clean
  C vermindert 7 arpeggio, at 50 clean
  C Ganztonleiter, dotted, at 60 nearly
  D-Dur, "Zickzack", at 60 geht so
  notes e'' f'', back and forth, gebunden, at 60 clean 4 of 5
break 5 min
pieces, 15 min
  Triolen, lines 1-3, at 60 nearly
  F-Dur, 60
  Hören, 10 min

2026-03-30 Mon, rest
2026-04-01 Wed
plan
  F-Dur, tu ku, on Geige, 5 min
  C-Dur leaps at 60
  Daumen tut weh
`;
