import { describe, expect, test } from "vitest";
import { declaredIn, findingsOf, JOURNALS, journalOf, meaningOf, type Name, textsOf } from "./journals.ts";

// The three journals as other hands would type them: nothing of what they mean, or of what is found on them, changes.

/** What a text becomes, outside its quoted texts where `quotes` is "kept". */
interface Hand {
  readonly name: string;
  readonly change: (text: string) => string;
}

const everyLine =
  (change: (line: string) => string) =>
  (text: string): string =>
    text.split("\n").map(change).join("\n");

/** Changes a text outside quotes and remarks. */
const outsideQuotes =
  (change: (text: string) => string) =>
  (text: string): string =>
    text.replace(
      /("[^"\n]*"|“[^”\n]*”|--.*)|([^"“\n]+?)(?=["“\n]|--|$)/g,
      (_, kept: string | undefined, other: string) => (kept === undefined ? change(other) : kept),
    );

/** Each phrase of the journals that is made of several words, joined in another way. */
const PHRASES = [
  "warm-up|warm up|five notes|back and forth|no click|from the top|alto recorder|tenor recorder|soprano recorder",
  "half-whole|natural minor|harmonic minor|minor harmonic|minor melodic|full range|top down|reverse dotted",
  "seventh chords|dominant seventh|by heart|by ear|broke down|run-through|sight-reading|in thirds|long tones",
]
  .join("|")
  .split("|");

const joined =
  (by: string, but: readonly string[] = []) =>
  (text: string): string =>
    PHRASES.filter((phrase) => !but.includes(phrase)).reduce(
      (changed, phrase) => changed.replaceAll(phrase, phrase.replace(/[ -]/g, by)),
      text,
    );

const NOTE = /\b([A-G])([#b])(?=\d?(?:\s|$|,))|(?<=\s\d)([#b])(?=\s|$|,)/gm;

const HANDS: readonly Hand[] = [
  { name: "tabs before a line", change: everyLine((line) => line.replace(/^ +/, "\t\t")) },
  { name: "tabs for spaces", change: (text) => text.replaceAll(" ", "\t") },
  { name: "no-break spaces", change: (text) => text.replaceAll(" ", "\u00A0") },
  { name: "no indentation", change: everyLine((line) => line.trimStart()) },
  { name: "everything indented", change: everyLine((line) => `      ${line}`) },
  { name: "spaces behind every line", change: everyLine((line) => `${line}  \t`) },
  { name: "doubled spaces", change: (text) => text.replaceAll(" ", "  ") },
  { name: "CRLF", change: (text) => text.replaceAll("\n", "\r\n") },
  { name: "a lone CR", change: (text) => text.replaceAll("\n", "\r") },
  { name: "a byte order mark", change: (text) => `\uFEFF${text}` },
  { name: "no line end at the end", change: (text) => text.trimEnd() },
  { name: "“ ” for quotes", change: (text) => text.replace(/"([^"\n]*)"/g, "“$1”") },
  { name: "„ “ for quotes", change: (text) => text.replace(/["“]([^"”\n]*)["”]/g, "„$1“") },
  { name: "« » for quotes", change: (text) => text.replace(/["“]([^"”\n]*)["”]/g, "«$1»") },
  {
    name: "♯ and ♭",
    change: outsideQuotes((text) => text.replace(NOTE, (all) => all.replace("#", "♯").replace("b", "♭"))),
  },
  {
    name: "sharp and flat in words",
    change: outsideQuotes((text) =>
      text.replace(/\b([A-G])[#♯](?=\s)/g, "$1 sharp").replace(/\b([A-G])[b♭](?=\s)/g, "$1 flat"),
    ),
  },
  {
    name: "sharp and flat with a hyphen",
    change: outsideQuotes((text) =>
      text.replace(/\b([A-G])[#♯](?=\s(?!F#))/g, "$1-sharp").replace(/\b([A-G])[b♭](?=\s)/g, "$1-flat"),
    ),
  },
  { name: "– before remarks", change: (text) => text.replace(/(^|\s)--(?=\s)/gm, "$1–") },
  { name: "— before remarks", change: (text) => text.replace(/(^|\s)--(?=\s)/gm, "$1—") },
  { name: "→ for >", change: (text) => text.replaceAll(" > ", " → ") },
  { name: "> without spaces", change: (text) => text.replaceAll(" > ", ">") },
  { name: "no space behind commas", change: outsideQuotes((text) => text.replaceAll(", ", ",")) },
  { name: "a space before commas", change: outsideQuotes((text) => text.replaceAll(", ", " , ")) },
  // but not behind `straight`, which before a note value is the even rhythm
  { name: "commas left out", change: outsideQuotes((text) => text.replace(/(?<!straight), /g, " ")) },
  { name: "upper case", change: upperCase },
  { name: "lower case", change: lowerCase },
  { name: "hyphens for bullets", change: bullets("- ") },
  { name: "asterisks for bullets", change: bullets("* ") },
  { name: "dots for bullets", change: bullets("• ") },
  { name: "phrases with spaces", change: joined(" ") },
  { name: "phrases with hyphens", change: joined("-") },
  { name: "phrases in one word", change: joined("", ["five notes"]) },
  {
    name: "colons behind phases",
    change: (text) => text.replace(/^(\s*(?:warm-up|groundwork|fluency|together|away|lesson)), /gm, "$1: "),
  },
];

function bullets(bullet: string): (text: string) => string {
  return everyLine((line) => (line.trim() === "" ? line : line.replace(/^\s*/, (space) => space + bullet)));
}

/** All but what case distinguishes: notes and their accidentals, syllables, long-short words. */
function upperCase(text: string): string {
  return text.replace(/[\p{L}-]{2,}/gu, (word) =>
    /^[A-G]b$|^[a-z](?:-[a-z])+$/.test(word) ? word : word.toUpperCase(),
  );
}

function lowerCase(text: string): string {
  return text.replace(/[\p{L}-]+/gu, (word) => (/^[LS]{2,}$/.test(word) ? word : word.toLowerCase()));
}

/** Texts as far as their spacing and case go, which stay as typed. */
function plain(texts: readonly string[]): readonly string[] {
  return texts.map((text) => text.normalize("NFC").toLowerCase().replace(/\s+/g, " ").trim());
}

const jsonOf = (value: unknown): string => JSON.stringify(value).replaceAll("\\t", " ");

describe.each(HANDS)("$name", ({ change }) => {
  test.each(Object.keys(JOURNALS) as Name[])("the %s's journal", (name) => {
    const original = journalOf(textsOf(name));
    const texts = textsOf(name, change);
    const other = journalOf(texts);
    expect(plain(meaningOf(other))).toEqual(plain(meaningOf(original)));
    expect(plain(declaredIn(other).map(jsonOf))).toEqual(plain(declaredIn(original).map(jsonOf)));
    expect(findingsOf(other)).toEqual(findingsOf(original));
  });
});

/** Two of a kind would not leave the text as anybody types it: a bullet before a bullet, a space within a line end. */
const KINDS = [/bullets/, /CR|behind every/, /quotes|commas/, /case|commas/];

function isOfOneKind(a: Hand, b: Hand): boolean {
  return a === b || KINDS.some((kind) => kind.test(a.name) && kind.test(b.name));
}

test("two of these hands together", () => {
  const pairs = HANDS.flatMap((first, i) =>
    HANDS.filter((second, k) => (i + 2 * k) % 9 === 0 && !isOfOneKind(first, second)).map((second) => ({
      first,
      second,
    })),
  );
  for (const name of Object.keys(JOURNALS) as Name[]) {
    const original = journalOf(textsOf(name));
    const [meaning, findings] = [plain(meaningOf(original)), findingsOf(original)];
    for (const { first, second } of pairs) {
      const hands = `${first.name}, then ${second.name}`;
      const other = journalOf(textsOf(name, (text) => second.change(first.change(text))));
      expect([hands, ...plain(meaningOf(other))]).toEqual([hands, ...meaning]);
      expect([hands, ...findingsOf(other)]).toEqual([hands, ...findings]);
    }
  }
});

test("each of these hands changes at least one of the journals", () => {
  const unchanged = HANDS.filter(({ change }) =>
    (Object.keys(JOURNALS) as Name[]).every((name) =>
      [...textsOf(name, change)].every(([uri, text]) => text === textsOf(name).get(uri)),
    ),
  );
  expect(unchanged.map(({ name }) => name)).toEqual([]);
});
