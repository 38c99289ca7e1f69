import type { PreviewFigures, PreviewRow, PreviewWeek } from "../../shared/protocol.ts";

/** Messages between the editor's side of a preview and its page. Neither trusts the other: both check the shape first. */

/** To the page. */
export type ToPage =
  | { readonly type: "figures"; readonly uri: string; readonly figures: PreviewFigures }
  /** The figures cannot be had, with a sentence that says so. */
  | { readonly type: "unavailable"; readonly message: string };

/** From the page. */
export type FromPage =
  /** The page is drawn and shows nothing yet. */
  { readonly type: "ready" } | { readonly type: "reveal"; readonly uri: string; readonly line: number };

/** What the page keeps across a restart of the editor. */
export interface PageState {
  /** A document of the journal shown. */
  readonly uri: string;
  /** Pixels from the top. */
  readonly scroll: number;
}

export function isToPage(value: unknown): value is ToPage {
  if (!isRecord(value)) return false;
  if (value.type === "unavailable") return isString(value.message);
  return value.type === "figures" && isString(value.uri) && isFigures(value.figures);
}

export function isFromPage(value: unknown): value is FromPage {
  if (!isRecord(value)) return false;
  if (value.type === "ready") return true;
  return value.type === "reveal" && isString(value.uri) && isCount(value.line);
}

export function isPageState(value: unknown): value is PageState {
  return isRecord(value) && isString(value.uri) && isNumber(value.scroll);
}

export function isFigures(value: unknown): value is PreviewFigures {
  return isRecord(value) && isString(value.journal) && isNumber(value.version) && isArrayOf(value.rows, isRow);
}

function isRow(value: unknown): value is PreviewRow {
  return (
    isRecord(value) &&
    [value.key, value.hash, value.subject, value.strand, value.lastPractised, value.trend, value.uri].every(isString) &&
    [value.pattern, value.instrument].every((field) => field === null || isString(field)) &&
    (value.unit === "notes a minute" || value.unit === "beats a minute") &&
    isCount(value.line) &&
    isArrayOf(value.weeks, isWeek)
  );
}

function isWeek(value: unknown): value is PreviewWeek {
  return (
    isRecord(value) &&
    [value.week, value.shown].every(isString) &&
    (value.bestClean === null || isNumber(value.bestClean)) &&
    typeof value.tested === "boolean" &&
    isCount(value.attempts) &&
    isNumber(value.minutes)
  );
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function isArrayOf<Item>(value: unknown, isItem: (item: unknown) => item is Item): value is Item[] {
  return Array.isArray(value) && value.every(isItem);
}

function isString(value: unknown): value is string {
  return typeof value === "string";
}

function isNumber(value: unknown): value is number {
  return typeof value === "number" && Number.isFinite(value);
}

/** A whole number from 0. */
function isCount(value: unknown): value is number {
  return isNumber(value) && Number.isInteger(value) && value >= 0;
}
