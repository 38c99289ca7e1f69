import { NOTE_NAMES } from "../../music/notes/note-names.ts";
import { outcomeWords, phrasesOf } from "../../syntax/lexicon/outcomes.ts";
import type { Meaning, Verdict } from "../../syntax/words/meaning.ts";
import { TERMS } from "../../syntax/words/terms.ts";
import type { ListedRow, Listing } from "./listing.ts";
import { distinct, keyOf, lexiconWords, type OtherWords, otherWordsText, together } from "./other-words.ts";

/** What each type of term is called in the list, in its order; those that are pieces of others are not in it. */
const OF: Readonly<Partial<Record<Meaning["type"], string>>> = {
  phase: "phase",
  "line word": "line",
  done: "line",
  activity: "activity",
  technique: "technique",
  direction: "direction",
  span: "span",
  articulation: "articulation",
  rhythm: "rhythm",
  "note value": "note value",
  "without click": "tempo",
  manner: "manner",
  inversion: "inversion",
  outcome: "outcome",
  signature: "key signature",
  amount: "time",
  weekday: "weekday",
  place: "place",
};

/** Every word of an entry, of a phase and of a day line but the names of what is played and of instruments. */
export function termsListed(): Listing {
  const lexicon = lexiconWords();
  const rows = Object.entries(OF).flatMap(([type, of]) => [
    ...TERMS.filter(({ meaning }) => meaning.type === type).map(({ words, meaning, sentence }) =>
      termRow(distinct(words), of, sentence, lexicon.get(keyOf(meaning)) ?? {}),
    ),
    ...(type === "outcome" ? VERDICTS.map(([says, sentence]) => verdictRow(says, of, sentence)) : []),
  ]);
  return { headings: ["Term", "Of", "What it means"], rows };
}

function termRow(names: readonly string[], of: string, sentence: string | undefined, languages: OtherWords): ListedRow {
  const [name = "", ...also] = names;
  return {
    cells: [name, of, together(sentence, otherWordsText(also, languages))],
    json: { names, of, sentence: sentence ?? null, languages },
  };
}

/** What each says of its tempo. Every word that says the same is in one row: there are hundreds. */
const VERDICTS: readonly (readonly [Verdict, string])[] = [
  ["reached", "Any of these: the tempo counts as reached."],
  ["nearly", "Any of these: one thing was amiss."],
  ["not", "Any of these: the tempo does not count as reached."],
];

function verdictRow(says: Verdict, of: string, sentence: string): ListedRow {
  const words = outcomeWords("english").flatMap((english) => phrasesOf(english[says])); // and the signs
  const others = NOTE_NAMES.flatMap(({ id }) => {
    const [own] = outcomeWords(id);
    return id === "english" || !own ? [] : [[id, distinct(phrasesOf(own[says]))] as const];
  });
  return termRow([says, ...distinct(words)], of, sentence, Object.fromEntries(others));
}
