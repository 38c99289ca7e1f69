// Gives the browser workbench a writable folder under sample:/ that lives in memory: filled from GET /sample.json ({
// "path": "text" }), gone when the page is reloaded. Then runs the command that GET /command.json names, if any, once a
// text is in sight. Development only; not part of the packaged extension.
const { commands, EventEmitter, FileChangeType, FileSystemError, FileType, Uri, window, workspace } = require("vscode");

exports.activate = async (context) => {
  const root = directory();
  const listing = await fetch(Uri.joinPath(context.extensionUri, "../sample.json").toString(true));
  for (const [path, text] of Object.entries(await listing.json()))
    put(root, path.split("/"), file(new TextEncoder().encode(text)));

  const changes = new EventEmitter();
  const tell = (type, uri) => changes.fire([{ type, uri }]);
  const find = (uri) => steps(uri).reduce((node, name) => node?.children?.get(name), root);
  const need = (uri) => find(uri) ?? fail(FileSystemError.FileNotFound(uri));
  const detach = (uri) => need(Uri.joinPath(uri, "..")).children.delete(steps(uri).at(-1));

  const provider = {
    onDidChangeFile: changes.event,
    watch: () => ({ dispose() {} }),
    stat(uri) {
      const { type, data, ctime, mtime } = need(uri);
      return { type, ctime, mtime, size: data?.length ?? 0 };
    },
    readDirectory: (uri) => [...(need(uri).children ?? [])].map(([name, { type }]) => [name, type]),
    readFile: (uri) => need(uri).data ?? fail(FileSystemError.FileIsADirectory(uri)),
    writeFile(uri, data, { create, overwrite }) {
      const old = find(uri);
      if (!old && !create) fail(FileSystemError.FileNotFound(uri));
      if (old && create && !overwrite) fail(FileSystemError.FileExists(uri));
      put(root, steps(uri), file(data, old?.ctime));
      tell(old ? FileChangeType.Changed : FileChangeType.Created, uri);
    },
    createDirectory(uri) {
      put(root, steps(uri), directory());
      tell(FileChangeType.Created, uri);
    },
    delete(uri) {
      need(uri);
      detach(uri);
      tell(FileChangeType.Deleted, uri);
    },
    rename(from, to, { overwrite }) {
      const node = need(from);
      if (find(to) && !overwrite) fail(FileSystemError.FileExists(to));
      detach(from);
      put(root, steps(to), node);
      tell(FileChangeType.Deleted, from);
      tell(FileChangeType.Created, to);
    },
  };
  // A window whose folder has no search provider never settles findFiles(). The page allows this proposed API by name.
  const search = {
    provideFileSearchResults({ pattern }, { folder, maxResults }) {
      const wanted = pattern.toLowerCase();
      return walk(folder, need(folder))
        .filter((uri) => uri.path.toLowerCase().includes(wanted))
        .slice(0, maxResults);
    },
  };
  context.subscriptions.push(
    workspace.registerFileSystemProvider("sample", provider, { isCaseSensitive: true }),
    workspace.registerFileSearchProvider("sample", search),
  );
  const command = await (await fetch(Uri.joinPath(context.extensionUri, "../command.json").toString(true))).json();
  if (command) void firstEditor().then((editor) => commands.executeCommand(command, editor.document.uri));
};

function firstEditor() {
  if (window.activeTextEditor) return Promise.resolve(window.activeTextEditor);
  return new Promise((resolve) => {
    const waiting = window.onDidChangeActiveTextEditor((editor) => {
      if (!editor) return;
      waiting.dispose();
      resolve(editor);
    });
  });
}

function directory() {
  return { type: FileType.Directory, children: new Map(), ctime: Date.now(), mtime: Date.now() };
}
function file(data, ctime = Date.now()) {
  return { type: FileType.File, data, ctime, mtime: Date.now() };
}
function put(root, path, node) {
  let parent = root;
  for (const name of path.slice(0, -1)) {
    if (!parent.children.has(name)) parent.children.set(name, directory());
    parent = parent.children.get(name);
  }
  parent.children.set(path.at(-1), node);
}
function walk(uri, node) {
  return node.children ? [...node.children].flatMap(([name, child]) => walk(Uri.joinPath(uri, name), child)) : [uri];
}
function steps(uri) {
  return uri.path.split("/").filter(Boolean);
}
function fail(error) {
  throw error;
}
