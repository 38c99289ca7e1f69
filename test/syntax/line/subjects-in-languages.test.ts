import { expect, test } from "vitest";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { parseLine } from "../../../server/syntax/line/parse-line.ts";
import { lineText, rowsOf } from "./print.ts";

// Names of scales, chords and figures in the languages of names. German and French: players' notes of their practice,
// common practice, no source; Dutch, Italian and Spanish from memory.

/** Rows of a line in a journal that names notes so, and what it means in English. */
function check(language: string, rows: string): void {
  const document = createDocument(`names ${language}`);
  const context = new Journal("file:///j", new Map([["file:///j/journal.practice", document]])).partContext;
  for (const [typed, meaning] of rowsOf(rows))
    expect([typed, lineText(parseLine(typed, { ...context, head: false }))]).toEqual([typed, meaning]);
}

test("German", () => {
  check(
    "german",
    `
    fis-Moll harmonisch        => entry: F# harmonic minor
    d-Moll melodisch           => entry: D melodic minor
    C-Dur Dreiklang            => entry: C major arpeggio
    Tonleiter C-Dur            => entry: C major
    Dreiklang C-Dur            => entry: C major arpeggio
    Chromatik                  => entry: chromatic
    Chromatik von F            => entry: F chromatic
    B-Dur gebrochener Dreiklang => entry: Bb major broken chord
    D dorisch                  => entry: D dorian
    G Dominantseptakkord       => entry: G dominant seventh
    H vermindert               => entry: ambiguous-subject: H diminished arpeggio or H diminished seventh or H half-whole or H whole-half
    Haltetöne, 5 min           => entry: long tones | 5 min
    lange Töne                 => entry: long tones
    Triller E F                => entry: trill E with F
    alle Durtonleitern         => entry: all major scales
    Quintenzirkel              => entry: circle of fifths
    C-Dur, G-Dur und D-Dur     => entry: C major, G major, D major
    Fm arp                     => entry: F minor arpeggio
    Am Abend müde              => prose
    Fis-Dur, Dreiklang, legato => entry: F# major arpeggio | articulation slurred (slurred)
    Tonleitern: H, h harm.     => entry: B major, B harmonic minor | unknown Tonleitern
    chromatisch e - c'''      => entry: chromatic from E to C6
    Lippenflattern, 2 Min.     => entry: lip trills | 2 min
    Fünftonreihe, leicht       => entry: five-note scale | outcome leicht
    Konzert, 90 Min.           => entry: gig | 90 min
    Konzert Es-Dur, 1. Satz    => entry: title Konzert Es-Dur (undeclared) | place mvt 1
    Staccato auf einem Ton, 80 => entry: staccato | tempo 80
  `,
  );
});

test("French", () => {
  check(
    "french",
    `
    do majeur                  => entry: C major
    gamme de do majeur         => entry: C major
    ré mineur harmonique       => entry: D harmonic minor
    ré mineur mélodique        => entry: D melodic minor
    arpège de ré mineur        => entry: D minor arpeggio
    sol majeur arpège          => entry: G major arpeggio
    gamme chromatique          => entry: chromatic
    gamme chromatique de fa    => entry: F chromatic
    septième de dominante sur sol => entry: G dominant seventh
    sons filés, 5 min          => entry: long tones | 5 min
    trille mi fa               => entry: trill E with F
    toutes les gammes majeures => entry: all major scales
  `,
  );
});

test("Dutch, Italian, Spanish", () => {
  check(
    "dutch",
    `
    d mineur harmonisch => entry: D harmonic minor
    drieklank van d mineur => entry: D minor arpeggio
    lange tonen => entry: long tones
    toonladder van G majeur => entry: G major
  `,
  );
  check(
    "italian",
    `
    re minore armonica => entry: D harmonic minor
    arpeggio di re minore => entry: D minor arpeggio
    note lunghe => entry: long tones
    scala di sol maggiore => entry: G major
  `,
  );
  check(
    "spanish",
    `
    re menor armónica => entry: D harmonic minor
    arpegio de re menor => entry: D minor arpeggio
    notas largas => entry: long tones
    escala de sol mayor => entry: G major
  `,
  );
});

test("words of another language beside English names", () => {
  check(
    "english",
    `
    D dur                      => entry: D major
    H moll                     => entry: B natural minor (natural unsaid)
    fis moll                   => entry: F# natural minor (natural unsaid)
    h moll harmonisch          => entry: B harmonic minor
    D majeur                   => entry: D major
    d moll melodisch           => entry: D melodic minor
  `,
  );
});

test("Dutch, Italian and French in short", () => {
  check(
    "dutch",
    `
    toonladder bes gr          => entry: Bb major
    es gr 72                   => entry: Eb major | tempo 72
    fis kl harm                => entry: F# harmonic minor
    c kl mel                   => entry: C melodic minor
  `,
  );
  check(
    "italian",
    `
    arp di 7a dom su Sol                => entry: G dominant seventh
    cromatica dal Mi grave al Sol acuto => entry: E chromatic
    Trilli a due mani su la-si          => entry: trill A with B
  `,
  );
  check("french", "sirènes + trilles de lèvres, bien => entry: sirens, lip trills | outcome bien");
});
