import { type ColorTheme, ColorThemeKind, type Disposable, window } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import type { Palette, PaletteMethod } from "../shared/protocol.ts";

/**
 * Colours of our own for each kind of theme, as a picture in a hover cannot see those of the editor: text and lines
 * with a contrast of at least 7 to 1 on the ground, amounts of at least 4.5 to 1 (WCAG 2.1, 1.4.6 and 1.4.3).
 */
const PALETTES: Readonly<Record<ColorThemeKind, Palette>> = {
  [ColorThemeKind.Light]: { foreground: "#3a3a3a", background: "#f8f8f8", amount: "#1b6a86" },
  [ColorThemeKind.Dark]: { foreground: "#cccccc", background: "#202020", amount: "#6fb7cf" },
  [ColorThemeKind.HighContrast]: { foreground: "#ffffff", background: "#0c141f", amount: "#9fdcf0" },
  [ColorThemeKind.HighContrastLight]: { foreground: "#1e1e1e", background: "#ffffff", amount: "#0d5068" },
};

export function paletteOf({ kind }: Pick<ColorTheme, "kind">): Palette {
  return PALETTES[kind] ?? PALETTES[ColorThemeKind.Dark];
}

/** Tells the server which colours to draw with whenever another theme is chosen. */
export function followTheme(client: BaseLanguageClient): Disposable {
  const method: PaletteMethod = "daystave/palette";
  return window.onDidChangeActiveColorTheme((theme) => void client.sendNotification(method, paletteOf(theme)));
}
