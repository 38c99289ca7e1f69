import { kindById } from "../../music/scales/kinds.ts";
import { type Finding, finding, replacement, type Stretch } from "../finding.ts";
import { claimTexts } from "./claim-texts.ts";

/** The scales that `minor` by itself leaves open, the likeliest first; alone it is read as the natural minor. */
const OPEN_MINOR = ["harmonic minor", "melodic minor", "jazz minor"];

/** A subject that says no more than `minor`. */
export interface OpenSubject extends Stretch {
  /** Its words with another kind: `E harmonic minor`. */
  readonly as: (kind: string) => string;
}

/**
 * What is said of a claim beside `E minor` that is no natural minor, and exactly another minor: advice, as `minor` says
 * nothing of its sixth and seventh degrees. None where it is no other one.
 *
 * @param fits whether the claim is right beside a kind
 */
export function checkOtherMinor(
  claim: Stretch,
  what: "notes" | "steps",
  subject: OpenSubject,
  fits: (kind: NonNullable<ReturnType<typeof kindById>>) => boolean,
): Finding | undefined {
  const other = OPEN_MINOR.find((id) => fits(kindById(id)!));
  if (other === undefined) return undefined;
  const name = subject.as(other);
  const fix = replacement(claimTexts.changeSubject(name), subject, name);
  const message = claimTexts.otherScale(what, name, other);
  return finding("other-scale", { start: claim.start, end: claim.end }, message, [fix]);
}
