import { describe, expect, test } from "vitest";
import { manifest } from "../support/manifest.ts";
import { filesBelow, isNode, literal, moduleOf, type Node, nodes, textOf } from "./source.ts";

// What a user reads is plain English. These habits were dropped from it, each for the words beside it; a machine knows
// them by their letters alone, so what they mean elsewhere is excepted below, with the reason.

const HABITS: readonly { readonly habit: RegExp; readonly better: string }[] = [
  { habit: /\bbehind\b/i, better: "after" },
  { habit: /\b(?:stands?|standing|stood)\b/i, better: "is, goes, comes" },
  { habit: /\b(?:tells?|telling|told)\b/i, better: "shows, says" },
  { habit: /\bmend(?:s|ed|ing)?\b/i, better: "fix" },
  { habit: /\bso far\b/i, better: "yet, before, for now" },
  { habit: /(?<!\b(?:there|as there) )\b(?:is|are|was|were) no (?!longer\b|more than\b)[a-z]/i, better: "is not a" },
  { habit: /\bfor (?:who\b|whoever\b)/i, better: "for anyone who" },
  { habit: /\bnothing of this\b/i, better: "none of this" },
  {
    habit: /\b(?:the|these|its|this year's|upper|lower|weekly) figures?\b/i,
    better: "number; a figure is one of music",
  },
  { habit: /\bmetronome (?:steps?|marks?)\b/i, better: "notch; a metronome mark is ♩=72 in print" },
  { habit: /\bhardest steps?\b/, better: "hardest finger change" },
  { habit: /\bstays? level\b|\bis level\b/i, better: "no clear change" },
  { habit: /\bhas no place\b|\bbelongs? (?:here|there|first)\b/i, better: "goes here, comes first" },
  { habit: /\bbad conscience\b/i, better: "plain words" },
];

/** What a habit's letters mean besides: a piece of the text, and why it is right there. */
const EXCEPTIONS: readonly { readonly text: string; readonly why: string }[] = [
  { text: "left behind", why: "what was forgotten is behind" },
  { text: "tell your", why: "to speak to somebody" },
  { text: "tell the two apart", why: "to know one from the other" },
  { text: "the figure on 1", why: "a figure of music, of which a pattern is made" },
  { text: "client/pictures/mend-", why: "the name of a picture" },
];

/** Whose strings users read; tables of words that users write, and what developers read, are not among them. */
const CODE = [
  "client/commands",
  "client/preview",
  "server/charts",
  "server/checks",
  "server/cli",
  "server/features",
  "server/history",
  "server/host",
  "server/journal/declarations",
  "server/lsp",
  "server/music",
  "server/plan",
  "server/syntax/words",
];
const PAGES = ["README.md", "CHANGELOG.md", "client/media", "syntaxes"].flatMap((path) =>
  path.endsWith(".md") ? [path] : filesBelow(path).filter((file) => file.endsWith(".md")),
);

interface Sentence {
  readonly at: string;
  readonly text: string;
}

describe("the habits", () => {
  test.each([
    ["How it went stands behind its tempo", ["after", "is, goes, comes"]],
    ["This is no exercise that is known.", ["is not a"]],
    ["its last tempo one metronome step up", ["notch; a metronome mark is ♩=72 in print"]],
    ["the week of 26 October, no longer planned", []],
    ["How it went comes after the tempo", []],
  ])("of %j are %j", (text, better) => {
    expect(HABITS.filter(({ habit }) => habit.test(text)).map((each) => each.better)).toEqual(better);
  });

  test("strings of the program are found, with their templates", () => {
    const module = ["const a = `There is no $", '{b} behind it`; f("two words"); import "x"; type T = 1;'].join("");
    expect(stringsOf("x.ts", module).map(({ text }) => text)).toEqual(["There is no … behind it", "two words"]);
  });
});

test("no text that a user reads has them", () => {
  expect(sentences().flatMap(habitsIn)).toEqual([]);
});

test("every exception is still needed, and says why", () => {
  const texts = sentences().map(({ text }) => text);
  const idle = EXCEPTIONS.filter(({ text, why }) => why.length < 10 || !texts.some((each) => each.includes(text)));
  expect(idle).toEqual([]);
});

function habitsIn({ at, text }: Sentence): readonly string[] {
  const rest = EXCEPTIONS.reduce((left, each) => left.replaceAll(each.text, "…"), text);
  return HABITS.flatMap(({ habit, better }) => {
    const found = habit.exec(rest);
    return found ? [`${at}: "${found[0]}" in "${text.slice(0, 120)}": ${better}`] : [];
  });
}

function sentences(): readonly Sentence[] {
  const files = CODE.flatMap((folder) => filesBelow(folder)).filter((path) => path.endsWith(".ts"));
  return [
    ...files.flatMap((path) => stringsOf(path, textOf(path))),
    ...PAGES.flatMap((path) => linesOf(path, textOf(path))),
    ...descriptionsIn(manifest),
  ];
}

/** Strings of more than a word, with `…` for what a template puts in. */
function stringsOf(path: string, source: string): readonly Sentence[] {
  const module = moduleOf(path, source);
  return [...nodes(module.body)].flatMap((node) => {
    const text = node.type === "TemplateLiteral" ? templateText(node) : literal(node);
    const isSentence = typeof text === "string" && /\S \S/.test(text);
    return isSentence ? [{ at: `${path}:${module.lineOf(node)}`, text: text as string }] : [];
  });
}

function templateText({ quasis }: Node): string {
  const parts = (quasis as readonly unknown[]).filter(isNode);
  return parts.map(({ value }) => (value as { readonly cooked: string }).cooked).join("…");
}

/** A page's own words: not its boxes, nor what stands in code. */
function linesOf(path: string, page: string): readonly Sentence[] {
  const words = page.replace(/^```[\s\S]*?^```/gm, (box) => box.replace(/[^\n]/g, "")).replace(/`[^`\n]*`/g, "`…`");
  return words.split("\n").map((text, i) => ({ at: `${path}:${i + 1}`, text }));
}

function descriptionsIn(value: unknown): readonly Sentence[] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([name, own]) =>
    typeof own === "string" && /description|altText/i.test(name)
      ? [{ at: `package.json, ${name}`, text: own }]
      : Array.isArray(own) && name === "enumDescriptions"
        ? own.map((text: string) => ({ at: "package.json, enumDescriptions", text }))
        : descriptionsIn(own),
  );
}
