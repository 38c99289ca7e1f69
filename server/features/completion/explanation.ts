import { parseIsoDate, weekLabel } from "../../journal/calendar.ts";
import { instrumentOf } from "../../journal/conventions.ts";
import { type Journal, MARKER } from "../../journal/journal.ts";
import { readPart } from "../../syntax/line/part.ts";
import { nameKey } from "../../syntax/words/fold.ts";
import type { Meaning, SubjectMeaning } from "../../syntax/words/meaning.ts";
import { explainDeclaration, explainTerm, metronomeWords, sentenceCase } from "../explain/explain.ts";
import { instrumentInWords } from "../explain/instrument-words.ts";
import { pieceFacts } from "../explain/piece-facts.ts";
import { type Explain, sentenceOf, theoryOfSubject } from "../explain/theory.ts";
import { explainTemperamentNamed } from "../explain/tuning.ts";
import { explainStart } from "./practised.ts";

/**
 * The explanation of a completion in Markdown, from what the item carries; undefined where there is none.
 *
 * @param explain whether theory is told by the key signature, by steps, or by both, as in a hover
 */
export function explainCompletion(
  journal: Journal,
  resolve: { topic: string; key: string },
  explain: Explain = "both",
): string | undefined {
  const { topic, key } = resolve;
  if (key.length > LONGEST_KEY) return undefined;
  switch (topic) {
    case "term":
      return explainWords(journal, key);
    case "subject":
      return explainSubject(journal, key, explain);
    case "title":
      return explainTitle(journal, key);
    case "declaration":
      return explainDeclaration(key);
    case "instrument":
      return explainInstrument(journal, key);
    case "temperament":
      return explainTemperamentNamed(key, journal.names);
    case "start":
      return explainStart(key);
    case "date": {
      const day = parseIsoDate(key);
      return day === undefined ? undefined : `**${weekLabel(day)}**`;
    }
    default:
      return undefined;
  }
}

/** Longer keys are none of ours. */
const LONGEST_KEY = 200;

function explainWords({ vocabulary }: Journal, words: string): string | undefined {
  // Tries are read only behind an outcome.
  const tries = readPart(`clean ${words}`, vocabulary).at(-1)?.meaning;
  const meaning: Meaning | undefined = tries?.type === "tries" ? tries : readPart(words, vocabulary)[0]?.meaning;
  if (!meaning) return undefined;
  if (meaning.type === "tempo") return `${sentenceCase(metronomeWords(meaning.bpm))}.`;
  return explainTerm(meaning, vocabulary);
}

/** Known, or declared in the head of whichever file. */
function explainInstrument(journal: Journal, id: string): string {
  return instrumentInWords(id, instrumentOf(id, journal.conventions(journal.addresses[0] ?? MARKER)), journal.names);
}

function explainSubject(journal: Journal, words: string, explain: Explain): string | undefined {
  const meaning = readPart(words, journal.vocabulary)[0]?.meaning;
  if (meaning?.type !== "scale" && meaning?.type !== "chord") return undefined;
  const conventions = journal.conventions(journal.addresses[0] ?? MARKER);
  const subject: SubjectMeaning = meaning;
  return [sentenceOf(subject, conventions), theoryOfSubject(subject, conventions, { explain }).join("  \n")]
    .filter(Boolean)
    .join("\n\n");
}

/** A title, its short name, or either in quotes. */
function explainTitle(journal: Journal, words: string): string | undefined {
  const name = words.replace(/^["“„«]|["”“»]$/g, "");
  const title = journal.vocabulary.title(name) ?? name;
  const { pieces } = journal.conventions(journal.addresses[0] ?? MARKER);
  const piece = pieces.find((each) => each.type === "piece" && nameKey(each.title) === nameKey(title));
  return piece && pieceFacts(piece, journal.names);
}
