import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { INSTRUMENTS } from "../../server/music/instruments/instruments.ts";
import { transpositionWords } from "../../server/music/instruments/transposition.ts";
import { printName, printNote } from "../../server/music/notes/note.ts";
import { readTemperament, TEMPERAMENT_NAMES } from "../../server/music/tuning/read-temperament.ts";
import { temperamentText, wolves } from "../../server/music/tuning/temperament.ts";

const ROOT = join(import.meta.dirname, "../..");
const REFERENCE = readFileSync(join(ROOT, "syntaxes/FORMAT.md"), "utf8");
const ERRORS = join(ROOT, "samples/errors");

interface Section {
  readonly code: string;
  readonly severity: string;
  readonly example: string;
  readonly text: string;
}

/** The sections under "Diagnostics": one for each code. */
function sections(): Section[] {
  const [, diagnostics] = REFERENCE.split("\n## Diagnostics\n");
  return diagnostics!
    .split("\n### ")
    .slice(1)
    .map((text) => ({
      text,
      code: /^`([a-z-]+)`\n/.exec(text)![1]!,
      severity: /\n(Error|Warning|Information|Hint)\.\n/.exec(text)![1]!,
      example: /\n```practice(?: later)?\n([\s\S]*?\n)```\n/.exec(text)![1]!,
    }));
}

/** The codes under one of the headings that list them by how much they matter. */
function listed(heading: string): readonly string[] {
  const [, list] = new RegExp(`\\n#### ${heading}\\n\\n(.*)\\n`).exec(REFERENCE)!;
  return [...list!.matchAll(/`([a-z-]+)`/g)].map((match) => match[1]!);
}

/** The sample of a code, without its first line, which is a remark on the sample itself. */
function sample(code: string): { remark: string; journal: string } {
  const text = readFileSync(join(ERRORS, code, "example.practice"), "utf8");
  const end = text.indexOf("\n");
  return { remark: text.slice(0, end), journal: text.slice(end + 1) };
}

/** Anchors as code hosts make them from headings: lower case, hyphens for spaces, a number from the second one on. */
function anchors(): Set<string> {
  const seen = new Map<string, number>();
  const prose = REFERENCE.replace(/```[\s\S]*?```/g, "");
  return new Set(
    [...prose.matchAll(/^#+ (.*)$/gm)].map(([, heading]) => {
      const anchor = heading!
        .toLowerCase()
        .replace(/[^\w\s-]/g, "")
        .replace(/ /g, "-");
      const before = seen.get(anchor) ?? 0;
      seen.set(anchor, before + 1);
      return before ? `${anchor}-${before}` : anchor;
    }),
  );
}

test("every code has one section and one sample", () => {
  const codes = sections().map(({ code }) => code);
  expect(new Set(codes).size).toBe(codes.length);
  expect([...codes].sort()).toEqual(readdirSync(ERRORS).sort());
});

test.each([
  ["Errors", "Error"],
  ["Warnings", "Warning"],
  ["Information", "Information"],
  ["Hints", "Hint"],
])("%s are listed above their sections", (heading, severity) => {
  const codes = sections().filter((section) => section.severity === severity);
  expect([...listed(heading)].sort()).toEqual(codes.map(({ code }) => code).sort());
});

describe.each(sections())("$code", ({ code, severity, example, text }) => {
  test("has the same journal in the reference and in the sample", () => {
    expect(sample(code).journal).toBe(example);
  });

  test("says that the sample is invented, and what it raises", () => {
    expect(sample(code).remark).toMatch(
      new RegExp(`^-- Invented\\. Raises .*${severity.toLowerCase()} ${code}( on 2026-06-01)?\\.$`),
    );
  });

  test("says why, and what to do", () => {
    expect(text).toMatch(/\n\*\*Why\.\*\* \S/);
    expect(text).toMatch(/\n\*\*What to do\.\*\* \S/);
  });
});

/** The rows under "Pitch and temperament": name, other ways to write it, its fifths. */
function temperaments(): { name: string; others: string[]; fifths: string }[] {
  const [, section] = REFERENCE.split("\n## Pitch and temperament\n");
  const [, , ...rows] = section!.split("\n## ")[0]!.match(/^\|.*$/gm)!;
  const inTicks = (cell: string): string[] => [...cell.matchAll(/`([^`]+)`/g)].map((match) => match[1]!);
  return rows.map((row) => {
    const [, name, others, fifths] = row.split("|");
    return { name: inTicks(name!)[0]!, others: inTicks(others!), fifths: fifths! };
  });
}

describe("the temperaments of the reference", () => {
  test("are those that are read, in their order", () => {
    expect(temperaments().map(({ name }) => name)).toEqual(TEMPERAMENT_NAMES);
  });

  test.each(temperaments())("$name, by each of its spellings, with its wolves", ({ name, others, fifths }) => {
    for (const spelling of [name, ...others]) {
      const read = readTemperament(spelling);
      const shown = read.ok && temperamentText(read.temperament, printName);
      expect(shown, spelling).toBe(spelling === "just on D" ? spelling : name);
      if (!read.ok || shown !== name) continue;
      const found = wolves(read.temperament);
      expect(/\bwol(?:f|ves)\b/.test(fifths), spelling).toBe(found.length > 0);
      for (const { lower, upper, cents } of found) {
        expect(fifths).toContain(`${printName(lower)}–${printName(upper)}`);
        const size = `is ${Math.abs(cents).toFixed(1)} cents ${cents > 0 ? "wide" : "narrow"}`;
        if (found.length === 1) expect(fifths).toContain(size);
      }
    }
  });
});

/** The rows under "Instruments": name, other names, range, how it sounds, why the range is not firm. */
function instruments(): string[][] {
  const [, section] = REFERENCE.split("\n## Instruments\n");
  const [, , ...rows] = section!.split("\n## ")[0]!.match(/^\|.*$/gm)!;
  return rows.map((row) =>
    row
      .split("|")
      .slice(1, -1)
      .map((cell) => cell.trim()),
  );
}

test("the instruments of the reference are those that are known, with their ranges and how they sound", () => {
  const known = INSTRUMENTS.map(({ names: [name, ...others], low, high, sounding, soft }) => [
    `\`${name}\``,
    others.map((other) => `\`${other}\``).join(", "),
    `${printNote(low)} to ${printNote(high)}`,
    transpositionWords(sounding) ?? "as written",
    soft ?? "",
  ]);
  expect(instruments()).toEqual(known);
});

test("every link within the page leads somewhere", () => {
  const known = anchors();
  const links = [...REFERENCE.matchAll(/\]\(#([^)]*)\)/g)].map((match) => match[1]!);
  expect(links.length).toBeGreaterThan(50);
  expect(links.filter((link) => !known.has(link))).toEqual([]);
});

test("every boxed example is marked as a journal", () => {
  const fences = [...REFERENCE.matchAll(/^```(.*)$/gm)].map((match) => match[1]!);
  const openings = fences.filter((_, index) => index % 2 === 0);
  expect(openings.filter((info) => info !== "practice")).toEqual([]);
  expect(fences.filter((_, index) => index % 2 === 1).join("")).toBe("");
});
