import { l10n, Uri, window, workspace } from "vscode";

/** What a file is called, and where it is offered. */
interface FileToSave {
  /** With its ending. */
  readonly name: string;
  /** As the dialogue calls it: `MIDI`. */
  readonly kind: string;
  /** The document that it was made of. */
  readonly beside: Uri;
}

/** Asks where a file goes, and writes it there. Undefined where nobody said, or it could not be written. */
export async function saveAs(content: Uint8Array, { name, kind, beside }: FileToSave): Promise<Uri | undefined> {
  const folder = beside.scheme === "untitled" ? workspace.workspaceFolders?.[0]?.uri : Uri.joinPath(beside, "..");
  const ending = name.slice(name.lastIndexOf(".") + 1);
  const target = await window.showSaveDialog({
    ...(folder ? { defaultUri: Uri.joinPath(folder, name) } : {}),
    filters: { [kind]: [ending] },
  });
  if (!target) return undefined;
  try {
    await workspace.fs.writeFile(target, content);
    return target;
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    void window.showErrorMessage(l10n.t("The file was not written. {0}", reason));
    return undefined;
  }
}
