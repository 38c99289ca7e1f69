import type { Connection, ShowMessageParams } from "vscode-languageserver";

/** `MessageType` of the protocol. */
const TYPES = { warning: 2, info: 3 } as const;

/** Says something to the player, and waits for no answer. */
export function showMessage(connection: Connection, type: keyof typeof TYPES, message: string): void {
  const params: ShowMessageParams = { type: TYPES[type], message };
  connection.sendNotification("window/showMessage", params);
}
