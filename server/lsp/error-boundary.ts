import { type Connection, ErrorCodes, LSPErrorCodes, ResponseError } from "vscode-languageserver";

/** Where whatever goes wrong inside ends: it is logged with the message's name, and the server goes on. */
export class ErrorBoundary {
  constructor(private readonly connection: Connection) {}

  /** The client is told that there is no answer. A `ResponseError` is an answer that the handler meant. */
  request<Arguments extends unknown[], Result>(
    name: string,
    handler: (...args: Arguments) => Result | Promise<Result>,
  ): (...args: Arguments) => Promise<Result> {
    return async (...args) => {
      try {
        return await handler(...args);
      } catch (error) {
        if (error instanceof ResponseError) throw error;
        this.#log(name, error);
        throw new ResponseError(ErrorCodes.InternalError, `Daystave could not answer ${name}. Its log says why.`);
      }
    };
  }

  notification<Arguments extends unknown[]>(
    name: string,
    handler: (...args: Arguments) => void | Promise<void>,
  ): (...args: Arguments) => Promise<void> {
    return async (...args) => {
      try {
        await handler(...args);
      } catch (error) {
        this.#log(name, error);
      }
    };
  }

  #log(name: string, error: unknown): void {
    this.connection.console.error(`${name} failed: ${error instanceof Error ? error.stack : String(error)}`);
  }
}

/** Ends a request that the client has cancelled. */
export function cancelled(): never {
  throw new ResponseError(LSPErrorCodes.RequestCancelled, "Cancelled.");
}
