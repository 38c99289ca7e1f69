import { chmodSync, lstatSync, mkdirSync, readFileSync, realpathSync, writeFileSync } from "node:fs";
import { join, resolve, sep } from "node:path";
import { reasonOf } from "../../host/node/read-file.ts";
import { revParse } from "../git/git.ts";
import { HOOK_HEAD, HOOK_SCRIPT } from "./hook-script.ts";

export type Installed =
  | { readonly ok: true; readonly path: string; readonly wasThere: boolean }
  | { readonly ok: false; readonly reason: string };

/** Puts the hook where git looks for it, but never in place of another's. */
export function installHook(cwd: string): Installed {
  const hooks = revParse(cwd, "--git-path", "hooks");
  const shared = revParse(cwd, "--git-common-dir");
  if (hooks === undefined || shared === undefined)
    return refused("Run this in a git repository: git knows none here. A new one is made with: git init");
  const folder = resolve(cwd, hooks);
  const top = revParse(cwd, "--show-toplevel");
  try {
    mkdirSync(folder, { recursive: true });
    if (![resolve(cwd, shared), top].some((owner) => owner !== undefined && isWithin(owner, folder)))
      return refused(
        `Hooks are taken from ${folder} (core.hooksPath), which other repositories may share. If you want it there: daystave hook > ${join(folder, NAME)}`,
      );
    return install(join(folder, NAME));
  } catch (error) {
    return refused(`${join(folder, NAME)} was not written. ${reasonOf(error)}`);
  }
}

const NAME = "pre-commit";

function refused(reason: string): Installed {
  return { ok: false, reason };
}

function isWithin(owner: string, folder: string): boolean {
  return realpathSync(folder).startsWith(realpathSync(owner) + sep);
}

function install(path: string): Installed {
  const text = textAt(path);
  if (text !== undefined && !text.startsWith(HOOK_HEAD))
    return refused(
      `${path} is another hook and was left alone. To have both, add this line to it: daystave check --staged || exit 1`,
    );
  if (text !== HOOK_SCRIPT) writeFileSync(path, HOOK_SCRIPT, { flag: text === undefined ? "wx" : "w" });
  chmodSync(path, 0o755);
  return { ok: true, path, wasThere: text === HOOK_SCRIPT };
}

/** The text of what is there; undefined where nothing is. What is no file is somebody else's. */
function textAt(path: string): string | undefined {
  try {
    return lstatSync(path).isFile() ? readFileSync(path, "utf8") : "";
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return undefined;
    throw error;
  }
}
