import type {
  Explain,
  HintSettings,
  InitialisationOptions,
  LensSettings,
  Palette,
  PlanSettings,
  Settings,
  UnhurriedDays,
} from "../../shared/protocol.ts";

const EXPLAIN: readonly Explain[] = ["signature", "steps", "both", "none"];

/** The settings with every default filled in. */
export interface EffectiveSettings {
  /** An IANA time zone; empty means the one that the client named at the start, else the machine's own. */
  readonly timeZone: string;
  readonly explain: Explain;
  readonly plan: PlanWishes;
  /** Whether each is shown; the fields are those of `LensSettings` and `HintSettings`. */
  readonly lens: { readonly trend: boolean };
  readonly hints: { readonly notesPerMinute: boolean; readonly lastTempo: boolean };
}

/** What the settings say of plans; the fields are those of `PlanSettings` in `shared/protocol.ts`. */
export interface PlanWishes {
  /** Null: as long as is usual. */
  readonly minutes: number | null;
  readonly shares: { readonly pieces: number; readonly groundwork: number };
  readonly longestLine: number;
  readonly playBeforePause: number;
  readonly unhurriedDays: UnhurriedDays;
  readonly reasons: boolean;
}

export const DEFAULT_SETTINGS: EffectiveSettings = {
  timeZone: "",
  explain: "both",
  plan: {
    minutes: null,
    shares: { pieces: 0.5, groundwork: 0.6 },
    longestLine: 15,
    playBeforePause: 30,
    unhurriedDays: "one in three",
    reasons: false,
  },
  lens: { trend: false },
  hints: { notesPerMinute: false, lastTempo: false },
};

/** The settings of each workspace folder, by its canonical URI, and those of everything else. */
export interface SettingsByFolder {
  readonly unscoped: EffectiveSettings;
  readonly folders: ReadonlyMap<string, EffectiveSettings>;
}

/** The settings of a workspace folder; without one, or where it has none of its own, those of everything else. */
export function settingsIn({ unscoped, folders }: SettingsByFolder, folder: string | undefined): EffectiveSettings {
  return (folder === undefined ? undefined : folders.get(folder)) ?? unscoped;
}

/** Whatever the client sent as settings under `daystave`; null, and anything of another shape, means the default. */
export function readSettings(sent: unknown): EffectiveSettings {
  const { timeZone, explain, plan, lens, hints } = fieldsOf(sent) as { [Key in keyof Settings]: unknown };
  const { trend } = fieldsOf(lens) as { [Key in keyof LensSettings]: unknown };
  const { notesPerMinute, lastTempo } = fieldsOf(hints) as { [Key in keyof HintSettings]: unknown };
  return {
    timeZone: typeof timeZone === "string" ? timeZone.trim() : DEFAULT_SETTINGS.timeZone,
    explain: EXPLAIN.find((each) => each === explain) ?? DEFAULT_SETTINGS.explain,
    plan: readPlan(plan),
    lens: { trend: trend === true },
    hints: { notesPerMinute: notesPerMinute === true, lastTempo: lastTempo === true },
  };
}

const UNHURRIED_DAYS: readonly UnhurriedDays[] = ["one in three", "never"];

function readPlan(sent: unknown): PlanWishes {
  const fields = fieldsOf(sent) as { [Key in keyof PlanSettings]: unknown };
  const shares = fieldsOf(fields.shares) as { [Key in keyof PlanWishes["shares"]]: unknown };
  const usual = DEFAULT_SETTINGS.plan;
  return {
    minutes: numberIn(fields.minutes, 5, 600, usual.minutes, Number.isInteger),
    shares: {
      pieces: numberIn(shares.pieces, 0, 1, usual.shares.pieces),
      groundwork: numberIn(shares.groundwork, 0, 1, usual.shares.groundwork),
    },
    longestLine: numberIn(fields.longestLine, 5, 60, usual.longestLine, Number.isInteger),
    playBeforePause: numberIn(fields.playBeforePause, 10, 60, usual.playBeforePause, Number.isInteger),
    unhurriedDays: UNHURRIED_DAYS.find((each) => each === fields.unhurriedDays) ?? usual.unhurriedDays,
    reasons: typeof fields.reasons === "boolean" ? fields.reasons : usual.reasons,
  };
}

function numberIn<Usual extends number | null>(
  value: unknown,
  least: number,
  most: number,
  usual: Usual,
  isRight: (value: number) => boolean = Number.isFinite,
): number | Usual {
  return typeof value === "number" && isRight(value) && value >= least && value <= most ? value : usual;
}

/** Whatever the client sent as `initializationOptions`; what has another shape counts as left out. */
export function readOptions(sent: unknown): InitialisationOptions {
  const { today, timeZone, canReadFiles, canShowPreview, palette, bundles } = fieldsOf(sent) as {
    [Key in keyof InitialisationOptions]: unknown;
  };
  return {
    today: typeof today === "string" ? today : undefined,
    timeZone: typeof timeZone === "string" ? timeZone : undefined,
    canReadFiles: canReadFiles === true,
    canShowPreview: canShowPreview === true,
    palette: readPalette(palette),
    bundles: typeof bundles === "string" ? bundles : undefined,
  };
}

const COLOUR = /^#(?:[0-9a-f]{3}|[0-9a-f]{6})$/i;

/** Three colours as `#rrggbb` or `#rgb`; anything else is no palette. */
export function readPalette(sent: unknown): Palette | undefined {
  const { foreground, background, amount } = fieldsOf(sent) as { [Key in keyof Palette]: unknown };
  const isColour = (each: unknown): each is string => typeof each === "string" && COLOUR.test(each);
  return isColour(foreground) && isColour(background) && isColour(amount)
    ? { foreground, background, amount }
    : undefined;
}

function fieldsOf(sent: unknown): object {
  return typeof sent === "object" && sent !== null ? sent : {};
}
