import type {
  PreviewAim,
  PreviewCell,
  PreviewChart,
  PreviewChoice,
  PreviewColumn,
  PreviewExercise,
  PreviewExerciseContent,
  PreviewFigures,
  PreviewFingering,
  PreviewFingers,
  PreviewGroup,
  PreviewKeys,
  PreviewKind,
  PreviewLesson,
  PreviewLink,
  PreviewMoving,
  PreviewPiece,
  PreviewPieces,
  PreviewPlace,
  PreviewSetWork,
  PreviewSpan,
  PreviewStep,
  PreviewTable,
  PreviewTick,
  PreviewUnchanged,
  PreviewWeek,
} from "../../shared/preview.ts";

/**
 * Messages between the editor's side of a preview and its page. Neither trusts the other: both check the shape first.
 */

/** To the page. */
export type ToPage =
  | { readonly type: "figures"; readonly uri: string; readonly figures: PreviewFigures }
  /** The exercise under the cursor, by its key, and the hardest steps of its line. */
  | { readonly type: "cursor"; readonly underCursor: string | null; readonly fingers: PreviewFingers | null }
  /** The figures cannot be had, with a sentence that says so. */
  | { readonly type: "unavailable"; readonly message: string };

/** From the page. */
export type FromPage =
  /** The page is drawn and shows nothing yet, or not all that it needs. */
  | { readonly type: "ready"; readonly asks: PageAsks; readonly locked: boolean }
  /** The player chose another span or instrument, or more exercises. */
  | { readonly type: "ask"; readonly asks: PageAsks }
  /** Whether the page stays with its journal when another one is looked at. */
  | { readonly type: "lock"; readonly locked: boolean }
  | { readonly type: "reveal"; readonly uri: string; readonly line: number }
  /** A step of the line under the cursor, by its place among the hardest, is to be put into the journal by itself. */
  | { readonly type: "isolate"; readonly uri: string; readonly line: number; readonly rank: number };

/** What the page wants to be shown; null leaves it to the server. */
export interface PageAsks {
  readonly choice: PreviewChoice | null;
  readonly most: number | null;
}

/** What the page keeps across a restart of the editor. */
export interface PageState {
  /** A document of the journal shown. */
  readonly uri: string;
  /** Pixels from the top. */
  readonly scroll: number;
  readonly asks: PageAsks;
  readonly locked: boolean;
  /** Whether the key signatures without practice are shown too. */
  readonly allKeys: boolean;
}

type Check<T> = (value: unknown) => value is T;

const isText: Check<string> = (value) => typeof value === "string";
const isFlag: Check<boolean> = (value) => typeof value === "boolean";
const isNumber: Check<number> = (value): value is number => typeof value === "number" && Number.isFinite(value);
/** A whole number from 0. */
const isCount: Check<number> = (value): value is number => isNumber(value) && Number.isInteger(value) && value >= 0;
const isSpan: Check<PreviewSpan> = (value): value is PreviewSpan =>
  ([4, 12, 26, 52, "all"] satisfies PreviewSpan[] as unknown[]).includes(value);

/** An object with these fields at least, each of its kind. */
function object<T extends object>(fields: { readonly [Name in keyof Required<T>]: Check<T[Name]> }): Check<T> {
  const checks = Object.entries<Check<unknown>>(fields);
  return (value): value is T =>
    typeof value === "object" &&
    value !== null &&
    !Array.isArray(value) &&
    checks.every(([name, check]) => check((value as Readonly<Record<string, unknown>>)[name]));
}

function list<T>(check: Check<T>): Check<readonly T[]> {
  return (value): value is readonly T[] => Array.isArray(value) && value.every(check);
}

function orNull<T>(check: Check<T>): Check<T | null> {
  return (value): value is T | null => value === null || check(value);
}

function only<const T>(...values: readonly T[]): Check<T> {
  return (value): value is T => (values as readonly unknown[]).includes(value);
}

function either<A, B>(one: Check<A>, other: Check<B>): Check<A | B> {
  return (value): value is A | B => one(value) || other(value);
}

const isChoice = object<PreviewChoice>({ span: isSpan, instrument: orNull(isText) });
const isPlace = object<PreviewPlace>({ uri: isText, line: isCount });
const isLink = object<PreviewLink>({ text: isText, note: isText, place: isPlace });
const isTable = object<PreviewTable>({ caption: isText, headings: list(isText), rows: list(list(isText)) });
const isChart: Check<PreviewChart> = either(
  object<Extract<PreviewChart, { readonly ok: true }>>({ ok: only(true), svg: isText, table: isTable }),
  object<Extract<PreviewChart, { readonly ok: false }>>({ ok: only(false), reason: isText }),
);
const isWeek = object<PreviewWeek>({
  title: isText,
  dates: isText,
  sentence: isText,
  chart: isChart,
  days: list(isLink),
});
const isTick = object<PreviewTick>({ label: isText, date: isText, state: only("done", "not done", "ahead") });
const isSetWork = object<PreviewSetWork>({ text: isText, place: isPlace, days: list(isTick), sentence: isText });
const isLesson = object<PreviewLesson>({
  since: isText,
  set: list(isSetWork),
  questions: list(isLink),
  words: list(isLink),
});
const isContent = object<PreviewExerciseContent>({
  name: isText,
  strand: isText,
  best: isText,
  trend: isText,
  chart: isChart,
});
const isExercise = object<PreviewExercise>({
  key: isText,
  hash: isText,
  place: isPlace,
  shows: (value): value is PreviewExerciseContent | undefined => value === undefined || isContent(value),
});
const isGroup = object<PreviewGroup>({ title: isText, exercises: list(isExercise) });
const isMoving = object<PreviewMoving>({ sentence: isText, groups: list(isGroup), left: isCount });
const isPiece = object<PreviewPiece>({ name: isText, place: isPlace, sentences: list(isText), chart: isChart });
const isColumn = object<PreviewColumn>({ label: isText, name: isText, unused: isFlag });
const isCell = object<PreviewCell>({
  tonic: isText,
  days: isCount,
  shade: isCount,
  mark: isText,
  isPieceKey: isFlag,
  place: orNull(isPlace),
});
const isKind = object<PreviewKind>({ kind: isText, cells: list(isCell) });
const isKeys = object<PreviewKeys>({
  columns: list(isColumn),
  rows: list(isKind),
  others: list(isLink),
  sentence: isText,
});
const isFingering = object<PreviewFingering>({ note: isText, chart: isText, words: isText });
const isStep = object<PreviewStep>({
  name: isText,
  movement: isText,
  fingerings: list(isFingering),
  doubts: list(isText),
});
const isFingers: Check<PreviewFingers> = object<PreviewFingers>({
  place: isPlace,
  steps: list(isStep),
  sentence: isText,
  canIsolate: isFlag,
});
const isAim = object<PreviewAim>({ text: isText, place: isPlace, sentences: list(isText) });

export const isFigures: Check<PreviewFigures> = object<PreviewFigures>({
  journal: isText,
  version: isCount,
  name: isText,
  choice: isChoice,
  instruments: list(isText),
  underCursor: orNull(isText),
  fingers: orNull(isFingers),
  week: isWeek,
  lesson: orNull(isLesson),
  moving: isMoving,
  pieces: object<PreviewPieces>({ inHand: list(isPiece), latest: orNull(isLink) }),
  keys: isKeys,
  aims: list(isAim),
});

export const isUnchanged: Check<PreviewUnchanged> = object<PreviewUnchanged>({
  unchanged: only(true),
  underCursor: orNull(isText),
  fingers: orNull(isFingers),
});

const isAsks = object<PageAsks>({ choice: orNull(isChoice), most: orNull(isCount) });

type ToPageOf<Type extends ToPage["type"]> = Extract<ToPage, { readonly type: Type }>;
const isShown = object<ToPageOf<"figures">>({ type: only("figures"), uri: isText, figures: isFigures });
const isCursor = object<ToPageOf<"cursor">>({
  type: only("cursor"),
  underCursor: orNull(isText),
  fingers: orNull(isFingers),
});
const isUnavailable = object<ToPageOf<"unavailable">>({ type: only("unavailable"), message: isText });
export const isToPage: Check<ToPage> = either(isShown, either(isCursor, isUnavailable));

type FromPageOf<Type extends FromPage["type"]> = Extract<FromPage, { readonly type: Type }>;
const isReady = object<FromPageOf<"ready">>({ type: only("ready"), asks: isAsks, locked: isFlag });
const isAsk = object<FromPageOf<"ask">>({ type: only("ask"), asks: isAsks });
const isLock = object<FromPageOf<"lock">>({ type: only("lock"), locked: isFlag });
const isReveal = object<FromPageOf<"reveal">>({ type: only("reveal"), uri: isText, line: isCount });
const isIsolate = object<FromPageOf<"isolate">>({ type: only("isolate"), uri: isText, line: isCount, rank: isCount });
export const isFromPage: Check<FromPage> = either(either(isReady, isAsk), either(isLock, either(isReveal, isIsolate)));

export const isPageState: Check<PageState> = object<PageState>({
  uri: isText,
  scroll: isNumber,
  asks: isAsks,
  locked: isFlag,
  allKeys: isFlag,
});

/** Every line that the figures lead to. */
export function placesIn(figures: PreviewFigures): readonly PreviewPlace[] {
  const { fingers, week, lesson, moving, pieces, keys, aims } = figures;
  const exercises = moving.groups.flatMap((group) => group.exercises);
  const work = lesson ? [...lesson.set, ...lesson.questions, ...lesson.words] : [];
  const cells = keys.rows.flatMap((row) => row.cells.flatMap(({ place }) => place ?? []));
  return [
    ...(fingers ? [fingers.place] : []),
    ...[...week.days, ...work, ...exercises, ...pieces.inHand, ...keys.others, ...aims].map(({ place }) => place),
    ...cells,
    ...(pieces.latest ? [pieces.latest.place] : []),
  ];
}

/** The hashes of the exercises that the figures show. */
export function hashesIn({ moving }: PreviewFigures): readonly string[] {
  return moving.groups.flatMap(({ exercises }) => exercises.map(({ hash }) => hash));
}
