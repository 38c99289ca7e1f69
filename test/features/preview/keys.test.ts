import { Key } from "tonal";
import { describe, expect, test } from "vitest";
import { lineAtPlace, previewOf } from "./preview-asked.ts";

/** What stands in the row of a kind: `1b F 2` where something was practised or marked. */
function row(text: string, kind: string): string[] {
  const { columns, rows } = previewOf(text).keys!;
  const cells = rows.find((each) => each.kind === kind)?.cells ?? [];
  return cells.flatMap(({ tonic, days, mark }, at) =>
    days === 0 && mark === "" ? [] : [`${columns[at]!.label} ${tonic} ${days}${mark === "" ? "" : ` (${mark})`}`],
  );
}

const day = (date: string, ...lines: string[]): string => `${date}\n${lines.map((line) => `  ${line}\n`).join("")}`;

test("the columns are the fifteen key signatures", () => {
  const { columns } = previewOf(day("2026-03-02", "C major, slow")).keys!;
  expect(columns.map(({ label }) => label).join(" ")).toBe("7b 6b 5b 4b 3b 2b 1b 0 1# 2# 3# 4# 5# 6# 7#");
});

test("signs are those that the player types", () => {
  const cell = (text: string) => row(text, "major");
  expect(cell(day("2026-03-02", "Bb major, slow"))).toEqual(["2b Bb 1"]);
  expect(cell(day("2026-03-02", "B♭ major, slow"))).toEqual(["2♭ B♭ 1"]);
  expect(cell(day("2026-03-02", "F♯ major, slow") + day("2026-03-04", "Bb major, slow"))).toEqual([
    "2b Bb 1",
    "6# F# 1",
  ]);
});

// Against tonal, https://github.com/tonaljs/tonal, package "key": the signature of each major and minor key as sharps
// less flats.
test("the tonics of each row are those whose key has that many accidentals", () => {
  const { rows } = previewOf(day("2026-03-02", "C major, slow", "A harmonic minor, slow")).keys!;
  const tonics = (kind: string) =>
    rows.find((each) => each.kind === kind)!.cells.map(({ tonic }) => tonic.replaceAll("♭", "b").replaceAll("♯", "#"));
  expect(tonics("major").map((tonic) => Key.majorKey(tonic).alteration)).toEqual(
    Array.from({ length: 15 }, (_, at) => at - 7),
  );
  expect(tonics("harmonic minor").map((tonic) => Key.minorKey(tonic).alteration)).toEqual(
    Array.from({ length: 15 }, (_, at) => at - 7),
  );
});

describe("a cell", () => {
  test("holds the days on which the scale was practised, in whatever pattern", () => {
    const text =
      day("2026-03-02", "F major, slow", "F major, thirds, at 60 clean") +
      day("2026-03-03", "F major, fours, at 60 slips");
    expect(row(text, "major")).toEqual(["1b F 2"]);
  });

  test("modes, arpeggios and chains stand under their signature", () => {
    expect(row(day("2026-03-02", "D dorian, slow"), "dorian")).toEqual(["0 D 1"]);
    expect(row(day("2026-03-02", "G minor arpeggio, slow"), "minor arpeggio")).toEqual(["2b G 1"]);
    expect(row(day("2026-03-02", "A dominant seventh, slow"), "dominant seventh")).toEqual(["2# A 1"]);
    expect(row(day("2026-03-02", "C major > F major > Bb major, slow"), "major")).toEqual([
      "2b Bb 1",
      "1b F 1",
      "0 C 1",
    ]);
  });

  test("leads to the last time", () => {
    const text = day("2026-03-02", "F major, slow") + day("2026-03-03", "F major, thirds, slow");
    const cell = previewOf(text).keys!.rows[0]!.cells.find(({ days }) => days > 0)!;
    expect(lineAtPlace(text, cell.place!)).toBe("F major, thirds, slow");
  });

  test("is darker the more days there are, in four steps", () => {
    const text = [2, 3, 4, 5]
      .map((at) => day(`2026-03-0${at}`, "C major, slow", at === 2 ? "G major, slow" : ""))
      .join("");
    const shades = previewOf(text)
      .keys!.rows[0]!.cells.filter(({ days }) => days > 0)
      .map(({ days, shade }) => [days, shade]);
    expect(shades).toEqual([
      [4, 4],
      [1, 1],
    ]);
  });

  test("counts the days of the span, up to today", () => {
    const text =
      day("2025-03-02", "C major, slow") + day("2026-03-02", "C major, slow") + day("2026-03-20", "C major, slow");
    expect(row(text, "major")).toEqual(["0 C 1"]);
    const { keys } = previewOf(text, { choice: { span: "all", instrument: null } });
    expect(keys!.rows[0]!.cells[7]!.days).toBe(2);
  });
});

test("what belongs to no key, or to one beyond seven accidentals, stands below the table", () => {
  const { rows, others } = previewOf(day("2026-03-02", "F whole-tone, slow", "G# major, slow")).keys!;
  expect(rows).toEqual([]);
  expect(others.map(({ text, note }) => `${text} ${note}`)).toEqual(["F whole-tone 1", "G# major 1"]);
});

describe("the pieces in hand", () => {
  const PIECE = 'piece "Ground in G minor" as Ground: G minor, due 2026-05-09\n';

  test("mark their key and its neighbours in the rows of their mode", () => {
    const text = PIECE + day("2026-03-02", "D harmonic minor, slow", "C major, slow");
    expect(row(text, "harmonic minor")).toEqual([
      "3b C 0 (next to the key of Ground)",
      "2b G 0 (key of Ground)",
      "1b D 1 (next to the key of Ground)",
    ]);
    expect(row(text, "major")).toEqual(["0 C 1"]);
  });

  test("in no certain key mark the likeliest, by their last note and signature", () => {
    const piece = 'piece "Lament": last note D, no accidentals, due 2026-05-09\n';
    expect(row(piece + day("2026-03-02", "E dorian, slow"), "dorian")).toEqual([
      "1b G 0 (next to the key of Lament (likely))",
      "0 D 0 (key of Lament (likely))",
      "1# A 0 (next to the key of Lament (likely))",
      "2# E 1",
    ]);
  });

  test("keep their columns from being folded away", () => {
    const { columns } = previewOf(PIECE + day("2026-03-02", "D harmonic minor, slow")).keys!;
    expect(columns.filter(({ unused }) => !unused).map(({ label }) => label)).toEqual(["3b", "2b", "1b"]);
  });
});

test("the weeks that are counted, and what the borders mean where there are any", () => {
  const days = day("2026-03-02", "D harmonic minor, slow");
  const piece = 'piece "Ground": G minor, due 2026-05-09\n';
  expect(previewOf(days).keys).toMatchObject({ note: "days in 26 weeks", sentence: "" });
  expect(previewOf(piece + days).keys!.sentence).toBe(
    "Double border: the key of a current piece. Single: a key one accidental away.",
  );
  expect(previewOf(days, { choice: { span: "all", instrument: null } }).keys!.note).toBe("days, over all weeks");
});

test("without a scale or an arpeggio there is no such part", () => {
  expect(previewOf("").keys).toBeNull();
  expect(previewOf(`${day("2026-02-02", "long tones")}${day("2026-03-02", "long tones")}`).keys).toBeNull();
});

describe("what the current pieces want", () => {
  const wanted = (text: string) => previewOf(text).keys!.wanted;

  test("is said where it was not played lately, in three sentences at most", () => {
    const text = `piece "Ground": G minor\npiece "Air": E major\n${day("2026-03-02", "G harmonic minor, slow")}`;
    expect(wanted(text)).toEqual([
      "Air is in E major: not played yet.",
      "D minor is next to the key of Ground: not played yet.",
      "C minor is next to the key of Ground: not played yet.",
    ]);
  });

  test("is nothing where all was played, or there is no piece", () => {
    expect(wanted(day("2026-03-02", "C major, slow"))).toEqual([]);
    const all = day("2026-03-02", "G minor, slow", "D minor, slow", "C minor, slow");
    expect(wanted(`piece "Ground": G minor\n${all}`)).toEqual([]);
  });

  test("is nothing on a day after one on which something hurt", () => {
    const before = day("2026-02-02", "C major, slow");
    const text = (date: string) => `piece "Ground": G minor\n${before}${day(date, "C major, slow, sore left thumb")}`;
    expect(wanted(text("2026-03-08"))).toEqual([]);
    expect(wanted(text("2026-03-07"))).toHaveLength(3);
  });

  test("names a piece as it is, without what is not seen", () => {
    const text = `piece "G\u202Eround": G minor\n${day("2026-03-02", "C major, slow")}`;
    expect(wanted(text)[0]).not.toContain("\u202E");
  });
});
