import { describe, expect, test } from "vitest";
import { explainCompletion } from "../../../server/features/completion/completion.ts";
import { hoverAt } from "../../../server/features/hover/hover.ts";
import type { Settings } from "../../../server/features/types.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { TEMPERAMENTS, wolves } from "../../../server/music/tuning/temperament.ts";
import { journalOf, URI } from "../journal-text.ts";

const TODAY = parseIsoDate("2026-04-06")!;

/** What the hover on the first word of a line says of the tuning, below a declaration. */
function tuning(declaration: string, line: string, explain: Settings["explain"] = "both"): readonly string[] {
  const text = `${declaration}\n2026-04-01 Wed\n${line}\n`;
  const found = hoverAt(journalOf(text), URI, { line: 2, character: 0 }, { today: TODAY, explain });
  return found!.markdown.split("\n").filter((each) => each.startsWith("Tuning "));
}

function check(declaration: string, line: string, says: string): void {
  expect(tuning(declaration, line)).toEqual([says]);
}

/** The hover on a declaration at a column. */
function declared(declaration: string, character: number): string | undefined {
  return hoverAt(journalOf(declaration), URI, { line: 0, character }, { today: TODAY })?.markdown;
}

// The distances are those of test/music/tuning/intonation.test.ts, to one decimal.
describe("a scale or an arpeggio tells how its thirds and fifths stand in the journal's tuning", () => {
  test("with the worst of them named", () => {
    check(
      "pitch A=415, Vallotti",
      "D minor, slow",
      "Tuning (A=415, Vallotti), cents from pure: thirds 5.9 to 13.7, worst G–Bb (narrow); fifths 0 to 3.9, worst D–A and 4 more (narrow)",
    );
    check(
      "pitch A=440, Kirnberger III",
      "C major arpeggio, slow",
      "Tuning (A=440, Kirnberger III), cents from pure: thirds 0 to 5.4, worst E–G (narrow); fifths 5.4 narrow",
    );
  });

  test("and a wolf called by its name", () => {
    check(
      "pitch A=415, 1/4-comma meantone",
      "Ab major, slow",
      "Tuning (A=415, quarter-comma meantone), cents from pure: thirds 0 to 46.4, worst Bb–Db and 1 more (narrow); fifths 5.4 to 35.7, worst Ab–Eb (wide, a wolf)",
    );
  });

  test("in a temperament of the journal's own, whose name is text", () => {
    check(
      'pitch A=415, "*Chapel* <organ>": 1 16/15 9/8 6/5 5/4 4/3 45/32 3/2 8/5 5/3 16/9 15/8',
      "C arpeggio, slow",
      "Tuning (A=415, \\*Chapel\\* &lt;organ&gt;), cents from pure: thirds pure; fifths pure",
    );
  });

  test("where all are alike, or pure", () => {
    check(
      "pitch A=442, just on E",
      "E arpeggio, slow",
      "Tuning (A=442, just on E), cents from pure: thirds pure; fifths pure",
    );
    check(
      "pitch A=415, young 2",
      "C whole-tone, slow",
      "Tuning (A=415, Young II), cents from pure: thirds 5.9 to 21.5, worst F#–A# (wide)",
    );
  });

  test("also in a chain, for each of its scales", () => {
    expect(tuning("pitch A=415, Vallotti", "C major > E major, slow")).toHaveLength(2);
  });
});

describe("nothing is told", () => {
  test("where no temperament is declared, or the equal one, which is alike in every key", () => {
    for (const declaration of ["player Noor", "pitch A=415", "pitch A=415, equal"])
      expect(tuning(declaration, "D minor, slow")).toEqual([]);
  });

  test("where nothing is to be explained", () => {
    expect(tuning("pitch A=415, Vallotti", "D minor, slow", "none")).toEqual([]);
    expect(tuning("pitch A=415, Vallotti", "D minor, slow", "steps")).toHaveLength(1);
  });

  test("of a scale in cents", () => {
    const head = 'pitch A=415, Vallotti\nscale "even": cents 0 150 300 500 700 850 1000';
    const text = `${head}\n2026-04-01 Wed\n"even" on D, slow\n`;
    const { markdown } = hoverAt(journalOf(text), URI, { line: 3, character: 2 }, { today: TODAY })!;
    expect(markdown).toContain("D E𝄳 F G A B𝄳 C D, to the nearest quarter tone; no key signature.");
    expect(markdown).not.toContain("Tuning");
  });

  test("of a scale in cents that comes down otherwise", () => {
    const text = 'scale "even": cents 0 150 300, down 300 100 0\n2026-04-01 Wed\n"even" on D, slow\n';
    const { markdown } = hoverAt(journalOf(text), URI, { line: 2, character: 2 }, { today: TODAY, explain: "both" })!;
    expect(markdown).toContain("D E𝄳 F D, down F Eb D, to the nearest quarter tone; no key signature.");
  });
});

describe("the declaration tells what its temperament is", () => {
  test("its fifths, and that there is no wolf", () =>
    expect(declared("pitch A=415, Vallotti", 15)).toBe(
      "**A=415, Vallotti**: A4 at 415 Hz, 101 cents below 440 Hz. The six fifths from F to B are narrowed by a sixth of the Pythagorean comma; the other six are pure. No fifth is a wolf.",
    ));

  test("or its wolves, on whichever word one rests", () => {
    const says =
      "**A=442, quarter-comma meantone**: A4 at 442 Hz, 8 cents above 440 Hz. The eleven fifths from Eb to G# are narrowed by a quarter of the syntonic comma, so that eight major thirds are pure. Its wolf is G#–Eb (35.7 cents wide).";
    for (const character of [0, 3, 8, 20]) expect(declared("pitch A=442, 1/4 comma meantone", character)).toBe(says);
    expect(declared("pitch A=440, just on D", 20)).toContain(
      "Its wolves are F–C (21.5 cents narrow), E–B (21.5 cents narrow) and G#–Eb (19.6 cents wide).",
    );
  });

  test("without one it is equal temperament", () =>
    expect(declared("pitch A=440", 8)).toMatch(/^\*\*A=440, equal temperament\*\*: A4 at 440 Hz\. All twelve/));

  test("as a completion does", () => {
    for (const temperament of TEMPERAMENTS) {
      const [name] = temperament.names;
      const said = explainCompletion(journalOf(""), { topic: "temperament", key: name });
      expect(said, name).toContain(temperament.sentence);
      expect(said!.includes("No fifth is a wolf."), name).toBe(wolves({ id: temperament.id }).length === 0);
    }
    expect(explainCompletion(journalOf(""), { topic: "temperament", key: "kazoo" })).toBeUndefined();
  });
});
