import { UNIT } from "../history/thresholds.ts";
import { namesEarsAlone, namesLimbsAlone } from "../journal/body-said.ts";
import { keyOf, placeName, stretchesOf } from "./piece-lines.ts";
import type { PlannedPiece } from "./pieces-planned.ts";
import type { LineDraft } from "./plan.ts";
import type { PlanBasis } from "./plan-basis.ts";
import { planTexts } from "./plan-texts.ts";
import { readLine } from "./read-line.ts";
import { isHurtPlace } from "./what-hurt.ts";

/**
 * Without the instrument: a place of the first piece in the mind, then sung; listening where there is no piece, or
 * nothing of it that did not hurt. For ears that ring nothing that sounds.
 */
export function awayLines(basis: PlanBasis, pieces: readonly PlannedPiece[], units: number): readonly LineDraft[] {
  if (units === 0) return [];
  const reasons = [planTexts.away];
  const draft = (text: string): LineDraft => ({ text, phase: "away", rule: "away", exercise: null, reasons });
  const manners = units > 1 && maySing(basis) ? ["mental", "sung"] : ["mental"];
  for (const piece of pieces) {
    const place = firstPlace(basis, piece);
    const texts = place === undefined ? [] : manners.map((manner) => `${place}, ${manner}`);
    const lines = readable(basis, texts.map(draft));
    if (lines.length > 0) return lines;
  }
  return namesEarsAlone(basis.ceiling.said?.words ?? "", basis.journal) ? [] : readable(basis, [draft("listening")]);
}

/** The first bars of a piece that nothing hurt in; where they are not counted all of it. */
function firstPlace({ hurt }: PlanBasis, piece: PlannedPiece): string | undefined {
  const { bars } = piece.facts;
  const isWell = (where: string | null): boolean => !isHurtPlace(hurt, { ...keyOf(piece), where }, bars);
  if (bars === undefined || bars === 1) return isWell(null) ? placeName(piece, null) : undefined;
  const where = stretchesOf(piece).find((each) => isWell(each.where))?.where;
  return where === undefined ? undefined : placeName(piece, where);
}

/** Only where an arm or a leg hurts: else nobody can tell that singing would not hurt as well. */
function maySing({ ceiling, journal, played }: PlanBasis): boolean {
  return played?.family !== "voice" && namesLimbsAlone(ceiling.said?.words ?? "", journal);
}

function readable(basis: PlanBasis, drafts: readonly LineDraft[]): readonly LineDraft[] {
  return drafts.filter(({ text }) => readLine(basis, `${text}, ${UNIT} min`));
}
