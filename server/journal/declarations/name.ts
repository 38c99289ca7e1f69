import { parseCell } from "../../music/patterns/cell.ts";
import { declaredKind } from "../../music/scales/declared-kind.ts";
import { afterColon, quotedName, trimmed, wordAt } from "./body.ts";
import { declarationTexts } from "./declaration-texts.ts";
import { type Body, fault, type Reading } from "./declared.ts";
import { TONGUINGS, tonguingOf } from "./tonguing.ts";
import { VERDICTS, verdictOf } from "./verdict.ts";

/** `focus "…"`, `phase "…"`, `activity "…"`. */
export function readNamed(body: Body): Reading {
  const { name, end, faults } = quotedName(body);
  if (name === undefined) return { faults };
  const rest = trimmed(body, end);
  const declared = { type: body.word as "focus" | "phase" | "activity", name };
  return { declared, faults: rest.text ? [fault(rest, declarationTexts.nothingMore)] : [] };
}

/** `outcome "in the zone": reached`. */
export function readOutcome(body: Body): Reading {
  const { name, end, faults } = quotedName(body);
  if (name === undefined) return { faults };
  const rest = trimmed(body, afterColon(body, end));
  const says = verdictOf(rest.text);
  if (says) return { declared: { type: "outcome", name, says }, faults: [] };
  const near = rest.text ? body.vocabulary.nearest(rest.text, VERDICTS) : undefined;
  const at = rest.text ? rest : { start: body.start - body.word.length, end };
  return { declared: { type: "outcome", name }, faults: [fault(at, declarationTexts.verdict, near ? [near] : [])] };
}

/** `articulation "ghosted": mixed`; each note by itself where nothing is said. */
export function readArticulation(body: Body): Reading {
  const { name, end, faults } = quotedName(body);
  if (name === undefined) return { faults };
  const rest = trimmed(body, afterColon(body, end));
  const tonguing = rest.text === "" ? TONGUINGS[0] : tonguingOf(rest.text);
  const declared = { type: "articulation", name, tonguing: tonguing ?? TONGUINGS[0] } as const;
  return { declared, faults: tonguing ? [] : [fault(rest, declarationTexts.tonguing(TONGUINGS), TONGUINGS)] };
}

/** `pattern "zigzag": 1 3 2 4, step 2`. */
export function readPattern(body: Body): Reading {
  const { name, end, faults } = quotedName(body);
  if (name === undefined) return { faults };
  const rest = trimmed(body, afterColon(body, end));
  const [, degrees = "", step, by = ""] = /^(.*?)(?:(?:^|[,\s]+)(step(?:\s+(\S+))?))?$/is.exec(rest.text)!;
  const reading = parseCell(degrees, step === undefined ? 1 : Number(by || Number.NaN));
  if (reading.ok) return { declared: { type: "pattern", name, cell: reading.cell }, faults: [] };
  const at =
    reading.at === undefined
      ? rest.text
        ? rest
        : { start: body.start - body.word.length, end }
      : reading.at === "step"
        ? { start: rest.end - (by || step!).length, end: rest.end }
        : wordAt(rest.text, reading.at, rest.start);
  return { declared: { type: "pattern", name }, faults: [fault(at, reading.reason)] };
}

/** `scale "double harmonic": 1 b2 3 4 5 b6 7`, `scale "…": cents 0 150 300`. */
export function readScale(body: Body): Reading {
  const { name, end, faults } = quotedName(body);
  if (name === undefined) return { faults };
  const rest = trimmed(body, afterColon(body, end));
  const reading = declaredKind(name, rest.text);
  if (reading.ok) return { declared: { type: "scale", name, kind: reading.kind }, faults: [] };
  const at = rest.text ? wordAt(rest.text, reading.at, rest.start) : { start: body.start - body.word.length, end };
  return { declared: { type: "scale", name }, faults: [fault(at, reading.reason)] };
}
