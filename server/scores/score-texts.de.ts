import type { scoreTexts as english } from "./score-texts.ts";

export const scoreTexts: typeof english = {
  nothingToExport:
    "Exportiert werden können nur Tonleitern und Arpeggien, und diese Zeile beginnt mit keinem, das sich lesen lässt.",
  beyondKeys: "MIDI hat die Töne von C-1 bis G9, und diese Übung geht darüber hinaus.",
  tooSlow: "So langsam kann eine MIDI-Datei nicht sein: Nenn ein schnelleres Tempo oder einen längeren Schlag.",
  noNoteType:
    "MusicXML wird nur mit Halbierungen, Triolen und Punktierungen von Notenwerten geschrieben; als MIDI lässt sich die Übung exportieren.",
  beyondOctaves: "MusicXML hat die Oktaven von 0 bis 9, und diese Übung geht darüber hinaus.",
};
