import { TICKS } from "../lexicon/outcomes/signs.ts";
import { UNITS } from "../lexicon/tempo-marks.ts";
import type { Token } from "./token.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** A number and what is written close to it, perhaps in brackets. */
const JOINED = /^([@~]?\d{2,3})(\(?)([^\d\s()]+)\)?$/u;
const SIGN = new RegExp(`^[${TICKS}+±~–-]$`, "u");
const DASHES = ["-", "–"];

/** Parts a tempo from how it went: `80ok`, `66✓`, `66(ok)`; `72+ 80+ 88-`, where a dash says so among other signs. */
export function outcomesApart(tokens: readonly Token[], vocabulary: Vocabulary): readonly Token[] {
  if (!tokens.some(({ text, quote }) => !quote && JOINED.test(text))) return tokens;
  let signs = 0;
  return tokens.flatMap((token) => {
    const [, number = "", bracket = "", said = ""] = (token.quote ? undefined : JOINED.exec(token.text)) ?? [];
    if (said === "" || UNITS.has(said.toLowerCase())) return [token];
    const isSaid = DASHES.includes(said) ? signs > 0 : vocabulary.outcomes.of(said) !== undefined;
    if (!isSaid) return [token];
    if (SIGN.test(said)) signs++;
    const end = token.start + number.length;
    const start = end + bracket.length;
    return [
      { start: token.start, end, text: number },
      { start, end: start + said.length, text: said },
    ];
  });
}
