import fc from "fast-check";

// Lines that teach titles, or name them in other words.

const TITLES = [
  "The Sleepy Frog",
  "Sleepy Frog",
  "Frog",
  "the sleepy frog",
  "Late Bus Home",
  "LATE BUS HOME",
  "Late Bus",
  "Bus",
  "Heron's Dance",
  "Return of the Heron",
  "Minuet",
  "Minuet in G",
  "Study 14",
  '"Winter Air"',
  "Winter Air",
  "Ground in G minor",
];
const BEHIND = [
  " at 60",
  ", bars 1-8",
  ", line 1 at 60 clean",
  " B: 72 ok",
  " with the CD, too fast",
  " all, 1 mistake",
  " good",
  " 2 times good",
  " 10 min",
  " in Ab, bridge, 120",
  " A by memory, slip in bar 6",
  " was fun today",
  " and the Fly, bars 1-4",
  " – head @ 168",
  " – The Sleepy Frog",
  "",
];
const BEFORE = ["", "", "", "", "easy ", "worked on ", "no ", "i like ", "10 min ", "Return of ", "The – "];

export const titleLine = fc
  .tuple(fc.constantFrom(...BEFORE), fc.constantFrom(...TITLES), fc.constantFrom(...BEHIND))
  .map((parts) => parts.join(""));
