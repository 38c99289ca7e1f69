import type { PreviewLine } from "../../../shared/preview.ts";
import { lineList } from "./lines.ts";
import { pageTexts } from "./page-texts.ts";
import { part } from "./part.ts";
import type { Surroundings } from "./surroundings.ts";

/** Aims, each with where it is. */
export function aimsPart(aims: readonly PreviewLine[], around: Surroundings): HTMLElement[] {
  return [...part(pageTexts.aims), lineList(aims, around)];
}
