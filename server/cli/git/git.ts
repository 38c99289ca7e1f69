import { spawnSync } from "node:child_process";

export type GitAnswer =
  | { readonly ok: true; readonly bytes: Buffer; readonly text: string }
  | { readonly ok: false; readonly reason: string };

/** No answer is longer: all journals of a repository are some megabytes. */
const MOST_BYTES = 1 << 30;

/**
 * Asks git. Its environment stays as it is, since within a hook that says which index is to be committed, but for how
 * paths are read.
 */
export function git(cwd: string, argv: readonly string[], input = ""): GitAnswer {
  const env = { ...process.env, GIT_LITERAL_PATHSPECS: "0", GIT_OPTIONAL_LOCKS: "0", LC_ALL: "C" };
  const { error, status, stdout, stderr } = spawnSync("git", [...argv], { cwd, env, input, maxBuffer: MOST_BYTES });
  if ((error as NodeJS.ErrnoException | undefined)?.code === "ENOENT")
    return { ok: false, reason: "git was not found on the path." };
  if (error) return { ok: false, reason: `git ${argv[0]} did not end well: ${error.message}.` };
  if (status !== 0) return { ok: false, reason: `git ${argv[0]} says: ${stderr.toString("utf8").trim()}` };
  return { ok: true, bytes: stdout, text: stdout.toString("utf8") };
}

/** One line of `git rev-parse`, a path or an id; undefined where it has no answer. */
export function revParse(cwd: string, ...argv: readonly string[]): string | undefined {
  const answer = git(cwd, ["rev-parse", ...argv]);
  return answer.ok ? answer.text.replace(/\n$/, "") : undefined;
}

/** What git says between NUL characters (`-z`). */
export function fieldsOf(text: string): string[] {
  return text.split("\0").filter((field) => field !== "");
}
