import { CODES } from "../../checks/codes.ts";
import type { LineFinding } from "../../checks/context.ts";
import type { DayFindings } from "../../checks/day/day-findings.ts";
import type { DatedDay } from "../../checks/file/journal-order.ts";
import type { Declaration } from "../../journal/declarations/declared.ts";
import type { Block } from "../../syntax/document/document.ts";
import type { Severity } from "../types.ts";

/** The most diagnostics that are given for one file; the last says how many more there are. */
export const MOST_DIAGNOSTICS = 1000;

/** Those that are told first over the limit stand first. */
export const SEVERITIES = ["error", "warning", "information", "hint"] as const satisfies readonly Severity[];

/** What one block shows by itself, and what of it bears on others. */
export interface BlockFacts {
  readonly findings: readonly LineFinding[];
  readonly day?: DatedDay;
  readonly declarations: readonly KeyedDeclaration[];
}

export interface KeyedDeclaration {
  readonly key: string | undefined;
  readonly line: number;
  readonly declaration: Declaration;
  readonly text: string;
}

/** How many findings there are of each severity. */
export type Counts = Readonly<Record<Severity, number>>;

/** A block whose findings are only counted: they are looked for again where somebody asks for them after all. */
export class CountedBlock implements BlockFacts {
  readonly day: DatedDay | undefined;
  readonly declarations: readonly KeyedDeclaration[];
  readonly counts: Counts;
  /** Of each hint the line that it is on: titles that other days have bear on hints. */
  readonly hintLines: readonly number[];

  constructor(
    private readonly block: Block,
    private readonly checks: DayFindings,
    { day, declarations, findings }: BlockFacts,
  ) {
    this.day = day;
    this.declarations = declarations;
    this.counts = countsOf(findings);
    this.hintLines = findings.filter(({ code }) => CODES[code] === "hint").map(({ line }) => line);
  }

  get findings(): readonly LineFinding[] {
    return this.checks.of(this.block).findings;
  }
}

/**
 * Goes down a file's blocks and tells which of them need not be kept in full: over the limit only the first of the most
 * severe findings are told, and all that are found in a long file take many times as much memory as it.
 */
export class FindingsKept {
  private readonly before = { error: 0, warning: 0, information: 0, hint: 0 };

  constructor(private readonly checks: DayFindings) {}

  /** The block as it is to be kept. */
  of(block: Block, facts: BlockFacts): BlockFacts {
    const own = countsOf(facts.findings);
    let before = 0;
    let mayBeTold = facts.findings.length === 0;
    for (const severity of SEVERITIES) {
      before += this.before[severity];
      mayBeTold ||= own[severity] > 0 && before < MOST_DIAGNOSTICS;
      this.before[severity] += own[severity];
    }
    return mayBeTold ? facts : new CountedBlock(block, this.checks, facts);
  }
}

export function tells(facts: BlockFacts): boolean {
  return facts instanceof CountedBlock || facts.findings.length > 0;
}

/** It tells more than hints. */
export function isUnderlined(facts: BlockFacts): boolean {
  if (facts instanceof CountedBlock) return sumOf(facts.counts) > facts.counts.hint;
  return facts.findings.some(({ code }) => CODES[code] !== "hint");
}

export function countsOf(findings: readonly LineFinding[]): Counts {
  const counts = { error: 0, warning: 0, information: 0, hint: 0 };
  for (const { code } of findings) counts[CODES[code]]++;
  return counts;
}

export function sumOf({ error, warning, information, hint }: Counts): number {
  return error + warning + information + hint;
}

export function added(a: Counts, b: Counts): Counts {
  return {
    error: a.error + b.error,
    warning: a.warning + b.warning,
    information: a.information + b.information,
    hint: a.hint + b.hint,
  };
}
