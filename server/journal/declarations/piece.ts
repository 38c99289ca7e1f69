import type { Item, ScaleMeaning } from "../../syntax/words/meaning.ts";
import { tokenise } from "../../syntax/words/token.ts";
import { afterColon, bodyParts, quotedName, trimmed, unclosed } from "./body.ts";
import { declarationTexts } from "./declaration-texts.ts";
import { type Body, type Fault, fault, type PieceFacts, type Reading, readDate } from "./declared.ts";

/** `piece "…" as SHORT: KEY, TERMS`, `study "…"`. */
export function readPiece(body: Body): Reading {
  const { name, end, faults } = quotedName(body);
  if (name === undefined) return { faults };
  const short = /^\s*as\s+(?:["“„«]([^"“”„«»]+)["“”»]|([^:,]+))/i.exec(body.text.slice(end, body.end));
  const from = afterColon(body, end + (short?.[0].length ?? 0));
  const facts = pieceFacts(body, from);
  const shortName = (short?.[1] ?? short?.[2])?.trim();
  return {
    declared: {
      type: "piece",
      word: body.word as "piece" | "study",
      title: name,
      ...(shortName ? { short: shortName } : {}),
      ...facts.facts,
    },
    faults: facts.faults,
  };
}

/** `movement "TITLE" 2 "NAME": KEY, TERMS`. */
export function readMovement(body: Body): Reading {
  const { name, end, faults } = quotedName(body);
  if (name === undefined) return { faults };
  const [number, own] = tokenise(body.text.slice(end, body.end).split(":")[0]!, end);
  if (!number || number.quote || !/^(?:\d{1,3}|[ivxl]{1,6})$/i.test(number.text)) {
    return {
      faults: [fault(number ?? { start: end - 1, end }, declarationTexts.movementNumber)],
    };
  }
  const known = body.vocabulary.title(name);
  const title = known ?? name;
  const undeclared =
    known === undefined
      ? [fault({ start: trimmed(body, body.start).start, end }, declarationTexts.noPiece(name.slice(0, 40)))]
      : [];
  const from = afterColon(body, own?.quote ? own.end : number.end);
  const facts = pieceFacts(body, from);
  const movement = {
    type: "movement",
    title,
    movement: number.text.toLowerCase(),
    ...(own?.quote?.closed ? { name: own.text.trim() } : {}),
  } as const;
  return {
    declared: { ...movement, ...facts.facts },
    faults: [...undeclared, ...(own?.quote && !own.quote.closed ? [unclosed(own)] : []), ...facts.faults],
  };
}

function pieceFacts(body: Body, from: number): { readonly facts: PieceFacts; readonly faults: readonly Fault[] } {
  let facts: PieceFacts = {};
  const faults: Fault[] = [];
  for (const item of bodyParts(body, from).flatMap((part) => part.items)) {
    const fact = pieceFact(item, faults);
    if (fact) facts = { ...facts, ...fact };
    else faults.push(fault(item, declarationTexts.aboutPiece));
  }
  return { facts, faults };
}

function pieceFact(item: Item, faults: Fault[]): PieceFacts | undefined {
  const { meaning } = item;
  switch (meaning.type) {
    case "scale":
      return { key: meaning };
    case "note":
      return meaning.lower
        ? undefined
        : {
            key: {
              type: "scale",
              tonic: meaning.note,
              kind: "major",
              declared: false,
              unsaid: "major",
            } satisfies ScaleMeaning,
          };
    case "faulty subject":
      faults.push(fault(item, meaning.because, meaning.offers));
      return {};
    case "bars":
      return { bars: meaning.count };
    case "goal":
      return { goal: { bpm: meaning.bpm, beat: meaning.beat } };
    case "span":
      return meaning.reach.type === "between" ? { range: meaning.reach } : undefined;
    case "last note":
      return { lastNote: meaning.note };
    case "signature":
      return { signature: meaning.fifths };
    case "date": {
      const word = meaning.word === "by" ? "due" : meaning.word;
      if (word !== "from" && word !== "due") return undefined;
      const { day, faults: wrong } = readDate({ ...item, meaning });
      faults.push(...wrong);
      return day === undefined ? {} : { [word]: day };
    }
    default:
      return undefined;
  }
}

/** `concert "Recital" on 2026-05-09: "Sonata", "Solo"`. */
export function readConcert(body: Body): Reading {
  const { name, end, faults } = quotedName(body);
  if (name === undefined) return { faults };
  const found: Fault[] = [];
  const titles: string[] = [];
  let on: number | undefined;
  for (const item of bodyParts(body, end).flatMap((part) => part.items)) {
    const { meaning } = item;
    if (meaning.type === "date" && meaning.word === "on") {
      const { day, faults: wrong } = readDate({ ...item, meaning });
      found.push(...wrong);
      on = day;
    } else if (meaning.type === "title") titles.push(meaning.title);
    else if (meaning.type === "quoted") {
      if (!meaning.closed) found.push(unclosed(item));
      titles.push(body.vocabulary.title(meaning.text) ?? meaning.text.trim());
    } else found.push(fault(item, declarationTexts.aboutConcert));
  }
  if (on === undefined && found.length === 0)
    found.push(fault({ start: trimmed(body, body.start).start, end }, declarationTexts.concertDay));
  return { declared: { type: "concert", name, on, titles }, faults: found };
}
