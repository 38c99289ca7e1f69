import { articulationsOf } from "../music/instruments/articulations.ts";
import type { Candidate } from "./candidate.ts";
import { focusInTurn, onInstrument } from "./exercise-lines.ts";
import type { PlanBasis } from "./plan-basis.ts";
import { planTexts } from "./plan-texts.ts";
import { phraseIn, type WrittenTerm } from "./practised-line.ts";
import { readLine } from "./read-line.ts";
import { plainKey, term } from "./warm-up.ts";

/** Where nothing else is due: the plain key, from five notes on; each stands by its text, not by its exercise. */
export function* plainCandidates(basis: PlanBasis): Generator<Candidate> {
  const { journal, played, practised } = basis;
  const { tonic } = plainKey(basis);
  const key = journal.names.key(tonic, "major");
  const slurred = term("articulation", articulationsOf(played).joined);
  const lines: readonly (readonly WrittenTerm[])[] = [
    [term("scale", key), term("span", "five notes"), slurred],
    [term("scale", key), slurred],
    [term("chord", journal.names.key(tonic, "major arpeggio")), slurred],
    [term("scale", key), term("pattern", "thirds"), slurred],
  ];
  const turn = practised.length % lines.length;
  for (const [i, terms] of [...lines.slice(turn), ...lines.slice(0, turn)].entries()) {
    const phrase = phraseIn([...terms, ...onInstrument(basis)]);
    const reason = practised.length > 0 ? planTexts.nothingDue : i === 0 ? planTexts.beginEasy : planTexts.beginPlain;
    yield {
      key: phrase,
      fluent: false,
      write: (phase, place) => {
        const text = `${phrase}, slow, focus ${focusInTurn(basis, place)}`;
        if (phase === "fluency" || !readLine(basis, text)) return undefined;
        return { text, phase, rule: "plain", exercise: phrase.split(",")[0]!, reasons: [reason] };
      },
    };
  }
}
