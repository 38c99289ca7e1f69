import type { Explain, InitialisationOptions, Palette, Settings } from "../../shared/protocol.ts";

const EXPLAIN: readonly Explain[] = ["signature", "steps", "both", "none"];

/** The settings with every default filled in. */
export interface EffectiveSettings {
  /** An IANA time zone; empty means the one that the client named at the start, else the machine's own. */
  readonly timeZone: string;
  readonly explain: Explain;
}

export const DEFAULT_SETTINGS: EffectiveSettings = { timeZone: "", explain: "both" };

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
  const { timeZone, explain } = fieldsOf(sent) as { [Key in keyof Settings]: unknown };
  return {
    timeZone: typeof timeZone === "string" ? timeZone.trim() : DEFAULT_SETTINGS.timeZone,
    explain: EXPLAIN.find((each) => each === explain) ?? DEFAULT_SETTINGS.explain,
  };
}

/** Whatever the client sent as `initializationOptions`; what has another shape counts as left out. */
export function readOptions(sent: unknown): InitialisationOptions {
  const { today, timeZone, canReadFiles, palette } = fieldsOf(sent) as {
    [Key in keyof InitialisationOptions]: unknown;
  };
  return {
    today: typeof today === "string" ? today : undefined,
    timeZone: typeof timeZone === "string" ? timeZone : undefined,
    canReadFiles: canReadFiles === true,
    palette: readPalette(palette),
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
