import { ON_INSTRUMENT } from "../../syntax/lexicon/note-leads.ts";
import type { EntryLine } from "../../syntax/line/line.ts";
import { nameKey } from "../../syntax/words/fold.ts";
import type { Item, Meaning, ScaleMeaning } from "../../syntax/words/meaning.ts";
import type { Vocabulary } from "../../syntax/words/vocabulary.ts";
import type { MentionList } from "./mention-list.ts";
import { stretchesOf } from "./name-stretches.ts";
import type { NameKind } from "./named.ts";

/** What an entry names: its subject and its terms. */
export function addEntry(list: MentionList, entry: EntryLine): void {
  const { subject, items } = entry;
  if (subject && !isCarried(entry)) addSubject(list, subject);
  addItems(list, items);
  if (subject?.meaning.type !== "title") return;
  const { title, of = title } = subject.meaning;
  for (const item of items) {
    if (item.meaning.type !== "place" || item.meaning.word !== "mvt") continue;
    const name = item.meaning.text.slice("mvt ".length);
    list.add("movement", item, { name, key: movementKey(of, name) });
  }
}

/** `same`, `ditto`: what is practised stands in the entry above. */
export function isCarried({ subject, same }: Pick<EntryLine, "subject" | "same">): boolean {
  return same !== undefined && subject?.start === same.start;
}

export function movementKey(title: string, movement: string): string {
  return `${nameKey(title)} ${nameKey(movement)}`;
}

function addSubject(list: MentionList, { start, end, meaning }: Item): void {
  const at = { start, end };
  if (meaning.type === "title") list.addTitle(at, meaning.of ?? meaning.title);
  else if (meaning.type === "free") list.addNamed("set work", at, meaning.words);
  else if (meaning.type === "activity" && list.vocabulary.declared.activities.includes(meaning.name))
    list.addNamed("activity", at, meaning.name);
  const own = scalesIn(meaning).filter(({ declared }) => declared);
  for (const kind of new Set(own.map((scale) => scale.kind))) list.addNamed("scale", at, kind);
}

/** What the terms of a line name, whatever kind of line it is. */
export function addItems(list: MentionList, items: readonly Item[]): void {
  for (const item of items) addItem(list, item);
}

function addItem(list: MentionList, item: Item): void {
  const { meaning } = item;
  if (meaning.type === "instrument") addInstrument(list, item, meaning.id);
  const name = declaredIn(meaning, list.vocabulary);
  if (name) list.addNamed(name.kind, item, name.name);
}

/** What a term is by a name of the journal's own; a focus may be any words. */
function declaredIn(
  meaning: Meaning,
  vocabulary: Vocabulary,
): { readonly kind: NameKind; readonly name: string } | undefined {
  const { outcomes, phases } = vocabulary.declared;
  switch (meaning.type) {
    case "quoted": {
      const name = vocabulary.pattern(meaning.text);
      return name === undefined ? undefined : { kind: "pattern", name };
    }
    case "articulation":
      return meaning.declared ? { kind: "articulation", name: meaning.id } : undefined;
    case "outcome":
      return outcomes.some(({ words }) => words === meaning.id) ? { kind: "outcome", name: meaning.id } : undefined;
    case "phase":
      return phases.includes(meaning.id) ? { kind: "phase", name: meaning.id } : undefined;
    case "focus":
      return { kind: "focus", name: meaning.words.trim() };
    default:
      return undefined;
  }
}

/** By its own name, or by another one that it is known by. */
function addInstrument(list: MentionList, { start, end }: Item, id: string): void {
  const [own] = stretchesOf(list.text, start, end, id);
  const lead = BEHIND_ON.exec(list.text.slice(start, end))?.[0].length ?? 0;
  list.add("instrument", own ?? { start: start + lead, end }, { name: id, key: nameKey(id) });
}

const BEHIND_ON = new RegExp(`^(?:${ON_INSTRUMENT.join("|")})\\s+`, "i");

function scalesIn(meaning: Meaning): readonly ScaleMeaning[] {
  switch (meaning.type) {
    case "scale":
      return [meaning];
    case "chain":
      return meaning.scales;
    case "several":
      return meaning.subjects.flatMap(scalesIn);
    case "figure":
    case "activity":
      return meaning.scale ? [meaning.scale] : [];
    default:
      return [];
  }
}
