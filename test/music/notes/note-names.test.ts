import { describe, expect, test } from "vitest";
import { LETTERS, type NoteName, parseNote, printName } from "../../../server/music/notes/note.ts";
import {
  ENGLISH_NAMES,
  inLanguage,
  kindText,
  NOTE_NAMES,
  type NoteNames,
  namesById,
  noteText,
} from "../../../server/music/notes/note-names.ts";
import { noteAt, noteOf } from "../../../server/syntax/words/note-word.ts";
import { tokenise } from "../../../server/syntax/words/token.ts";
import reference from "../../reference/note-names.json" with { type: "json" };

/** The languages of test/reference/note-names.json, as LilyPond calls them. */
const LANGUAGES = [
  ["nederlands", "dutch"],
  ["deutsch", "german"],
  ["français", "french"],
  ["italiano", "italian"],
  ["español", "spanish"],
] as const;
/** Spellings of the reference that serve engraving alone; players do not write them, and they are words otherwise. */
const NOT_READ: Readonly<Record<string, string>> = {
  dutch: "ees eeses aes aeses",
  german: "",
  french: "dod dodd dox réd red rédd redd réx rex mid midd mix fad fadd fax sold soldd solx lad ladd lax sid sidd six",
  italian: "dod dodd red redd mid midd fad fadd sold soldd lad ladd sid sidd",
  spanish: "dos doss dox res ress rex mis miss mix fas fass fax sols solss solx las lass lax sis siss six",
};
const OTHERS = NOTE_NAMES.filter(({ id }) => id !== "english");

const ALL_NAMES: readonly NoteName[] = LETTERS.flatMap((letter) =>
  [-2, -1, 0, 1, 2].map((alter) => ({ letter, alter })),
);

/** The note that begins a text, in English, and how many words it takes. */
function read(text: string, names: NoteNames): string | undefined {
  const run = noteAt(tokenise(text), 0, names);
  return run && `${printName(run.note)}${run.note.octave ?? ""} (${run.length})`;
}

describe("against LilyPond's names of notes (test/reference/note-names.json)", () => {
  test.each(LANGUAGES)(
    "every name of %s but those told above is read as its note, small or capital",
    (language, id) => {
      const names = namesById(id)!;
      const rows = Object.entries(reference.names[language]);
      expect(rows).toHaveLength(35);
      const skipped = NOT_READ[id]!.split(" ");
      for (const [english, spellings] of rows)
        for (const spelling of spellings)
          for (const word of [spelling, spelling[0]!.toUpperCase() + spelling.slice(1)]) {
            if (skipped.includes(spelling)) continue;
            const found = noteOf(word, names)?.note;
            expect(found && printName(found), `${language} ${word}`).toBe(printName(parseNote(english)!));
          }
    },
  );

  test.each(LANGUAGES)("those told above stand there in %s, and are no notes here", (language, id) => {
    const all = Object.values(reference.names[language]).flat<readonly string[][]>();
    for (const word of NOT_READ[id]!.split(" ").filter((each) => each !== "")) {
      expect(all).toContain(word);
      expect(noteOf(word, namesById(id)!), `${id} ${word}`).toBeUndefined();
    }
  });

  test.each(LANGUAGES.slice(0, 2))("every name that is shown is one of %s", (language, id) => {
    for (const name of ALL_NAMES) {
      const spellings: readonly string[] = reference.names[language][printName(name) as "C"];
      expect(spellings, printName(name)).toContain(namesById(id)!.name(name).toLowerCase());
    }
  });

  test("in the others the syllable is, and the accidental is the word for it", () => {
    const words = { french: reference.prose.fr, italian: reference.prose.it, spanish: reference.prose.es };
    for (const [language, id] of LANGUAGES.slice(2))
      for (const name of ALL_NAMES) {
        const [syllable, ...said] = namesById(id)!.name(name, "words").split(" ");
        const spellings: readonly string[] = reference.names[language][name.letter];
        expect(spellings).toContain(syllable);
        // the reference has no Spanish word for two of them
        const told = words[id as "french"][said.join(" ") as "dièse"] ?? (said[0] === "doble" ? doubled(said[1]!) : "");
        expect(told, `${id} ${said.join(" ")}`).toBe(printName(name).slice(1));
      }
    function doubled(word: string): string {
      return { sostenido: "##", bemol: "bb" }[word]!;
    }
  });

  test("major and minor are called as its prose has it", () => {
    const { de, nl, fr, it: italian, es } = reference.prose;
    const told = { german: de, dutch: nl, french: fr, italian, spanish: es };
    for (const { id, major, minor } of OTHERS) {
      const prose = told[id as "german"] as Readonly<Record<string, string>>;
      expect([prose[major[0]!.toLowerCase()], prose[minor[0]!.toLowerCase()]], id).toEqual(["major", "minor"]);
    }
    expect(namesById("dutch")!.major).toEqual(["majeur", "groot", "grote terts"]);
    expect(namesById("dutch")!.minor).toEqual(["mineur", "klein", "kleine terts"]);
  });

  test("German B is B flat and H is B natural; capitals are for major, small letters for minor", () => {
    const german = namesById("german")!;
    expect([reference.prose.de.B, reference.prose.de.H]).toEqual(["B flat", "B natural"]);
    expect([read("B", german), read("H", german), read("b4", german)]).toEqual(["Bb (1)", "B (1)", "Bb4 (1)"]);
    const fSharp = { letter: "F", alter: 1 } as const;
    expect(reference.prose.de.case_rule).toContain("Fis-Dur, fis-Moll");
    expect([german.key(fSharp, "major"), german.key(fSharp, "minor")]).toEqual(["Fis-Dur", "fis-Moll"]);
  });
});

describe("whatever is shown is read as the same note", () => {
  test.each(NOTE_NAMES)("$id", (names) => {
    for (const name of ALL_NAMES)
      for (const spelling of ["plain", "signs", "words"] as const) {
        const shown = names.name(name, spelling);
        const run = noteAt(tokenise(shown), 0, names);
        expect(run && printName(run.note), shown).toBe(printName(name));
        expect(run!.length, shown).toBe(shown.split(" ").length);
      }
  });

  test.each(NOTE_NAMES)("with an octave number, in $id", (names) => {
    for (const name of ALL_NAMES) {
      const shown = noteText({ ...name, octave: 5 }, names);
      expect(noteOf(shown, names)?.note, shown).toEqual({ ...name, octave: 5 });
    }
  });
});

test("strokes count octaves from middle C, in every language (common practice, no source)", () => {
  const german = namesById("german")!;
  expect(["f'", "fis''", "h’", "c'''", "f4"].map((word) => read(word, german))).toEqual([
    "F4 (1)",
    "F#5 (1)",
    "B4 (1)",
    "C6 (1)",
    "F4 (1)",
  ]);
  expect(read("bes'", namesById("dutch")!)).toBe("Bb4 (1)");
  expect(["fa'", "sib''", "sol♯’"].map((word) => read(word, namesById("french")!))).toEqual([
    "F4 (1)",
    "Bb5 (1)",
    "G#4 (1)",
  ]);
  expect(read("do'", namesById("italian")!)).toBe("C4 (1)");
  expect(read("la#''", namesById("spanish")!)).toBe("A#5 (1)");
});

test("in English behind a small letter, and never behind a number, where it is minutes", () => {
  const english = ["f'", "bb''", "f#’", "c♯''"].map((word) => read(word, ENGLISH_NAMES));
  expect(english).toEqual(["F4 (1)", "Bb5 (1)", "F#4 (1)", "C#5 (1)"]);
  for (const word of ["F'", "Bb''", "5'", "f4'", "h'"]) expect(read(word, ENGLISH_NAMES)).toBeUndefined();
});

test("the sign of the double sharp is read behind a syllable, the letter x is not", () => {
  expect(read("fa𝄪", namesById("french")!)).toBe("F## (1)");
  expect(read("fax", namesById("french")!)).toBeUndefined();
  expect(read("f𝄪", namesById("german")!)).toBe("F## (1)");
});

test("accidentals in words, with and without accents, joined by a hyphen or not", () => {
  const french = namesById("french")!;
  const all = ["fa dièse", "Fa diese", "si bémol", "sol double dièse", "mi-bémol", "ré bécarre", "ut", "fa♯", "sib4"];
  expect(all.map((text) => read(text, french))).toEqual([
    "F# (2)",
    "F# (2)",
    "Bb (2)",
    "G## (3)",
    "Eb (1)",
    "D (2)",
    "C (1)",
    "F# (1)",
    "Bb4 (1)",
  ]);
  expect(read("sol doppio diesis", namesById("italian")!)).toBe("G## (3)");
  expect(read("la doble bemol", namesById("spanish")!)).toBe("Abb (3)");
});

test("letters with signs are read everywhere, but for the German B", () => {
  for (const names of OTHERS) expect([names.id, read("F#5", names)]).toEqual([names.id, "F#5 (1)"]);
  for (const names of OTHERS) expect([names.id, read("Eb", names)]).toEqual([names.id, "Eb (1)"]);
  expect(OTHERS.map((names) => read("Bb", names))).toEqual(OTHERS.map(() => "Bb (1)"));
  expect(OTHERS.map((names) => read("B", names))).toEqual(["Bb (1)", "B (1)", "B (1)", "B (1)", "B (1)"]);
});

test("what is no note in a language", () => {
  const none = { german: "Bes fisisis hb# sol", dutch: "h fisisis do", french: "fis fa### h sols", spanish: "fad ti" };
  for (const [id, words] of Object.entries(none))
    for (const word of words.split(" "))
      expect([id, word, noteOf(word, namesById(id)!)]).toEqual([id, word, undefined]);
});

test("a key with what else is on its tonic", () => {
  const told = (id: string, text: string, words: string) => namesById(id)!.key(parseNote(text)!, words);
  expect(told("english", "F#", "melodic minor")).toBe("F# melodic minor");
  expect(told("german", "F#", "melodic minor")).toBe("fis-Moll melodisch");
  expect(told("german", "Bb", "major pentatonic")).toBe("B-Dur pentatonic");
  expect(told("german", "D", "dorian")).toBe("D dorian");
  expect(told("german", "A", "minor arpeggio")).toBe("a-Moll arpeggio");
  expect(told("dutch", "Bb", "major")).toBe("Bes majeur");
  expect(told("french", "F#", "natural minor")).toBe("fa dièse mineur naturel");
  expect(told("italian", "Eb", "dominant seventh")).toBe("mi bemolle dominant seventh");
  expect(told("spanish", "F##", "minor")).toBe("fa doble sostenido menor");
  expect(namesById("french")!.key(parseNote("F#")!, "minor", "fa#")).toBe("fa# mineur");
});

test("kinds with major and minor in a language, first as in it, then in English", () => {
  expect(inLanguage("melodic minor", namesById("german")!)).toEqual([
    "Moll melodisch",
    "melodic Moll",
    "melodic minor",
  ]);
  expect(inLanguage("major", namesById("dutch")!)).toEqual(["majeur", "groot", "grote terts", "major"]);
  expect(inLanguage("dorian", namesById("french")!)).toEqual(["dorian"]);
  expect(inLanguage("minor", ENGLISH_NAMES)).toEqual(["minor"]);
  expect(kindText("melodic minor", namesById("german")!)).toBe("Moll melodisch");
  expect(kindText("melodic minor", ENGLISH_NAMES)).toBe("melodic minor");
});

test("a language is found by its own name, too", () => {
  const found = ["deutsch", "nederlands", "français", "italiano", "español"].map((called) => namesById(called)?.id);
  expect(found).toEqual(["german", "dutch", "french", "italian", "spanish"]);
});

test("an unknown language has no names", () => {
  for (const id of ["", "klingon", "German", "constructor", "__proto__"]) expect(namesById(id)).toBeUndefined();
});
