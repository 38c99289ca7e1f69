import { Journal } from "../../../server/journal/journal.ts";
import { subjectText } from "../../../server/journal/subject-text.ts";
import { ENGLISH_NAMES } from "../../../server/music/notes/note-names.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import type { Line } from "../../../server/syntax/line/line.ts";
import { parseLine } from "../../../server/syntax/line/parse-line.ts";
import type { FaultySubject, Item, Meaning, SubjectMeaning } from "../../../server/syntax/words/meaning.ts";
import { claimText, fractionText, noteText, tempoText } from "../../journal/print.ts";

const HEAD = [
  'piece "Ground in G minor" as Ground: G minor, 96 bars',
  'study "Daily thirds no. 3": D minor',
  'pattern "zigzag": 1 3 2 4',
  'scale "double harmonic": 1 b2 3 4 5 b6 7',
  'phase "market band"',
  'activity "stretching"',
  'instrument "my flute": D4 to B5',
].join("\n");
const DECLARING = new Journal("file:///j", new Map([["file:///j/journal.practice", createDocument(HEAD)]])).partContext;

/** A line below a day, or above the first one, of a journal that declares a few names. */
export function read(text: string, head = false): Line {
  return parseLine(text, { ...DECLARING, head });
}

/** `entry: D natural minor | pattern thirds | tempo 72 | outcome clean`. */
export function lineText(line: Line): string {
  const { remark } = line;
  const tail = remark && `remark${remark.text === "" ? "" : ` "${remark.text}"`}`;
  const body = bodyOf(line);
  const type = line.type === "remark" ? "" : line.type;
  return [[type, body].filter(Boolean).join(": "), tail].filter(Boolean).join(" | ");
}

function bodyOf(line: Line): string {
  switch (line.type) {
    case "entry":
      return [
        line.subject ? subjectOf(line.subject.meaning) : "(no subject)",
        ...line.claims.filter(({ type }) => type !== "signature").map(claimText),
        ...itemsOf(line.items),
      ].join(" | ");
    case "day":
      return [line.date, ...itemsOf(line.items)].join(" | ");
    case "session":
    case "phase":
    case "break":
    case "plan":
    case "rest":
      return itemsOf(line.items).join(" | ");
    case "declaration":
      return line.word;
    case "near declaration":
      return `${line.word.meaning.words} for ${line.nearest}`;
    default:
      return "";
  }
}

export function itemsOf(items: readonly Item[]): readonly string[] {
  return items.map(({ meaning }) => meaningText(meaning));
}

function subjectOf(meaning: SubjectMeaning | FaultySubject): string {
  if (meaning.type === "faulty subject") {
    const offers = meaning.offers.map((offer) => offer.replaceAll("\n", " / ")).join(" or ");
    return `${meaning.code}${meaning.certain ? ", certain" : ""}${offers ? `: ${offers}` : ""}`;
  }
  const unsaid = meaning.type === "scale" && meaning.unsaid ? ` (${meaning.unsaid} unsaid)` : "";
  const undeclared = meaning.type === "title" && !meaning.declared ? " (undeclared)" : "";
  const key = meaning.type === "chord" && meaning.key ? ` (in ${noteText(meaning.key)})` : "";
  const title = meaning.type === "title" ? "title " : meaning.type === "free" ? "done " : "";
  return title + subjectText(meaning, ENGLISH_NAMES) + unsaid + undeclared + key;
}

/** One item in a few words. */
export function meaningText(meaning: Meaning): string {
  const { type } = meaning;
  switch (meaning.type) {
    case "scale":
    case "chord":
    case "title":
    case "figure":
    case "chain":
    case "several":
    case "activity":
    case "technique":
    case "free":
    case "faulty subject":
      return `second subject ${subjectOf(meaning)}`;
    case "note":
      return `note ${noteText(meaning.note)}${meaning.lower ? " (lower)" : ""}`;
    case "quoted":
      return `"${meaning.text}"${meaning.closed ? "" : " (open)"}`;
    case "inversion":
      return `inversion ${meaning.inversion}`;
    case "span":
      return `span ${spanText(meaning.reach)}`;
    case "articulation":
      return `articulation ${meaning.id}${meaning.half ? ` ${meaning.half}` : ""} (${meaning.tonguing})`;
    case "rhythm":
      return `rhythm ${meaning.id}${meaning.even ? "" : " (uneven)"}`;
    case "note value":
      return `note value ${fractionText(meaning.value)}`;
    case "tempo":
    case "goal":
      return `${type} ${tempoText(meaning)}`;
    case "tries":
      return `tries ${meaning.tries.got}/${meaning.tries.count}`;
    case "times":
    case "bars":
    case "days":
      return `${type} ${meaning.count}`;
    case "amount":
      return meaning.possible
        ? `${meaning.about ? "about " : ""}${meaning.minutes} min${meaning.each ? " each" : ""}`
        : "impossible amount";
    case "with":
    case "focus":
    case "sore":
    case "unknown":
    case "steps":
      return `${type} ${meaning.words}`;
    case "place":
      return `place ${meaning.text}`;
    case "signature":
      return `signature ${meaning.fifths}`;
    case "number":
      return `number ${meaning.value}`;
    case "range":
      return `range ${meaning.range.low}-${meaning.range.high}`;
    case "clock":
      return `${meaning.hour}:${String(meaning.minute).padStart(2, "0")}`;
    case "weekday":
      return `weekday ${meaning.day}`;
    case "date":
      return `${meaning.word} ${meaning.text}`;
    case "last note":
      return `last note ${noteText(meaning.note)}`;
    case "part of a kind":
      return `part of ${meaning.offers.join(" or ")}`;
    case "figure word":
      return `figure word ${meaning.figure}`;
    case "done":
    case "place word":
      return type;
    default:
      return `${type} ${meaning.id}`;
  }
}

function spanText(reach: Extract<Meaning, { type: "span" }>["reach"]): string {
  if (reach.type === "between") return `${noteText(reach.from)} to ${noteText(reach.to)}`;
  return "count" in reach ? `${reach.count} ${reach.type}` : reach.type;
}

/** The rows of a table: what is typed, ` => `, and what it means. Spaces around both count for nothing. */
export function rowsOf(table: string): readonly (readonly [typed: string, meaning: string])[] {
  const rows = table.split("\n").filter((row) => row.includes(" =>"));
  if (!rows.length) throw new Error("There is nothing in the table");
  return rows.map((row) => {
    const [typed, meaning] = row.split(/\s+=>(?:\s+|$)/);
    return [typed!.replace(/^ {4}/, ""), meaning!.trim()];
  });
}
