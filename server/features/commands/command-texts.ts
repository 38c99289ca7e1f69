/** What the actions of commands are called, why one does nothing, and what is to be seen to after one. */
export const commandTexts = {
  dateLines: (day: string) => `Date these lines ${day}`,
  declare: (declaration: string) => `Declare ${declaration}`,
  declareIn: (declaration: string, file: string) => `Declare ${declaration} in ${file}`,
  changeSubject: (name: string) => `Change the subject to ${name}`,
  nameAs: (name: string) => `Name this as ${name}`,
  respellAs: (name: string) => `Respell as "${name}"`,
  keepBothSides: "Keep both sides",
  keepUpperSide: "Keep the upper side",
  keepLowerSide: "Keep the lower side",
  takeOutPlan: "Take out what was not played",

  noFile: "This file is not in an open journal. Save it as a .practice file and try again.",
  unreadableDeclaration:
    "The pattern or the scale of this line is declared in words that cannot be read. Its declaration is underlined and says why.",

  namedSo: (language: string) => `Notes are named so already: ${language}.`,
  noLanguage: (languages: readonly string[]) => `Say in which language: ${languages.join(", ")}.`,
  namesShared:
    "Other journals share these declarations, and their notes would be read otherwise. Take out `shared` first, or declare names in each journal.",
  conflictInJournal: "A merge has left its markers in this journal. Settle the conflict first.",
  readOtherwise: (line: number, file: string) =>
    `Please look at line ${line} of ${file}: it is not read as before, as some of its words mean something else in the new language, or nothing.`,
  manyReadOtherwise: (count: number, line: number, file: string) =>
    `Please look at ${count} lines, the first line ${line} of ${file}: they are not read as before, as some of their words mean something else in the new language, or nothing.`,

  noTitle: "There is no title of a piece on this line.",
  titleDeclared: "This title is declared already.",
  titleUnnameable: "This title cannot be declared as it is: it is too long, or has quotes in it.",

  noExerciseOfChanges:
    "The hardest finger change can be taken out of a scale or an arpeggio, and this line cannot be read completely as one.",
  noRecorder:
    "Which finger change is hardest is known for recorders only. Name yours: at the top of the journal as instrument alto recorder, or on this line as on alto recorder.",
  germanFingering: "Finger changes are not known for German fingering, so none can be called the hardest.",
  noChange: "Within the range of the instrument this line never goes from one note to another.",
  noFurtherChange: "This line no longer has that finger change: it was edited in the meantime. Please try again.",

  notFollowed: "Daystave follows scales, arpeggios, figures and titles from day to day; this line counts only as time.",
  notPlayedBefore: "This exercise has not been played before this line yet.",

  declaredTwice: (name: string, year: number) =>
    `${name} is declared in a day of ${year} and elsewhere, too. Delete one of the two first.`,
  fileAlone:
    "This file is a journal by itself, and days in another file would not belong to it. Open its folder and try again.",
  noEarlierYear: "This file has no days of an earlier year that could move.",
  conflictInFile: "A merge has left its markers in this file. Settle the conflict first.",
  whichYear: "Say which year is to move.",
  noDaysOf: (year: number) => `This file has no days of ${year}, or that year is not over yet.`,
  hasDay: (file: string, date: string) => `${file} already has ${date}. Move that day by hand first.`,
  otherNoteValue:
    "One of the two files has a note value of its own above its days, which would not hold for the days of both. Move the days by hand.",

  noPhases:
    "No earlier day of this journal has phases, so there are none to take over. Daystave: New Day puts in the day alone.",

  unknownExercise:
    "What was played on this line is not known, so it cannot be repeated. The quick-fix key offers what it may be.",
  goesOn:
    "This line goes on with the one above it, so that today it would say something else. Repeat the line above instead.",
  noTempo: "Write a tempo on this line first, such as at 60.",
  notReached: "No tempo reached yet: repeat it a notch slower.",
  topOfMetronome: (bpm: number) =>
    `${bpm} is the top of the metronome. Count another beat, such as half=60, or type the tempo.`,
  bottomOfMetronome: (bpm: number) =>
    `${bpm} is the bottom of the metronome. Count another beat, such as half=60, or type the tempo.`,

  nothingToRespell: "There are no notes and no key on this line that could be spelled otherwise.",
  noOtherSpelling: "There is no other usual spelling for this line.",
  respelledOtherwise:
    "Spelled otherwise, this line would not be read as it is now, so it was left alone. Change its notes by hand.",

  noConflict: "There is no conflict in this file: no merge has left its markers.",
  brokenConflict:
    "Some markers of this conflict are missing, so it cannot be settled here. Keep the lines that are right and delete the markers.",

  notesOf: (row: string) => `Notes: ${row} (an earlier day stays as it was written)`,
  noNotesToWrite:
    "Only the notes of a scale or an arpeggio can be written out, and this line does not begin with one that can be read.",
  noNotesInSpan: "Over the span of this line the pattern has no notes. Name a longer one, such as 2 octaves.",
  tooLongWithNotes: (characters: number) =>
    `With its notes this line would be longer than ${characters} characters, and not be read. Name a shorter span.`,

  nothingToPlan: "There is nothing to plan yet: write down what you play, or name a piece, an aim or an instrument.",
};
