import fc from "fast-check";
import { expect, test } from "vitest";
import type { Page } from "../../../server/cli/report/page.ts";
import { reportHtml } from "../../../server/cli/report/report-html.ts";
import { cssString } from "../../../server/features/sheet/printed-page.ts";
import { daystave } from "../command-line.ts";

// What a browser makes of a whole page, on paper too, is in test/hosts/report-page.test.ts.

const SIGNS = [
  ..."<>&\"'`=/\\ \n\t{}();:@*\u202e\u0000abc",
  "</style>",
  "<script>",
  "]]>",
  "<!--",
  "-->",
  "&lt;",
  "é",
  "🎵",
];
const TEXT = fc.array(fc.constantFrom(...SIGNS), { maxLength: 10 }).map((signs) => signs.join(""));

/** A page on which each place has this text. */
function pageOf(text: string): Page {
  const table = {
    caption: text,
    headings: [text, text],
    rows: [
      [text, text],
      [text, text],
    ],
    sums: true,
    words: 1,
  };
  return {
    title: text,
    name: text,
    parts: [
      {
        heading: "Time",
        blocks: [
          { type: "sentence", text },
          { type: "list", name: text, items: [{ day: text, text, below: text }, { text }] },
          { type: "table", table },
          {
            type: "exercises",
            exercises: [{ name: text, way: text, sentences: [text], chart: { svg: "<svg/>", table } }],
          },
          { type: "pictures", pictures: [{ name: text, svg: "<svg/>" }] },
          { type: "lines", lines: [text, text] },
        ],
      },
    ],
  };
}

/** The tags of a page, in their order, with their attributes. */
function tagsOf(html: string): readonly string[] {
  return html.match(/<[^>]*>/g)!;
}

/** The style of a page, without the name at its foot. */
function rulesOf(html: string): string {
  return /<style>(.*?)<\/style>/s.exec(html)![1]!.replace(/@bottom-left \{ content: "[^"]*"/, "");
}

test("a text adds no tag, attribute or rule, wherever it stands", () => {
  const plain = tagsOf(reportHtml(pageOf("a")));
  fc.assert(
    fc.property(TEXT, (text) => {
      fc.pre(text.trim() !== "");
      const html = reportHtml(pageOf(text));
      expect(tagsOf(html)).toEqual(plain);
      expect(rulesOf(html)).toBe(rulesOf(reportHtml(pageOf("a"))));
    }),
    { seed: 21 },
  );
});

// CSS Syntax Module Level 3, 4.3.7: an escape is a backslash and up to six hexadecimal digits, and a space behind ends it.
test("a name in a rule of CSS is a string of letters, digits and escapes", () => {
  fc.assert(
    fc.property(TEXT, (text) => {
      const string = cssString(text);
      expect(string).toMatch(/^"(?:[A-Za-z0-9]|\\[0-9a-f]{1,6} )*"$/);
      const read = string
        .slice(1, -1)
        .replace(/\\([0-9a-f]{1,6}) /g, (_, code: string) => String.fromCodePoint(Number.parseInt(code, 16)));
      expect(read).toBe(text);
    }),
    { seed: 22 },
  );
});

test("a page is one file that fetches nothing and runs nothing", async () => {
  const text = 'player Noor\n\n2026-03-09\n  D minor, at 60 clean\n  ask: see <a href="http://a.b">this</a>?\n';
  const { stdout } = await daystave(["report", "--html"], { files: { "a.practice": text } });
  expect(stdout).toMatch(/^<!doctype html>\n<html lang="en"><head><meta charset="utf-8">/);
  expect(stdout).toContain("<title>Noor, 2026-W11 (9 to 15 March)</title>");
  expect(stdout).toContain("see &lt;a href=&quot;http://a.b&quot;&gt;this&lt;/a&gt;?");
  const names = new Set(tagsOf(stdout).map((tag) => /^<[/!]?([a-z]+)/i.exec(tag)![1]!.toLowerCase()));
  for (const name of ["script", "link", "a", "img", "iframe", "form", "object", "base"])
    expect([...names]).not.toContain(name);
  expect(stdout).not.toMatch(/@import|@font-face|url\(|\ssrc=|\son[a-z]+=/i);
});
