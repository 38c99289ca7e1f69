import { describe, expect, test } from "vitest";
import { attemptsOfJournal } from "../../server/history/attempts.ts";
import { barsOfPlace } from "../../server/history/bars-played.ts";
import { exercisesOf, strandName } from "../../server/history/strands.ts";
import { Journal } from "../../server/journal/journal.ts";
import { createDocument } from "../../server/syntax/document/document.ts";
import { PLACE_TABLES } from "../../server/syntax/lexicon/places/place-tables.ts";

// Words for a whole piece: common practice, no source. Each is read in a journal of its language.

function recordsOf(language: string, ...places: readonly string[]) {
  const days = places.map((place, i) => `2026-03-0${i + 1}\n  Air${place}, 60\n`);
  const text = `names ${language}\npiece "Air on the Hill" as Air: 40 bars\n${days.join("")}`;
  return attemptsOfJournal(new Journal("file:///j", new Map([["file:///j/a.practice", createDocument(text)]])));
}

describe.each(Object.entries(PLACE_TABLES))("in %s", (language, { whole }) => {
  test.each(whole.split(" | "))("%s is all of the piece", (words) => {
    const forms = [`, ${words}`, `, ${words[0]!.toUpperCase()}${words.slice(1)}`, ` ${words}`];
    const records = forms.map((typed) => recordsOf(language, typed)[0]!);
    expect(records.map(({ subject, where }) => [subject, barsOfPlace(where, 40)])).toEqual(
      forms.map(() => ["Air on the Hill", [{ from: 1, to: 40 }]]),
    );
    expect(records.some(({ where }) => where !== null)).toBe(true);
  });
});

test("words for all of it are one strand, named in the player's own; part of it, and no place at all, are others", () => {
  const strands = (language: string, ...places: readonly string[]) =>
    exercisesOf(recordsOf(language, ...places.map((place) => `, ${place}`)))
      .flatMap((exercise) => exercise.strands.map(strandName))
      .sort();
  expect(strands("french", "from the top", "en entier", "du début")).toEqual(["du début"]);
  expect(strands("german", "von vorne", "Takte 1-8", "am Stück")).toEqual(["am Stück", "bars 1-8"]);
  expect(strands("german", "von Anfang an bis Takt 16", "von Anfang an")).toHaveLength(2);
  expect(strands("english", "start to finish", "the beginning", "slow")).toHaveLength(3);
});
