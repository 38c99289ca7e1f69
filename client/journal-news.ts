import type { Disposable } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import type { ChangedMethod, ChangedParams } from "../shared/preview.ts";

type Listener = (news: ChangedParams) => unknown;

/**
 * What the server says of journals that changed, for all who listen: of each notification a client keeps the last
 * listener alone.
 */
export class JournalNews implements Disposable {
  readonly #listeners = new Set<Listener>();
  readonly #subscription: Disposable;

  constructor(client: Pick<BaseLanguageClient, "onNotification">) {
    const changed: ChangedMethod = "daystave/changed";
    this.#subscription = client.onNotification(changed, (news: ChangedParams) => {
      for (const listener of this.#listeners) listener(news);
    });
  }

  listen(listener: Listener): Disposable {
    this.#listeners.add(listener);
    return { dispose: () => this.#listeners.delete(listener) };
  }

  dispose(): void {
    this.#subscription.dispose();
  }
}
