import { describe, expect, test } from "vitest";
import { askedFixesIn } from "../../../server/features/diagnostics/asked-fixes.ts";
import { codeActionsIn } from "../../../server/features/diagnostics/code-actions.ts";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { journalOf, URI } from "../../features/journal-text.ts";
import { diagnosticsIn } from "../checks/diagnosed.ts";

const TODAY = parseIsoDate("2026-06-01")!;

describe("what is offered to those who ask", () => {
  test.each([
    [
      "D minor, swo‸opy, at 60 clean",
      [
        'Festlegen: articulation "swoopy"',
        'Festlegen: pattern "swoopy" (die Stufen ergänzen)',
        'Festlegen: focus "swoopy"',
        "Zur Bemerkung machen",
      ],
    ],
    ["D minor, 4‸, slow", ["„4 min“ schreiben", "„bars 4“ schreiben", "Zur Bemerkung machen"]],
    ["D minor‸", ["In „D natural minor“ ändern", "In „D harmonic minor“ ändern", "In „D melodic minor“ ändern"]],
    ["Tonleiter D-Dur gestoßen‸", ["Festlegen: names german (Wörter und Tonnamen dieser Sprache)"]],
  ])("%s", (marked, titles) => expect(offeredAt(marked)).toEqual(titles));
});

test("all safe fixes at once", () => {
  const text = "2026/03/02 Mon\nF# major: F# G# A# B C# D# F F#\n2026/03/03 Tue\n";
  const found = diagnosticsOf(journalOf(text), URI, TODAY);
  const range = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };
  expect(codeActionsIn(found, range, ["source.fixAll"]).map(({ title }) => title)).toEqual([
    "Alle sicheren Korrekturen anwenden",
  ]);
});

describe("days that are elsewhere", () => {
  const day = "2026-03-02 Mon\n  D minor\n";
  test("in a file before, by its line", () =>
    expect(messages({ "a.practice": `-- leer\n${day}`, "b.practice": day })).toEqual([
      "2026-03-02 steht schon in a.practice, Zeile 2. Für eine zweite Übeeinheit schreib `session` unter jenen Tag.",
    ]));

  test("in folders of several players", () => {
    const days = [1, 2, 3, 4].map((date) => `2026-03-0${date}\n  D minor\n`).join("");
    expect(messages({ "anna/a.practice": days, "ben/b.practice": days, "cleo/c.practice": days })).toEqual([
      "Die Ordner anna, ben und cleo haben dieselben Tage, wie wenn mehrere Personen darin schreiben. Leg in jeden eine leere Datei namens `journal.practice`: Dann ist jeder ein eigenes Tagebuch.",
    ]);
  });
});

/** What is offered at the mark `‸` on a line below a day, where no diagnostic is. */
function offeredAt(marked: string): readonly string[] {
  const place = { line: 1, character: marked.indexOf("‸") };
  const journal = journalOf(`2026-03-02\n${marked.replace("‸", "")}`);
  return askedFixesIn(journal, URI, { start: place, end: place }).map(({ title }) => title);
}

function messages(files: Readonly<Record<string, string>>): readonly string[] {
  return diagnosticsIn(files).map(({ message }) => message);
}
