import { DidChangeConfigurationNotification, type DidChangeConfigurationParams } from "vscode-languageserver";
import { readSettings } from "../host/settings.ts";
import type { Session } from "./session.ts";

const SECTION = "daystave";

/** Fetches the settings, and asks to be told when they change. */
export async function startConfiguration(session: Session): Promise<void> {
  const { client, connection } = session;
  if (client.registersConfiguration)
    await connection.client.register(DidChangeConfigurationNotification.type, { section: SECTION });
  if (client.hasConfiguration) await fetchSettings(session);
}

/** From clients that answer questions the settings are fetched; from others they come along. */
export async function configurationChanged(
  session: Session,
  { settings }: DidChangeConfigurationParams,
): Promise<void> {
  if (session.client.hasConfiguration) await fetchSettings(session);
  else session.applySettings(readSettings((settings as Record<string, unknown> | null)?.[SECTION]));
}

async function fetchSettings(session: Session): Promise<void> {
  session.applySettings(readSettings(await session.connection.workspace.getConfiguration(SECTION)));
}
