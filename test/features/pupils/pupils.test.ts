import { expect, test } from "vitest";
import { pupils } from "../../../server/features/pupils/pupils.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import type { PupilShown } from "../../../shared/pupils.ts";
import { lineAtPlace, seen } from "../preview/preview-asked.ts";

const NOOR = `-- invented
player Noor
share body
2026-03-02 Mon
lesson
set G major, thirds, slow, 3 days
set "sing it" by 2026-03-11
2026-03-05
  G major, thirds, slow
ask: why?
left wrist tired
`;

/** What the page shows on 2026-03-09 of journals of one file each, by their folders. */
function shown(texts: Readonly<Record<string, string>>): readonly PupilShown[] {
  const journals = Object.entries(texts).map(
    ([root, text]) => new Journal(root, new Map([[`${root}/journal.practice`, createDocument(text)]])),
  );
  return pupils(journals, () => parseIsoDate("2026-03-09")!);
}

test("a row says the same as `daystave pupils`, in the words of the preview", () => {
  const [{ name, last, set, ask, body }] = shown({ "file:///c/noor": NOOR }) as [PupilShown];
  expect([name, last!.text]).toEqual(["Noor", "Thu 5 Mar"]);
  expect([...set, ...ask, ...body].map(seen)).toEqual([
    "G major, thirds, slow | played Thu 5; set for three days | Mon 2 Mar",
    "sing it | for Wed 11 Mar",
    "why? | Thu 5 Mar",
    "left wrist tired | Thu 5 Mar",
  ]);
});

test("each cell leads to its line", () => {
  const [{ place, last, set, ask, body }] = shown({ "file:///c/noor": NOOR }) as [PupilShown];
  const places = [place, last!.place, ...[...set, ...ask, ...body].map((each) => each.place)];
  expect(places.map((each) => lineAtPlace(NOOR, each))).toEqual([
    "player Noor",
    "2026-03-05",
    "set G major, thirds, slow, 3 days",
    'set "sing it" by 2026-03-11',
    "ask: why?",
    "left wrist tired",
  ]);
  expect(new Set(places.map(({ uri }) => uri))).toEqual(new Set(["file:///c/noor/journal.practice"]));
});

test("folders are named only where two have one name", () => {
  const rows = shown({
    "file:///c/monday/ida": "player Ida",
    "file:///c/fri%20day/ida": "player Ida",
    "file:///c/x": "player Ben",
  });
  expect(rows.map(({ name, folder }) => [name, folder])).toEqual([
    ["Ben", ""],
    ["Ida", "fri day/ida"],
    ["Ida", "monday/ida"],
  ]);
});

test("a journal without a player is named by its folder, and its name leads to its first line", () => {
  expect(shown({ "file:///c/n%C3%A9lie": "2026-03-02\n  C major\n" })).toMatchObject([
    { name: "nélie", place: { uri: "file:///c/n%C3%A9lie/journal.practice", line: 0 } },
  ]);
});

test("without `share body` no word of the body is there", () => {
  const [row] = shown({ "file:///c/noor": NOOR.replace("share body\n", "") });
  expect(row!.body).toEqual([]);
  expect(JSON.stringify(row)).not.toContain("wrist");
});
