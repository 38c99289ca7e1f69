import type { soundTexts as english } from "./sound-texts.ts";

export const soundTexts: typeof english = {
  howToBegin:
    "Beginn mit dem, was klingen soll: click at 60, drone on D, play through at 60 oder compare F# against D.",
  barsOfAClick: "Sag bei einem Klick, wie viele Takte er klingt und wie viele nicht: click at 60, 2 bars on, 2 off.",
  notesMissing: "Sag, auf welchen Tönen, bis zu vier, oder auf welcher Stufe: drone on D A, drone on the fifth.",
  twoNotes: "Sag, welcher Ton gegen welchen: compare F# against D, compare the third against the first.",
  temposMissing: "Sag, in welchen Tempi, bis zu acht: at 52, 60.",
  notHeard: (words) => `Von „${words}“ ist hier nichts zu hören: Nenn Tempi, einen Notenwert, Takte oder Minuten.`,
  uneven:
    "Diese Notenwerte füllen einen Schlag oder einen Takt nicht gleichmäßig: Nenn andere oder den Schlag, wie in click eighth=120.",
  nothingToPlay: "Vorgespielt werden können nur Tonleitern und Arpeggien, und in dieser Zeile ist keines davon.",
  noSuchBars: "Solche Takte hat die Übung nicht.",
  noDegrees: "Nenn die Töne: Diese Zeile hat keine Tonart, aus der sich Stufen ergeben.",
  notFaster: (bpm) => `Heute klingt nichts schneller als ${bpm}.`,
  at: (bpm) => `Tempo ${bpm}`,
  drone: "Bordun",
  asTuned: "wie gestimmt",
  pure: "rein",
};
