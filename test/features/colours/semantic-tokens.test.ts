import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { SemanticTokensBuilder, SemanticTokenTypes } from "vscode-languageserver";
import { semanticTokens, TOKEN_MODIFIERS, TOKEN_TYPES } from "../../../server/features/colours/semantic-tokens.ts";
import { COLOURING } from "../../../server/features/colours/token-meanings.ts";
import type { Range } from "../../../server/features/types.ts";
import { anyText, journalOf, journalText, URI } from "../journal-text.ts";

interface Decoded {
  readonly line: number;
  readonly start: number;
  readonly length: number;
  readonly type: number;
  readonly modifiers: number;
}

/** The five numbers of each token made absolute: Language Server Protocol 3.17, "Semantic Tokens", integer encoding. */
function decoded(data: readonly number[]): readonly Decoded[] {
  const tokens: Decoded[] = [];
  let line = 0;
  let start = 0;
  for (let i = 0; i < data.length; i += 5) {
    if (data[i]! > 0) start = 0;
    line += data[i]!;
    start += data[i + 1]!;
    tokens.push({ line, start, length: data[i + 2]!, type: data[i + 3]!, modifiers: data[i + 4]! });
  }
  return tokens;
}

function tokensOf(text: string, range?: Range): readonly Decoded[] {
  return decoded(semanticTokens(journalOf(text), URI, range));
}

/** Each line with its tokens under it: where, of what type, with which modifiers. */
function marked(text: string): string {
  const tokens = tokensOf(text);
  return text
    .split("\n")
    .flatMap((line, i) => [line, ...tokens.filter((token) => token.line === i).map(underline)])
    .join("\n");
}

function underline({ start, length, type, modifiers }: Decoded): string {
  const words = TOKEN_MODIFIERS.filter((_, bit) => modifiers & (1 << bit));
  return [`${" ".repeat(start)}${"^".repeat(length)}`, TOKEN_TYPES[type], ...words].join(" ");
}

function check(expected: string): void {
  const marks = /^ *\^+ \w+(?: \w+)*$/;
  const text = expected
    .split("\n")
    .filter((line) => !marks.test(line))
    .join("\n");
  expect(marked(text)).toBe(expected);
}

describe("what each word is", () => {
  test("a day, a session, a phase, an entry and a remark", () => {
    check(`2026-03-02 Mon, 50 min
^^^^^^^^^^ namespace
           ^^^ keyword
                ^^^^^^ number
session 19:30
^^^^^^^ keyword
        ^^^^^ number
warm-up, 5 min
^^^^^^^ keyword
         ^^^^^ number
  F# minor, thirds, slurred, 8ths at 60 clean 4/5, by heart -- at last
  ^^ variable
     ^^^^^ type
            ^^^^^^ function
                    ^^^^^^^ decorator
                             ^^^^ number
                                  ^^^^^ number
                                        ^^^^^ enumMember
                                              ^^^ number
                                                   ^^^^^^^^ decorator
                                                            ^^^^^^^^^^ comment
-- left thumb
^^^^^^^^^^^^^ comment
Sound freer today.`);
  });

  test("claims, chains, figures, titles and free words", () => {
    check(`piece "Ground in G" as Ground: G minor
^^^^^ keyword
      ^^^^^^^^^^^^^ property declaration
                    ^^ keyword
                       ^^^^^^ property declaration
                               ^ variable
                                 ^^^^^ type
2026-03-02
^^^^^^^^^^ namespace
D minor: D H F sharp, 1 flat
^ variable
  ^^^^^ type
         ^ variable
             ^^^^^^^ variable
                      ^^^^^^ number
C major > F major
^ variable
  ^^^^^ type
        ^ operator
          ^ variable
            ^^^^^ type
long tones on F4 C5, with drone F, from F4 to C6
^^^^^^^^^^^^^ function
              ^^ variable
                 ^^ variable
                     ^^^^ keyword
                          ^^^^^^^ parameter
                                   ^^^^ parameter
                                        ^^ variable
                                           ^^ parameter
                                              ^^ variable
Ground, bars 1-8, on tenor recorder
^^^^^^ property
        ^^^^^^^^ parameter
                  ^^^^^^^^^^^^^^^^^ class
"Solo", a twelfth
^^^^^^ string
        ^^^^^^^^^ parameter`);
  });

  test("declarations", () => {
    check(`player Noor Vale
^^^^^^ keyword
       ^^^^^^^^^ property declaration
instrument alto recorder
^^^^^^^^^^ keyword
           ^^^^^^^^^^^^^ class
pattern "zigzag": 1 3
^^^^^^^ keyword
        ^^^^^^^^ property declaration
                  ^ number
                    ^ number
aim D minor, thirds, at 96 by 2026-04-30
^^^ keyword
    ^ variable
      ^^^^^ type
             ^^^^^^ function
                     ^^^^^ number
                           ^^ keyword
                              ^^^^^^^^^^ number`);
  });

  test("what is planned says so; what cannot be read stays plain", () => {
    check(`2026-03-02 plan
^^^^^^^^^^ namespace
           ^^^^ keyword
D minor, slow -- soon
^ variable planned
  ^^^^^ type planned
         ^^^^ number planned
              ^^^^^^^ comment
D minor, done
^ variable
  ^^^^^ type
         ^^^^ keyword
d, thrdis, slow`);
  });
});

test("all types are the protocol's own", () => {
  const own: readonly string[] = Object.values(SemanticTokenTypes);
  for (const type of TOKEN_TYPES) expect(own).toContain(type);
  const used = Object.values(COLOURING).flatMap(({ type }) => type ?? []);
  for (const type of used) expect(TOKEN_TYPES).toContain(type);
});

test("the numbers are those of the library's own builder", () => {
  fc.assert(
    fc.property(journalText, (text) => {
      const data = semanticTokens(journalOf(text), URI);
      const builder = new SemanticTokensBuilder();
      for (const { line, start, length, type, modifiers } of decoded(data))
        builder.push(line, start, length, type, modifiers);
      expect(data).toEqual(builder.build().data);
    }),
    { seed: 1 },
  );
});

test("with a range no day outside it is read, and the tokens are those of its lines", () => {
  const day = (n: number): string => `2026-03-0${n} Mon\nD minor, slow\n\n`;
  const text = [1, 2, 3, 4].map(day).join("");
  const journal = journalOf(text);
  const { blocks } = journal.files.get(URI)!;
  const model = vi.spyOn(journal, "modelAtHand");
  const range = { start: { line: 4, character: 2 }, end: { line: 7, character: 0 } };
  const found = decoded(semanticTokens(journal, URI, range));
  expect(new Set(model.mock.calls.map(([block]) => blocks.indexOf(block)))).toEqual(new Set([1, 2]));
  expect(found).toEqual(tokensOf(text).filter(({ line }) => line >= 4 && line < 7));
});

test("tokens are in order, inside their lines, and none lies upon another", () => {
  fc.assert(
    fc.property(fc.oneof(journalText, anyText), (text) => {
      const journal = journalOf(text);
      const document = journal.files.get(URI)!;
      const lines = document.blocks.flatMap((block) => block.lines);
      let end = { line: -1, column: 0 };
      for (const { line, start, length, type, modifiers } of decoded(semanticTokens(journal, URI))) {
        expect(length).toBeGreaterThan(0);
        expect(line > end.line || (line === end.line && start >= end.column)).toBe(true);
        expect(start + length).toBeLessThanOrEqual(lines[line]!.length);
        expect(TOKEN_TYPES[type]).toBeDefined();
        expect(modifiers).toBeLessThan(1 << TOKEN_MODIFIERS.length);
        end = { line, column: start + length };
      }
    }),
    { seed: 2 },
  );
});

test("a range of any lines gives the tokens of those lines", () => {
  fc.assert(
    fc.property(journalText, fc.nat(14), fc.nat(14), (text, from, more) => {
      const range = { start: { line: from, character: 0 }, end: { line: from + more, character: 1 } };
      const within = tokensOf(text).filter(({ line }) => line >= from && line <= from + more);
      expect(tokensOf(text, range)).toEqual(within);
    }),
    { seed: 3 },
  );
});
