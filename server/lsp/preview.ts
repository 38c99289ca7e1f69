import type { Disposable } from "vscode-languageserver";
import type {
  ChangedMethod,
  ChangedParams,
  PreviewChoice,
  PreviewParams,
  PreviewPlanAsked,
  PreviewResult,
  PreviewSpan,
} from "../../shared/preview.ts";
import { fingersUnderCursor } from "../features/preview/fingers.ts";
import { preview as figuresOf } from "../features/preview/preview.ts";
import { exerciseUnderCursor, shownBy } from "../features/preview/under-cursor.ts";
import { linesToHear, NOTHING_TO_HEAR } from "../features/sound/to-hear.ts";
import { canonicalUri } from "../host/uri.ts";
import { Journal } from "../journal/journal.ts";
import { debounced } from "./debounce.ts";
import { planWanted } from "./plan-wanted.ts";
import type { Place, Session } from "./session.ts";

const NOTHING_AT_CURSOR = { underCursor: null, shownBy: null, fingers: null, hear: NOTHING_TO_HEAR } as const;

/** How long nobody must have typed before a preview is told, in milliseconds. */
const QUIET = 150;

const SPANS: readonly unknown[] = [4, 12, 26, 52, "all"] satisfies readonly PreviewSpan[];

/** Of another shape than the protocol's it is undefined; what may be left out and makes no sense is left out. */
export function readPreviewParams(value: unknown): PreviewParams | undefined {
  const { uri, version, choice, most, known, cursor, open, plan } = (value ?? {}) as Readonly<Record<string, unknown>>;
  if (typeof uri !== "string") return undefined;
  return {
    uri,
    ...(isCount(version) ? { version } : {}),
    ...(isChoice(choice) ? { choice } : {}),
    ...(isCount(most) ? { most } : {}),
    ...(Array.isArray(known) ? { known: known.filter((hash) => typeof hash === "string") } : {}),
    ...(isCount(cursor) ? { cursor } : {}),
    ...(typeof open === "string" ? { open } : {}),
    ...(isPlanAsked(plan) ? { plan } : {}),
  };
}

export function preview({ session, journal, uri }: Place, params: PreviewParams): PreviewResult {
  const version = session.workspace.versionOf(journal.root);
  const today = session.dayOf(uri); // also where nothing changed: a new day is found by looking
  const { cursor } = params;
  const atCursor = {
    underCursor: cursor === undefined ? null : exerciseUnderCursor(journal, uri, cursor),
    shownBy: cursor === undefined ? null : shownBy(journal, uri, cursor, today),
    fingers: cursor === undefined ? null : fingersUnderCursor(journal, uri, cursor),
    hear: linesToHear(journal, uri, cursor ?? -1, today),
  };
  if (params.version === version) return { unchanged: true, ...atCursor };
  const { isReading: reading } = session.workspace;
  const plan = planShown(session, uri, params.plan);
  return { journal: journal.root, version, ...atCursor, ...figuresOf(journal, { ...params, today, reading, plan }) };
}

/** For a document that nobody knows: what a journal without files shows. */
export function emptyPreview(session: Session, { uri, ...params }: PreviewParams): PreviewResult {
  const key = canonicalUri(uri);
  const plan = planShown(session, key, params.plan);
  const nothing = figuresOf(new Journal(uri, new Map()), { ...params, today: session.dayOf(key), plan });
  return { journal: uri, version: 0, ...NOTHING_AT_CURSOR, ...nothing };
}

/** Tells the client which journals changed. Only a client that has asked for a preview knows what that means. */
export function announceChanges({ connection, workspace, onChange }: Session): Disposable {
  const method: ChangedMethod = "daystave/changed";
  return debounced(onChange, QUIET, ({ journals }) => {
    for (const journal of journals) {
      const params: ChangedParams = { journal, version: workspace.versionOf(journal) };
      connection.sendNotification(method, params);
    }
  });
}

function isChoice(value: unknown): value is PreviewChoice {
  const { span, instrument } = (value ?? {}) as Readonly<Record<string, unknown>>;
  return SPANS.includes(span) && (instrument === null || typeof instrument === "string");
}

function isPlanAsked(value: unknown): value is PreviewPlanAsked {
  const { minutes, shownOn } = (value ?? {}) as Readonly<Record<string, unknown>>;
  const isTime = minutes === null || (isCount(minutes) && minutes >= 5 && minutes <= 600);
  return isTime && (shownOn === null || typeof shownOn === "string");
}

/** As the page wants it, else as the settings do. */
function planShown(session: Session, uri: string, asked: PreviewPlanAsked | undefined) {
  const { minutes, settings } = planWanted(session, uri, asked?.minutes ?? undefined);
  return { minutes, shownOn: asked?.shownOn ?? undefined, settings };
}

function isCount(value: unknown): value is number {
  return typeof value === "number" && Number.isInteger(value) && value >= 0;
}
