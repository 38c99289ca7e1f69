/** What the help and the manual page say of the program as a whole. */
export const ABOUT = {
  what: "a practice diary in plain text that checks your scales and remembers what got faster",
  journal:
    "A journal is a folder of .practice files; journal.practice at its top names the player, the instrument and the pieces.",
  begin: "To begin, run “daystave init”, then write a day into a file there:",
  day: ["2026-03-02 Mon, 20 min", "D minor, slurred, 8ths at 60 clean"],
  check: "and run “daystave check”.",
  colours: "Colours are left out when NO_COLOR is set.",
  statuses: [
    ["0", "done"],
    ["1", "something was found"],
    ["2", "it could not run"],
  ],
} as const;

/** Options before any command. */
export const TOP_OPTIONS = [
  { names: ["--help", "-h"], help: "show this help; after a command, that command’s" },
  { names: ["--version", "-V"], help: "show the version" },
] as const;
