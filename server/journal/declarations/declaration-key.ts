import { nameKey } from "../../syntax/words/fold.ts";
import type { Declaration } from "./declared.ts";

const SAID_ONCE = ["player", "pitch", "names", "hide notes", "shared", "share body", "usual articulation"];

/** What a second declaration would say again; undefined for what may be said often. */
export function declarationKey({ line, declared }: Declaration): string | undefined {
  if (SAID_ONCE.includes(line.word)) return line.word;
  if (!declared || declared.type === "aim" || declared.type === "set" || declared.type === "note value")
    return undefined;
  if (declared.type === "instrument") return `instrument ${nameKey(declared.id)}`;
  if (declared.type === "movement") return `movement ${nameKey(declared.title)} ${declared.movement}`;
  if ("name" in declared && declared.name !== undefined) return `${line.word} ${nameKey(declared.name)}`;
  return "title" in declared ? `${line.word} ${nameKey(declared.title)}` : undefined;
}
