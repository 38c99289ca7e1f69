import type { PreviewLine, PreviewLink, PreviewPlace } from "./preview.ts";

/**
 * What the page of pupils is told. Types only: the server makes it, the client hands it on, the page shows it. Texts
 * come from journals and are never read as HTML.
 */

/** Request, client to server: what a teacher reads of each journal in the workspace folders. */
export type PupilsMethod = "daystave/pupils";

export interface PupilsParams {
  /** Of the answer that is shown already: nothing is sent again while it is still that. */
  readonly version?: number;
}

export type PupilsResult = PupilsUnchanged | PupilsShown;

export interface PupilsUnchanged {
  readonly unchanged: true;
}

export interface PupilsShown {
  readonly version: number;
  /** By name. */
  readonly pupils: readonly PupilShown[];
}

/** One journal, and nothing of any other. */
export interface PupilShown {
  /** The same for the same journal in every answer. */
  readonly key: string;
  readonly name: string;
  /** Where the journal is, if another pupil has the same name; else empty. */
  readonly folder: string;
  /** Where the name leads: to the line that says it, or the top of the journal. */
  readonly place: PreviewPlace;
  /** `Sun 8 Mar`, the last day with practice; null where there is none yet. */
  readonly last: PreviewLink | null;
  /** `Mon 2 Mar 2026`, the last lesson where that is more than half a year back: from then on is what follows. */
  readonly lesson: PreviewLink | null;
  readonly set: readonly PreviewLine[];
  readonly ask: readonly PreviewLine[];
  /** Empty unless the journal shares it. */
  readonly body: readonly PreviewLine[];
}
