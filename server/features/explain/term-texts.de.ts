import { numberTexts } from "../../music/notes/number-texts.de.ts";
import type { termTexts as english } from "./term-texts.ts";

const COUNTS = ["Keine", "Eine", "Zwei", "Drei", "Vier", "Fünf", "Sechs", "Sieben", "Acht"];

export const termTexts: typeof english = {
  rhythm: (signs) => `Lange (L) und kurze (S) Töne in dieser Reihenfolge, immer wieder: ${signs}.`,
  times: (count) =>
    `${count === 1 ? "Einmal" : `${count}-mal`} gespielt: wie oft die Zeile gespielt wurde, keine Versuche.`,
  amount: (minutes, about, each) =>
    `${about ? "Etwa " : ""}${minutes} ${minutes === 1 ? "Minute" : "Minuten"}${each ? " je Übung" : ""}.`,
  impossibleAmount: "So eine Dauer gibt es nicht.",
  focus: (words) => `Worauf gehört wird: „${words}“.`,
  sore: (words) =>
    `Etwas tut weh: „${words}“. Schone es und sag es deiner Lehrkraft; wenn es anhält oder wiederkommt, geh zu einer Ärztin oder einem Arzt.`,
  with: (words) => `Mit „${words}“.`,
  manner: (id) => `Wie gespielt wurde: „${id}“.`,
  technique: "Eine Technik: Sie zählt wie eine Übung, unter ihrem Namen.",
  declaredPhase: (id) => `Eine Phase, die dieses Tagebuch festlegt: ${id}.`,
  weekday: (name) => `${name}.`,
  halfOnly: (way) => ` Hier nur für den Weg ${way === "up" ? "aufwärts" : "abwärts"}.`,
  verdicts: {
    reached: "Es ging gut; das Tempo gilt als erreicht.",
    nearly: "Nicht ganz; das Tempo gilt nicht als erreicht.",
    not: "Es ging nicht gut; das Tempo gilt nicht als erreicht.",
  },
  slur: (groups) => {
    const parts = groups.map((size) => (size === "1" ? "einer gestoßen" : `${size} gebunden`)).join(", ");
    return `${parts.charAt(0).toUpperCase()}${parts.slice(1)}, immer wieder.`;
  },
  declaredArticulation: (id) => `Eine Artikulation, die dieses Tagebuch festlegt: ${id}.`,
  tonguedWith: (syllable) => `Jeder Ton mit ${syllable} gestoßen.`,
  tonguedInTurn: (syllables) => `Mit den Silben ${syllables} im Wechsel gestoßen.`,
  beatsToNote: (beats) =>
    `${COUNTS[beats] ?? numberTexts.decimal(beats)} ${beats === 1 ? "Viertel" : "Viertelschläge"} auf jede Note.`,
  notesToBeat: (notes) => `${COUNTS[notes] ?? notes} ${notes === 1 ? "Note" : "Noten"} auf einen Viertelschlag.`,
  firstNotes: (count) => (count === 1 ? "Der erste Ton." : `Die ersten ${count} Töne.`),
  oneOctave: "Von einem Grundton zum nächsten.",
  octaves: (count) => `${count} Oktaven, vom tiefsten Grundton aus.`,
  between: "So weit die Töne zwischen diesen beiden liegen.",
  tries: (count, got) => {
    const attempts = count === 1 ? "Ein Versuch" : `${count} Versuche`;
    if (got === count) return `${attempts}${count === 1 ? "" : ", alle"} mit diesem Ergebnis.`;
    return `${attempts}, davon ${got} mit diesem Ergebnis; ab der Hälfte gilt das Tempo als erreicht.`;
  },
  metronome: (below, above) =>
    below === undefined
      ? `Metronom: ${above} darüber, nichts darunter`
      : `Metronom: ${below} darunter, ${above === undefined ? "nichts" : above} darüber`,
  letterAloneIsMajor: "Ein Buchstabe allein heißt Dur.",
  minorAlone: (minor) => `\`${minor}\` allein heißt natürliches Moll.`,
  directions: {
    up: "aufwärts",
    down: "abwärts",
    "up and down": "auf und ab",
    "down and up": "ab und auf",
    "back and forth": "hin und her",
  },
  inLeaps: "in Sprüngen",
  inOrderOf: (date) => `in der Reihenfolge vom ${date}`,
};
