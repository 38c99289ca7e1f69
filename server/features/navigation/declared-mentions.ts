import type { Declared } from "../../journal/declarations/declared.ts";
import { nameKey } from "../../syntax/words/fold.ts";
import { addEntry, movementKey } from "./entry-mentions.ts";
import type { MentionList, Stretch } from "./mention-list.ts";
import { stretchesOf } from "./name-stretches.ts";

type Of<T extends Declared["type"]> = Extract<Declared, { readonly type: T }>;

/** What a declaration names, and what it declares. `body` is what comes after its first word. */
export function addDeclaration(list: MentionList, declared: Declared, body: Stretch): void {
  switch (declared.type) {
    case "piece":
      addPiece(list, declared, body);
      break;
    case "movement":
      addMovement(list, declared, body);
      break;
    case "concert":
      addConcert(list, declared, body);
      break;
    case "instrument":
      addInstrument(list, declared, body);
      break;
    case "pitch":
      if (declared.temperament.id === "declared") list.addDeclared("temperament", body, declared.temperament.name);
      break;
    case "aim":
      addEntry(list, declared.entry);
      break;
    case "set":
      if (declared.entry) addEntry(list, declared.entry);
      else if (declared.words !== undefined) list.addDeclared("set work", body, declared.words);
      break;
    case "usual articulation":
      if (declared.articulation.declared) list.addNamed("articulation", body, declared.articulation.id);
      break;
    case "pattern":
    case "scale":
    case "outcome":
    case "articulation":
    case "focus":
    case "phase":
    case "activity":
      list.addDeclared(declared.type, body, declared.name);
      break;
  }
}

/** The title, and the short name after it. */
function addPiece(list: MentionList, { title, short }: Of<"piece">, body: Stretch): void {
  const [whole] = stretchesOf(list.text, body.start, body.end, title);
  if (!whole) return;
  list.addTitle(whole, title, true);
  const [own] = short === undefined ? [] : stretchesOf(list.text, whole.end + 1, body.end, short);
  if (own) list.addTitle(own, title, true);
}

/** A movement is known by its number. */
function addMovement(list: MentionList, { title, movement }: Of<"movement">, body: Stretch): void {
  const [piece] = stretchesOf(list.text, body.start, body.end, title);
  if (!piece) return;
  list.addTitle(piece, title);
  const [number] = stretchesOf(list.text, piece.end + 1, body.end, movement);
  if (number) list.add("movement", number, { name: movement, key: movementKey(title, movement), isDeclaration: true });
}

function addConcert(list: MentionList, { name, titles }: Of<"concert">, body: Stretch): void {
  const [own] = stretchesOf(list.text, body.start, body.end, name);
  if (!own) return;
  list.add("concert", own, { name, isDeclaration: true });
  const { declared } = list.vocabulary;
  for (const title of new Set(titles)) {
    const { short } = declared.titles.find((each) => each.title === title) ?? {};
    for (const words of short === undefined ? [title] : [title, short])
      for (const at of stretchesOf(list.text, own.end + 1, body.end, words)) list.addTitle(at, title);
  }
}

/** A known instrument may be declared by any of its names: up to the first comma. */
function addInstrument(list: MentionList, { id }: Of<"instrument">, { start, end }: Stretch): void {
  const [, lead = "", words = ""] = /^([\s:]*)([^,]*)/.exec(list.text.slice(start, end)) ?? [];
  const called = { start: start + lead.length, end: start + lead.length + words.trimEnd().length };
  const [own = called] = stretchesOf(list.text, start, end, id);
  list.add("instrument", own, { name: id, key: nameKey(id), isDeclaration: true });
}
