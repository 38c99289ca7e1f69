import type { PupilsParams, PupilsResult } from "../../shared/pupils.ts";
import { pupils as pupilsOf } from "../features/pupils/pupils.ts";
import type { Session } from "./session.ts";

/** What makes no sense in it is left out. */
export function readPupilsParams(value: unknown): PupilsParams {
  const { version } = (value ?? {}) as Readonly<Record<string, unknown>>;
  return typeof version === "number" && Number.isInteger(version) ? { version } : {};
}

/** A teacher's journals: those in the workspace folders. What is open from elsewhere is nobody's. */
export function pupils(session: Session, params: PupilsParams): PupilsResult {
  const { workspace } = session;
  const journals = [...workspace.journals].filter(({ root }) => workspace.folderOf(root) !== undefined);
  const days = new Map(journals.map((journal) => [journal, session.dayOf(journal.root)])); // finds a new day by looking
  const { version } = workspace;
  if (params.version === version) return { unchanged: true };
  return { version, pupils: pupilsOf(journals, (journal) => days.get(journal)!) };
}
