import type { OutcomeWords } from "../lexicon/outcomes/outcome-words.ts";
import { LOOK_OF_SIGN } from "../lexicon/outcomes/signs.ts";
import { phrasesOf } from "../lexicon/outcomes.ts";
import { fold, phraseKey } from "./fold.ts";
import type { MeaningOf, Verdict } from "./meaning.ts";

/** The most words that a phrase of the table has. */
export const LONGEST_OUTCOME = 6;

const VERDICTS: readonly Verdict[] = ["reached", "nearly", "not"];
const PUNCTUATION = /[.,!?;:()[\]…"“”„«»*]+/gu;
const LOOK = new RegExp(`[${LOOK_OF_SIGN}]`, "u");
const ISH = /-?ish$/;

/**
 * Whole phrases that say how it went: of the languages, and a journal's own. A phrase is looked up as it stands, then
 * without its intensifiers; spaces, hyphens and the signs of a sentence count for nothing. Nothing is known by a part.
 */
export class OutcomeTable {
  private readonly phrases = new Map<string, MeaningOf<"outcome">>();
  private readonly openers = new Set<string>();
  private readonly intensifiers = new Set<string>();
  private readonly negations = new Set<string>();

  /**
   * @param languages the first counts where two know a phrase
   * @param own before all languages
   */
  constructor(languages: readonly OutcomeWords[], own: readonly (readonly [string, MeaningOf<"outcome">])[]) {
    for (const [phrase, meaning] of own) this.add(phrase, meaning);
    for (const words of languages) {
      for (const says of VERDICTS) for (const id of phrasesOf(words[says])) this.add(id, { type: "outcome", id, says });
      for (const phrase of phrasesOf(words.intensifiers)) {
        this.intensifiers.add(phrase);
        this.openers.add(keyOf(phrase.split(" ")[0]!));
      }
      for (const word of phrasesOf(words.negations)) this.negations.add(fold(word));
    }
  }

  /** What the whole of a text says; undefined where the table does not have it. */
  of(text: string): MeaningOf<"outcome"> | undefined {
    return this.ofWords(text.trim().split(/\s+/));
  }

  /** The same for words one after another. */
  ofWords(words: readonly string[]): MeaningOf<"outcome"> | undefined {
    if (words.length === 1 && this.phrases.has(words[0]!)) return this.phrases.get(words[0]!);
    if (words.some((word) => LOOK.test(word))) return this.ofWords(words.map((word) => word.replace(LOOK, "")));
    const key = keyOf(words.join(""));
    return key === "" ? undefined : (this.phrases.get(key) ?? this.withoutIntensifiers(words));
  }

  /** Whether a phrase may begin with a word. */
  opens(word: string): boolean {
    return this.openers.has(keyOf(word)) || this.phrases.has(word.replace(LOOK, "")) || ISH.test(word);
  }

  /** Whether a word changes what stands beside it: `not`, `but`. */
  denies(word: string): boolean {
    return this.negations.has(fold(word));
  }

  private withoutIntensifiers(words: readonly string[]): MeaningOf<"outcome"> | undefined {
    const plain = words.map((word) => fold(word).replace(PUNCTUATION, ""));
    const left: string[] = [];
    for (let i = 0; i < plain.length; ) {
      const two = `${plain[i]} ${plain[i + 1]}`;
      if (this.intensifiers.has(two)) i += 2;
      else if (this.intensifiers.has(plain[i]!)) i++;
      else left.push(plain[i++]!.replace(ISH, ""));
    }
    return this.phrases.get(keyOf(left.join("")));
  }

  private add(phrase: string, meaning: MeaningOf<"outcome">): void {
    const space = phrase.indexOf(" ");
    // A face, such as `:/`, is itself alone: without its eyes it is another sign.
    const key = isSign(phrase) ? phrase : keyOf(phrase);
    this.openers.add(space < 0 ? key : keyOf(phrase.slice(0, space)));
    if (!this.phrases.has(key)) this.phrases.set(key, meaning);
  }
}

function isSign(phrase: string): boolean {
  const first = phrase.charCodeAt(0);
  return !(first >= LETTER_A && first <= LETTER_Z) && !/[\p{L}\p{N}]/u.test(phrase);
}

const LETTER_A = 97;
const LETTER_Z = 122;
/** Small letters as most phrases have them: these are their key, but for the spaces. */
const PLAIN = /^[a-z' ]*$/;

function keyOf(text: string): string {
  return PLAIN.test(text) ? text.replaceAll(" ", "") : phraseKey(text).replace(PUNCTUATION, "");
}
