import type {
  PreviewCell,
  PreviewChart,
  PreviewChoice,
  PreviewColumn,
  PreviewExercise,
  PreviewExerciseContent,
  PreviewExercises,
  PreviewFigures,
  PreviewFingering,
  PreviewFingers,
  PreviewHear,
  PreviewKeys,
  PreviewKind,
  PreviewLesson,
  PreviewLine,
  PreviewLink,
  PreviewOpened,
  PreviewPeriod,
  PreviewPiece,
  PreviewPieces,
  PreviewPlace,
  PreviewPlan,
  PreviewPlanAsked,
  PreviewPlanLine,
  PreviewSpan,
  PreviewStep,
  PreviewStretch,
  PreviewTable,
  PreviewTableRow,
  PreviewToday,
  PreviewUnchanged,
  PreviewWeeks,
} from "../../shared/preview.ts";
import type { Sound } from "../../shared/sound.ts";
import type { PreviewNote, PreviewStaff } from "../../shared/staff.ts";
import { type Check, either, isCount, isFlag, isNumber, isText, list, object, only, orNull } from "./shapes.ts";
import { isSound } from "./sound-shape.ts";

/**
 * Messages between the editor's side of a preview and its page. Neither trusts the other: both check the shape first.
 */

/** To the page. */
export type ToPage =
  | { readonly type: "figures"; readonly uri: string; readonly figures: PreviewFigures }
  /** The exercise under the cursor, by its key, and the hardest finger changes of its line. */
  | {
      readonly type: "cursor";
      readonly underCursor: string | null;
      readonly fingers: PreviewFingers | null;
      readonly hear: PreviewHear;
    }
  /** What a line of words sounds like; null where it cannot be had. */
  | { readonly type: "sound"; readonly text: string; readonly sound: Sound | null }
  /** An exercise, or else what leads to a line, is to be in sight. */
  | { readonly type: "bring"; readonly key: string | null; readonly place: PreviewPlace }
  /** Whether the page stays with its journal, which it remembers across a restart. */
  | { readonly type: "lock"; readonly locked: boolean }
  /** The exercise under the cursor as a staff; null where it is none. */
  | { readonly type: "staff"; readonly staff: PreviewStaff | null }
  /** The figures cannot be had, with a sentence that says so. */
  | { readonly type: "unavailable"; readonly message: string };

/** From the page. */
export type FromPage =
  /** The page is drawn and shows nothing yet, or not all that it needs. */
  | { readonly type: "ready"; readonly asks: PageAsks; readonly locked: boolean }
  /** The player chose other weeks or another instrument, asks for more exercises, or unfolds one. */
  | { readonly type: "ask"; readonly asks: PageAsks }
  /** The exercise under the cursor is wanted as a staff, so wide in pixels. */
  | { readonly type: "staff"; readonly width: number; readonly fingerings: boolean }
  | { readonly type: "reveal"; readonly uri: string; readonly line: number }
  /** The reader scrolled: what comes first leads to this line. */
  | { readonly type: "scrolled"; readonly uri: string; readonly line: number }
  /** The plan that is shown is to be written into the journal. */
  | { readonly type: "writePlan" }
  /** A line of words is to be heard beside a line of the journal; of the document itself where none is meant. */
  | { readonly type: "hear"; readonly place: PreviewPlace | null; readonly text: string }
  /** A tempo that was played is to be written where its outcome follows. */
  | { readonly type: "writeTempo"; readonly uri: string; readonly line: number; readonly bpm: number }
  /** A finger change of the line under the cursor, by its place among the hardest, is to be practised by itself. */
  | { readonly type: "isolate"; readonly uri: string; readonly line: number; readonly rank: number };

/** What the page wants to be shown; null leaves it to the server. */
export interface PageAsks {
  readonly choice: PreviewChoice | null;
  readonly most: number | null;
  /** The key of the exercise that is unfolded. */
  readonly open: string | null;
  readonly plan: PreviewPlanAsked | null;
}

/** What the page keeps across a restart of the editor. */
export interface PageState {
  /** A document of the journal shown. */
  readonly uri: string;
  /** Pixels from the top. */
  readonly scroll: number;
  readonly asks: PageAsks;
  readonly locked: boolean;
  /** The name of the one row that is unfolded. */
  readonly open: string | null;
  /** The names of what else is folded out. */
  readonly unfolded: readonly string[];
}

const isSpan: Check<PreviewSpan> = (value): value is PreviewSpan =>
  ([4, 12, 26, 52, "all"] satisfies PreviewSpan[] as unknown[]).includes(value);

const isChoice = object<PreviewChoice>({ span: isSpan, instrument: orNull(isText) });
export const isPlace = object<PreviewPlace>({ uri: isText, line: isCount });
export const isLink = object<PreviewLink>({ text: isText, note: isText, place: isPlace });
export const isLine = object<PreviewLine>({
  text: isText,
  behind: isText,
  facts: list(isText),
  below: isText,
  day: isText,
  place: isPlace,
});
const isRow = object<PreviewTableRow>({ cells: list(isText), place: orNull(isPlace) });
const isTable = object<PreviewTable>({ caption: isText, headings: list(isText), rows: list(isRow), foot: isText });
const isChart = object<PreviewChart>({ svg: isText, table: isTable });
const isPlanLine = object<PreviewPlanLine>({ text: isText, minutes: isText, reasons: list(isText) });
const isStretch = object<PreviewStretch>({ phase: isText, minutes: isText, lines: list(isPlanLine) });
const isPlan = object<PreviewPlan>({
  day: isText,
  offer: isText,
  place: orNull(isPlace),
  minutes: isCount,
  sentences: list(isText),
  stretches: list(isStretch),
});
const isToday = object<PreviewToday>({
  date: isText,
  isRest: isFlag,
  sentences: list(isText),
  care: isCount,
  set: list(isLine),
  last: list(isLine),
  plan: orNull(isPlan),
});
const isContent = object<PreviewExerciseContent>({
  name: isText,
  way: isText,
  trend: isText,
  latest: isText,
  fastest: isText,
  day: isText,
  chart: isText,
});
const isExercise = object<PreviewExercise>({
  key: isText,
  hash: isText,
  place: isPlace,
  shows: (value): value is PreviewExerciseContent | undefined => value === undefined || isContent(value),
});
const isExercises = object<PreviewExercises>({
  note: isText,
  axis: isText,
  recent: list(isExercise),
  earlier: list(isExercise),
  plain: list(isLine),
  earlierPlain: list(isLine),
  left: isCount,
  opened: orNull(object<PreviewOpened>({ key: isText, chart: isChart })),
});
const isPiece = object<PreviewPiece>({
  key: isText,
  name: isText,
  facts: isText,
  due: isText,
  latest: isText,
  wanted: isText,
  day: isText,
  place: isPlace,
  chart: isChart,
});
const isPieces = object<PreviewPieces>({ inHand: list(isPiece), plain: list(isLine), earlier: list(isLine) });
const PERIOD = { set: list(isLine), said: list(isLine), ask: list(isLine) };
const isLesson = object<PreviewLesson>({
  note: isText,
  now: object<PreviewPeriod>(PERIOD),
  before: orNull(object<NonNullable<PreviewLesson["before"]>>({ title: isText, ...PERIOD })),
});
const isWeeks = object<PreviewWeeks>({ chart: isChart, tones: list(object({ name: isText, tone: isCount })) });
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
  note: isText,
  columns: list(isColumn),
  rows: list(isKind),
  others: list(isLink),
  sentence: isText,
  wanted: list(isText),
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

const isHear: Check<PreviewHear> = object<PreviewHear>({
  place: orNull(isPlace),
  lines: list(isText),
  silent: isText,
});

export const isFigures: Check<PreviewFigures> = object<PreviewFigures>({
  journal: isText,
  version: isCount,
  name: isText,
  choice: isChoice,
  instruments: list(isText),
  instrumentNames: list(isText),
  underCursor: orNull(isText),
  shownBy: orNull(isPlace),
  fingers: orNull(isFingers),
  hear: isHear,
  reading: isFlag,
  dates: isText,
  week: isText,
  today: isToday,
  exercises: orNull(isExercises),
  pieces: orNull(isPieces),
  keys: orNull(isKeys),
  lesson: orNull(isLesson),
  weeks: orNull(isWeeks),
  aims: list(isLine),
});

export const isUnchanged: Check<PreviewUnchanged> = object<PreviewUnchanged>({
  unchanged: only(true),
  underCursor: orNull(isText),
  shownBy: orNull(isPlace),
  fingers: orNull(isFingers),
  hear: isHear,
});

const isPlanAsked = object<PreviewPlanAsked>({ minutes: orNull(isCount), shownOn: orNull(isText) });
const isAsks = object<PageAsks>({
  choice: orNull(isChoice),
  most: orNull(isCount),
  open: orNull(isText),
  plan: orNull(isPlanAsked),
});

type ToPageOf<Type extends ToPage["type"]> = Extract<ToPage, { readonly type: Type }>;
const isShown = object<ToPageOf<"figures">>({ type: only("figures"), uri: isText, figures: isFigures });
const isCursor = object<ToPageOf<"cursor">>({
  type: only("cursor"),
  underCursor: orNull(isText),
  fingers: orNull(isFingers),
  hear: isHear,
});
const isUnavailable = object<ToPageOf<"unavailable">>({ type: only("unavailable"), message: isText });
const isBring = object<ToPageOf<"bring">>({ type: only("bring"), key: orNull(isText), place: isPlace });
const isLock = object<ToPageOf<"lock">>({ type: only("lock"), locked: isFlag });
const isHeard = object<ToPageOf<"sound">>({ type: only("sound"), text: isText, sound: orNull(isSound) });
const isNote = object<PreviewNote>({
  name: isText,
  degree: isText,
  mark: isText,
  fingering: isText,
  fingeringWords: isText,
});
export const isStaff: Check<PreviewStaff> = object<PreviewStaff>({
  svg: isText,
  text: isText,
  notes: list(isNote),
  fingered: isFlag,
  sentence: isText,
});
const isStaffShown = object<ToPageOf<"staff">>({ type: only("staff"), staff: orNull(isStaff) });
export const isToPage: Check<ToPage> = either(
  either(either(isShown, isCursor), either(isHeard, isStaffShown)),
  either(isBring, either(isLock, isUnavailable)),
);

type FromPageOf<Type extends FromPage["type"]> = Extract<FromPage, { readonly type: Type }>;
const isReady = object<FromPageOf<"ready">>({ type: only("ready"), asks: isAsks, locked: isFlag });
const isAsk = object<FromPageOf<"ask">>({ type: only("ask"), asks: isAsks });
const isReveal = object<FromPageOf<"reveal">>({ type: only("reveal"), uri: isText, line: isCount });
const isScrolled = object<FromPageOf<"scrolled">>({ type: only("scrolled"), uri: isText, line: isCount });
const isIsolate = object<FromPageOf<"isolate">>({ type: only("isolate"), uri: isText, line: isCount, rank: isCount });
const isWritePlan = object<FromPageOf<"writePlan">>({ type: only("writePlan") });
const isHearing = object<FromPageOf<"hear">>({ type: only("hear"), place: orNull(isPlace), text: isText });
const isWriteTempo = object<FromPageOf<"writeTempo">>({
  type: only("writeTempo"),
  uri: isText,
  line: isCount,
  bpm: isNumber,
});
const isStaffAsked = object<FromPageOf<"staff">>({ type: only("staff"), width: isCount, fingerings: isFlag });
export const isFromPage: Check<FromPage> = either(
  either(either(isReady, isAsk), either(isStaffAsked, isScrolled)),
  either(either(isReveal, isIsolate), either(isWritePlan, either(isHearing, isWriteTempo))),
);

export const isPageState: Check<PageState> = object<PageState>({
  uri: isText,
  scroll: isNumber,
  asks: isAsks,
  locked: isFlag,
  open: orNull(isText),
  unfolded: list(isText),
});

/** Every line that the figures lead to. */
export function placesIn(figures: PreviewFigures): readonly PreviewPlace[] {
  const { fingers, today, exercises, pieces, keys, lesson, weeks, aims } = figures;
  const lines = [
    ...[...today.set, ...today.last, ...aims],
    ...(exercises ? [...exercises.plain, ...exercises.earlierPlain, ...exercises.recent, ...exercises.earlier] : []),
    ...(pieces ? [...pieces.plain, ...pieces.earlier, ...pieces.inHand] : []),
    ...[lesson?.now, lesson?.before].flatMap((period) =>
      period ? [...period.set, ...period.said, ...period.ask] : [],
    ),
    ...(keys ? keys.others : []),
    ...(fingers ? [fingers] : []),
  ];
  const charts = [exercises?.opened?.chart, weeks?.chart, ...(pieces?.inHand ?? []).map(({ chart }) => chart)];
  const rows = charts.flatMap((chart) => chart?.table.rows ?? []);
  const cells = keys?.rows.flatMap((row) => row.cells) ?? [];
  const others = [...rows, ...cells, ...(today.plan ? [today.plan] : [])];
  return [...lines.map(({ place }) => place), ...others.flatMap(({ place }) => place ?? [])];
}

/** The hashes of the exercises that the figures show. */
export function hashesIn({ exercises }: PreviewFigures): readonly string[] {
  return exercises ? [...exercises.recent, ...exercises.earlier].map(({ hash }) => hash) : [];
}
