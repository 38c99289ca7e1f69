import fc from "fast-check";
import { expect, test } from "vitest";
import { mentionsIn } from "../../../server/features/navigation/mentions.ts";
import type { Mention } from "../../../server/features/navigation/named.ts";
import { blocksOf } from "../../../server/features/navigation/named-blocks.ts";
import { renameableAt } from "../../../server/features/navigation/prepare-rename.ts";
import { renameAt } from "../../../server/features/navigation/rename.ts";
import { attemptsOfJournal } from "../../../server/history/attempts.ts";
import type { AttemptRecord } from "../../../server/history/record.ts";
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

/** A journal and its texts. */
interface State {
  readonly texts: readonly string[];
  readonly journal: Journal;
}

function stateOf(texts: readonly string[]): State {
  return { texts, journal: journalOf(texts) };
}

interface Placed {
  readonly uri: string;
  readonly line: number;
  readonly mention: Mention;
}

function mentionsOf({ journal }: State): readonly Placed[] {
  return [...blocksOf(journal)].flatMap(({ uri, block, first }) =>
    mentionsIn(journal, block).map((mention) => ({ uri, line: first + mention.line, mention })),
  );
}

/** The journal after a rename at a mention; undefined where it is refused. */
function renamed({ texts, journal }: State, { uri, line, mention }: Placed, name: string): State | undefined {
  const answer = atOnce(renameAt(journal, uri, { line, character: mention.start }, name));
  if (!answer.ok) return undefined;
  const edits = new Map(answer.files.map((each) => [each.uri, each.edits]));
  return stateOf(texts.map((text, i) => edited(text, edits.get(FILES[i]!) ?? [])));
}

/** Everything that was played, but for what it is called. */
function played({ journal }: State): unknown {
  const records = attemptsOfJournal(journal);
  const strands = records.map(({ strandKey }) => strandKey);
  return records.map((record) => ({
    ...Object.fromEntries(FIGURES.map((name) => [name, record[name]])),
    isInPhase: record.phase !== undefined,
    sameAs: strands.indexOf(record.strandKey),
  }));
}

const FIGURES: readonly (keyof AttemptRecord)[] = [
  ...(["day", "order", "rate", "reached", "count", "got", "minutes", "about", "uri", "line", "attempt"] as const),
  ...(["movement", "where", "reach", "tonguing", "evenness", "rhythm", "direction", "byHeart", "unit"] as const),
  ...(["noteValue", "beat"] as const),
];

const someRename = fc.tuple(journalTexts, fc.nat(), fc.constantFrom(...NEW_NAMES));

test("after a rename all that was played is the same but for the name", () => {
  let done = 0;
  fc.assert(
    fc.property(someRename, ([texts, which, name]) => {
      const before = stateOf(texts);
      const mentions = mentionsOf(before);
      if (mentions.length === 0) return;
      const asked = mentions[which % mentions.length]!;
      const after = renamed(before, asked, name);
      if (!after) return;
      done++;
      expect(played(after)).toEqual(played(before));
      expect(mentionsOf(after).map(shown)).toEqual(mentions.map((each) => shown(calledIn(each, asked.mention, name))));
    }),
    { seed: 71, numRuns: FEW },
  );
  expect(done).toBeGreaterThan(FEW / 5);
});

/** A mention as it should be after a rename. A short name is not the key of its title, and a movement has that of both. */
function calledIn(each: Placed, { kind, key, form }: Mention, name: string): Placed {
  const isSame = each.mention.key === key && (each.mention.kind === kind || each.mention.kind === "set work");
  return isSame && form !== "short name" ? { ...each, mention: { ...each.mention, key: nameKey(name) } } : each;
}

function shown({ uri, line, mention: { kind, key } }: Placed): string {
  return [uri, line, kind, kind === "movement" ? key.replace(/.* /, "") : key].join(" ");
}

/** How each mention is written beside the name that it has: what a name can be changed back from. */
function hands(state: State): string {
  const learnt = new Map(titleIndex(state.journal).learnt.map(({ key, title }) => [key, title]));
  const ways = mentionsOf(state).map(({ uri, line, mention }) => {
    const { kind, key, form, isQuoted, start, end } = mention;
    const typed = state.texts[FILES.indexOf(uri)]!.split(/\r\n|\r|\n/)[line]!.slice(start, end);
    const name = learnt.get(key) ?? mention.name;
    const cases = [name, name.toLowerCase(), name.toUpperCase(), name[0]!.toUpperCase() + name.slice(1)];
    return [kind, form, isQuoted, form === "whole" ? cases.indexOf(typed) : typed.split(" ").length];
  });
  return JSON.stringify(ways);
}

test("there and back again leaves every byte where the new name can be written as the old one was", () => {
  let same = 0;
  fc.assert(
    fc.property(someRename, ([texts, which, name]) => {
      const before = stateOf(texts);
      const mentions = mentionsOf(before);
      if (mentions.length === 0) return;
      const asked = mentions[which % mentions.length]!;
      const there = renamed(before, asked, name);
      if (!there || there.texts.every((text, i) => text === texts[i])) return;
      const position = { line: asked.line, character: asked.mention.start };
      const offered = atOnce(renameableAt(before.journal, asked.uri, position));
      if (!offered.ok) throw new Error(offered.reason);
      if (/["“”]/.test(offered.called)) return; // `"Winter Air" B` is learnt so, and cannot be typed as a name
      const back = renamed(there, mentionsOf(there)[which % mentions.length]!, offered.called);
      if (back) expect(played(back)).toEqual(played(before));
      if (hands(there) !== hands(before)) return; // the whole title came, or quotes
      expect(back?.texts).toEqual(texts);
      same++;
    }),
    { seed: 72, numRuns: FEW },
  );
  expect(same).toBeGreaterThan(FEW / 5);
});
