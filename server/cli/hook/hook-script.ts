/** Its first lines, by which a hook of ours is known, whatever its version. */
export const HOOK_HEAD = "#!/bin/sh\n# Daystave's pre-commit hook.";

/** What git runs before a commit: refuses one that would leave an error or a warning in a practice journal. */
export const HOOK_SCRIPT = `${HOOK_HEAD} It checks the practice journal as this commit would leave it.
git diff --cached --quiet -- '*.practice' && exit 0
if ! command -v daystave >/dev/null 2>&1; then
  echo "daystave is not on the path, so the practice journal was not checked. To commit all the same: git commit --no-verify" >&2
  exit 1
fi
daystave check --staged && exit 0
status=$?
echo "The commit was stopped. Correct the journal and add it again, or commit it as it is: git commit --no-verify" >&2
exit $status
`;
