import { describe, expect, test } from "vitest";
import { completionsAt } from "../../../server/features/completion/completion.ts";
import type { CompletionItem } from "../../../server/features/types.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { journalOf, URI } from "../journal-text.ts";

// Lines to be filled in, as the journal has them. Invented journals.

const TODAY = parseIsoDate("2026-03-09")!;

function offersAt(
  marked: string,
  snippets = true,
  journal = journalOf(marked.replace("‸", "")),
): readonly CompletionItem[] {
  const lines = marked.split("‸")[0]!.split(/\r\n|\n/);
  const at = { line: lines.length - 1, character: lines.at(-1)!.length };
  return completionsAt(journal, URI, at, TODAY, { snippets });
}

/** Each offer to be filled in: its label, and what is put in, with `[2 thirds]` for a stop that has words already. */
function snippets(marked: string): string[] {
  const found = offersAt(marked).filter(({ kind }) => kind === "snippet");
  return found.map(({ label, snippet }) => `${label} => ${snippet!.replace(/\$\{(\d):([^}]*)\}/g, "[$1 $2]")}`);
}

const WEEK = `2026-03-02 Mon, 40 min
groundwork, 15 min with patience
  D minor, thirds, slurred, 8ths at 60 clean
  G major, thirds, slurred, 8ths at 66 clean
pieces
  "Solo", bars 1-8, at 60
2026-03-04 Wed
  F major, fourths, tongued, 16ths at 40 slips

`;

describe("today with the phases of the last session", () => {
  test("where today may begin, with room for the first entry", () => {
    expect(snippets(`${WEEK}‸`)[0]).toBe(
      "2026-03-09 Mon, groundwork, pieces => 2026-03-09 Mon\ngroundwork, 15 min\n  $0\npieces",
    );
    expect(snippets(`${WEEK}2026‸`)).toHaveLength(1);
  });

  test("in plain lines for an editor without tab stops, with the file's own line ends", () => {
    const [plain] = offersAt(`${WEEK.replaceAll("\n", "\r\n")}‸`, false).filter(({ kind }) => kind === "snippet");
    expect(plain!.edit.newText).toBe("2026-03-09 Mon\r\ngroundwork, 15 min\r\npieces");
  });

  test("not where today stands already, or no session had phases", () => {
    expect(snippets(`${WEEK}2026-03-09 Mon\n‸`).some((each) => each.startsWith("2026"))).toBe(false);
    expect(snippets("2026-03-02\n  D minor, slow\n\n‸")).toEqual([]);
  });
});

describe("a line as the latest days have it most", () => {
  const NEXT = "2026-03-09 Mon\n‸";

  test("in its order, with its commas; the subject and the tempo are blank", () => {
    expect(snippets(WEEK + NEXT)).toEqual([
      "…, fourths, tongued, 16ths at … => $1, [2 fourths], [3 tongued], [4 16ths] at $5",
    ]);
  });

  test("of whoever writes no commas, or in another language", () => {
    const without = [
      "D minor thirds slurred quavers 60",
      "G major thirds slurred quavers 66",
      "F major slurred quavers 70",
      "A minor thirds slurred quavers 72 clean",
    ];
    expect(snippets(`2026-03-02\n${without.join("\n")}\n${NEXT}`)).toEqual([
      "… thirds slurred quavers … => $1 [2 thirds] [3 slurred] [4 quavers] $5",
    ]);
    const german = [
      "d-Moll harmonisch, thirds, at quarter=60",
      "G-Dur, fourths, at quarter=66",
      "a-Moll harmonisch, thirds, at quarter=40",
    ];
    expect(snippets(`names german\n2026-03-02\n${german.join("\n")}\n${NEXT}`)).toEqual([
      "…, thirds, at quarter=… => $1, [2 thirds], at quarter=$3",
    ]);
  });

  test("once there are three like it, and only on an empty line", () => {
    expect(snippets(`2026-03-02\nD minor, thirds, at 60\nG major, thirds, at 60\n${NEXT}`)).toEqual([]);
    expect(snippets(`${WEEK}2026-03-09 Mon\nF‸`)).toEqual([]);
    expect(snippets(`${WEEK}2026-03-09 Mon\n-- ‸`)).toEqual([]);
  });

  test("filled in, it is an entry of the same kinds in the same order", () => {
    const [found] = offersAt(WEEK + NEXT).filter(({ kind }) => kind === "snippet");
    const filled = found!
      .snippet!.replace("$1", "Bb major")
      .replace(/\$\{\d:(\w+)\}/g, "$1")
      .replace("$5", "72");
    const journal = journalOf(`${WEEK}2026-03-09 Mon\n${filled}`);
    const [entry] = journal.model(journal.files.get(URI)!.blocks.at(-1)!).entries;
    expect(entry!.source.items.map(({ meaning }) => meaning.type)).toEqual([
      "pattern",
      "articulation",
      "note value",
      "tempo",
    ]);
    expect(entry!.attempts[0]!.tempo).toEqual({ bpm: 72 });
  });
});

describe("a declaration as the one before is written", () => {
  test("its names, figures and dates are blank, its words stay", () => {
    expect(
      snippets(
        `piece "Courante in F" as Courante: F major, 64 bars, goal quarter=92, due 2026-09-12\nstudy "Evening studies": G minor\n‸`,
      ),
    ).toEqual([
      'piece "…" as …: …, … bars, goal quarter=…, due … => piece "$1" as $2: $3, $4 bars, goal quarter=$5, due $6',
      'study "…": … => study "$1": $2',
    ]);
    expect(snippets('piece "Solo"\npi‸')).toEqual(['piece "…" => piece "$1"']);
  });

  test("also where another file has it; not from what is being typed, or what is no declaration", () => {
    const files = new Map([
      ["file:///journal/journal.practice", createDocument("piece „Solo“: F major\n")],
      [URI, createDocument("\n2026-03-02\n")],
    ]);
    const journal = new Journal("file:///journal", files);
    const labels = offersAt("‸\n2026-03-02\n", true, journal).filter(({ kind }) => kind === "snippet");
    expect(labels.map(({ snippet }) => snippet)).toEqual(["piece „$1“: $2"]);
    expect(snippets('piece "Solo": F major‸')).toEqual([]);
    expect(snippets("piece Solo\n‸")).toEqual([]);
  });
});

test("signs that tab stops are written with stand for themselves", () => {
  const [found] = snippets('phase "cost $5 {a} \\\\b"\n2026-03-02\ncost $5 {a} \\\\b\n  D minor, slow\n\n‸');
  expect(found).toBe("2026-03-09 Mon, cost $5 {a} \\\\b => 2026-03-09 Mon\ncost \\$5 {a\\} \\\\\\\\b\n  $0");
});

test("what is offered first stays where it was, and an editor without tab stops is offered nothing to be filled in", () => {
  for (const marked of [
    `${WEEK}‸`,
    `${WEEK}2026-03-09 Mon\n‸`,
    `${WEEK}2026-03-09 Mon\nD‸`,
    'piece "Solo": F major\n‸',
  ]) {
    const labels = (withStops: boolean) => offersAt(marked, withStops).map(({ label }) => label);
    const others = offersAt(marked).filter(({ kind }) => kind !== "snippet");
    expect(others.map(({ label }) => label).slice(0, 5)).toEqual(labels(true).slice(0, 5));
    for (const { kind, edit } of offersAt(marked, false)) if (kind === "snippet") expect(edit.newText).toMatch(/^2026/);
  }
});
