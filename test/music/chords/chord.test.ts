import { expect, test } from "vitest";
import { chordById, chordNames, chordNote } from "../../../server/music/chords/chord.ts";
import { CHORDS } from "../../../server/music/chords/chord-kinds.ts";
import { parseNote, printName, printNote } from "../../../server/music/notes/note.ts";
import reference from "../../reference/scales-other-and-arpeggios.json" with { type: "json" };

/** A root, a chord, and its notes once each. */
function check(root: string, id: string, expected: string): void {
  expect(chordNames(parseNote(root)!, chordById(id)!).map(printName).join(" "), `${root} ${id}`).toBe(expected);
}

test("every arpeggio of test/reference/scales-other-and-arpeggios.json", () => {
  const rows = Object.entries(reference.scales).filter(([name]) => name.startsWith("arp "));
  for (const [name, byRoot] of rows) {
    const id = name.replace("arp ", "").replace("7th", "seventh");
    for (const [root, notes] of Object.entries(byRoot)) check(root, id, notes);
  }
  expect(rows.map(([name]) => name)).toHaveLength(CHORDS.length);
});

test("on roots that no table lists (worked out by hand)", () => {
  check("G#", "major", "G# B# D#");
  check("Fb", "minor", "Fb Abb Cb");
  check("Cb", "diminished seventh", "Cb Ebb Gbb Bbbb");
});

test("places run on above and below", () => {
  const at = (place: number) => printNote(chordNote({ ...parseNote("D")!, octave: 4 }, chordById("minor")!, place));
  expect([-1, 0, 1, 2, 3, 4, 7].map(at)).toEqual(["F3", "A3", "D4", "F4", "A4", "D5", "D6"]);
});

test("names lead to one chord each", () => {
  const names = CHORDS.flatMap((chord) => [...chord.names, ...(chord.shortNames ?? [])]);
  expect(new Set(names).size).toBe(names.length);
  expect(CHORDS.every(({ id, names: [first] }) => id === first)).toBe(true);
  expect(chordById("no such chord")).toBeUndefined();
});
