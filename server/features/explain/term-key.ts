import type { Meaning } from "../../syntax/words/meaning.ts";

/** What makes two terms the same, whatever words they were typed in; undefined for what is no term of the language. */
export function termKey(meaning: Meaning): string | undefined {
  switch (meaning.type) {
    case "kind":
    case "pattern":
    case "variant":
    case "direction":
    case "articulation":
    case "rhythm":
    case "without click":
    case "outcome":
    case "manner":
    case "phase":
    case "instrument":
    case "line word":
      return `${meaning.type} ${meaning.id}`;
    case "chord kind":
      return `chord kind ${meaning.id}${meaning.broken ? " broken" : ""}`;
    case "activity":
    case "technique":
      return `${meaning.type} ${meaning.name}`;
    case "note value":
      return `note value ${meaning.value.numerator}/${meaning.value.denominator}`;
    case "focus":
    case "with":
      return `${meaning.type} ${meaning.words.toLowerCase()}`;
    case "place":
      return `place ${meaning.text.toLowerCase()}`;
    case "span":
      return `span ${JSON.stringify(meaning.reach)}`;
    case "tries":
      return `tries ${meaning.tries.got}/${meaning.tries.count}`;
    case "amount":
      return `amount ${meaning.minutes}`;
    case "inversion":
      return `inversion ${meaning.inversion}`;
    case "done":
      return "done";
    default:
      return undefined;
  }
}
