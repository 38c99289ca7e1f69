import type { BlockModel } from "../../journal/model.ts";
import { nameKey } from "../../syntax/words/fold.ts";
import type { NameKind } from "./named.ts";

/** In which objects of a model a name of each kind may stand, by their `type`. */
const HOLDERS: Readonly<Record<NameKind, readonly string[]>> = {
  title: ["title", "piece", "movement", "concert", "set", "free"],
  "set work": ["title", "set", "free"],
  movement: ["movement"],
  concert: ["concert"],
  pattern: ["pattern", "quoted"],
  scale: ["scale"],
  articulation: ["articulation"],
  outcome: ["outcome"],
  focus: ["focus"],
  phase: ["phase"],
  activity: ["activity"],
  instrument: ["instrument"],
  temperament: ["pitch"],
};

/** Columns, what is proposed for words that nothing was made of, and what is made of a name in sentences. */
const LEFT_OUT: ReadonlySet<string> = new Set([
  "start",
  "end",
  "dateEnd",
  "wordEnd",
  "from",
  "offers",
  "because",
  "nearest",
  "sentence",
]);

/** In the place of the name. No text of a journal has it. */
const MARK = "\u0000name";

/**
 * All that each line of a block says, with a mark in the place of a name: two states of a journal in which a thing is
 * called differently say the same here, where they do.
 *
 * @param called what the thing is called in this state
 */
export function saidButForName(model: BlockModel, kind: NameKind, called: string): readonly string[] {
  const marked = marking(HOLDERS[kind], nameKey(called));
  const said = model.lines.map((line) => [marked(line, false)]);
  for (const { line, declaration } of model.declarations)
    said[line]!.push(
      marked(declaration.declared, false),
      declaration.faults.map(({ code }) => code),
    );
  return said.map((each) => JSON.stringify(each));
}

function marking(holders: readonly string[], key: string): (value: unknown, isWithin: boolean) => unknown {
  const marked = (value: unknown, isWithin: boolean): unknown => {
    if (typeof value === "string") return isWithin && nameKey(value) === key ? MARK : value;
    if (typeof value !== "object" || value === null) return value;
    if (Array.isArray(value)) return value.map((each) => marked(each, isWithin));
    const { type } = value as { readonly type?: unknown };
    const isHolder = typeof type === "string" ? holders.includes(type) : isWithin;
    const fields = Object.entries(type === "title" ? asOfTitle(value) : value);
    const said = fields.filter(([name, each]) => !LEFT_OUT.has(name) && each !== undefined);
    return said.map(([name, each]) => [name, name === "type" ? each : marked(each, isHolder)]);
  };
  return marked;
}

/** A title by some of its words is that title. */
function asOfTitle(value: object): object {
  const { title, of = title, declared, type } = value as Readonly<Record<string, unknown>>;
  return { type, title: of, declared };
}
