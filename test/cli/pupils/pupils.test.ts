import stringWidth from "string-width";
import { describe, expect, test } from "vitest";
import type { Files } from "../../support/temporary-folder.ts";
import { type Around, daystave } from "../command-line.ts";

// Today is Tuesday 2026-03-10.

const NOOR = `player Noor
2026-03-02 Mon
lesson, 30 min
set D melodic minor, thirds, slurred, 8ths at 60, 4 days
set "clap line 4" by 2026-03-12
2026-03-03
  D melodic minor, thirds, slurred, 8ths at 60 clean
ask: may it be tongued? -- thumb sore
2026-03-08
  D melodic minor, thirds, slurred, 8ths at 63 clean
left wrist tired
`;
const FILES: Files = {
  "journal.practice": "shared\nshare body\npitch A=442\n",
  "noor/journal.practice": NOOR,
  "ben/journal.practice": "player Ben\nshare body\n",
  "ben/march.practice": "set G major, slow\n\n2026-03-07\n  G major, slow, sore left thumb\n",
  "ada/journal.practice": "",
};

async function text(around: Around = { files: FILES }, ...argv: readonly string[]): Promise<string> {
  const { status, stdout, stderr } = await daystave(["pupils", ...argv], around);
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  return stdout;
}

async function json(files: Files, ...argv: readonly string[]) {
  return JSON.parse(await text({ files }, "--json", ...argv));
}

test("each pupil by name, with the last day, what is set and asked; of the body what is shared", async () => {
  expect(await text()).toBe(
    [
      "ada",
      "  last  nothing played yet",
      "",
      "Ben",
      "  last  Sat 7 Mar",
      "  set   G major, slow",
      "          played Sat 7",
      "  body  Sat 7 Mar: sore left thumb",
      "",
      "Noor",
      "  last  Sun 8 Mar",
      "  set   D melodic minor, thirds, slurred, 8ths at 60",
      "          played Tue 3, Sun 8; set for four days",
      "        clap line 4",
      "          for Thu 12 Mar",
      "  ask   Tue 3 Mar: may it be tongued?",
      "",
    ].join("\n"),
  );
});

test("as of another day", async () => {
  const shown = await text({ files: FILES }, "--today", "2026-03-03");
  expect(shown).toContain("Ben\n  last  nothing played yet\n  set   G major, slow\n\nNoor\n  last  Tue 3 Mar\n");
});

test("with CRLF, a byte order mark, lists and capitals it is the same", async () => {
  const other = `\uFEFF${NOOR.replace(/^(?=\S.*$)(?!2026)/gm, "- ")
    .replace("player", "PLAYER")
    .replaceAll("\n", "\r\n")}`;
  expect(await text({ files: { "noor/journal.practice": other } })).toBe(
    await text({ files: { "noor/journal.practice": NOOR } }),
  );
});

test("two of one name are told apart by their folders", async () => {
  const shown = await text({
    files: { "monday/ida/journal.practice": "player Ida", "friday/ida/journal.practice": "player Ida" },
  });
  expect(shown.split("\n").filter((line) => line.startsWith("Ida"))).toEqual(["Ida (friday/ida)", "Ida (monday/ida)"]);
});

test("one journal, from its own folder, is headed by the folder's name", async () => {
  const { pupils } = await json({ "a.practice": "2026-03-02\n  C major\n" });
  expect(pupils).toMatchObject([{ path: ".", last: "2026-03-02" }]);
  expect(pupils[0].name).not.toBe(".");
});

test("given one of its files, it is the whole journal that answers", async () => {
  const { pupils } = await json(FILES, "ben/march.practice");
  expect(pupils.map(({ name }: { name: string }) => name)).toEqual(["Ben"]);
  expect(pupils[0].body).toEqual([{ date: "2026-03-07", text: "sore left thumb" }]);
});

test("--json has every field, and a body only where it is shared", async () => {
  const { pupils, skipped } = await json(FILES);
  expect(skipped).toEqual([]);
  expect(pupils[2]).toEqual({
    name: "Noor",
    path: "noor",
    last: "2026-03-08",
    set: [
      {
        text: "D melodic minor, thirds, slurred, 8ths at 60",
        done: ["2026-03-03", "2026-03-08"],
        wanted: 4,
        by: null,
      },
      { text: "clap line 4", done: [], wanted: null, by: "2026-03-12" },
    ],
    questions: [{ date: "2026-03-03", text: "may it be tongued?" }],
  });
  expect(pupils.map((each: object) => "body" in each)).toEqual([false, true, false]);
});

test("nothing to show is said on standard error, and no failure", async () => {
  expect(await daystave(["pupils"], { files: {} })).toMatchObject({
    status: 0,
    stdout: "",
    stderr: "daystave: There is no .practice file here.\n",
  });
  const { status, stdout, stderr } = await daystave(["pupils"], { files: { "journal.practice": "shared\n" } });
  expect({ status, stdout }).toEqual({ status: 0, stdout: "" });
  expect(stderr).toMatch(/^daystave: No pupil's journal is here yet\./);
});

test("what cannot be read fails, and says which", async () => {
  const { status, stderr } = await daystave(["pupils", "nowhere"], { files: {} });
  expect({ status, stderr }).toEqual({ status: 2, stderr: "daystave: nowhere: There is no such file or folder.\n" });
});

// How wide a line is shown is taken from the library `string-width`, which goes by Unicode's East Asian Width (UAX #11).
describe.each([30, 40, 80, 160])("on a terminal of %i columns", (columns) => {
  const WIDE: Files = {
    "a/journal.practice":
      'player 練習 日記\nshare body\nset "春の海 第一楽章 を ゆっくり と 三回 弾く そして 歌う" by 2026-03-20\n2026-03-02\nask: is the fourth finger allowed to leave the string in the second line, or does it have to stay down until the shift is over?\nleft wrist sore and a little stiff after the second page of the study\n',
    "b/journal.practice": NOOR,
  };

  test("no line is wider, and nothing is left out", async () => {
    const shown = await text({ files: WIDE, isTerminal: true, columns, env: { NO_COLOR: "1" } });
    for (const line of shown.split("\n")) expect(stringWidth(line), line).toBeLessThanOrEqual(columns);
    const words = shown.replace(/\s+/g, " ");
    expect(words).toContain(
      "Mon 2 Mar: is the fourth finger allowed to leave the string in the second line, or does it",
    );
    expect(words).toContain("body Mon 2 Mar: left wrist sore and a little stiff after the second page of the study");
    expect(words).toContain("played Tue 3, Sun 8; set for four days");
  });
});

test("colour tells nothing: without it the text is the same", async () => {
  const coloured = await text({ files: FILES, isTerminal: true, columns: 80 });
  expect(coloured).toContain("\u001B[1mNoor\u001B[");
  expect(coloured.replace(/\u001B\[\d+m/g, "")).toBe(
    await text({ files: FILES, isTerminal: true, columns: 80, env: { NO_COLOR: "1" } }),
  );
});

test("what could steer the terminal is shown, not sent", async () => {
  const shown = await text({ files: { "a/journal.practice": "2026-03-02\nask: \u001B[31mred\u202E?\n" } });
  expect(shown).toContain("ask   Mon 2 Mar: \\u001B[31mred\\u202E?");
});

test("long after the last lesson: what there was since, with the years", async () => {
  const files = { "journal.practice": "2025-03-03\nlesson\nset G major, slow\nask: why?\n2025-03-08\nG major, slow\n" };
  expect(await text({ files })).toContain(
    [
      "  last  Sat 8 Mar 2025",
      "  since the last lesson, Mon 3 Mar 2025",
      "  set   G major, slow",
      "          played Sat 8",
      "  ask   Mon 3 Mar 2025: why?",
    ].join("\n"),
  );
});
