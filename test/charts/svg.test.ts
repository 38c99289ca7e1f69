import { describe, expect, test } from "vitest";
import { mark } from "../../server/charts/look.ts";
import { element, escapeXml, figure, idFrom } from "../../server/charts/svg.ts";
import { readSvg } from "./svg-reader.ts";

describe("text", () => {
  const check = (text: string, shown: string) => {
    expect(readSvg(element("text", { title: text }, escapeXml(text)))).toEqual({
      name: "text",
      attributes: { title: shown },
      children: [],
      text: shown,
    });
  };

  test("is shown as it is, whatever marks it has", () => {
    check("Ground in G minor", "Ground in G minor");
    check("</text><script>alert('1')</script>", "</text><script>alert('1')</script>");
    check('"&amp; onload="x', '"&amp; onload="x');
    check("]]> <!-- &#x41;", "]]> <!-- &#x41;");
    check("F♯ and 𝄪", "F♯ and 𝄪");
  });

  // XML 1.0, production 2; Unicode, property Bidi_Control.
  test("loses what XML does not allow, and what turns its direction", () => {
    check("a\u0000\u0007b", "a b");
    check("half \uD834 a pair", "half   a pair");
    check("a\u202Eb\u2066c\uFFFE", "a b c ");
    check("one\nline", "one line");
  });
});

test("numbers have at most two decimals, and nought has no sign", () => {
  expect([12, 1 / 3, -0.001, 99.999, -2.505].map(figure)).toEqual(["12", "0.33", "0", "100", "-2.5"]);
});

test("no two keys make the same id", () => {
  const keys = ["a b", "a-b", "a_b", "a_20_b", "a\nb", "", "_", "é", "a"];
  const ids = keys.map(idFrom);
  expect(new Set(ids).size).toBe(keys.length);
  for (const id of ids) expect(id).toMatch(/^[A-Za-z][\w-]*$/);
});

describe("colours", () => {
  const check = (colour: string, expected: string) => {
    const palette = { foreground: colour, background: "#fff", amount: "#06c" };
    const painted = readSvg(mark({ kind: "picture", palette, id: "x" }, "reached", "M1,1h0"));
    expect(painted.attributes["stroke"]).toBe(expected);
  };

  // The forms of CSS Color Module Level 4.
  test.each(["#06c", "#0066ccff", "teal", "rgb(0, 102, 204)", "rgba(0,102,204,.5)", "hsl(210deg 100% 40% / 80%)"])(
    "%s is taken",
    (colour) => check(colour, colour),
  );

  test.each([
    "url(https://example.org/x.svg#a)",
    "var(--x)",
    "red; fill: url(#x)",
    '"><script>',
    "",
    "#06c".padEnd(99),
  ])("%s gives way", (colour) => check(colour, "currentColor"));
});

test("in a page a mark has its class alone, and the page has the colours", () => {
  const { attributes } = readSvg(mark({ kind: "page", id: "x" }, "best", "M0,1H9"));
  expect(attributes).toEqual({ class: "chart-best", d: "M0,1H9", "vector-effect": "non-scaling-stroke" });
});

describe("the reader of these tests refuses", () => {
  test.each([
    "<a>",
    "<a></b>",
    "<a b=c/>",
    '<a b="1" b="2"/>',
    "<a>&</a>",
    "<a>&nbsp;</a>",
    "<a/><b/>",
    "<a>\u0001</a>",
  ])("%j", (text) => expect(() => readSvg(text)).toThrow());
});
