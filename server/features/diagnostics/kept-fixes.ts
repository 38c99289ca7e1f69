import { type FindingFix, quoted, replacement } from "../../checks/finding.ts";
import { fixTexts } from "../../checks/fix-texts.ts";
import { lineTexts } from "../../checks/line/line-texts.ts";
import { saidOfAttempts } from "../../journal/conditions.ts";
import { VERDICTS } from "../../journal/declarations/verdict.ts";
import type { Item, Meaning, Verdict } from "../../syntax/words/meaning.ts";
import type { Vocabulary } from "../../syntax/words/vocabulary.ts";
import { isName } from "../explain/declarable-name.ts";
import { isKept } from "../explain/kept-words.ts";
import type { CodeAction, Range } from "../types.ts";
import { diagnosticsTexts } from "./diagnostics-texts.ts";
import { actionOf, type EntryIn, entryWith, saidBeside, touchesRange } from "./line-in.ts";

/** What may be made of kept words, and how one tells that it was. */
interface Offer {
  readonly fix: FindingFix;
  readonly isMeant: (meaning: Meaning) => boolean;
}

/**
 * What may be made of words under the cursor that were kept as typed: a declaration that gives them a meaning, another
 * way to write them, or a remark. Each is offered only where the line then says that, and all else that it said before.
 * The near word is the fix of a diagnostic.
 */
export function keptFixes(at: EntryIn, range: Range): readonly CodeAction[] {
  const { items } = at.line;
  const item = items.find((each) => touchesRange(each, range) && isKept(each, at.journal.vocabulary));
  if (!item) return [];
  const before = saidBeside(at.line, (each) => each === item);
  const made = offersFor(at, item).filter((offer) => isMade(at, offer, before));
  const remarks = remarksOf(at, item).filter((fix) => isTold(at, fix, before));
  return [...made.map(({ fix }) => fix), ...remarks.slice(0, 1)].map((fix) => actionOf(fix, at));
}

function isMade(at: EntryIn, { fix, isMeant }: Offer, before: string): boolean {
  const line = entryWith(at, fix);
  if (!line) return false;
  const made = line.items.filter(({ meaning }) => isMeant(meaning));
  return made.length === 1 && saidBeside(line, (each) => each === made[0]) === before;
}

function isTold(at: EntryIn, fix: FindingFix, before: string): boolean {
  const line = entryWith(at, fix);
  return line?.remark !== undefined && saidBeside(line, () => false) === before;
}

function offersFor({ text, line, journal }: EntryIn, item: Item): readonly Offer[] {
  const typed = text.slice(item.start, item.end);
  if (item.meaning.type === "number" || item.meaning.type === "range") return numberOffers(item, typed);
  if (item.meaning.type === "quoted") return item.meaning.closed ? [patternOffer(item.meaning.text.trim(), [])] : [];
  const name = typed.replace(/\s+/g, " ");
  if (item.meaning.type !== "unknown" || !isName(name)) return [];
  const isSaid = saidOfAttempts(line.items).some((said) => said.includes(item));
  const isFollowed = line.items.some(({ start, meaning }) => meaning.type === "tempo" && start > item.start);
  const outcomes = isSaid || !isFollowed ? outcomeOffers(name, journal.vocabulary) : [];
  const others = [
    articulationOffer(name),
    patternOffer(name, [{ start: item.start, end: item.end, text: `"${name}"` }]),
    focusOffer(name, item, text),
  ];
  return isSaid ? [...outcomes, ...others] : [...others, ...outcomes];
}

/** A fix that declares something above the first day. */
export function declaring(word: string, name: string, edits: FindingFix["edits"], says = ""): FindingFix {
  const title = lineTexts.declare(`${word} "${quoted(name)}"${says}`);
  return { title, safe: false, edits, head: `${word} "${name}"${says}` };
}

function outcomeOffers(name: string, vocabulary: Vocabulary): readonly Offer[] {
  return likeliestFirst(name, vocabulary).map((says) => ({
    fix: declaring("outcome", name, [], `: ${says}`),
    isMeant: (meaning) => meaning.type === "outcome" && meaning.says === says && meaning.id === name,
  }));
}

/** By the words in it that the tables have: where they do not agree, or one denies the others, not quite. */
function likeliestFirst(name: string, { outcomes }: Vocabulary): readonly Verdict[] {
  const words = name.split(" ");
  const verdicts = new Set(words.flatMap((word) => outcomes.of(word)?.says ?? []));
  if (verdicts.size === 0) return VERDICTS;
  const isPlain = verdicts.size === 1 && !words.some((word) => outcomes.denies(word));
  const first = isPlain ? [...verdicts][0]! : "nearly";
  return [first, ...VERDICTS.filter((each) => each !== first)];
}

function articulationOffer(name: string): Offer {
  return {
    fix: declaring("articulation", name, []),
    isMeant: (meaning) => meaning.type === "articulation" && meaning.id === name,
  };
}

/** What degrees it has only the player knows: the declaration is underlined until they are there. */
function patternOffer(name: string, edits: FindingFix["edits"]): Offer {
  return {
    fix: {
      title: diagnosticsTexts.declarePattern(`pattern "${quoted(name)}"`),
      safe: false,
      edits,
      head: `pattern "${name}":`,
    },
    isMeant: (meaning) => meaning.type === "quoted" && meaning.text.trim() === name,
  };
}

/** A focus stands behind its word, and where that does not go with what stands before it, behind a comma. */
function focusOffer(name: string, { start, end }: Item, text: string): Offer {
  const before = text.slice(0, start).trimEnd().length;
  const isMeant = (meaning: Meaning): boolean => meaning.type === "focus" && meaning.words.trim() === name;
  const isBehindComma = /[,:>→]$/.test(text.slice(0, before)) || before === 0;
  const edit = isBehindComma ? { start, end, text: `focus ${name}` } : { start: before, end, text: `, focus ${name}` };
  return { fix: declaring("focus", name, [edit]), isMeant };
}

/** A tempo is the fix of a diagnostic. */
function numberOffers(item: Item, typed: string): readonly Offer[] {
  const write = (words: string, type: Meaning["type"]): Offer => ({
    fix: replacement(fixTexts.write(quoted(words)), item, words),
    isMeant: (meaning) => meaning.type === type,
  });
  const bars = write(`bars ${typed}`, "place");
  return item.meaning.type === "number" ? [write(`${typed} min`, "amount"), bars] : [bars];
}

/** The words go to the end of the line, before what is noted there already. */
function remarksOf({ text, line }: EntryIn, { start, end }: Item): readonly FindingFix[] {
  const words = text.slice(start, end);
  const from = text.slice(0, start).replace(/[\s,;:]+$/, "").length;
  const gone = { start: from, end, text: "" };
  const remark = line.remark && line.remark.start + /^(?:-+|–|—)\s*/.exec(text.slice(line.remark.start))![0].length;
  const last = text.slice(0, line.remark?.start).trimEnd().length;
  const there =
    remark !== undefined
      ? { start: remark, end: remark, text: `${words}; ` }
      : { start: last, end: last, text: ` -- ${words}` };
  const edits = there.start === end ? [{ start: from, end, text: there.text }] : [gone, there];
  return from === 0 ? [] : [{ title: fixTexts.makeRemark, safe: false, edits }];
}
