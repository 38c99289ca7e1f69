import { type SpawnSyncReturns, spawnSync } from "node:child_process";
import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Files, temporaryFolder } from "../../support/temporary-folder.ts";
import { bundleCommandLine } from "../bundle.ts";
import { removeBundle } from "./command-process.ts";

const RIGHT = "2026-03-02 Mon\n  D minor, slurred\n";
const WRONG = "2026-03-03 Tue\n  F# major: F# G# A# B C# D# F F#\n";
const REFUSED = "The commit was stopped.";

let bundle: string;
beforeAll(async () => {
  bundle = await bundleCommandLine();
  chmodSync(bundle, 0o755);
});
afterAll(() => removeBundle(bundle));

/** A repository in a folder, with `daystave` on the path. */
class Repository {
  readonly top: string;
  readonly #bin = temporaryFolder();

  constructor(files: Files = {}) {
    this.top = temporaryFolder(files);
    symlinkSync(bundle, join(this.#bin, "daystave"));
    this.git("init", "--quiet");
  }

  run(program: string, argv: readonly string[], cwd = this.top): SpawnSyncReturns<string> {
    const person = ["AUTHOR", "COMMITTER"].flatMap((role) => [
      [`GIT_${role}_NAME`, "Noor"],
      [`GIT_${role}_EMAIL`, "noor@example.org"],
    ]);
    const env = {
      PATH: `${this.#bin}:${dirname(process.execPath)}:${process.env["PATH"]}`,
      HOME: this.#bin,
      GIT_CONFIG_NOSYSTEM: "1",
      ...Object.fromEntries(person),
    };
    return spawnSync(program, [...argv], { cwd, env, encoding: "utf8" });
  }

  git(...argv: readonly string[]): SpawnSyncReturns<string> {
    return this.run("git", argv);
  }

  daystave(...argv: readonly string[]): SpawnSyncReturns<string> {
    return this.run("daystave", argv);
  }

  write(name: string, text: string | Uint8Array): void {
    mkdirSync(dirname(join(this.top, name)), { recursive: true });
    writeFileSync(join(this.top, name), text);
  }

  /** Commits what is staged. Returns the status, and all that was said. */
  commit(...argv: readonly string[]): readonly [status: number | null, said: string] {
    const { status, stdout, stderr } = this.git("commit", "--quiet", "--message", "Practice", ...argv);
    return [status, stdout + stderr];
  }
}

/** A repository with the hook, and these files committed before it came. */
function hooked(files: Files): Repository {
  const repository = new Repository(files);
  repository.git("add", "--all");
  repository.commit();
  expect(repository.daystave("hook", "--install").status).toBe(0);
  return repository;
}

describe("the hook", () => {
  test("lets a sound journal through without a word, also as the first commit", () => {
    const repository = new Repository({ "a.practice": RIGHT });
    repository.daystave("hook", "--install");
    repository.git("add", "--all");
    expect(repository.commit()).toEqual([0, ""]);
  });

  test("lets advice through, and a commit without a journal", () => {
    const repository = hooked({ "a.practice": WRONG });
    repository.write("b.practice", "2026-03-05\n  Sound freer today.\n");
    repository.write("notes.txt", "H major\n");
    repository.git("add", "b.practice");
    expect(repository.commit()).toEqual([0, ""]);
    repository.git("add", "notes.txt");
    expect(repository.commit()).toEqual([0, ""]);
  });

  test("stops a wrong note, and says where", () => {
    const repository = hooked({});
    repository.write("spring term/a 'week'.practice", WRONG);
    repository.git("add", "--all");
    const [status, said] = repository.commit();
    expect(status).toBe(1);
    expect(said).toContain("spring term/a 'week'.practice:2:30 warning scale-spelling");
    expect(said).toContain(REFUSED);
  });

  test("checks what is staged, not what stands in the folder", () => {
    const repository = hooked({ "a.practice": RIGHT });
    repository.write("a.practice", `${RIGHT}${WRONG}`);
    repository.git("add", "--all");
    repository.write("a.practice", RIGHT);
    expect(repository.commit()[0]).toBe(1);
    repository.git("add", "--all");
    repository.write("b.practice", RIGHT.replaceAll("02 Mon", "04 Wed"));
    repository.git("add", "--all");
    repository.write("b.practice", WRONG);
    expect(repository.commit()).toEqual([0, ""]);
  });

  test("checks what a commit of single files takes, not the rest of the index", () => {
    const repository = hooked({ "a.practice": RIGHT, "b.practice": "" });
    repository.write("a.practice", `${RIGHT}\n2026-03-04 Wed\n  D minor\n`);
    repository.write("b.practice", WRONG);
    repository.git("add", "--all");
    expect(repository.commit("a.practice")).toEqual([0, ""]);
    expect(repository.commit()[0]).toBe(1);
  });

  test("knows the names that the staged declarations declare", () => {
    const repository = hooked({});
    repository.write("journal.practice", 'pattern "zigzag": 1 3 2 4\n');
    repository.write("x/a.practice", '2026-03-02\n  D minor, "zigzag"\n');
    repository.git("add", "--all");
    repository.write("journal.practice", "");
    expect(repository.commit()).toEqual([0, ""]);
  });

  test("a change of declarations checks all files of the journal", () => {
    const repository = hooked({
      "journal.practice": "names german\n",
      "a.practice": "2026-03-02 Mon\n  H major\n",
      "b.practice": WRONG,
    });
    repository.write("journal.practice", "names english\n");
    repository.git("add", "--all");
    const [status, said] = repository.commit();
    expect(status).toBe(1);
    expect(said).toContain("a.practice:2:3 information unknown-key");
    expect(said).toContain("b.practice:2:30 warning scale-spelling");
  });

  test("so does one that is taken away", () => {
    const repository = hooked({
      "journal.practice": 'scale "mine": 1 b2 3 4 5 b6 7\n',
      "a.practice": '2026-03-02\n  "mine" on D: D Eb F# G A Bb C# D\n',
      "b.practice": WRONG,
    });
    repository.git("rm", "--quiet", "journal.practice");
    expect(repository.commit()).toEqual([1, expect.stringContaining("b.practice:2:30")]);
  });

  test("an old fault in a file that is not staged stops nothing, nor does an aim that is added", () => {
    const repository = hooked({ "a.practice": WRONG, "b.practice": RIGHT });
    repository.write("b.practice", `aim D minor, at 80 by 2027-01-01\n${RIGHT}\n2026-03-05 Thu\n  D minor\n`);
    repository.git("add", "--all");
    expect(repository.commit()).toEqual([0, ""]);
  });

  test("a day that comes twice is found, whichever of the two files is staged", () => {
    for (const staged of ["a.practice", "c.practice"]) {
      const repository = hooked({ "b.practice": RIGHT });
      repository.write(staged, RIGHT);
      repository.git("add", "--all");
      expect(repository.commit()).toEqual([1, expect.stringContaining("duplicate-day")]);
    }
  });

  test("that it came twice before stops nothing, wherever it is now", () => {
    const repository = hooked({ "a.practice": RIGHT, "b.practice": RIGHT });
    repository.write("a.practice", `player Noor\n${RIGHT}`);
    repository.git("add", "--all");
    expect(repository.commit()).toEqual([0, ""]);
  });

  test("a rename is checked under its new name, and a file that goes is not", () => {
    const repository = hooked({ "a.practice": WRONG, "b.practice": WRONG.replaceAll("03 Tue", "04 Wed") });
    repository.git("mv", "a.practice", "new name.practice");
    expect(repository.commit()).toEqual([1, expect.stringContaining("new name.practice:2:30")]);
    repository.git("rm", "--quiet", "-f", "new name.practice");
    expect(repository.commit()).toEqual([0, ""]);
  });

  test("a file whose folder was renamed meanwhile is checked as it is staged", () => {
    const repository = hooked({ "term/a.practice": RIGHT });
    repository.write("term/b.practice", WRONG);
    repository.git("add", "--all");
    renameSync(join(repository.top, "term"), join(repository.top, "other"));
    expect(repository.commit()).toEqual([1, expect.stringContaining("term/b.practice:2:30")]);
  });

  test("a journal that cannot be read is refused by name", () => {
    const repository = hooked({ "a.practice": RIGHT });
    repository.write("b.practice", new Uint8Array([0xff, 0xfe, 0x32, 0]));
    repository.git("add", "--all");
    expect(repository.commit()).toEqual([1, expect.stringContaining("b.practice was left out. It is UTF-16 text.")]);
    expect(repository.daystave("check", "--staged").status).toBe(2);
  });

  test("names may hold whatever a disk takes", () => {
    const repository = hooked({});
    for (const name of [
      "-x.practice",
      "a\tb.practice",
      'ü "q".practice',
      "line\nend.practice",
      "$(touch oops).practice",
    ])
      repository.write(name, WRONG);
    repository.git("add", "--all");
    const [status, said] = repository.commit();
    expect(status).toBe(1);
    expect(said.match(/scale-spelling/g)).toHaveLength(5);
    expect(said).toContain("line\\u000Aend.practice:2:30");
    expect(existsSync(join(repository.top, "oops"))).toBe(false);
  });

  test("without daystave on the path a journal is not let through unchecked", () => {
    const repository = hooked({});
    repository.write("a.practice", RIGHT);
    repository.git("add", "--all");
    const PATH = "/usr/bin:/bin";
    const { status, stderr } = spawnSync(
      "git",
      ["-c", "user.name=N", "-c", "user.email=n@example.org", "commit", "-m", "x"],
      {
        cwd: repository.top,
        env: { PATH, HOME: repository.top },
        encoding: "utf8",
      },
    );
    expect([status, stderr]).toEqual([1, expect.stringContaining("daystave is not on the path, so")]);
  });

  test("nothing is left in the repository's own folder, and what a killed run left there goes", () => {
    const repository = hooked({ "a.practice": RIGHT });
    const left = join(repository.top, ".git", `.daystave-${2 ** 22 + 1}.new`);
    mkdirSync(left);
    writeFileSync(join(left, "a.practice"), "");
    repository.write("b.practice", WRONG);
    repository.git("add", "--all");
    repository.commit();
    expect(readdirSync(join(repository.top, ".git")).filter((name) => name.startsWith(".daystave"))).toEqual([]);
  });
});

describe("check --staged by hand", () => {
  test("from a folder below, as JSON with paths from the top", () => {
    const repository = hooked({});
    repository.write("term/a.practice", WRONG);
    repository.git("add", "--all");
    const { status, stdout } = repository.run(
      "daystave",
      ["check", "--staged", "--json"],
      join(repository.top, "term"),
    );
    expect(status).toBe(1);
    expect(JSON.parse(stdout).files.map(({ path }: { path: string }) => path)).toEqual(["term/a.practice"]);
  });

  test("outside a repository", () => {
    const { status, stderr } = spawnSync(process.execPath, [bundle, "check", "--staged"], {
      cwd: temporaryFolder(),
      encoding: "utf8",
    });
    expect([status, stderr]).toEqual([
      2,
      "daystave: “--staged” is for a folder under git, and git knows no working tree here.\n",
    ]);
  });
});

describe("daystave hook", () => {
  test("prints what --install installs, executable", () => {
    const repository = new Repository();
    const { status, stderr } = repository.daystave("hook", "--install");
    const path = join(repository.top, ".git/hooks/pre-commit");
    expect([status, stderr]).toEqual([0, `${path} is installed\n`]);
    expect(readFileSync(path, "utf8")).toBe(repository.daystave("hook").stdout);
    expect(statSync(path).mode & 0o111).toBe(0o111);
    expect(repository.daystave("hook", "--install").stderr).toBe(`${path} is there already\n`);
  });

  test("never in place of another hook, be it a link to nowhere", () => {
    const repository = new Repository();
    const path = join(repository.top, ".git/hooks/pre-commit");
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, "#!/bin/sh\nexit 0\n");
    expect(repository.daystave("hook", "--install")).toMatchObject({
      status: 2,
      stderr: `daystave: ${path} is another hook and was left alone. To have both, add this line to it: daystave check --staged || exit 1\n`,
    });
    expect(readFileSync(path, "utf8")).toBe("#!/bin/sh\nexit 0\n");
    rmSync(path);
    symlinkSync("nowhere", path);
    expect(repository.daystave("hook", "--install").status).toBe(2);
    expect(existsSync(path)).toBe(false);
  });

  test("goes where the repository keeps its hooks, but not into a folder that others share", () => {
    const repository = new Repository();
    repository.git("config", "core.hooksPath", "own hooks");
    expect(repository.daystave("hook", "--install").stderr).toBe(
      `${join(repository.top, "own hooks/pre-commit")} is installed\n`,
    );
    const shared = temporaryFolder();
    repository.git("config", "core.hooksPath", shared);
    expect(repository.daystave("hook", "--install")).toMatchObject({
      status: 2,
      stderr: expect.stringContaining("(core.hooksPath)"),
    });
    expect(readdirSync(shared)).toEqual([]);
  });

  test("in a further working tree of a repository", () => {
    const repository = hooked({ "a.practice": RIGHT });
    const other = join(temporaryFolder(), "other tree");
    expect(repository.git("worktree", "add", "--quiet", "-b", "other", other).stderr).toBe("");
    writeFileSync(join(other, "b.practice"), WRONG);
    repository.run("git", ["add", "--all"], other);
    const { status, stderr, stdout } = repository.run("git", ["commit", "--quiet", "-m", "x"], other);
    expect([status, stdout + stderr]).toEqual([1, expect.stringContaining("b.practice:2:30")]);
  });

  test("outside a repository", () => {
    const { status, stderr } = spawnSync(process.execPath, [bundle, "hook", "--install"], {
      cwd: temporaryFolder(),
      encoding: "utf8",
    });
    expect([status, stderr]).toEqual([2, expect.stringContaining("Run this in a git repository")]);
  });
});
