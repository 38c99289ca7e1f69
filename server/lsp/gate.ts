import { ErrorCodes, Message, type MessageStrategy } from "vscode-languageserver";
import { wrongParameters } from "./parameters.ts";

/** The method under which refused messages go on, so that they are answered like any other. */
export const REFUSED = "daystave/refused";

/** Why a message is refused. */
export interface Refusal {
  /** Of `ErrorCodes`. */
  readonly code: number;
  readonly message: string;
}

/**
 * Lets through what the protocol allows at the time (Language Server Protocol 3.17, “Server lifecycle”) and the server
 * can read. Of what it refuses, requests are answered with the code that the protocol has for that; notifications are
 * dropped, with a line in the log where their parameters are at fault.
 */
export class Gate implements MessageStrategy {
  #state: "before initialize" | "open" | "after shutdown" = "before initialize";

  readonly handleMessage: MessageStrategy["handleMessage"] = (message, next) => {
    if (Message.isRequest(message)) {
      const params = this.#refuse(message.method, message.params);
      return next(params ? ({ ...message, method: REFUSED, params } as Message) : message);
    }
    if (!Message.isNotification(message) || isAlwaysHeard(message.method)) return next(message);
    if (this.#state !== "open") return undefined;
    const wrong = wrongParameters(message.method, message.params);
    return next(wrong === undefined ? message : ({ ...message, method: REFUSED, params: invalid(wrong) } as Message));
  };

  #refuse(method: string, params: unknown): Refusal | undefined {
    if (method === REFUSED) return { code: ErrorCodes.MethodNotFound, message: `Unhandled method ${method}` };
    const begins = method === "initialize";
    if (this.#state === "after shutdown")
      return { code: ErrorCodes.InvalidRequest, message: "After shutdown only exit can follow." };
    if (begins && this.#state === "open")
      return { code: ErrorCodes.InvalidRequest, message: "initialize can be sent only once." };
    if (!begins && this.#state !== "open")
      return { code: ErrorCodes.ServerNotInitialized, message: "The first message must be initialize." };
    const wrong = wrongParameters(method, params);
    if (wrong !== undefined) return invalid(wrong);
    if (begins) this.#state = "open";
    if (method === "shutdown") this.#state = "after shutdown";
    return undefined;
  }
}

function invalid(message: string): Refusal {
  return { code: ErrorCodes.InvalidParams, message };
}

/** `$/` is the protocol's own traffic, such as that a request is cancelled. */
function isAlwaysHeard(method: string): boolean {
  return method === "exit" || method.startsWith("$/");
}
