import type { diagnosticsTexts as english } from "./diagnostics-texts.ts";

export const diagnosticsTexts: typeof english = {
  moreInFile: (message, count) => `${message} (Und ${count} weitere in dieser Datei.)`,
  fixAll: "Alle sicheren Korrekturen anwenden",
  declarePattern: (pattern) => `Festlegen: ${pattern} (die Stufen ergänzen)`,
  declareLanguage: (declaration) => `Festlegen: ${declaration} (Wörter und Tonnamen dieser Sprache)`,
};
