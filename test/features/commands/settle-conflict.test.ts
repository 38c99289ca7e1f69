import { execFileSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { keepBothSides, settleConflictIn } from "../../../server/features/commands/settle-conflict.ts";
import { times } from "../../support/random-runs.ts";
import { temporaryFolder } from "../../support/temporary-folder.ts";
import { edited, journalOf, URI } from "../journal-text.ts";
import { run } from "../marked-text.ts";

// Markers as git writes them: git-merge(1), "How conflicts are presented". Days and lines are invented.

/** The text after the command that keeps both sides of every conflict. */
function both(text: string): string {
  return run(keepBothSides, `‸${text}`).replace("‸", "");
}

/** The text after the action of this title at the mark `‸`. */
function settled(marked: string, title: string): string | undefined {
  const [before = ""] = marked.split("‸");
  const text = marked.replace("‸", "");
  const place = { line: before.split(/\r\n|\n/).length - 1, character: 0 };
  const action = settleConflictIn(journalOf(text), URI, { start: place, end: place }).find(
    (each) => each.title === title,
  );
  return action && edited(text, action.edits);
}

const ENTRIES = `2026-03-02 Mon
groundwork
‸<<<<<<< HEAD
  F major, slow
    -- easier today
  C major, at 60 clean
=======
  F major, slow
    -- thumb lighter
  D minor, at 54
>>>>>>> laptop
`;

describe("in a day of both sides", () => {
  test("a line that both have stands once, with the remarks of both below it", () => {
    expect(settled(ENTRIES, "Keep both sides")).toBe(`2026-03-02 Mon
groundwork
  F major, slow
    -- easier today
    -- thumb lighter
  C major, at 60 clean
  D minor, at 54
`);
  });

  test("one side alone is kept as it is", () => {
    expect(settled(ENTRIES, "Keep the upper side")).toBe(
      "2026-03-02 Mon\ngroundwork\n  F major, slow\n    -- easier today\n  C major, at 60 clean\n",
    );
    expect(settled(ENTRIES, "Keep the lower side")).toBe(
      "2026-03-02 Mon\ngroundwork\n  F major, slow\n    -- thumb lighter\n  D minor, at 54\n",
    );
  });

  test("lines go into their phase, and `same` stays below what it goes on with", () => {
    expect(
      both(`2026-03-02 Mon
warm-up
  long tones
<<<<<<< HEAD
groundwork
  F major, at 60 clean
  same, 66 clean
=======
groundwork
  F major, at 60 clean
  D minor, slow
pieces
  Courante, bars 1-8, at 60
>>>>>>> laptop
`),
    ).toBe(`2026-03-02 Mon
warm-up
  long tones
groundwork
  F major, at 60 clean
  same, 66 clean
  D minor, slow
pieces
  Courante, bars 1-8, at 60
`);
  });

  test("what is set for the next lesson takes no entry of the other side with it", () => {
    expect(both("2026-03-02\n<<<<<<< a\nfor next week:\nG major, at 60\n=======\nF major, slow\n>>>>>>> b\n")).toBe(
      "2026-03-02\nfor next week:\nG major, at 60\n\nF major, slow\n",
    );
  });
});

describe("days of one side", () => {
  test("go in order of their dates, also where the newest is first", () => {
    expect(
      both("2026-03-01\nF major\n\n<<<<<<< a\n2026-03-04\nC major\n=======\n2026-03-02\nD minor\n>>>>>>> b\n"),
    ).toBe("2026-03-01\nF major\n\n2026-03-02\nD minor\n\n2026-03-04\nC major\n");
    expect(
      both(
        "<<<<<<< a\n2026-03-04\nC major\n\n=======\n2026-03-06\nD minor\n\n>>>>>>> b\n2026-03-02\nF major\n\n2026-03-01\n",
      ),
    ).toBe("2026-03-06\nD minor\n\n2026-03-04\nC major\n\n2026-03-02\nF major\n\n2026-03-01\n");
  });

  test("have the same last line each: git leaves it below the markers, and it belongs to both", () => {
    expect(
      both("2026-03-01\nslow C major\n\n<<<<<<< a\n2026-03-02\n=======\n2026-03-03\n>>>>>>> b\nF major, slow\n"),
    ).toBe("2026-03-01\nslow C major\n\n2026-03-02\nF major, slow\n\n2026-03-03\nF major, slow\n");
  });

  test("one day line may say more; where they differ both days stay", () => {
    expect(both("<<<<<<< a\n2026-03-02 Mon\nC major\n=======\n2026-03-02 Mon, 40 min\nD minor\n>>>>>>> b\n")).toBe(
      "2026-03-02 Mon, 40 min\nC major\nD minor\n",
    );
    expect(both("<<<<<<< a\n2026-03-02, 20 min\nC major\n=======\n2026-03-02, 40 min\nC major\n>>>>>>> b\n")).toBe(
      "2026-03-02, 20 min\nC major\n\n2026-03-02, 40 min\nC major\n",
    );
  });
});

test("what both sides were made from is left out", () => {
  const text =
    "2026-03-02\n<<<<<<< a\nC major, at 66\n||||||| 1f2e3d4\nC major, at 60\n=======\nC major, at 63\n>>>>>>> b\n";
  expect(both(text)).toBe("2026-03-02\nC major, at 66\nC major, at 63\n");
});

test("every conflict of a file at once, with its line ends, also without one at its end", () => {
  expect(
    both(
      "2026-03-02\r\n<<<<<<< a\r\nC major\r\n=======\r\nF major\r\n>>>>>>> b\r\n\r\n2026-03-03\r\n<<<<<<< a\r\nG major\r\n=======\r\n>>>>>>> b",
    ),
  ).toBe("2026-03-02\r\nC major\r\nF major\r\n\r\n2026-03-03\r\nG major");
});

test("no conflict, or markers of which one is gone, are left alone with a sentence", () => {
  expect(both("2026-03-02\nC major\n")).toMatch(/^There is no conflict in this file/);
  expect(both("2026-03-02\n<<<<<<< a\nC major\n>>>>>>> b\n")).toMatch(/^Some markers of this conflict are missing/);
  expect(settled("2026-03-02\n‸<<<<<<< a\nC major\n", "Keep both sides")).toBeUndefined();
  expect(settled("2026-03-02\n‸C major\n<<<<<<< a\n=======\n>>>>>>> b", "Keep both sides")).toBeUndefined();
});

/** What a merge of two versions of a file comes to, by git itself. */
function mergedByGit(base: string, ours: string, theirs: string, style = "merge"): string {
  const folder = temporaryFolder();
  const file = join(folder, "week.practice");
  const git = (...args: string[]): void => {
    const who = ["-c", "user.name=A", "-c", "user.email=a@example.invalid", "-c", `merge.conflictStyle=${style}`];
    execFileSync("git", [...who, ...args], { cwd: folder, stdio: "ignore" });
  };
  const commit = (text: string): void => {
    writeFileSync(file, text);
    git("add", ".");
    git("commit", "--allow-empty", "-m", "days");
  };
  git("init", "-b", "desk");
  commit(base);
  git("checkout", "-b", "laptop");
  commit(theirs);
  git("checkout", "desk");
  commit(ours);
  expect(() => git("merge", "laptop")).toThrow();
  return readFileSync(file, "utf8");
}

const said = (text: string): string[] =>
  text
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter((line) => line !== "");

describe.each(["merge", "diff3"])("a real merge of git's, in the style %s", (style) => {
  const base = "2026-03-01 Sun\n  F major, slow\n";

  test("of two branches that add to the same day", () => {
    const ours = `${base}  C major, at 60 clean\n  F major, thirds\n`;
    const theirs = `${base}  D minor, at 54\n  F major, thirds\n`;
    const text = mergedByGit(base, ours, theirs, style);
    expect(text).toContain("<<<<<<<");
    expect(both(text)).toBe(`${base}  C major, at 60 clean\n  D minor, at 54\n  F major, thirds\n`);
  });

  test("of two branches that add different days", () => {
    const ours = `${base}\n2026-03-04 Wed\n  D minor, at 54\n`;
    const theirs = `${base}\n2026-03-02 Mon\n  G major, slow\n  D minor, at 54\n`;
    const text = mergedByGit(base, ours, theirs, style);
    expect(text).toContain("<<<<<<<");
    expect(both(text)).toBe(
      `${base}\n2026-03-02 Mon\n  G major, slow\n  D minor, at 54\n\n2026-03-04 Wed\n  D minor, at 54\n`,
    );
  });
});

const someLines = fc.array(
  fc.constantFrom(
    "2026-03-02 Mon",
    "2026-03-03 Tue, 40 min",
    "2026-03-05 Thu",
    "session 19:30",
    "groundwork",
    "pieces, 20 min",
    "  F major, slow",
    "  C major, at 60 clean",
    "  same, 66",
    "    -- thumb lighter",
    "for next week:",
    "break",
    "",
  ),
  { maxLength: 7 },
);

/** How often each line is there. */
function counted(lines: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const line of lines) counts.set(line, (counts.get(line) ?? 0) + 1);
  return counts;
}

test("whatever both sides are, each line of either is there, as often as it was, and no marker is left", () => {
  let joined = 0;
  fc.assert(
    fc.property(someLines, someLines, someLines, someLines, (top, a, b, end) => {
      const text = [...top, "<<<<<<< a", ...a, "=======", ...b, ">>>>>>> b", ...end].join("\n");
      const result = both(text);
      expect(result).not.toMatch(/<<<<<<<|=======|>>>>>>>/);
      for (const side of [a, b]) {
        const left = counted(said(result));
        // a day of both sides is one day
        for (const [line, count] of counted(said([...top, ...side, ...end].join("\n"))))
          expect(left.get(line), line).toBeGreaterThanOrEqual(/^\d{4}/.test(line) ? 1 : count);
      }
      if (said(result).length < said([...top, ...a, ...b, ...end].join("\n")).length) joined++;
      const again = `<<<<<<< a\n${result}\n=======\n${result}\n>>>>>>> b`;
      expect(said(both(again))).toEqual(said(result));
    }),
    { seed: 20260309, numRuns: times(40) },
  );
  expect(joined).toBeGreaterThan(times(4));
});
