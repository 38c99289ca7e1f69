import { Note as Tonal } from "tonal";
import { describe, expect, test } from "vitest";
import type { NotesReport } from "../../../server/cli/notes/notes-report.ts";
import { recordersOf } from "../../music/fingering/recorder-reference.ts";
import fingerings from "../../reference/recorder-fingerings.json" with { type: "json" };
import type { Files } from "../../support/temporary-folder.ts";
import { daystave } from "../command-line.ts";

/**
 * `notes --json` over the whole range of each recorder, row by row against test/reference/recorder-fingerings.json,
 * whose rows count semitones from the lowest note, and test/reference/instrument-ranges.json, which says what that note
 * sounds and how much lower it is written. MIDI numbers are npm `tonal`'s.
 */

async function report(instrument: string, exercise: string, files: Files = {}): Promise<NotesReport> {
  const options = instrument ? ["--instrument", instrument] : [];
  const { status, stdout, stderr } = await daystave(["notes", exercise, "--json", ...options], { files });
  expect([status, stderr]).toEqual([0, ""]);
  return JSON.parse(stdout);
}

type Row = (typeof fingerings.notes)[number];

/** Without the spaces between the hands, as the reference writes it. */
function compact(fingering: string): string {
  return fingering.replaceAll(" ", "").replace("bell", " bell");
}

const hasHalfHole = ({ hole6, hole7, holes_1_5 }: Row): boolean => [...holes_1_5, hole6, hole7].includes("half");

describe.each(recordersOf())("$id", ({ id, lowest, semitones, octavesLower }) => {
  test("each note sounds, is written and is fingered as its row says", async () => {
    const told = await report(id, "chromatic, full range, up");
    const rows = fingerings.notes.slice(0, semitones + 1);
    const low = Tonal.midi(lowest)!;
    expect(told.sounding.map((note) => Tonal.midi(note))).toEqual(rows.map((row) => low + row.semitones_above_lowest));
    expect(told.notes.map((note) => Tonal.midi(note)! + 12 * octavesLower)).toEqual(
      told.sounding.map((note) => Tonal.midi(note)),
    );
    expect(told.outOfRange).toEqual([]);
    expect(told.fingerings.map(({ note, fingering, confidence }) => [note, compact(fingering), confidence])).toEqual(
      rows.map((row, i) => [told.notes[i], row.compact, row.confidence]),
    );
    expect(told.needsBell).toEqual(told.notes.filter((_, i) => rows[i]!.bell === "closed"));
    expect(told.halfHoles).toEqual(told.notes.filter((_, i) => hasHalfHole(rows[i]!)));
    expect(told.changes.map(({ from, to, thumb, halfHoles, bell }) => ({ from, to, thumb, halfHoles, bell }))).toEqual(
      rows.slice(1).map((row, i) => ({
        from: told.notes[i],
        to: told.notes[i + 1],
        thumb: row.thumb !== rows[i]!.thumb,
        bell: row.bell !== rows[i]!.bell,
        halfHoles: (["hole6", "hole7"] as const).filter(
          (hole) => row[hole] !== rows[i]![hole] && [row[hole], rows[i]![hole]].includes("half"),
        ).length,
      })),
    );
  });
});

// The four instruments that the rows themselves name, each under both names of a black key.
test.each([
  ["alto recorder", "alto", "notes"],
  ["tenor recorder", "tenor", "notes"],
  ["soprano recorder", "soprano_sounding", "sounding"],
  ["bass recorder", "bass_sounding", "sounding"],
] as const)("%s: the notes are those of the column %s", async (id, column, told) => {
  const { [told]: notes } = await report(id, "chromatic, full range, up");
  for (const [i, note] of notes.entries()) expect(fingerings.notes[i]![column].split("/")).toContain(note);
});

test("with German fingering no cost, no half hole, no bell is told of any member of the family", async () => {
  for (const { id } of recordersOf()) {
    const files = { "journal.practice": `instrument ${id}, german fingering\n` };
    const told = await report("", "chromatic, full range, up", files);
    const { needsBell, halfHoles, fingerings, changes, fingersUnknown } = told;
    expect({ id, needsBell, halfHoles, fingerings, changes, fingersUnknown }).toEqual({
      id,
      needsBell: [],
      halfHoles: [],
      fingerings: [],
      changes: [],
      fingersUnknown: "not available for German fingering yet",
    });
    const { stdout } = await daystave(["notes", "chromatic, full range, up"], { files });
    expect(stdout).toContain("  hardest change not available for German fingering yet\n");
  }
});
