import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Cell, csvTable } from "../../../server/cli/export/csv.ts";

/** One cell as it is written, in a row of its own between two others. */
function written(cell: Cell): string {
  const table = csvTable(["a", "b", "c"], [{ a: 1, b: cell, c: null }]);
  return /^a,b,c\r\n1,(.*),\r\n$/s.exec(table)![1]!;
}

/** A table as another program reads it: csv-parse, which keeps to RFC 4180 unless told otherwise. */
function readBack(table: string): string[][] {
  return parse(table, { record_delimiter: "\r\n" });
}

const check = (cell: Cell, expected: string) => expect(written(cell)).toBe(expected);

// RFC 4180, section 2: rules 1 to 7.
describe("RFC 4180", () => {
  test("lines end in CR LF, the last one too; a header comes first", () =>
    expect(csvTable(["a", "b"], [{ a: 1, b: "x" }])).toBe("a,b\r\n1,x\r\n"));
  test("a header alone", () => expect(csvTable(["a", "b"], [])).toBe("a,b\r\n"));
  test("a comma", () => check("mixed, 2 halves", '"mixed, 2 halves"'));
  test("quotes", () => check('The "Old" Mill', '"The ""Old"" Mill"'));
  test("spaces belong to the cell", () => check(" Old Mill", '" Old Mill"'));
  test("anything else as it is", () => check("春の海 – Café 🎵", "春の海 – Café 🎵"));
});

test("figures, yes and no, and nothing", () => {
  check(72, "72");
  check(-0.5, "-0.5");
  check(true, "yes");
  check(false, "no");
  check(null, "");
});

test("a semicolon, which parts cells where a comma is the decimal sign", () => check("a;b", '"a;b"'));

// OWASP, "CSV Injection", and OWASP ASVS 5.0, requirement 1.2.10: an apostrophe before = + - @, tab and NUL, inside
// quotes.
describe("what a spreadsheet would run", () => {
  test.each(["=1+1", "+1+1", "-1+1", "@SUM(A1)", "＝1+1", "＋1", "－1", "＠A1", "  =1+1", '=HYPERLINK("x";"y")'])(
    "%s",
    (text) => {
      const [[cell]] = readBack(`${written(text)}\r\n`) as [[string]];
      expect(cell).toBe(`'${text}`);
      expect(written(text)).toMatch(/^"'/);
    },
  );
  test.each(["\t=1+1", "\r=1+1", "\n=1+1", "\0=1+1"])("%j", (text) =>
    expect(written(text)).toMatch(/^\\u00[\dA-F]{2}=1\+1$/),
  );
  test("a sign in the middle, or alone, runs nothing", () => {
    check("bars 1-8", "bars 1-8");
    check("-", "-");
  });
});

// Unicode Technical Report 36, 2.2; the characters are those of the general categories Cc and Cf that steer a line.
test("what would steer a terminal is shown", () => {
  check("a\u001B[31mb", "a\\u001B[31mb");
  check("Lan\u202Eterns", "Lan\\u202Eterns");
});

test("any cells come back, and none of them runs", () => {
  const text = fc.oneof(
    fc.string({ unit: "binary" }),
    fc.string({
      unit: fc.constantFrom("=", "+", "-", "@", "＝", '"', "'", ",", ";", " ", "\t", "\r", "\n", "\u202E", "x", "é"),
    }),
  );
  fc.assert(
    fc.property(fc.array(fc.tuple(text, text, fc.integer()), { minLength: 1 }), (rows) => {
      const table = csvTable(
        ["a", "b", "c"],
        rows.map(([a, b, c]) => ({ a, b, c })),
      );
      const [header, ...back] = readBack(table);
      expect(header).toEqual(["a", "b", "c"]);
      expect(back).toHaveLength(rows.length);
      for (const [i, row] of rows.entries()) {
        const cells = back[i]!;
        expect(cells[2]).toBe(String(row[2]));
        for (const column of [0, 1]) {
          expect([row[column], `'${row[column]}`]).toContain(unescaped(cells[column]!));
          expect(cells[column]).not.toMatch(/^[\s\0]*[=+\-@＝＋－＠]./u);
        }
      }
      expect(table.replaceAll("\r\n", "")).not.toMatch(/[\u0000-\u001F\u007F-\u009F\u202A-\u202E\u2066-\u2069]/);
    }),
    { seed: 4180 },
  );
});

/** `\u202E` as the character that it stands for. */
function unescaped(text: string): string {
  return text.replace(/\\u([\dA-F]{4})/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));
}
