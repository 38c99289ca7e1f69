import type { Instrument } from "../music/instruments/instrument.ts";
import { instrumentById } from "../music/instruments/instruments.ts";
import type { NoteNames } from "../music/notes/note-names.ts";
import type { Cell } from "../music/patterns/cell.ts";
import type { ScaleKind } from "../music/scales/kind.ts";
import { kindById } from "../music/scales/kinds.ts";
import type { Tuning } from "../music/tuning/temperament.ts";
import { nameKey } from "../syntax/words/fold.ts";
import type { Declared, PlayingLimit } from "./declarations/declared.ts";
import type { NoteValue, Tonguing } from "./model.ts";

export type DeclaredPiece = Extract<Declared, { readonly type: "piece" | "movement" }>;

/** What a journal's declarations settle for its entries. The first instrument is the one meant where none is named. */
export interface Conventions {
  readonly instrument?: string;
  readonly instruments: ReadonlyMap<string, Instrument>;
  /** How long an instrument may be played on a day, by the key of its name. */
  readonly limits: ReadonlyMap<string, PlayingLimit>;
  readonly noteValue?: NoteValue;
  readonly usualTonguing: Tonguing;
  /** Undefined where none is declared. */
  readonly tuning?: Tuning;
  /** How notes are called, in reading and in everything that is shown. */
  readonly names: NoteNames;
  /** Names of notes stay out of what is shown unasked. */
  readonly hidesNotes: boolean;
  readonly kinds: ReadonlyMap<string, ScaleKind>;
  readonly cells: ReadonlyMap<string, Cell>;
  readonly pieces: readonly DeclaredPiece[];
  /** The same, by the key of the title. */
  readonly piecesByTitle: ReadonlyMap<string, readonly DeclaredPiece[]>;
  readonly focuses: readonly string[];
  readonly player?: string;
}

/** Settles declarations in the order they are given; of what may be said once, the first counts. */
export function conventionsOf(declared: readonly Declared[], names: NoteNames): Conventions {
  const all = <T extends Declared["type"]>(type: T): Extract<Declared, { readonly type: T }>[] =>
    declared.filter((each): each is Extract<Declared, { readonly type: T }> => each.type === type);
  const pieces = declared.filter((each): each is DeclaredPiece => each.type === "piece" || each.type === "movement");
  return {
    instrument: all("instrument")[0]?.id,
    instruments: new Map(
      all("instrument").flatMap(({ id, instrument }) => (instrument ? [[nameKey(id), instrument] as const] : [])),
    ),
    limits: new Map(all("instrument").flatMap(({ id, limit }) => (limit ? [[nameKey(id), limit] as const] : []))),
    noteValue: all("note value").at(-1)?.value,
    usualTonguing: all("usual articulation")[0]?.articulation.tonguing ?? "single",
    tuning: all("pitch").map(({ a, temperament }) => ({ a, temperament }))[0],
    names,
    hidesNotes: all("hide notes").length > 0,
    kinds: new Map(all("scale").flatMap(({ name, kind }) => (kind ? [[nameKey(name), kind] as const] : []))),
    cells: new Map(all("pattern").flatMap(({ name, cell }) => (cell ? [[nameKey(name), cell] as const] : []))),
    pieces,
    piecesByTitle: byTitle(pieces),
    focuses: all("focus").map(({ name }) => name),
    player: all("player")[0]?.words,
  };
}

function byTitle(pieces: readonly DeclaredPiece[]): ReadonlyMap<string, readonly DeclaredPiece[]> {
  const found = new Map<string, DeclaredPiece[]>();
  for (const piece of pieces) {
    const title = nameKey(piece.title);
    const own = found.get(title);
    if (own) own.push(piece);
    else found.set(title, [piece]);
  }
  return found;
}

/** The instrument of a name: declared with its range, or one that needs no declaration. */
export function instrumentOf(id: string | undefined, { instruments }: Conventions): Instrument | undefined {
  return id === undefined ? undefined : (instruments.get(nameKey(id)) ?? instrumentById(id));
}

export function kindOf(id: string, declared: boolean, { kinds }: Conventions): ScaleKind | undefined {
  return declared ? kinds.get(nameKey(id)) : kindById(id);
}
