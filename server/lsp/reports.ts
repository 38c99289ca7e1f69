import type * as lsp from "vscode-languageserver";
import type { Diagnostic } from "../features/types.ts";
import { diagnostic } from "./convert.ts";

/** What is said about one file, and a name for it: as long as the name stays, so do the items. */
export interface Report {
  readonly resultId: string;
  readonly items: lsp.Diagnostic[];
}

/** Names lists of diagnostics by their identity, which the feature keeps while nothing that bears on them changes. */
export class Reports {
  readonly #reports = new WeakMap<readonly Diagnostic[], Report>();
  #count = 0;

  of(diagnostics: readonly Diagnostic[]): Report {
    let report = this.#reports.get(diagnostics);
    if (!report) {
      report = { resultId: String(++this.#count), items: diagnostics.map(diagnostic) };
      this.#reports.set(diagnostics, report);
    }
    return report;
  }
}
