import {
  type ConfigurationItem,
  DidChangeConfigurationNotification,
  type DidChangeConfigurationParams,
} from "vscode-languageserver";
import { readSettings, type SettingsByFolder } from "../host/settings.ts";
import { register } from "./register.ts";
import type { Session } from "./session.ts";

const SECTION = "daystave";

/** Fetches the settings, and asks to be told when they change. */
export async function startConfiguration(session: Session): Promise<void> {
  const { client, connection } = session;
  const listening = client.registersConfiguration
    ? register(connection, DidChangeConfigurationNotification.method, { section: SECTION })
    : undefined;
  await Promise.all([listening, fetchSettings(session)]);
}

/**
 * From clients that answer questions the settings are fetched; from others they come along, the same for all folders.
 */
export async function configurationChanged(
  session: Session,
  { settings }: DidChangeConfigurationParams,
): Promise<void> {
  if (session.client.hasConfiguration) return fetchSettings(session);
  const unscoped = readSettings((settings as Record<string, unknown> | null)?.[SECTION]);
  session.applySettings({ unscoped, folders: new Map() });
}

/**
 * Asks for the settings of each workspace folder, and for those of whatever lies outside, where the client answers such
 * questions. Until then those that are known hold: no other answer waits for settings.
 */
export async function fetchSettings(session: Session): Promise<void> {
  if (!session.client.hasConfiguration) return;
  const question = Symbol("settings");
  session.settingsAsked = question;
  const settings = await askByFolder(session).catch(() => undefined); // a client may refuse
  if (settings && session.settingsAsked === question) session.applySettings(settings); // else a later one is under way
}

async function askByFolder({ connection, workspace }: Session): Promise<SettingsByFolder> {
  const ask = (items: ConfigurationItem[]): Promise<unknown[]> => connection.workspace.getConfiguration(items);
  const everywhere = { section: SECTION };
  const { folders } = workspace;
  const byFolder = folders.map((folder) => ({ ...everywhere, scopeUri: workspace.spellingOf(folder) }));
  // Some refuse scopes.
  const [unscoped, ...scoped] = await ask([everywhere, ...byFolder]).catch(() => ask([everywhere]));
  return {
    unscoped: readSettings(unscoped),
    // Null: this client has nothing to say by folder.
    folders: new Map(folders.map((folder, i) => [folder, readSettings(scoped[i] ?? unscoped)])),
  };
}
