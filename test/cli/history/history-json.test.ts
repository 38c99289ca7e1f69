import { expect, test } from "vitest";
import { historyJson } from "../../../server/cli/history/history-json.ts";
import { jsonText } from "../../../server/cli/printable.ts";
import { attemptsOfJournal } from "../../../server/history/attempts.ts";
import { historyOf } from "../../../server/history/history.ts";
import { filesOfYear, journalOfFiles } from "../../features/preview/preview-asked.ts";

/** It is the text that the general way writes, byte for byte; nothing else is asked of it. */
function check(
  files: Readonly<Record<string, string>>,
  skipped: readonly { path: string; reason: string }[] = [],
): void {
  const { exercises } = historyOf(attemptsOfJournal(journalOfFiles(files)));
  const report = { exercises: exercises.map((exercise) => ({ ...exercise, journal: "here" })), skipped };
  expect([...historyJson(report)].join("")).toBe(jsonText(report));
}

test("of the sample's year", () => check(filesOfYear()));

test("of titles with quotes, backslashes, brackets and signs that turn the direction of writing", () => {
  const titles = ['\\ "week": [1] , {', "a\u202Eb\u0007", "日本 🎵"];
  const lines = titles.map((title) => `  "${title.replaceAll('"', "'")}", bars 1-8, at 60 clean`);
  check({ "a.practice": `2026-03-02\n${lines.join("\n")}\n2026-03-30\n${lines.join("\n")}\n` });
});

test("of nothing, and of what could not be read", () => {
  check({});
  check({ "a.practice": "2026-03-02\n  F major, slow\n" }, [{ path: "b\n.practice", reason: "It is no text." }]);
});
