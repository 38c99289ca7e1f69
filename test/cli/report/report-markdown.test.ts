import fc from "fast-check";
import { marked } from "marked";
import { expect, test } from "vitest";
import { printable } from "../../../server/cli/printable.ts";
import type { Page, PartBlock } from "../../../server/cli/report/page.ts";
import { reportMarkdown } from "../../../server/cli/report/report-markdown.ts";
import { visible } from "../../../server/features/explain/markdown.ts";
import { daystave } from "../command-line.ts";

// Outside truth: marked 18.2.1, a reader of CommonMark and GFM, says what the Markdown shows.

/** What may mean something in Markdown or HTML, and pieces that together do. */
const SIGNS = [
  ..."\\`*_{}[]()<>#+-.!|~=:&;@^$%\"'/? \t\n\r\u202e\u0007\u00a0abc1",
  ...[
    "```",
    "~~~",
    "    ",
    "1. ",
    "- ",
    "> ",
    "# ",
    "---",
    "&amp;",
    "&#35;",
    "<b>",
    "</script>",
    "<!--",
    "-->",
    "[a](b)",
  ],
  ...[
    "![a](b)",
    "http://a.b",
    "www.a.bc",
    "a@b.cd",
    "mailto:a@b.cd",
    "[^1]",
    "[ ] ",
    ":-:",
    "**a**",
    "|",
    "\\|",
    "é",
    "🎵",
  ],
];
const TEXT = fc.array(fc.constantFrom(...SIGNS), { maxLength: 12 }).map((signs) => signs.join(""));

function pageWith(...blocks: readonly PartBlock[]): Page {
  return { title: "Noor, 2026-W11", name: "Noor", parts: [{ heading: "For the lesson", blocks }] };
}

/** The elements that a page becomes, each with its text. */
function read(markdown: string): readonly (readonly [name: string, text: string])[] {
  const html = marked.parse(markdown, { async: false });
  const elements = [...html.matchAll(/<([a-z0-9]+)((?: align="right")?)>([^<]*)/g)];
  // Every sign that opens a tag belongs to one of these, or closes one.
  expect(html.match(/</g)!.length).toBe(elements.length + html.match(/<\/[a-z0-9]+>/g)!.length);
  return elements.map(([, name, , text]) => [name!, decoded(text!)] as const);
}

function decoded(text: string): string {
  const named: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', "#39": "'" };
  return text.replace(/&(amp|lt|gt|quot|#39);/g, (_, name: string) => named[name]!);
}

/** As it is shown: one line, its spaces like a browser's. */
function shown(text: string): string {
  return visible(text).replace(/\s+/g, " ").trim();
}

function textsOf(markdown: string, name: string): string[] {
  return read(markdown).flatMap(([each, text]) => (each === name ? [text.replace(/\s+/g, " ").trim()] : []));
}

test("a text in a list comes out as it is, with its day and what is said of it", () => {
  fc.assert(
    fc.property(TEXT, TEXT, (text, below) => {
      const page = pageWith({ type: "list", items: [{ day: "Mon 2 Mar", text, below }, { text }] });
      const items = textsOf(reportMarkdown(page), "li").filter((each) => each !== "");
      const said = [shown(`Mon 2 Mar: ${text}`), shown(below), shown(text)].filter((each) => each !== "");
      expect(items).toEqual(said);
    }),
    { seed: 9 },
  );
});

test("a text in a title, a sentence and a cell", () => {
  fc.assert(
    fc.property(TEXT, (text) => {
      fc.pre(shown(text) !== "");
      const table = {
        caption: "",
        headings: ["a", "b"],
        rows: [
          [text, "1"],
          ["x", text],
        ],
        sums: false,
        words: 1,
      };
      const markdown = reportMarkdown({
        ...pageWith({ type: "sentence", text }, { type: "table", table }),
        title: text,
      });
      expect(textsOf(markdown, "h1")).toEqual([shown(text)]);
      expect(textsOf(markdown, "p")).toEqual([shown(text)]);
      expect(textsOf(markdown, "td")).toEqual([shown(text), "1", "x", shown(text)]);
    }),
    { seed: 10 },
  );
});

test("a name and a way of playing", () => {
  fc.assert(
    fc.property(TEXT, TEXT, (name, way) => {
      fc.pre(shown(name) !== "" && shown(way) !== "");
      const exercises = [{ name, way, sentences: [way] }];
      const [first, second] = textsOf(reportMarkdown(pageWith({ type: "exercises", exercises })), "li");
      expect(first).toBe(shown(`${name}, ${way}`));
      expect(second).toBe(shown(way));
    }),
    { seed: 11 },
  );
});

test("the lines of a day are the same, letter for letter, but for what could steer a terminal", () => {
  const line = TEXT.map((text) => text.replace(/[\r\n]/g, " "));
  fc.assert(
    fc.property(fc.array(line, { minLength: 1, maxLength: 4 }), (lines) => {
      const elements = read(reportMarkdown(pageWith({ type: "lines", lines })));
      const code = elements.flatMap(([name, text]) => (name === "code" ? [text] : []));
      const kept = lines.map((each) => each.split("\t").map(printable).join("\t"));
      expect(code).toEqual([`${kept.join("\n")}\n`]);
    }),
    { seed: 12 },
  );
});

test("signs in a journal are text in its report", async () => {
  const text = '2026-03-09\n  ask: is `a*b*` <b>bold</b> | or [a](http://b.c)?\n```\n  "## Air_no_1", at 60 clean\n';
  const { stdout } = await daystave(["report"], { files: { "a.practice": text } });
  expect(textsOf(stdout, "li")).toContain("Mon 9 Mar: is `a*b*` <b>bold</b> | or [a](http://b.c)?");
  expect(textsOf(stdout, "td")).toContain("## Air_no_1");
  expect(read(stdout).find(([name]) => name === "code")).toEqual(["code", text]);
});
