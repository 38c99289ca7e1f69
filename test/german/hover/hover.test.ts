import { describe, expect, test } from "vitest";
import { hoverAt } from "../../../server/features/hover/hover.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { lineAt } from "../../../server/syntax/document/document.ts";
import { journalOf, URI } from "../../features/journal-text.ts";
import { englishLeft } from "../english-left.ts";
import { GERMAN_JOURNAL, sampleJournals } from "../journals.ts";

// What a hover says in German. Terms of music: from memory, as German textbooks have them.

const TODAY = parseIsoDate("2026-04-06")!;

/** The hover at the mark `‸` on a line of 1 April. */
function hover(marked: string, declared = ""): string {
  const text = `${declared}2026-04-01 Wed\n${marked.replace("‸", "")}`;
  const before = `${declared}2026-04-01 Wed\n${marked.split("‸")[0]!}`.split("\n");
  const position = { line: before.length - 1, character: before.at(-1)!.length };
  return hoverAt(journalOf(text), URI, position, { today: TODAY })?.markdown ?? "";
}

/** All that hovers say anywhere in a text. */
function everyHover(text: string): readonly string[] {
  const journal = journalOf(text);
  const document = journal.files.get(URI)!;
  const said = new Set<string>();
  for (let line = 0; line < document.lineCount; line++)
    for (let character = 0; character <= lineAt(document, line).length; character++) {
      const found = hoverAt(journal, URI, { line, character }, { today: TODAY });
      if (found) said.add(found.markdown);
    }
  return [...said];
}

describe("a scale", () => {
  test("its notes, its key, its steps and what it is", () => {
    const said = hover("d‸-Moll harmonisch, slow", "names german\n");
    expect(said).toContain("D E F G A B Cis D; ein b.");
    expect(said).toContain("Paralleltonart: F-Dur; gleichnamige Tonart: D-Dur");
    expect(said).toContain("Schritte: T S T T S A S");
    expect(said).toContain("Harmonisches Moll: natürliches Moll mit erhöhter siebter Stufe");
  });

  test("one that falls otherwise", () => {
    const said = hover("d‸-Moll melodisch, slow", "names german\n");
    expect(said).toContain("D E F G A H Cis D, abwärts C B A G F E D; ein b.");
    expect(said).toContain("Schritte aufwärts: T S T T T T S  \nAbwärts: T T S T T S T");
  });

  test("a mode with another signature beside its own", () => {
    expect(hover("D‸ dorian, slow")).toContain("Vorzeichen: keine Vorzeichen; auch mit 1 b wie D minor geschrieben");
    expect(hover("E‸ lydian, slow")).toContain("auch mit 4 Kreuzen wie E major geschrieben");
  });

  test("what has no history, what has one, and a day of pain", () => {
    expect(hover("C‸ major, at 60")).toContain("Noch kein Tempo erreicht.");
    const twice = "C major, 8ths at 60 clean\n2026-04-04 Sat\n";
    expect(hover(`${twice}C‸ major, 8ths at 63 clean`)).toMatch(
      /^\*\*C major\*\*.*\n\nMi 1\. Apr\.: 60 clean\n\nFang mit 6\d an\./s,
    );
    expect(hover(`${twice}thumb hurts\nC‸ major, 8ths at 63 clean`)).toMatch(
      /bleib heute dabei: Am 4\. April hat etwas wehgetan\./,
    );
  });
});

test("another way, another place, and a date that ends in a full stop", () => {
  const played = "C major, slurred, 8ths at 60 clean\n2026-04-04 Sat\n";
  expect(hover(`${played}C‸ major, tongued, 8ths at 63 clean`)).toContain("\n\nAußerdem gebunden: 60 am 1. Apr.\n\n");
  const piece = "Reigen, bars 1-8, at 60 clean\n2026-04-04 Sat\n";
  expect(hover(`${piece}Rei‸gen, bars 9, at 60 clean`)).toContain(
    "Takt 9\n\nSo noch nicht gespielt. Takte 1–8, Mi 1. Apr.: 60 clean",
  );
});

test("days and bars are counted", () => {
  expect(hover("C‸ major, slow")).toContain("1 Tag.");
  expect(hover("C major, slow\n2026-04-04 Sat\nC‸ major, slow, 5 min")).toContain("2 Tage, 5 Minuten.");
  const facts = (bars: number) =>
    hoverAt(journalOf(`piece "Reigen": F-Dur, ${bars} bars`), URI, { line: 0, character: 8 }, { today: TODAY })
      ?.markdown;
  expect([facts(1), facts(2)]).toEqual([expect.stringContaining("1 Takt"), expect.stringContaining("2 Takte")]);
});

describe("a term", () => {
  test.each([
    ["C major, 8ths at 7‸2", "8ths bei 72 sind 144 Töne in der Minute; Metronom: 69 darunter, 76 darüber."],
    ["C major, 8ths at 7‸2-76", "72 bis 76 ist ein Versuch, beim höchsten Tempo."],
    ["C major, hal‸ves at 60", "Zwei Viertelschläge auf jede Note."],
    ["C major, quarter‸s at 60", "Eine Note auf einen Viertelschlag."],
    ["C major, 8th‸s at 60", "Zwei Noten auf einen Viertelschlag."],
    ["C major, slu‸rred", "Nur der erste Ton wird angestoßen; den Rest trägt der Atem."],
    ["C major, slur 2‸+1", "2 gebunden, einer gestoßen, immer wieder."],
    ["C major at 60 cle‸an", "Richtige Töne, gleichmäßig, im Takt; das Tempo gilt als erreicht."],
    ["C major at 60 clean 1 of‸ 1", "Ein Versuch mit diesem Ergebnis."],
    ["C major at 60 clean 2 of‸ 2", "2 Versuche, alle mit diesem Ergebnis."],
    ["C major at 60 clean 4 of‸ 5", "5 Versuche, davon 4 mit diesem Ergebnis"],
    ["C major, 1 mi‸n", "1 Minute."],
    ["C major, 5 mi‸n", "5 Minuten."],
    ["C major, 2 oc‸t", "2 Oktaven, vom tiefsten Grundton aus."],
    ["C major, thi‸rds", "Terzen: jeder Ton und die Terz darüber, 1 3 2 4.\n\nStufen, aufwärts: 1 3 2 4"],
    ["C major, fnorr‸d", "Bleibt stehen, wie es ist, und zählt nicht."],
    ["C major, 3‸00", "Was bedeutet 300? Schreib `at 300` für ein Tempo"],
  ])("%s: %s", (marked, words) => {
    expect(hover(marked)).toContain(words);
  });
});

describe("a day", () => {
  test.each([
    ["2026-04-0‸2 Thu, 1 min", "**2026-W14**, Donnerstag. 1 Minute, wie angegeben."],
    ["2026-04-0‸2 Thu\nC major, 12 min", "12 Minuten, zusammengezählt aus den Zeilen."],
    ["2026-04-0‸2 Thu, rest", "Ein Ruhetag."],
    ["2026-02-3‸1", "Dieses Datum gibt es nicht"],
  ])("%j: %s", (marked, words) => {
    expect(hover(marked)).toContain(words);
  });
});

test("a list of notes, a signature and steps", () => {
  const german = "names german\n";
  expect(hover("D-Dur: D E F‸ G", german)).toContain("F müsste Fis sein, die dritte Stufe von D-Dur.");
  expect(hover("D-Dur: D E Fis G, 2 sh‸arps", german)).toContain(
    "2 Kreuze (Fis Cis). So stehen D-Dur und h-Moll. Hier: die Vorzeichen von D-Dur.",
  );
  expect(hover("D-Dur: T T‸ S T T T S", german)).toContain("Ein Ganzton ist `T` oder `W`");
});

test("a recorder's hardest finger change, an instrument, a tuning", () => {
  expect(hover("C‸ major, slow", "instrument alto recorder\n")).toMatch(/Schwerster Griffwechsel: .* nach .*Finger/);
  const declared = hoverAt(
    journalOf("instrument soprano recorder\n"),
    URI,
    { line: 0, character: 14 },
    { today: TODAY },
  );
  expect(declared!.markdown).toBe("Sopranblockflöte: notiert von C4 bis D6; klingt eine Oktave höher.");
  const pitch = hoverAt(journalOf("pitch A=415, Vallotti\n"), URI, { line: 0, character: 8 }, { today: TODAY });
  expect(pitch!.markdown).toContain(
    "A4 mit 415 Hz, 101 Cent unter 440 Hz. Die sechs Quinten von F bis H sind um ein Sechstel",
  );
});

test("after a pain the care sentence defers to teacher and doctor", () => {
  const said = hover("thumb hur‸ts");
  expect(said).toContain(
    "sag es deiner Lehrkraft; wenn es anhält oder wiederkommt, geh zu einer Ärztin oder einem Arzt.",
  );
});

test("no hover of a German journal or of a sample has English in it", () => {
  const left = [GERMAN_JOURNAL, ...sampleJournals()].flatMap((text) =>
    everyHover(text).flatMap((said) => {
      const words = englishLeft(said, text);
      return words.length > 0 ? [`${words.join(" ")}: ${said.slice(0, 600)}`] : [];
    }),
  );
  expect(left).toEqual([]);
});
