import { type Connection, RegistrationRequest } from "vscode-languageserver";

/** Asks the client for messages that it sends only when asked. False where it refuses, which it may. */
export async function register(connection: Connection, method: string, registerOptions: object): Promise<boolean> {
  try {
    await connection.sendRequest(RegistrationRequest.type, {
      registrations: [{ id: method, method, registerOptions }],
    });
    return true;
  } catch {
    return false;
  }
}
