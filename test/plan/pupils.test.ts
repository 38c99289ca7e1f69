import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { filesSharingBody } from "../../server/journal/body-shared.ts";
import { isoDate } from "../../server/journal/calendar.ts";
import { Journal } from "../../server/journal/journal.ts";
import { type Pupil, pupilsOf } from "../../server/plan/pupils.ts";
import { textOfSet } from "../../server/plan/set-work-words.ts";
import { createDocument } from "../../server/syntax/document/document.ts";
import { times } from "../support/random-runs.ts";
import { day } from "./written.ts";

const TODAY = day("2026-03-09");

/** A journal of its own in a folder, below documents that lend to it. */
function journalIn(folder: string, text: string, lent: readonly string[] = []): Journal {
  const files = new Map([[`file:///class/${folder}/journal.practice`, createDocument(text)]]);
  return new Journal(`file:///class/${folder}`, files).withLent(lent.map(createDocument));
}

function pupilsIn(texts: Readonly<Record<string, string>>): readonly Pupil[] {
  const journals = Object.entries(texts).map(([folder, text]) => journalIn(folder, text));
  return pupilsOf(journals, () => TODAY);
}

function pupil(text: string): Pupil {
  return pupilsIn({ noor: text })[0]!;
}

describe("the last day with practice", () => {
  const last = (text: string) => {
    const found = pupil(text).last;
    return found && isoDate(found.day);
  };

  test.each([
    ["an entry", "2026-03-06\n  C major, slow\n", "2026-03-06"],
    ["an amount alone", "2026-03-06, 20 min\n", "2026-03-06"],
    ["an activity", "2026-03-06\n  sight-reading, 10 min\n", "2026-03-06"],
    ["none: a lesson", "2026-03-02\n  C major\n2026-03-06\nlesson, 30 min\n  F major, slow\n", "2026-03-02"],
    ["none: a rest", "2026-03-02\n  C major\n2026-03-06, rest, wrist sore\n", "2026-03-02"],
    ["none: what was only planned", "2026-03-02\n  C major\n2026-03-06, plan\n  F major\n", "2026-03-02"],
    ["none: what lies ahead", "2026-03-02\n  C major\n2026-03-20\n  F major\n", "2026-03-02"],
    ["none at all", "player Noor\n", undefined],
  ])("is %s", (_, text, expected) => expect(last(text)).toBe(expected));
});

describe("whose rows there are", () => {
  const names = (texts: Readonly<Record<string, string>>) => pupilsIn(texts).map(({ name }) => name);

  test("one for each journal, by name as people sort, or by folder", () => {
    expect(names({ z: "player Åse", y: "player Zoë", "pupil 10": "", "pupil 2": "" })).toEqual([
      "Åse",
      "pupil 2",
      "pupil 10",
      "Zoë",
    ]);
  });

  test("of a journal that only lends there is none; if somebody keeps a diary in it, there is", () => {
    expect(names({ top: "shared\npitch A=442\n", a: "player Ann" })).toEqual(["Ann"]);
    expect(names({ top: "shared\n2026-03-02\n  C major\n", a: "player Ann" })).toEqual(["Ann", "top"]);
  });
});

test("half a year and more after the last lesson there is what there was, and the lesson is named", () => {
  const text = "2026-03-02\nlesson\nset C major, slurred\n2026-03-05\nask: which fingering?\n";
  const journal = journalIn("noor", text);
  for (const today of ["2026-03-09", "2026-09-01", "2026-09-15", "2027-02-01"]) {
    const [found] = pupilsOf([journal], () => day(today));
    expect(found?.set.map(({ work }) => textOfSet(work))).toEqual(["C major, slurred"]);
    expect(found?.asked.map(({ text: words }) => words)).toEqual(["which fingering?"]);
    expect(found?.lesson && isoDate(found.lesson.day)).toBe("2026-03-02");
  }
});

describe("what the body said", () => {
  const SORE = "2026-03-04\n  C major, slow -- left wrist sore\n";
  const body = (text: string) => pupil(text).body?.map(({ text: words }) => words);

  test("is shown where the journal says `share body` above its days", () => {
    expect(body(`share body\n${SORE}`)).toEqual(["left wrist sore"]);
    expect(body(`- Share-Body -- my teacher asked\r\n\r\n${SORE}`)).toEqual(["left wrist sore"]);
    expect(body("share body\n2026-03-04\n  C major\n")).toEqual([]);
  });

  test.each([
    ["it is not said", ""],
    ["it is said with more", "share body with nobody\n"],
    ["it is a remark", "-- share body\n"],
    ["it is another word", "shared\n"],
  ])("is not shown where %s", (_, head) => expect(body(head + SORE)).toBeUndefined());

  test("is not shown where it is said below a day", () => {
    expect(body(`${SORE}share body\n`)).toBeUndefined();
  });

  test("is not shown where a journal above lends the line", () => {
    const below = journalIn("noor", SORE, ["shared\nshare body\n", "shared\nshare body\npitch A=442\n"]);
    expect(filesSharingBody(below).size).toBe(0);
    expect(pupilsOf([below], () => TODAY)[0]!.body).toBeUndefined();
  });

  test("is not shown by a `journal.practice` that lends, nor for the files in folders without one of their own", () => {
    expect(body(`shared\nshare body\n${SORE}`)).toBeUndefined();
    const top = new Journal(
      "file:///class",
      new Map([
        ["file:///class/journal.practice", createDocument("shared\nshare body\n")],
        ["file:///class/noor/march.practice", createDocument(SORE)],
      ]),
    );
    expect(pupilsOf([top], () => TODAY)[0]!.body).toBeUndefined();
  });

  test("in another file than `journal.practice` the line is said for that file", () => {
    const two = new Journal(
      "file:///class",
      new Map([
        ["file:///class/ben.practice", createDocument(`share body\n${SORE}`)],
        ["file:///class/noor.practice", createDocument(SORE.replace("left wrist", "back"))],
      ]),
    );
    expect(pupilsOf([two], () => TODAY)[0]!.body!.map(({ text }) => text)).toEqual(["left wrist sore"]);
  });

  test("is that since the last lesson", () => {
    expect(body("share body\n2026-02-20\nthumb sore\n2026-03-02\nlesson\n2026-03-04\nleft wrist tired\n")).toEqual([
      "left wrist tired",
    ]);
  });
});

// Random journals, invented, with marker words: each word carries the number of its journal, and what the body says a sign.
const BODY = "ouchword";
const line = (own: string) =>
  fc.constantFrom(
    `set "read${own} it"`,
    `homework: sing${own} the bass`,
    `  done "read${own} it"`,
    `ask: why${own}?`,
    `said: because${own}`,
    `  "Title${own}", bars 1-4, at 60 clean -- wrist sore ${BODY}${own}`,
    `set "Title${own}", bars 1-4`,
    `  C major, slow, sore ${BODY}${own} thumb`,
    `left wrist sore ${BODY}${own}`,
    `rest, wrist sore ${BODY}${own}`,
    "lesson, 30 min",
    "  G major, thirds, slow",
    "set G major, thirds, slow, 3 days",
  );

/** Some days before 2026-03-10, some of them with lines; with `share body` or without. */
const written = (own: string) =>
  fc
    .record({
      shares: fc.boolean(),
      head: fc.array(line(own), { maxLength: 2 }),
      days: fc.array(fc.array(line(own), { maxLength: 5 }), { minLength: 1, maxLength: 8 }),
    })
    .map(({ shares, head, days }) => ({
      shares,
      text: [
        `player Name${own}`,
        ...(shares ? ["share body"] : []),
        ...head.filter((each) => each.startsWith("set ")),
        ...days.flatMap((lines, i) => [`2026-03-0${i + 1}`, ...lines]),
      ].join("\n"),
    }));

const OWN = ["XA", "XB", "XC", "XD"];

/** All that is told of a pupil. */
function told({ name, last, set, asked, body }: Pupil): string {
  return JSON.stringify([
    name,
    last?.uri,
    set.map(({ work, done }) => [textOfSet(work), work.uri, done]),
    asked.map(({ text, uri }) => [text, uri]),
    body?.map(({ text, uri }) => [text, uri]),
  ]);
}

test("nothing of one journal is in another's row, and nothing of the body in that of one who does not share it", () => {
  let [rows, shared, kept] = [0, 0, 0];
  fc.assert(
    fc.property(fc.tuple(...OWN.map(written)), (journals) => {
      const all = journals.map(({ text }, i) => journalIn(OWN[i]!, text, ["shared\nshare body"]));
      const found = pupilsOf(all, () => TODAY);
      expect(found.length).toBe(OWN.length);
      for (const [i, { shares, text }] of journals.entries()) {
        const own = found.find(({ journal }) => journal === all[i])!;
        const row = told(own);
        for (const other of OWN) if (other !== OWN[i]) expect(row).not.toContain(other);
        if (!shares) {
          expect(row).not.toContain(BODY);
          if (text.includes(BODY)) kept++;
        } else if (row.includes(BODY)) shared++;
        // Alone it is the same as among the others.
        expect(told(pupilsOf([journalIn(OWN[i]!, text)], () => TODAY)[0]!)).toBe(row);
        rows++;
      }
    }),
    { numRuns: times(30), seed: 9 },
  );
  expect(rows).toBe(times(30) * OWN.length);
  expect(Math.min(shared, kept)).toBeGreaterThan(times(20)); // else nothing was tried
});
