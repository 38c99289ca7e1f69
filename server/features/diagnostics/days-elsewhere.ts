import { fileTexts } from "../../checks/file/file-texts.ts";
import { type DaysElsewhere, NOTHING_ELSEWHERE, strayDays } from "../../checks/file/journal-order.ts";
import { listTexts } from "../../checks/list-texts.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { dayOfBlock } from "../../journal/day-of-block.ts";
import { inOrderOfAddress, type Journal } from "../../journal/journal.ts";
import { sameItems } from "../../journal/memo.ts";
import { changedBlocks, type Document } from "../../syntax/document/document.ts";
import { folderAmong, type SiblingFolders, siblingFolders } from "./sibling-folders.ts";

/** Fewer files show no order among them. */
const FILES_IN_ORDER = 4;

/** What the other files say of a file's days. The same object while none of their dates that bears on it changes. */
export function daysElsewhere(journal: Journal, uri: string): DaysElsewhere {
  if (journal.files.size < 2) return NOTHING_ELSEWHERE;
  const now = datesOfJournal(journal).elsewhere(uri);
  const before = journal.memo.latest<DaysElsewhere>("days elsewhere", uri);
  const kinds = ["earlier", "stray", "siblings"] as const;
  if (before && kinds.every((kind) => sameNames(before[kind], now[kind]))) return before;
  const elsewhere = kinds.some((kind) => now[kind].size > 0) ? now : NOTHING_ELSEWHERE;
  journal.memo.setLatest("days elsewhere", uri, elsewhere);
  return elsewhere;
}

function sameNames(a: ReadonlyMap<DayNumber, string>, b: ReadonlyMap<DayNumber, string>): boolean {
  if (a.size !== b.size) return false;
  for (const [day, name] of a) if (b.get(day) !== name) return false;
  return true;
}

/** The dates of all files, brought up to the state of the journal that is asked for. */
function datesOfJournal(journal: Journal): DatesOfJournal {
  const latest = journal.memo.latest<DatesOfJournal>("dates of journal", "") ?? new DatesOfJournal();
  latest.bringUpTo(journal);
  journal.memo.setLatest("dates of journal", "", latest);
  return latest;
}

/** The dates of a file. */
interface Dates {
  readonly document: Document;
  /** By block; undefined for the head, and where there is no such date. */
  readonly blocks: readonly (DayNumber | undefined)[];
  /** Each once, in order. */
  readonly days: readonly DayNumber[];
}

/** Which dates stand in which files. It goes along with the journal: a state differs from the last one by few files. */
class DatesOfJournal {
  private files: ReadonlyMap<string, Document> = new Map();
  private readonly dates = new Map<string, Dates>();
  /** The files that have a day, in their order. */
  private readonly filesWith = new Map<DayNumber, string[]>();
  private strays: ReadonlyMap<string, ReadonlyMap<DayNumber, string>> | undefined;
  private siblings: readonly SiblingFolders[] | undefined;
  private addresses: readonly string[] = [];
  private root = "";

  bringUpTo({ root, files, addresses }: Journal): void {
    this.root = root;
    if (files === this.files) return;
    for (const uri of this.dates.keys()) if (!files.has(uri)) this.set(uri, undefined);
    for (const [uri, document] of files) {
      const before = this.dates.get(uri);
      if (before?.document !== document) this.set(uri, datesOf(document, before));
    }
    if (!sameItems(addresses, this.addresses)) this.strays = undefined;
    this.files = files;
    this.addresses = addresses;
  }

  elsewhere(uri: string): DaysElsewhere {
    const earlier = new Map<DayNumber, string>();
    for (const day of this.dates.get(uri)?.days ?? []) {
      const first = this.filesWith.get(day)!.find((file) => file === uri || !this.areSiblings(file, uri))!;
      if (first !== uri) earlier.set(day, fileTexts.inFile(this.pathOf(first), this.lineOf(first, day) + 1));
    }
    return { earlier, stray: this.straysIn().get(uri) ?? NOTHING_ELSEWHERE.stray, siblings: this.siblingsAt(uri) };
  }

  private siblingsIn(): readonly SiblingFolders[] {
    this.siblings ??= siblingFolders(this.filesWith);
    return this.siblings;
  }

  private areSiblings(a: string, b: string): boolean {
    return this.siblingsIn().some(({ folders }) => {
      const [one, other] = [folderAmong(folders, a), folderAmong(folders, b)];
      return one !== undefined && other !== undefined && one !== other;
    });
  }

  /** The folders that are spoken of in a file, by the day where they are. */
  private siblingsAt(uri: string): ReadonlyMap<DayNumber, string> {
    const here = this.siblingsIn().filter((each) => each.uri === uri);
    return new Map(here.map(({ day, folders }) => [day, listed(folders.map((folder) => this.pathOf(folder)))]));
  }

  /** As a player sees it, from the journal's folder. */
  private pathOf(uri: string): string {
    const below = uri.startsWith(`${this.root}/`) ? uri.slice(this.root.length + 1) : nameOf(uri);
    return below.split("/").map(decoded).join("/");
  }

  /** The line of a file, from 0, on which it has a day first. */
  private lineOf(uri: string, day: DayNumber): number {
    const { blocks, document } = this.dates.get(uri)!;
    return document.starts[blocks.indexOf(day)]!;
  }

  private set(uri: string, dates: Dates | undefined): void {
    const before = this.dates.get(uri);
    if (dates) this.dates.set(uri, dates);
    else this.dates.delete(uri);
    if (before && dates && before.days === dates.days) return;
    this.strays = undefined;
    this.siblings = undefined;
    for (const day of before?.days ?? []) this.takeOut(uri, day);
    for (const day of dates?.days ?? []) this.putIn(uri, day);
  }

  private putIn(uri: string, day: DayNumber): void {
    const files = this.filesWith.get(day) ?? [];
    files.splice(placeIn(files, uri), 0, uri);
    this.filesWith.set(day, files);
  }

  private takeOut(uri: string, day: DayNumber): void {
    const files = this.filesWith.get(day)!;
    files.splice(placeIn(files, uri), 1);
    if (files.length === 0) this.filesWith.delete(day);
  }

  /** By file: its days at odds with the order of the files, each with the name of the file beside. */
  private straysIn(): ReadonlyMap<string, ReadonlyMap<DayNumber, string>> {
    // Players side by side follow no order.
    const hasOrder = this.addresses.length >= FILES_IN_ORDER && this.siblingsIn().length === 0;
    this.strays ??= hasOrder ? this.lookForStrays() : new Map();
    return this.strays;
  }

  private lookForStrays(): ReadonlyMap<string, ReadonlyMap<DayNumber, string>> {
    const dated = this.addresses.flatMap((uri) => {
      const { days } = this.dates.get(uri)!;
      return days.length > 0 ? [{ uri, days }] : [];
    });
    const found = strayDays(dated.map(({ days }) => days));
    return new Map(
      [...found].map(([file, days]) => [
        dated[file]!.uri,
        new Map([...days].map(([day, beside]) => [day, nameOf(dated[beside]!.uri)])),
      ]),
    );
  }
}

/** Where a file stands among others in their order, or is to stand. */
function placeIn(files: readonly string[], uri: string): number {
  let low = 0;
  let high = files.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (inOrderOfAddress(files[middle]!, uri) < 0) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Of what stood there before only the blocks that differ are looked at; the same days while none has another date. */
function datesOf(document: Document, before: Dates | undefined): Dates {
  if (!before) {
    const blocks = document.blocks.map(dayOfBlock);
    return { document, blocks, days: daysIn(blocks) };
  }
  const { from, before: end, after } = changedBlocks(before.document, document);
  const changed = document.blocks.slice(from, after).map(dayOfBlock);
  if (sameItems(changed, before.blocks.slice(from, end))) return { ...before, document };
  const blocks = [...before.blocks.slice(0, from), ...changed, ...before.blocks.slice(end)];
  return { document, blocks, days: daysIn(blocks) };
}

function daysIn(blocks: readonly (DayNumber | undefined)[]): readonly DayNumber[] {
  return [...new Set(blocks.filter((day) => day !== undefined))].sort((a, b) => a - b);
}

/** A file's name as a player sees it. */
function nameOf(uri: string): string {
  return decoded(uri.slice(uri.lastIndexOf("/") + 1));
}

/** The most folders that are named one by one. */
const FEW_FOLDERS = 4;

/** `anna, ben and cleo`. */
function listed(names: readonly string[]): string {
  if (names.length > FEW_FOLDERS)
    return listTexts.more(names.slice(0, FEW_FOLDERS - 1).join(", "), names.length - FEW_FOLDERS + 1);
  return listTexts.and(names);
}

function decoded(name: string): string {
  try {
    return decodeURIComponent(name);
  } catch {
    return name;
  }
}
