import type { renameTexts as english } from "./rename-texts.ts";

export const renameTexts: typeof english = {
  otherMeaningOn: (line) => `Mit diesem Namen würde Zeile ${line} etwas anderes bedeuten. Wähl einen anderen Namen.`,
  otherMeaningElsewhere:
    "Mit diesem Namen würde eine Zeile in einer anderen Datei etwas anderes bedeuten. Wähl einen anderen Namen.",
  noName: "Setz den Cursor auf einen Titel oder auf einen Namen, den dieses Tagebuch festlegt, um ihn zu ändern.",
  movementByNumber: "Ein Satz geht nach seiner Nummer. Ändere sie von Hand, hier und wo er gespielt wurde.",
  knownInstrument:
    'In jedem Tagebuch heißt dieses Instrument so. Damit deines anders heißt, leg es fest: instrument "new alto": alto recorder.',
  shared: "Andere Tagebücher verwenden diesen Namen auch, über eine Datei mit shared. Ändere ihn in jedem von Hand.",
  noLetter: "Ein Name braucht mindestens einen Buchstaben.",
  oneLineNoQuotes: "Ein Name steht in einer Zeile und enthält keine Anführungszeichen.",
  tooLong: (most) => `Ein Name kann höchstens ${most} Zeichen haben.`,
  taken: "In diesem Tagebuch heißt schon etwas anderes so. Wähl einen anderen Namen.",
  readOtherwise:
    "Im Tagebuch bedeuten diese Wörter etwas anderes, etwa eine Tonart oder einen Begriff. Wähl einen anderen Namen.",
};
