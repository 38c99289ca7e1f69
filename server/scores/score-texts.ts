/** Why an exercise does not go into a file for other programs, as sentences. */
export const scoreTexts = {
  nothingToExport:
    "Only a scale or an arpeggio can be exported, and this line does not begin with one that can be read.",
  beyondKeys: "MIDI has the notes from C-1 to G9, and this exercise goes beyond them.",
  tooSlow: "A MIDI file cannot be that slow: name a faster tempo, or a longer beat.",
  noNoteType: "MusicXML is written with halves, triplets and dots of note values alone; as MIDI it can be exported.",
  beyondOctaves: "MusicXML has the octaves from 0 to 9, and this exercise goes beyond them.",
};
