import { type ChildProcess, spawn } from "node:child_process";
import { type Disposable, Uri } from "vscode";

/**
 * Processes of the language server that talk over their standard input and output. The first is started at once, before
 * anybody can take it.
 */
export class ServerProcesses implements Disposable {
  private waiting: ChildProcess | undefined;

  constructor(private readonly extensionUri: Uri) {
    this.waiting = this.started();
    performance.mark("daystave/didStartServer");
  }

  /** The process that waits, or a new one in place of one that ended. Whoever takes it ends it. */
  take(): ChildProcess {
    const { waiting } = this;
    this.waiting = undefined;
    return waiting ?? this.started();
  }

  /** Ends a process that nobody has taken. */
  dispose(): void {
    this.waiting?.kill();
    this.waiting = undefined;
  }

  private started(): ChildProcess {
    const module = Uri.joinPath(this.extensionUri, "dist/server/main.js").fsPath;
    // An editor that is built on Electron is Node only where it is told so.
    const env = { ...process.env, ELECTRON_RUN_AS_NODE: "1", ELECTRON_NO_ASAR: "1" };
    return spawn(process.execPath, [module, "--stdio", `--clientProcessId=${process.pid}`], { env });
  }
}
