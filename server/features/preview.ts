// placeholder
import type { PreviewRow } from "../../shared/protocol.ts";
import type { Journal } from "../journal/journal.ts";

export function previewRows(_journal: Journal, _today: number, _options: object): PreviewRow[] {
  return [];
}
