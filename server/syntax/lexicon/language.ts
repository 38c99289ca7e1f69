/** The languages that the lexicon has words in: those whose names of notes a journal may use. */
export type LexiconLanguage = "english" | "german" | "french" | "dutch" | "italian" | "spanish";
