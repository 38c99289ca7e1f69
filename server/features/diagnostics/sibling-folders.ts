import type { DayNumber } from "../../journal/calendar.ts";

/** Folders side by side that repeat each other's days, as those of several players in one journal do. */
export interface SiblingFolders {
  /** Their URIs, in order. */
  readonly folders: readonly string[];
  /** Where it is said: a day of a file that has it again. */
  readonly uri: string;
  readonly day: DayNumber;
}

/** So many days in common may be slips. */
const FEW_DAYS = 2;
/** The least share of the days of the folder with fewer: of two players hardly one misses four in five. */
const LEAST_SHARE = 0.2;

/**
 * Finds the folders that repeat each other's days.
 *
 * @param filesWith the files that have a day, in the order of their addresses
 */
export function siblingFolders(filesWith: ReadonlyMap<DayNumber, readonly string[]>): readonly SiblingFolders[] {
  const groups = groupsOf(filesWith);
  return groups.flatMap((folders) => {
    const again = firstAgain(folders, filesWith);
    return again ? [{ folders, ...again }] : [];
  });
}

/** Which of the folders a file lies in. */
export function folderAmong(folders: readonly string[], uri: string): string | undefined {
  return folders.find((folder) => uri.startsWith(`${folder}/`));
}

/** Two files' folders just below where their paths part; undefined where one of the files lies right there. */
function partingFolders(a: string, b: string): readonly [string, string] | undefined {
  let at = 0;
  while (a[at] === b[at]) at++;
  const start = a.lastIndexOf("/", at - 1) + 1;
  const [endA, endB] = [a.indexOf("/", start), b.indexOf("/", start)];
  return endA < 0 || endB < 0 ? undefined : [a.slice(0, endA), b.slice(0, endB)];
}

function groupsOf(filesWith: ReadonlyMap<DayNumber, readonly string[]>): readonly (readonly string[])[] {
  const common = new Map<string, { pair: readonly [string, string]; days: number }>();
  for (const [first, ...others] of filesWith.values()) {
    for (const other of others) {
      const pair = partingFolders(first!, other);
      if (!pair) continue;
      const known = common.get(pair.join("\n")) ?? { pair, days: 0 };
      common.set(pair.join("\n"), { pair, days: known.days + 1 });
    }
  }
  let groups: string[][] = [];
  for (const { pair, days } of common.values()) {
    const fewest = Math.min(...pair.map((folder) => daysBelow(folder, filesWith)));
    if (days <= FEW_DAYS || days < fewest * LEAST_SHARE) continue;
    const joined = groups.filter((group) => pair.some((folder) => group.includes(folder)));
    groups = [...groups.filter((group) => !joined.includes(group)), [...new Set([...joined.flat(), ...pair])].sort()];
  }
  return groups;
}

function daysBelow(folder: string, filesWith: ReadonlyMap<DayNumber, readonly string[]>): number {
  let days = 0;
  for (const files of filesWith.values()) if (files.some((uri) => uri.startsWith(`${folder}/`))) days++;
  return days;
}

/** The first file, and its earliest day, that a file of another of the folders has before it. */
function firstAgain(
  folders: readonly string[],
  filesWith: ReadonlyMap<DayNumber, readonly string[]>,
): { readonly uri: string; readonly day: DayNumber } | undefined {
  let found: { readonly uri: string; readonly day: DayNumber } | undefined;
  for (const [day, files] of filesWith) {
    const within = files.filter((uri) => folderAmong(folders, uri) !== undefined);
    const again = within.find((uri) => folderAmong(folders, uri) !== folderAmong(folders, within[0]!));
    if (again === undefined) continue;
    if (!found || again < found.uri || (again === found.uri && day < found.day)) found = { uri: again, day };
  }
  return found;
}
