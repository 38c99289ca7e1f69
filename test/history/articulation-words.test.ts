import { expect, test } from "vitest";
import { articulationWords } from "../../server/history/articulation-words.ts";
import { attemptsOfJournal } from "../../server/history/attempts.ts";
import { waysPlayed } from "../../server/plan/ways-played.ts";
import { daystave } from "../cli/command-line.ts";
import { exercisesOf, previewOf } from "../features/preview/preview-asked.ts";
import { day, journalOf } from "../plan/written.ts";

// What players call notes that nothing joins: common practice, no source. Only what is blown is tongued.

const ROWS: readonly (readonly [string, string | null, string])[] = [
  ["alto recorder", "tongued", "tongued"],
  ["trumpet", "tongued", "tongued"],
  ["clarinet", "tongued", "tongued"],
  ["violin", "separate bows", "separate"],
  ["cello", "separate bows", "separate"],
  ["piano", null, "not legato"],
  ["guitar", null, "not legato"],
  ["soprano voice", null, "not legato"],
];

const practised = (instrument: string) =>
  `instrument ${instrument}\n2026-03-02\n  C major, two octaves, 8ths at 60 clean\n`;

test.each(ROWS)("%s", async (instrument, alone, beside) => {
  const text = practised(instrument);
  const journal = journalOf(text);
  const [record] = attemptsOfJournal(journal);
  const words = articulationWords(journal, record!);
  expect([words.alone("single"), words.beside("single")]).toEqual([alone, beside]);
  const { way } = exercisesOf(previewOf(text, { today: "2026-03-03" }))[0]!.shows!;
  expect(way).toBe([alone, "two octaves", "8ths"].filter((part) => part !== null).join(", "));
  const { articulations } = waysPlayed(journal, { today: day("2026-03-03"), instrument: null });
  expect(articulations.map(({ name }) => name)).toEqual(alone === null ? [] : [alone]);
  const { stdout } = await daystave(["history", "a.practice"], { files: { "a.practice": text } });
  expect(stdout).toContain(`(${["wide", alone === "tongued" ? "single" : alone, "even"].filter(Boolean).join(", ")})`);
});
