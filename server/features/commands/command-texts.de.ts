import type { commandTexts as english } from "./command-texts.ts";

export const commandTexts: typeof english = {
  dateLines: (day) => `Diese Zeilen auf ${day} datieren`,
  declare: (declaration) => `${declaration} festlegen`,
  declareIn: (declaration, file) => `${declaration} in ${file} festlegen`,
  changeSubject: (name) => `In ${name} ändern`,
  nameAs: (name) => `${name} nennen`,
  respellAs: (name) => `In „${name}“ umschreiben`,
  keepBothSides: "Beide Seiten behalten",
  keepUpperSide: "Die obere Seite behalten",
  keepLowerSide: "Die untere Seite behalten",
  takeOutPlan: "Entfernen, was nicht gespielt wurde",

  noFile:
    "Diese Datei gehört zu keinem geöffneten Tagebuch. Speichere sie als .practice-Datei und versuch es noch einmal.",
  unreadableDeclaration:
    "Das Muster oder die Tonleiter dieser Zeile ist in Worten festgelegt, die sich nicht lesen lassen. Die Festlegung ist unterstrichen und sagt, warum.",

  namedSo: (language) => `Die Töne heißen schon so: ${language}.`,
  noLanguage: (languages) => `Sag, in welcher Sprache: ${languages.join(", ")}.`,
  namesShared:
    "Andere Tagebücher teilen diese Festlegungen, und ihre Töne würden anders gelesen. Nimm zuerst `shared` heraus oder leg die Tonnamen in jedem Tagebuch fest.",
  conflictInJournal:
    "Eine Zusammenführung hat in diesem Tagebuch ihre Markierungen hinterlassen. Lös zuerst den Konflikt.",
  readOtherwise: (line, file) =>
    `Bitte sieh dir Zeile ${line} von ${file} an: Sie wird nicht mehr gelesen wie vorher, weil einige Wörter in der neuen Sprache etwas anderes bedeuten, oder nichts.`,
  manyReadOtherwise: (count, line, file) =>
    `Bitte sieh dir ${count} Zeilen an, die erste ist Zeile ${line} von ${file}: Sie werden nicht mehr gelesen wie vorher, weil einige Wörter in der neuen Sprache etwas anderes bedeuten, oder nichts.`,

  noTitle: "In dieser Zeile steht kein Titel eines Stücks.",
  titleDeclared: "Dieser Titel ist schon festgelegt.",
  titleUnnameable: "So kann dieser Titel nicht festgelegt werden: Er ist zu lang oder enthält Anführungszeichen.",

  noExerciseOfChanges:
    "Der schwerste Griffwechsel lässt sich aus einer Tonleiter oder einem Arpeggio herausgreifen, und diese Zeile lässt sich nicht ganz als so etwas lesen.",
  noRecorder:
    "Welcher Griffwechsel der schwerste ist, ist nur für Blockflöten bekannt. Nenn deine: oben im Tagebuch als instrument alto recorder, oder in dieser Zeile als on alto recorder.",
  germanFingering:
    "Für die deutsche Griffweise sind keine Griffwechsel bekannt, deshalb kann keiner der schwerste heißen.",
  noChange: "Im Umfang des Instruments geht diese Zeile nie von einem Ton zu einem anderen.",
  noFurtherChange:
    "Diesen Griffwechsel hat die Zeile nicht mehr: Sie wurde inzwischen geändert. Bitte versuch es noch einmal.",

  notFollowed:
    "Daystave verfolgt Tonleitern, Arpeggien, Figuren und Titel von Tag zu Tag; diese Zeile zählt nur als Zeit.",
  notPlayedBefore: "Vor dieser Zeile wurde diese Übung noch nicht gespielt.",

  declaredTwice: (name, year) =>
    `${name} ist an einem Tag von ${year} festgelegt und noch einmal anderswo. Lösch zuerst eins von beiden.`,
  fileAlone:
    "Diese Datei ist ein Tagebuch für sich, und Tage in einer anderen Datei würden nicht dazugehören. Öffne den Ordner und versuch es noch einmal.",
  noEarlierYear: "Diese Datei hat keine Tage eines früheren Jahres, die sich verschieben ließen.",
  conflictInFile: "Eine Zusammenführung hat in dieser Datei ihre Markierungen hinterlassen. Lös zuerst den Konflikt.",
  whichYear: "Sag, welches Jahr verschoben werden soll.",
  noDaysOf: (year) => `Diese Datei hat keine Tage von ${year}, oder dieses Jahr ist noch nicht vorbei.`,
  hasDay: (file, date) => `In ${file} gibt es ${date} schon. Verschieb diesen Tag zuerst von Hand.`,
  otherNoteValue:
    "Eine der beiden Dateien hat über ihren Tagen einen eigenen Notenwert, der nicht für die Tage beider gelten würde. Verschieb die Tage von Hand.",

  noPhases:
    "Kein früherer Tag dieses Tagebuchs hat Phasen, also lassen sich keine übernehmen. „Neuer Tag“ setzt nur den Tag ein.",

  unknownExercise:
    "Was in dieser Zeile gespielt wurde, ist nicht bekannt, also lässt es sich nicht wiederholen. Die Schnellkorrektur bietet an, was es sein kann.",
  goesOn:
    "Diese Zeile setzt die darüber fort, deshalb würde sie heute etwas anderes sagen. Wiederhol stattdessen die Zeile darüber.",
  noTempo: "Schreib zuerst ein Tempo in diese Zeile, etwa at 60.",
  notReached: "Noch kein Tempo erreicht: Wiederhol es eine Metronomstufe langsamer.",
  topOfMetronome: (bpm) =>
    `${bpm} ist das obere Ende des Metronoms. Zähl in einem anderen Wert, etwa half=60, oder tipp das Tempo ein.`,
  bottomOfMetronome: (bpm) =>
    `${bpm} ist das untere Ende des Metronoms. Zähl in einem anderen Wert, etwa half=60, oder tipp das Tempo ein.`,

  nothingToRespell: "In dieser Zeile sind keine Töne und keine Tonart, die sich anders schreiben ließen.",
  noOtherSpelling: "Für diese Zeile gibt es keine andere übliche Schreibweise.",
  respelledOtherwise:
    "Anders geschrieben, würde diese Zeile nicht mehr gelesen wie jetzt, deshalb blieb sie, wie sie ist. Ändere die Töne von Hand.",

  noConflict: "In dieser Datei gibt es keinen Konflikt: Keine Zusammenführung hat Markierungen hinterlassen.",
  brokenConflict:
    "Einige Markierungen dieses Konflikts fehlen, deshalb lässt er sich hier nicht lösen. Behalt die richtigen Zeilen und lösch die Markierungen.",

  notesOf: (row) => `Töne: ${row} (ein früherer Tag bleibt, wie er geschrieben wurde)`,
  noNotesToWrite:
    "Ausschreiben lassen sich nur die Töne einer Tonleiter oder eines Arpeggios, und diese Zeile beginnt mit nichts davon, was sich lesen ließe.",
  noNotesInSpan: "Im Umfang dieser Zeile hat das Muster keine Töne. Nenn einen größeren, etwa 2 octaves.",
  tooLongWithNotes: (characters) =>
    `Mit ihren Tönen wäre diese Zeile länger als ${characters} Zeichen und würde nicht gelesen. Nenn einen kleineren Umfang.`,

  nothingToPlan:
    "Es gibt noch nichts zu planen: Schreib auf, was du spielst, oder nenn ein Stück, ein Ziel oder ein Instrument.",
};
