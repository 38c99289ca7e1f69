import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { CODES, type Code } from "../../../server/checks/codes.ts";
import { diagnosticsIn } from "./diagnosed.ts";

// What is said of each of samples/errors to somebody who reads German, to be read aloud. German of the editor, English
// of the journal: names stay as they are written. Terms of music: as German primers have them, from memory.

const ERRORS = join(import.meta.dirname, "../../../samples/errors");

const MESSAGES: Readonly<Record<Code, string>> = {
  "bad-date":
    "2026/03/02 hat nicht die Form Jahr-Monat-Tag, darum haben die Zeilen darunter kein Datum. Meinst du 2026-03-02?",
  "bad-minutes": "„1 h 75“ ist keine mögliche Dauer: 1 bis 1440 Minuten am Tag, 0 bis 59 nach den Stunden.",
  "conflict-marker":
    "Behalte die richtigen Zeilen und lösch die Markierungen: Zwei Fassungen dieses Tagebuchs wurden zusammengeführt, und diese Markierung ist stehen geblieben.",
  "bad-declaration": "`instrument` gilt für das ganze Tagebuch: Schreib es über den ersten Tag.",
  "line-too-long":
    "Teil diese Zeile in mehrere auf: Sie hat 4098 Zeichen und wurde nicht gelesen. Eine Zeile darf höchstens 4096 haben.",
  "scale-note": "G harmonic minor hat F#, nicht F: Die siebte Stufe ist erhöht.",
  "missing-note": "G fehlt zwischen F# und A: D major hat hier F# G A.",
  "extra-note": "D major hat kein G#: Hier geht es von G nach A.",
  "arpeggio-note": "D minor arpeggio hat F, nicht F#: Die Terz liegt eine kleine Terz über D.",
  "pattern-notes": "Die vierte Terz aufwärts ist F A, nicht F B.",
  "key-signature": "D major hat 2 Kreuze (F# C#), nicht 3 Kreuze. 3 Kreuze gehören zu A major und F# minor.",
  "step-formula":
    "Der sechste Schritt von D major (B bis C#) umfasst einen Ganzton, nicht einen Halbton: T T S T T T S.",
  "scale-spelling": "F# major hat E#, nicht F: Die siebte Stufe hat den Stammton E.",
  "out-of-range": "E4 gibt es auf diesem Instrument nicht (Altblockflöte: F4 bis G6, wie notiert).",
  "wrong-weekday": "2026-03-02 ist ein Montag, kein Dienstag. Entweder das Datum oder der Wochentag stimmt nicht.",
  "day-order": "2026-03-05 kommt nach 2026-03-06, aber in dieser Datei steht der älteste Tag zuerst. Stimmt das Datum?",
  "duplicate-day":
    "2026-03-02 steht schon weiter oben, in Zeile 2. Für eine zweite Übeeinheit schreib `session` unter jenen Tag.",
  "future-day": "2062-03-02 liegt in der Zukunft. Schreib `plan` dazu oder prüf das Datum.",
  "tempo-range": "„at 600“ liegt nicht zwischen 20 und 400 Schlägen in der Minute. Eine Ziffer zu viel oder zu wenig?",
  "duplicate-declaration": "`pitch A=440`: Das ist schon festgelegt, und das Erste gilt. Lösch eines von beiden.",
  "ambiguous-subject": "Ein kleines g kann Dur oder Moll sein. Meinst du „G major“ oder „G minor“?",
  "unknown-key": "Es gibt keinen Ton H unter den englischen Tonnamen. Meinst du „B major“?",
  "no-day": "Über dieser Zeile steht kein Datum. Schreib eines in der Form Jahr-Monat-Tag, wie `2026-03-02`.",
  "theoretical-key": "G# major bräuchte 8 Kreuze (F mit Doppelkreuz). Üblich ist der Name Ab major (4 b).",
  "chromatic-spelling":
    "Alle Töne klingen richtig. Chromatische Tonleitern schreibt man meist auf eine dieser Weisen. Aufwärts mit Kreuzen, abwärts mit b: C C# D D# E F F# G G# A A# B C. Wie in der Tonart, aufwärts und abwärts gleich: C Db D Eb E F F# G Ab A Bb B C.",
  "minutes-sum": "Die Teile darunter ergeben zusammen 45 Minuten, mehr als die 30 hier.",
  "tempo-leap":
    "100 ist über anderthalbmal so schnell wie dein Bestes vorher, 60 am 2026-05-04. Wenn das stimmt, lass es so. Sonst prüf Ziffern, Zählzeit und Notenwert.",
  "long-stretch":
    "Etwa 80 Minuten, und keine Pause notiert: Gab es welche? `break, 10 min` notiert eine. Wenn etwas wehtut, hör auf, ruh dich aus und sag es deiner Lehrkraft; bleibt es oder kommt es wieder, lass es ärztlich abklären.",
  "aim-past": "Der Tag für dieses Ziel ist vorbei. Setz einen neuen oder lösch die Zeile.",
  "aim-far":
    "Wenn es weitergeht wie zuletzt, läge das am 2026-06-30 bei etwa 69. Ein späterer Tag oder ein näheres Ziel lässt Raum, gelöst zu spielen.",
  "other-scale":
    "Das sind die Töne von E harmonic minor. Moll allein heißt hier natürliches Moll: Schreib dazu, dass es harmonisches Moll ist, wenn du das gespielt hast.",
  prose: "Bleibt, wie es da steht, und zählt nicht. Eine Bemerkung beginnt mit `--`.",
  "unknown-term":
    "„claen“ kenne ich nicht. Hierher passen ein Muster, eine Artikulation, ein Tempo oder wie es ging. Meinst du „clean“?",
  "unknown-pattern":
    'Ein Muster „zigzag“ gibt es noch nicht. Leg es mit seinen Stufen fest: `pattern "zigzag": 1 3 2 4`.',
  "no-subject":
    "Schreib zuerst, was du gespielt hast: eine Tonleiter (`D minor`), Töne (`notes E5 F5`) oder einen Titel in Anführungszeichen.",
  "outcome-order": "Wie es ging, kommt nach dem Tempo: „at 60 clean“.",
  "repeated-term":
    "„thirds“ steht schon in dieser Zeile. Schreib „fourths“ in eine eigene Zeile oder streich eines von beiden.",
  "unknown-declaration": "„instrumnet“ ist keine Festlegung. Meinst du `instrument`?",
  "unclosed-quote": "Nach dem Namen fehlt das schließende Anführungszeichen.",
  "unknown-title": "„Evening song“ ist noch nicht festgelegt, darum sind Tonart und Ziel nicht bekannt.",
};

test.each(Object.keys(CODES) as Code[])("%s", (code) => {
  const files = readdirSync(join(ERRORS, code)).map((name) => [name, readFileSync(join(ERRORS, code, name), "utf8")]);
  const own = diagnosticsIn(Object.fromEntries(files)).filter((each) => each.code === code);
  expect(own.map(({ message }) => message)).toContain(MESSAGES[code]);
});
