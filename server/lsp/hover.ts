import type { Hover, HoverParams } from "vscode-languageserver";
import { hoverAt } from "../features/hover/hover.ts";
import type { Place } from "./session.ts";

export function hover({ session, journal, uri }: Place, { position }: HoverParams): Hover | null {
  const found = hoverAt(journal, uri, position, {
    today: session.dayOf(uri),
    explain: session.settingsOf(uri).explain,
    palette: session.palette,
  });
  return found ? { range: found.range, contents: { kind: "markdown", value: found.markdown } } : null;
}
