import { fstatSync, writeSync } from "node:fs";
import { isatty } from "node:tty";
import { reasonOf } from "../host/node/read-file.ts";
import type { Output } from "./io.ts";

const DESCRIPTORS = { stdout: 1, stderr: 2 } as const;

/**
 * Standard output or standard error. What cannot be written is found out by `end`; after a failure the rest is dropped.
 * That whoever reads has gone (`EPIPE`) is no failure.
 */
export class Channel implements Output {
  readonly #name: "stdout" | "stderr";
  /** Opened when something is written: that takes Node some milliseconds, and most runs use only one of the two. */
  #write: Output["write"] | undefined;
  #closed = false;
  #failure: string | undefined;
  /** Settles where nothing more can be written. */
  readonly closed: Promise<void>;
  #close = (): void => {};

  constructor(name: "stdout" | "stderr") {
    this.#name = name;
    this.closed = new Promise((resolve) => {
      this.#close = resolve;
    });
  }

  write(content: string | Uint8Array): void {
    this.#write ??= this.#open();
    if (!this.#closed) this.#write(content);
  }

  /** Waits until everything is written. Why it could not be; undefined where all went well. */
  async end(): Promise<string | undefined> {
    if (this.#write !== undefined && !this.#closed && !isWrittenAtOnce(DESCRIPTORS[this.#name]))
      await new Promise<void>((resolve) => process[this.#name].write("", () => resolve()));
    return this.#failure;
  }

  #open(): Output["write"] {
    const descriptor = DESCRIPTORS[this.#name];
    if (isWrittenAtOnce(descriptor)) return (content) => this.#writeAll(descriptor, bytesOf(content));
    const stream = process[this.#name];
    stream.on("error", (error) => this.#failed(error));
    return (content) => void stream.write(content);
  }

  /** Node's own stream for files takes a short write, as on a disk that is nearly full, for a whole one. */
  #writeAll(descriptor: number, bytes: Uint8Array): void {
    try {
      for (let at = 0; at < bytes.length; ) at += writeSync(descriptor, bytes, at);
    } catch (error) {
      this.#failed(error);
    }
  }

  #failed(error: unknown): void {
    this.#closed = true;
    this.#close();
    if ((error as NodeJS.ErrnoException).code !== "EPIPE") this.#failure ??= reasonOf(error);
  }
}

function bytesOf(content: string | Uint8Array): Uint8Array {
  return typeof content === "string" ? Buffer.from(content, "utf8") : content;
}

/** A file or a device, not a pipe, a socket or a terminal. */
function isWrittenAtOnce(descriptor: number): boolean {
  try {
    const file = fstatSync(descriptor);
    return file.isFile() || (file.isCharacterDevice() && !isatty(descriptor));
  } catch {
    return false;
  }
}
