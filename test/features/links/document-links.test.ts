import fc from "fast-check";
import { expect, test } from "vitest";
import { documentLinks } from "../../../server/features/links/document-links.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { anyText, journalOf, journalText, URI } from "../journal-text.ts";

/** The links of a text, as it has them, each with where it leads to. */
function links(text: string, { uri = URI, root = "file:///journal" } = {}): string[] {
  const journal = new Journal(root, new Map([[uri, createDocument(text)]]));
  const lines = text.split(/\r\n|\r|\n/);
  return documentLinks(journal, uri).map(({ range: { start, end }, target }) => {
    expect(start.line).toBe(end.line);
    const typed = lines[start.line]!.slice(start.character, end.character);
    const to = target.type === "address" ? target.address : target.path.join(" / ");
    return typed === to ? `${start.line}: ${typed}` : `${start.line}: ${typed} -> ${to}`;
  });
}

test("addresses are links on any line, without the signs of the sentence around them", () => {
  expect(
    links(`piece "Solo": F major -- https://example.org/solo
2026-03-02 Mon
  C major, slow -- as on https://example.org/a_(b).
Heard it (http://example.org/x?y=1&z#q), at last; write to mailto:ann@example.org!
ask: is <https://example.org/fingering> right?
https://example.org/café`),
  ).toEqual([
    "0: https://example.org/solo",
    "2: https://example.org/a_(b)",
    "3: http://example.org/x?y=1&z#q",
    "3: mailto:ann@example.org",
    "4: https://example.org/fingering",
    "5: https://example.org/café",
  ]);
});

test("what is no address is none", () => {
  expect(links("https:// and http://) and mailto:ann, xhttps://example.org, ftp://example.org")).toEqual([]);
});

test("files beside the journal are links in free words", () => {
  expect(
    links(`2026-03-02 Mon
  C major, slow -- see score.pdf, page 2
-- scores/Ground in G.pdf, “scores/Ground in G.pdf”
The take of today is in ./takes/march.mp3.
said: play from gavotte.PDF
for next week:
  the Gavotte (gavotte.pdf)`),
  ).toEqual([
    "1: score.pdf",
    "2: G.pdf",
    "2: scores/Ground in G.pdf -> scores / Ground in G.pdf",
    "3: ./takes/march.mp3 -> takes / march.mp3",
    "4: gavotte.PDF",
    "6: gavotte.pdf",
  ]);
});

test("neither a sentence nor a path from elsewhere is a file", () => {
  expect(
    links("-- slow.Then faster, at last.pdfs, e.g. this, /etc/notes.txt, ~/a.pdf, C:\\a.pdf, c:/a.pdf, .pdf, a//b.pdf"),
  ).toEqual([]);
  expect(links('2026-03-02\n"score.pdf", bars 1-8, at 60\nD minor, with score.pdf')).toEqual([]);
});

test("a path stays in the folder of the journal", () => {
  const text = "-- ../score.pdf, x/../a.pdf and ../../b.pdf";
  expect(links(text)).toEqual(["0: x/../a.pdf -> a.pdf"]);
  expect(links(text, { uri: "file:///journal/2026/march.practice" })).toEqual([
    "0: ../score.pdf -> .. / score.pdf",
    "0: x/../a.pdf -> a.pdf",
  ]);
  expect(links(text, { uri: "file:///alone.practice", root: "file:///alone.practice" })).toEqual([
    "0: x/../a.pdf -> a.pdf",
  ]);
});

test("a text without a name has no file beside it", () => {
  const uri = "untitled:Untitled-1";
  expect(links("-- score.pdf, https://example.org", { uri, root: uri })).toEqual(["0: https://example.org"]);
});

test("what is no file of the journal, and a line too long to be read, has none", () => {
  expect(documentLinks(journalOf(""), "file:///other.practice")).toEqual([]);
  expect(links(`-- ${"x".repeat(5000)} https://example.org`)).toEqual([]);
});

test("links stand in order within their lines, none upon another", () => {
  const pieces = fc.constantFrom(
    "https://a.b",
    " ",
    "score.pdf",
    "(",
    ")",
    "../",
    '"',
    "“",
    ".",
    "mailto:a@b",
    " -- ",
    "\n",
    "x",
  );
  const linked = fc.array(pieces, { maxLength: 20 }).map((parts) => parts.join(""));
  fc.assert(
    fc.property(fc.oneof(linked, journalText, anyText), (text) => {
      const journal = journalOf(text);
      const lines = journal.files.get(URI)!.blocks.flatMap((block) => block.lines);
      let [line, from] = [0, 0];
      for (const { range } of documentLinks(journal, URI)) {
        const { start, end } = range;
        if (start.line > line) [line, from] = [start.line, 0];
        expect(start.line).toBe(line);
        expect(start.character).toBeGreaterThanOrEqual(from);
        expect(end.character).toBeGreaterThan(start.character);
        expect(end.character).toBeLessThanOrEqual(lines[line]!.length);
        from = end.character;
      }
    }),
    { seed: 1 },
  );
});
