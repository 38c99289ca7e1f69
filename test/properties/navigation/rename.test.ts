import fc from "fast-check";
import { expect, test } from "vitest";
import { mentionsIn } from "../../../server/features/navigation/mentions.ts";
import type { Mention } from "../../../server/features/navigation/named.ts";
import { blocksOf } from "../../../server/features/navigation/named-blocks.ts";
import { renameableAt } from "../../../server/features/navigation/prepare-rename.ts";
import { renameAt } from "../../../server/features/navigation/rename.ts";
import { attemptsOfJournal } from "../../../server/history/attempts.ts";
import { atOnce } from "../../../server/journal/at-once.ts";
import type { Journal } from "../../../server/journal/journal.ts";
import { titleIndex } from "../../../server/journal/titles/journal-titles.ts";
import { nameKey } from "../../../server/syntax/words/fold.ts";
import { edited } from "../../features/journal-text.ts";
import { FEW } from "../../support/random-runs.ts";
import { FILES, journalOf, journalTexts } from "./journals.ts";

// A name is changed wherever it stands, and nothing else is.

const NEW_NAMES = [
  "Late Gigue",
  "The Lazy Toad",
  "Marsh Song in C",
  "Toad",
  "slow waltz for a wet day",
  "Übung für Åse 🎈",
  "to and fro",
  "Ten past four",
  "The Sleepy Frog",
  "Ground",
  "study 15",
  "D minor",
];

interface Answered {
  readonly texts: readonly string[];
  readonly refused: boolean;
}

interface Placed {
  readonly uri: string;
  readonly line: number;
  readonly mention: Mention;
}

function mentionsOf(journal: Journal): readonly Placed[] {
  return [...blocksOf(journal)].flatMap(({ uri, block, first }) =>
    mentionsIn(journal, block).map((mention) => ({ uri, line: first + mention.line, mention })),
  );
}

function renamed(
  texts: readonly string[],
  { uri, line, character }: { readonly uri: string; readonly line: number; readonly character: number },
  name: string,
): Answered {
  const answer = atOnce(renameAt(journalOf(texts), uri, { line, character }, name));
  if (!answer.ok) return { texts, refused: true };
  const edits = new Map(answer.files.map((each) => [each.uri, each.edits]));
  return { texts: texts.map((text, i) => edited(text, edits.get(FILES[i]!) ?? [])), refused: false };
}

/** Everything that was played, but for what it is called. */
function played(texts: readonly string[]): unknown {
  return attemptsOfJournal(journalOf(texts)).map(
    ({
      day,
      order,
      rate,
      reached,
      count,
      got,
      minutes,
      line,
      attempt,
      reach,
      tonguing,
      evenness,
      where,
      unit,
      phase,
    }) => ({
      ...{ day, order, rate, reached, count, got, minutes, line, attempt, reach, tonguing, evenness, where, unit },
      phase: phase === undefined ? undefined : 1,
    }),
  );
}

/** Which attempts are at the same exercise. */
function together(texts: readonly string[]): readonly number[] {
  const keys = attemptsOfJournal(journalOf(texts)).map(({ strandKey }) => strandKey);
  return keys.map((key) => keys.indexOf(key));
}

const someRename = fc.tuple(journalTexts, fc.nat(), fc.constantFrom(...NEW_NAMES));

test("after a rename all that was played is the same but for the name", () => {
  let done = 0;
  fc.assert(
    fc.property(someRename, ([texts, which, name]) => {
      const mentions = mentionsOf(journalOf(texts));
      if (mentions.length === 0) return;
      const { uri, line, mention } = mentions[which % mentions.length]!;
      const after = renamed(texts, { uri, line, character: mention.start }, name);
      if (after.refused) return;
      done++;
      expect(played(after.texts)).toEqual(played(texts));
      expect(together(after.texts)).toEqual(together(texts));
      const key = mention.form === "short name" ? undefined : nameKey(name);
      const now = mentionsOf(journalOf(after.texts));
      expect(now.length).toBe(mentions.length);
      for (const [i, each] of now.entries()) {
        const before = mentions[i]!;
        const isSame = before.mention.kind === mention.kind && before.mention.key === mention.key;
        expect([each.uri, each.line, each.mention.kind]).toEqual([before.uri, before.line, before.mention.kind]);
        if (key !== undefined) expect(each.mention.key).toBe(isSame ? key : each.mention.key);
      }
    }),
    { seed: 71, numRuns: FEW * 2 },
  );
  expect(done).toBeGreaterThan(FEW);
});

/** How each mention is written beside the name that it has: what a name can be changed back from. */
function hands(texts: readonly string[]): readonly string[] {
  const journal = journalOf(texts);
  const learnt = new Map(titleIndex(journal).learnt.map(({ key, title }) => [key, title]));
  return mentionsOf(journal).map(({ uri, line, mention }) => {
    const typed = textOf(texts, uri, line, mention);
    const { kind, key, form, isQuoted } = mention;
    const name = learnt.get(key) ?? mention.name;
    const ways = [name, name.toLowerCase(), name.toUpperCase(), name[0]!.toUpperCase() + name.slice(1)];
    const words = form === "whole" ? ways.indexOf(typed) : typed.split(" ").length;
    return [kind, form, isQuoted, words].join();
  });
}

test("there and back again leaves every byte where the new name can be written as the old one was", () => {
  let same = 0;
  fc.assert(
    fc.property(someRename, ([texts, which, name]) => {
      const mentions = mentionsOf(journalOf(texts));
      if (mentions.length === 0) return;
      const { uri, line, mention } = mentions[which % mentions.length]!;
      const there = renamed(texts, { uri, line, character: mention.start }, name);
      if (there.refused || there.texts.every((text, i) => text === texts[i])) return;
      const at = (all: readonly string[]) => {
        const now = mentionsOf(journalOf(all))[which % mentions.length]!;
        return { uri, line, character: now.mention.start };
      };
      const offered = atOnce(renameableAt(journalOf(texts), uri, { line, character: mention.start }));
      if (!offered.ok) throw new Error(offered.reason);
      const { called } = offered;
      if (/["“”]/.test(called)) return; // `"Winter Air" B` is learnt so, and cannot be typed as a name
      const back = renamed(there.texts, at(there.texts), called);
      expect(played(back.texts)).toEqual(played(back.refused ? there.texts : texts));
      if (hands(there.texts).join() !== hands(texts).join()) return; // the whole title came, or quotes
      expect(back.refused).toBe(false);
      expect(back.texts).toEqual(texts);
      same++;
    }),
    { seed: 72, numRuns: FEW * 2 },
  );
  expect(same).toBeGreaterThan(FEW / 3);
});

function textOf(texts: readonly string[], uri: string, line: number, { start, end }: Mention): string {
  return texts[FILES.indexOf(uri)]!.split(/\r\n|\r|\n/)[line]!.slice(start, end);
}
