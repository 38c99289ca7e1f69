import { readdirSync, readFileSync } from "node:fs";

/**
 * The process below another one whose command line holds these words; undefined where there is none. Linux alone, as is the
 * Node host that it is asked about.
 */
export function processBelow(ancestor: number, words: string): number | undefined {
  const parents = new Map(runningProcesses().map((pid) => [pid, parentOf(pid)]));
  const isBelow = (pid: number): boolean => {
    const parent = parents.get(pid);
    return parent === ancestor || (parent !== undefined && isBelow(parent));
  };
  return [...parents.keys()].find((pid) => isBelow(pid) && commandLineOf(pid).includes(words));
}

function runningProcesses(): number[] {
  return readdirSync("/proc")
    .filter((name) => /^\d+$/.test(name))
    .map(Number);
}

/** The second field behind the name, which may itself hold spaces and brackets: proc(5). */
function parentOf(pid: number): number | undefined {
  const stat = read(`/proc/${pid}/stat`);
  const parent = /^\S+ (\d+)/.exec(stat.slice(stat.lastIndexOf(")") + 2))?.[1];
  return parent === undefined ? undefined : Number(parent);
}

function commandLineOf(pid: number): string {
  return read(`/proc/${pid}/cmdline`).replaceAll("\0", " ");
}

/** Empty for a process that has ended meanwhile. */
function read(file: string): string {
  try {
    return readFileSync(file, "utf8");
  } catch {
    return "";
  }
}
