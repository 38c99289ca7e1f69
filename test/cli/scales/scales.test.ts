import { describe, expect, test } from "vitest";
import type { ScalesReport } from "../../../server/cli/scales/scales-report.ts";
import modes from "../../reference/modes.json" with { type: "json" };
import type { Files } from "../../support/temporary-folder.ts";
import { daystave } from "../command-line.ts";

async function report(notes: string, files: Files = {}): Promise<ScalesReport> {
  const { status, stdout, stderr } = await daystave(["scales", "--notes", notes, "--json"], { files });
  expect([status, stderr], notes).toEqual([0, ""]);
  return JSON.parse(stdout);
}

/** What is printed for a person, after the line with the notes. */
async function check(notes: string, ...lines: readonly string[]): Promise<void> {
  const { status, stdout, stderr } = await daystave(["scales", "--notes", notes]);
  expect([status, stderr], notes).toEqual([0, ""]);
  expect(stdout.split("\n").slice(1, 1 + lines.length), notes).toEqual(lines);
}

async function refuse(argv: readonly string[], says: string): Promise<void> {
  const { status, stdout, stderr } = await daystave(["scales", ...argv]);
  expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
  expect(stderr).toContain(`daystave: ${says}`);
}

test("the scales that have all the notes, the nearest first", () =>
  check(
    "D E F G A Bb C#",
    "",
    "Scales that have them all, the nearest first:",
    "  D harmonic minor     these notes and no other",
    "  A phrygian dominant  these notes and no other",
    "  F bebop major        and C",
    "  D melodic minor      and B C",
    "",
  ));

// test/reference/modes.json: LilyPond 2.24.1.
test("in JSON: every mode of the reference, with its notes", async () => {
  for (const { mode, tonic, up } of modes.modes) {
    const [first] = (await report(up.join(" "))).scales;
    expect([first!.kind, ...first!.alsoCalled]).toContain(mode);
    expect([first!.tonic, first!.notes, first!.notGiven]).toEqual([tonic, up, []]);
  }
});

test("all that one JSON document has", async () => {
  expect(await report("C4 E4 G4 C5")).toMatchObject({
    notes: ["C", "E", "G"],
    chords: [
      { name: "C major arpeggio", root: "C", kind: "major", inversion: 0, notes: ["C", "E", "G"], respelled: [] },
    ],
    nearMisses: [],
  });
  const { scales } = await report("F# G# A# B C# D# F");
  expect(scales[0]).toEqual({
    name: "F# major",
    tonic: "F#",
    kind: "major",
    alsoCalled: ["ionian"],
    notes: ["F#", "G#", "A#", "B", "C#", "D#", "E#"],
    notGiven: [],
    respelled: [{ given: "F", written: "E#" }],
    usual: null,
  });
});

test("a right pitch by another letter counts, and is told", async () => {
  const { stdout } = await daystave(["scales", "--notes", "F# G# A# B C# D# F"]);
  expect(stdout).toContain("  F# major (ionian)           these notes and no other; with E# for F\n");
  expect(stdout).toContain("\nWith E# for F: the right pitch, written with another letter in that scale.\n");
});

test("a key in theory only is called so, with the usual one", async () => {
  const { scales } = await report("G# A# B# C# D# E# F##");
  expect([scales[0]!.name, scales[0]!.usual]).toEqual(["G# major", "Ab major"]);
  const { stdout } = await daystave(["scales", "--notes", "G# A# B# C# D# E# F##"]);
  expect(stdout.replace(/\s+/g, " ")).toContain("in theory only, usually Ab major");
});

test("where no scale has them all, those with one note that differs stand apart", () =>
  check(
    "D Eb F# G# A Bb C#",
    "",
    "No known scale has them all.",
    "",
    "Nearly, with one note that differs:",
    "  D double harmonic  has G, not G#",
    "  G hungarian minor  has G, not G#",
  ));

test("nothing is near", () => check("C C# D D# E F F# G", "", "No known scale has them all.", ""));

test("twelve are shown, and how many more there are; --all shows them, and --json has them", async () => {
  const few = (await daystave(["scales", "--notes", "D A"])).stdout;
  const every = (await daystave(["scales", "--notes", "D A", "--all"])).stdout;
  const { scales } = await report("D A");
  expect(few).toContain(`\n  and ${scales.length - 12} more: --all\n`);
  expect(every.split("\n").filter((line) => /^ {2}[A-G]/.test(line))).toHaveLength(scales.length);
  for (const line of [...few.split("\n"), ...every.split("\n")]) expect(line.length).toBeLessThanOrEqual(80);
});

describe("the journal around", () => {
  const files = {
    "journal.practice": 'scale "purvi": 1 b2 3 #4 5 b6 7\nscale "even seven": cents 0 150 300 500 700 850 1000\n',
  };
  test("its scales are found by their notes", async () => {
    const { scales } = await report("D Eb F# G# A Bb C#", files);
    expect(scales.map(({ name }) => name)).toEqual(['"purvi" on D']);
  });
  test("a name in it that would steer a terminal is shown, not obeyed", async () => {
    const hostile = { "journal.practice": 'scale "a\u001B[31mb": 1 b2 3 4 5 b6 7\n' };
    const argv = ["scales", "--notes", "D Eb F# G A Bb C#"];
    expect((await daystave(argv, { files: hostile })).stdout).not.toContain("\u001B");
    expect((await daystave([...argv, "--json"], { files: hostile })).stdout).not.toContain("\u001B");
  });
});

test("in another language, asked for or declared in the journal around", async () => {
  const asked = await daystave(["scales", "--notes", "D E Fis G A H Cis", "--names", "german", "--json"]);
  const [first] = JSON.parse(asked.stdout).scales;
  expect([first.name, first.tonic, first.notes]).toEqual(["D-Dur", "D", ["D", "E", "Fis", "G", "A", "H", "Cis"]]);
  const files = { "journal.practice": "names italian" };
  const declared = await daystave(["scales", "--notes", "fa sol la sib do re mi", "--json"], { files });
  expect(JSON.parse(declared.stdout).scales[0].name).toBe("fa maggiore");
});

describe("however a journal writes notes", () => {
  test.each([
    "D, E, F, G, A, Bb, C#",
    "D-E-F-G-A-Bb-C#",
    "d e f g a bb c#",
    "D E F | G A B♭ C♯",
    "D4 E4 F4 G4 A4 Bb4 C#5",
    "D E F G A B flat C sharp",
    "D-E-F-G-A-B-flat-C-sharp",
  ])("%s", async (notes) => {
    expect((await report(notes)).scales[0]!.name).toBe("D harmonic minor");
  });
});

describe("what is no note is told with its place, and what is one", () => {
  const ACCEPTED = "A note is a letter from A to G, perhaps with #, b, ##, x or bb";
  test("a word", () => refuse(["--notes", "D E foo"], `Word 3, “foo”, is not a note. ${ACCEPTED}`));
  test("the first word", () => refuse(["--notes", "moo D"], `Word 1, “moo”, is not a note. ${ACCEPTED}`));
  test("a German name", async () => {
    const says = "It is a German name: use `--names german`.";
    await refuse(["--notes", "D H A"], `Word 2, “H”, is not a note. ${says}`);
    await refuse(["--notes", "D Fis A"], `Word 2, “Fis”, is not a note. ${says}`);
  });
  test("a word that is no name in the language asked for", () =>
    refuse(
      ["--notes", "D Fis mi", "--names", "german"],
      "Word 3, “mi”, is not a note. Notes are named in German, as C, D, Fis, B, Es",
    ));
  test("three sharps", () => refuse(["--notes", "D, F###"], "Word 2, “F###”, is not a note."));
  test("nothing", () => refuse(["--notes", " , "], `Give at least one note. ${ACCEPTED}`));
  test("no option", () => refuse([], 'Give the notes: daystave scales --notes "D E F G A Bb C#"'));
  test("words without the option", () => refuse(["D", "E"], "“scales” takes only options"));
  test("far too many", async () => {
    await refuse(["--notes", "D ".repeat(600)], "These are over 500 notes.");
    await refuse(["--notes", "D ".repeat(6000)], "The notes take up over 4096 characters.");
  });
  test("nothing of it reaches the terminal raw", () => refuse(["--notes", "D \u001B[31m"], "Word 2, “\\u001B[31m”"));
});
