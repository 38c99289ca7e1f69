import { expect, test, vi } from "vitest";
import type { Palette } from "../../shared/protocol.ts";

/** The kinds of theme as the editor numbers them: https://code.visualstudio.com/api/references/vscode-api#ColorThemeKind */
const KINDS = { Light: 1, Dark: 2, HighContrast: 3, HighContrastLight: 4 };
const editor = vi.hoisted(() => ({ chosen: (_: { kind: number }): void => {} }));

vi.mock("vscode", () => ({
  ColorThemeKind: { Light: 1, Dark: 2, HighContrast: 3, HighContrastLight: 4 },
  window: {
    onDidChangeActiveColorTheme: (listener: typeof editor.chosen) => {
      editor.chosen = listener;
      return { dispose: () => {} };
    },
  },
}));

const { followTheme, paletteOf } = await import("../../client/palette.ts");
const { readPalette } = await import("../../server/host/settings.ts");

/** Relative luminance, WCAG 2.1: https://www.w3.org/TR/WCAG21/#dfn-relative-luminance */
function luminance(colour: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return part <= 0.03928 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

/** Contrast ratio, WCAG 2.1: https://www.w3.org/TR/WCAG21/#dfn-contrast-ratio */
function contrast(a: string, b: string): number {
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (high! + 0.05) / (low! + 0.05);
}

test("the contrast of black on white is 21 to 1, of #767676 on white just over 4.5 to 1 (WCAG 2.1)", () => {
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 5);
  expect(contrast("#767676", "#ffffff")).toBeGreaterThan(4.5);
  expect(contrast("#777777", "#ffffff")).toBeLessThan(4.5);
});

test.each(Object.entries(KINDS))(
  "%s: lines stand out 7 to 1, amounts 4.5 to 1, and the server takes the colours",
  (_, kind) => {
    const palette = paletteOf({ kind });
    expect(contrast(palette.foreground, palette.background)).toBeGreaterThanOrEqual(7);
    expect(contrast(palette.amount, palette.background)).toBeGreaterThanOrEqual(4.5);
    expect(readPalette(palette)).toEqual(palette);
  },
);

test("another theme that is chosen is told to the server; a kind that is not known yet counts as dark", () => {
  const sent: [string, Palette][] = [];
  followTheme({ sendNotification: async (...what: [string, Palette]) => void sent.push(what) } as never);
  editor.chosen({ kind: KINDS.Light });
  editor.chosen({ kind: 99 });
  expect(sent).toEqual([
    ["daystave/palette", paletteOf({ kind: KINDS.Light })],
    ["daystave/palette", paletteOf({ kind: KINDS.Dark })],
  ]);
});
