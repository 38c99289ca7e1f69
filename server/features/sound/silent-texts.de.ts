import type { silentTexts as english } from "./silent-texts.ts";

export const silentTexts: typeof english = {
  silent: "Heute klingt nichts: Gestern oder heute hast du notiert, dass etwas wehtut. Ausruhen ist völlig in Ordnung.",
};
