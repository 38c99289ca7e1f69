import type { Hover, HoverParams } from "vscode-languageserver";
import { hoverAt } from "../features/hover/hover.ts";
import type { Place } from "./session.ts";

/** Pictures, staves among them, are for a client that says which colours they have. */
export async function hover({ session, journal, uri }: Place, { position }: HoverParams): Promise<Hover | null> {
  const found = hoverAt(journal, uri, position, {
    today: session.dayOf(uri),
    explain: session.settingsOf(uri).explain,
    palette: session.palette,
    staves: session.palette && (await session.staffDrawer()),
  });
  return found ? { range: found.range, contents: { kind: "markdown", value: found.markdown } } : null;
}
