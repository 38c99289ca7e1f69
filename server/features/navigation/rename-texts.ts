/** Why something cannot be called otherwise. */
export const renameTexts = {
  otherMeaningOn: (line: number) => `With that name line ${line} would mean something else. Choose another name.`,
  otherMeaningElsewhere: "With that name a line in another file would mean something else. Choose another name.",
  noName: "Put the cursor on a title, or on a name that this journal declares, to change it.",
  movementByNumber: "A movement goes by its number. Change it by hand, here and where it was played.",
  knownInstrument:
    'Every journal calls this instrument so. To call yours something else, declare it: instrument "new alto": alto recorder.',
  shared: "Other journals use this name as well, by a file that says shared. Change it in each by hand.",
  noLetter: "Write a name that has a letter in it.",
  oneLineNoQuotes: "A name goes on one line and has no quotes in it.",
  tooLong: (most: number) => `A name can have ${most} characters at most.`,
  taken: "Something else in this journal is called that already. Choose another name.",
  readOtherwise: "In a journal these words are something else, such as a key or a term. Choose another name.",
};
