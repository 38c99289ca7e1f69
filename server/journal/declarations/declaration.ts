import type { DeclarationLine } from "../../syntax/line/line.ts";
import type { Body, Declaration, DeclarationContext, Reading } from "./declared.ts";
import { readArticulation, readNamed, readOutcome, readPattern, readScale } from "./name.ts";
import { readConcert, readMovement, readPiece } from "./piece.ts";
import {
  readHideNotes,
  readInstrument,
  readNames,
  readNoteValue,
  readPitch,
  readPlayer,
  readUsualArticulation,
} from "./setting.ts";
import { readAim, readSet } from "./work.ts";

const READERS: Readonly<Record<string, (body: Body) => Reading>> = {
  player: readPlayer,
  instrument: readInstrument,
  pitch: readPitch,
  names: readNames,
  "hide notes": readHideNotes,
  shared: () => ({ declared: { type: "shared" }, faults: [] }),
  "share body": () => ({ declared: { type: "share body" }, faults: [] }),
  "note value": readNoteValue,
  "usual articulation": readUsualArticulation,
  piece: readPiece,
  study: readPiece,
  movement: readMovement,
  concert: readConcert,
  aim: readAim,
  set: readSet,
  pattern: readPattern,
  scale: readScale,
  focus: readNamed,
  phase: readNamed,
  activity: readNamed,
  outcome: readOutcome,
  articulation: readArticulation,
};

/** Reads the body of a declaration line. Whatever is at fault in it is told; the rest stands. */
export function readDeclaration(text: string, line: DeclarationLine, context: DeclarationContext): Declaration {
  const body: Body = { ...context, text, word: line.word, start: line.wordEnd, end: line.end };
  return { line, ...READERS[line.word]!(body) };
}
