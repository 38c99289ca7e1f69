import type { Connection, Disposable, InitializeParams } from "vscode-languageserver";
import type { Palette } from "../../shared/protocol.ts";
import type { FileReader } from "../host/file-reader.ts";
import {
  DEFAULT_SETTINGS,
  type EffectiveSettings,
  readOptions,
  type SettingsByFolder,
  settingsIn,
} from "../host/settings.ts";
import { type Clock, Today } from "../host/today.ts";
import { canonicalFolder, canonicalUri, isDecodable } from "../host/uri.ts";
import { Workspace, type WorkspaceChange } from "../host/workspace.ts";
import type { DayNumber } from "../journal/calendar.ts";
import type { Journal } from "../journal/journal.ts";
import type { StaffDrawer } from "../notation/staff-look.ts";
import type { Client } from "./client.ts";
import { clientReader, noReader, readerByScheme } from "./client-files.ts";
import { Reports } from "./reports.ts";
import { serverTexts } from "./server-texts.ts";
import { showMessage } from "./show-message.ts";

/** How files are reached here, and the time. */
export interface Surroundings {
  /** Reads what the server reaches without the client; undefined where that is nothing, as in a browser. */
  readonly reader: FileReader | undefined;
  readonly clock: Clock;
  /** What draws staves, a bundle of its own; undefined where there is none. `bundles` is where the client has them. */
  readonly notation: (bundles: string | undefined) => Promise<StaffDrawer | undefined>;
}

/** Calls the listener at every change, until it is disposed of. */
export type ChangeEvent = (listener: (change: WorkspaceChange) => void) => Disposable;

export interface Told {
  readonly resultId: string;
  readonly version: number | undefined;
}

/** What the lenses and hints of a document were made of, when they were last asked for. */
export interface Shown {
  readonly version: number | undefined;
  readonly of: readonly unknown[];
}

/** A file within the journal that it belongs to, as it stands at this moment. */
export interface Place {
  readonly session: Session;
  readonly journal: Journal;
  /** Canonical. */
  readonly uri: string;
}

/** Opens a session for what the client said in `initialize`. */
export function openSession(
  connection: Connection,
  client: Client,
  { reader: ownReader, clock, notation }: Surroundings,
  { initializationOptions, workspaceFolders, rootUri }: InitializeParams,
): Session {
  const options = readOptions(initializationOptions);
  const reader = readerByScheme(ownReader, client.readsFiles ? clientReader(connection) : noReader);
  const session = new Session(connection, client, reader, clock, options.timeZone ?? "");
  session.fixToday(options.today);
  session.warnOfTimeZones();
  session.palette = options.palette;
  session.drawsStaves(() => notation(options.bundles));
  session.setFolders(workspaceFolders?.map(({ uri }) => uri) ?? (rootUri ? [rootUri] : []));
  return session;
}

/** Everything one connection needs, from `initialize` to `exit`. */
export class Session {
  readonly workspace: Workspace;
  readonly reports = new Reports();
  /** What the client was last told about each open document, by canonical URI. */
  readonly told = new Map<string, Told>();
  /** What lenses and hints of each document were made of, likewise. */
  readonly shown = { lenses: new Map<string, Shown>(), hints: new Map<string, Shown>() };
  /** The colours of pictures; a client that names none gets none. */
  palette: Palette | undefined;
  /** The client says when files change on disk. */
  isToldOfFiles: boolean;
  /** Names the latest question for settings: an answer to an earlier one is of no use any more. */
  settingsAsked: symbol | undefined;
  #loadDrawer: () => Promise<StaffDrawer | undefined> = async () => undefined;
  #drawer: Promise<StaffDrawer | undefined> | undefined;
  readonly #listeners = new Set<(change: WorkspaceChange) => void>();
  readonly #today: Today;
  #settings: SettingsByFolder = { unscoped: DEFAULT_SETTINGS, folders: new Map() };
  /** The time zones that were looked up already. */
  #zones: ReadonlySet<string> = new Set();

  constructor(
    readonly connection: Connection,
    readonly client: Client,
    reader: FileReader,
    clock: Clock,
    /** The zone that serves where the settings name none; empty for the machine's own. */
    readonly usualTimeZone: string,
  ) {
    this.isToldOfFiles = client.watchesFiles;
    // Not at once: whoever looked is in the middle of an answer.
    this.#today = new Today(clock, (zone) => void setTimeout(() => this.#dayTurned(zone), 0));
    this.workspace = new Workspace(reader, {
      changed: (change) => {
        for (const listener of [...this.#listeners]) listener(change);
      },
      skipped: (uri, reason) => connection.console.warn(`Left out ${uri}: ${reason}`),
      read: () => {
        for (const { root } of this.workspace.journals) this.learned(root);
      },
    });
  }

  /** Fires after any change to a journal, and when a setting may have changed what is said about all of them. */
  readonly onChange: ChangeEvent = (listener) => {
    this.#listeners.add(listener);
    return { dispose: () => void this.#listeners.delete(listener) };
  };

  /** Says how to come by what draws staves. */
  drawsStaves(load: () => Promise<StaffDrawer | undefined>): void {
    this.#loadDrawer = load;
  }

  /** What draws staves, loaded the first time that it is asked for; without it answers go without staves. */
  staffDrawer(): Promise<StaffDrawer | undefined> {
    this.#drawer ??= this.#loadDrawer().catch((error: unknown) => {
      this.connection.console.warn(`Staves cannot be drawn: ${error instanceof Error ? error.message : String(error)}`);
      return undefined;
    });
    return this.#drawer;
  }

  /** Replaces the workspace folders, and says which of them are no addresses. */
  setFolders(uris: readonly string[]): void {
    const isNew = (uri: string) => !this.workspace.folders.includes(canonicalFolder(uri));
    for (const uri of uris) {
      if (!uri.startsWith("file:") || isDecodable(uri) || !isNew(uri)) continue;
      this.connection.console.warn(`Left out ${uri}: its percent signs cannot be decoded.`);
    }
    this.workspace.setFolders(uris);
  }

  /** Says that more is known of a journal than before, though nothing in it changed. */
  learned(root: string): void {
    for (const listener of [...this.#listeners]) listener({ journals: new Set([root]), cause: "edit" });
  }

  /**
   * Today, for a file or a journal's root, both canonical: the workspace folders may have time zones of their own. When
   * a look finds another day than the one before, whatever was said in that zone may no longer hold.
   */
  dayOf(key: string): DayNumber {
    return this.#today.dayIn(this.#zoneOf(key));
  }

  /** The settings for a file or a journal's root, both canonical: those of the workspace folder that it lies in. */
  settingsOf(key: string): EffectiveSettings {
    return settingsIn(this.#settings, this.workspace.folderOf(key));
  }

  /** @param date ISO 8601; undefined leaves it to the clock */
  fixToday(date: string | undefined): void {
    this.#today.fix(date);
  }

  applySettings(settings: SettingsByFolder): void {
    const before = this.#settings;
    this.#settings = settings;
    this.warnOfTimeZones();
    this.workspace.surroundingsChanged((root) => {
      const folder = this.workspace.folderOf(root);
      const [was, is] = [settingsIn(before, folder), settingsIn(settings, folder)];
      const bearing = ({ timeZone, plan, lens, hints }: EffectiveSettings) =>
        JSON.stringify([timeZone, plan, lens, hints]);
      return bearing(was) !== bearing(is);
    });
  }

  /** Says so where the settings have come to name a time zone that does not exist. */
  warnOfTimeZones(): void {
    const { unscoped, folders } = this.#settings;
    const before = this.#zones;
    this.#zones = new Set([unscoped, ...folders.values()].map((each) => this.#zoneBy(each)));
    for (const name of this.#zones) {
      if (before.has(name) || this.#today.knows(name)) continue;
      const message = serverTexts.unknownTimeZone(name.slice(0, 40));
      showMessage(this.connection, "warning", message);
    }
  }

  #zoneOf(key: string): string {
    return this.#zoneBy(this.settingsOf(key));
  }

  #zoneBy({ timeZone }: EffectiveSettings): string {
    return timeZone || this.usualTimeZone;
  }

  #dayTurned(zone: string): void {
    this.workspace.surroundingsChanged((root) => this.#zoneOf(root) === zone);
  }

  /** Undefined for a file that is neither open nor in a workspace folder. */
  async placeOf(uri: string): Promise<Place | undefined> {
    const key = canonicalUri(uri);
    await this.workspace.ready(key);
    const journal = this.workspace.journalOf(key);
    return journal && { session: this, journal, uri: key };
  }

  /** For a file that is gone, its place in what is left of its journal; undefined where nothing is. */
  placeOfMissing(uri: string): Place | undefined {
    const key = canonicalUri(uri);
    const journal = this.workspace.journalAround(key);
    return journal && { session: this, journal, uri: key };
  }
}
