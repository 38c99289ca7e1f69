import type { AttemptRecord } from "../../../server/history/record.ts";
import type { PlanPlayer, Wanted } from "./twelve-weeks.ts";

// Invented players, each with two pieces and three aims whose tempos lie beyond twelve weeks.

const piece = (name: string, title: string): Wanted => ({
  name,
  what: "piece",
  is: ({ subject }) => subject === title,
});
const aim = (name: string, subject: string, pattern: string): Wanted => ({
  name,
  what: "aim",
  is: (record) => record.subject === subject && record.pattern === pattern,
});
/** Any form of a minor, and its arpeggios. */
const key = (what: "key" | "neighbour", name: string, subject: RegExp): Wanted => ({
  name,
  what,
  is: ({ unit, subject: own }: AttemptRecord) => unit === "notes" && subject.test(own),
});

const RECORDER: PlanPlayer = {
  name: "alto recorder",
  head: [
    "instrument alto recorder",
    'piece "Ground in G minor" as Ground: G minor, 32 bars, goal quarter=84, due 2026-05-09',
    'piece "Evening by the lock" as Evening: D major, 48 bars',
    "aim D melodic minor, thirds, slurred, 8ths at 160 by 2026-04-30",
    "aim F major, fours, tongued, 8ths at 160 by 2026-06-30",
    "aim A minor arpeggio, slurred, 8ths at 160",
  ],
  wanted: [
    piece("Ground", "Ground in G minor"),
    piece("Evening", "Evening by the lock"),
    aim("D melodic minor in thirds", "D melodic minor", "thirds"),
    aim("F major in fours", "F major", "fours"),
    aim("A minor arpeggio", "A minor arpeggio", "straight"),
    key("key", "G minor", /^G \w*\s?minor/),
    key("key", "D major", /^D major/),
    key("neighbour", "C minor", /^C \w*\s?minor/),
    key("neighbour", "D minor", /^D \w*\s?minor/),
    key("neighbour", "A major", /^A major/),
    key("neighbour", "G major", /^G major/),
  ],
};

const PIANO: PlanPlayer = {
  name: "piano, two movements",
  head: [
    "instrument piano",
    'piece "Gates"',
    'movement "Gates" 1 "Wood": Eb major, goal quarter=72, 24 bars',
    'piece "Short walk": A minor, 16 bars',
    "aim C major, 2 octaves, 8ths at 160 by 2026-05-30",
    "aim E major arpeggio, legato, 8ths at 160 by 2026-06-30",
    "aim B major, thirds, 8ths at 160",
  ],
  wanted: [
    piece("Gates", "Gates"),
    piece("Short walk", "Short walk"),
    aim("C major", "C major", "straight"),
    aim("E major arpeggio", "E major arpeggio", "straight"),
    aim("B major in thirds", "B major", "thirds"),
    key("key", "A minor", /^A \w*\s?minor/),
    key("neighbour", "E minor", /^E \w*\s?minor/),
    key("neighbour", "D minor", /^D \w*\s?minor/),
  ],
};

/** Without commas and with German names. */
const VIOLIN: PlanPlayer = {
  name: "violin, German names",
  head: [
    "names german",
    "instrument violin",
    'piece "Abendlied" as Abendlied: g-Moll, 32 bars',
    'study "Triolen am Fenster" as Triolen: B-Dur',
    "aim d-Moll melodisch Terzen gebunden Achtel at 160 by 2026-05-30",
    "aim A-Dur gebunden Achtel at 160 by 2026-06-30",
    "aim E-Dur Dreiklang Achtel at 160",
  ],
  wanted: [
    piece("Abendlied", "Abendlied"),
    piece("Triolen", "Triolen am Fenster"),
    aim("d-Moll in Terzen", "d-Moll melodisch", "thirds"),
    aim("A-Dur", "A-Dur", "straight"),
    aim("E-Dur Dreiklang", "E-Dur arpeggio", "straight"),
    key("key", "g-Moll", /^g-Moll/),
    key("key", "B-Dur", /^B-Dur/),
    key("neighbour", "c-Moll", /^c-Moll/),
    key("neighbour", "d-Moll", /^d-Moll/),
    key("neighbour", "F-Dur", /^F-Dur/),
    key("neighbour", "Es-Dur", /^Es-Dur/),
  ],
};

export const PLAYERS: readonly PlanPlayer[] = [RECORDER, PIANO, VIOLIN];
