import fc from "fast-check";
import { expect, test } from "vitest";
import { fileNameFor } from "../../../server/features/scores/file-name.ts";

test.each([
  ["D melodic minor, thirds", "D melodic minor, thirds"],
  ["F# major", "F sharp major"],
  ["B♭ major", "B flat major"],
  ["Si bémol majeur", "Si bémol majeur"],
  ['"../../etc" on C', "etc on C"],
  ["Exercises, 2026-W10 (2 to 8 March)", "Exercises, 2026-W10 2 to 8 March"],
  ["???", "exercise"],
])("%s is called %s", (title, name) => expect(fileNameFor(title)).toBe(name));

// What Windows refuses in names ("Naming Files, Paths, and Namespaces"): these signs, controls, a dot or space at the end.
test("any title gives a name that a file can have", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), (title) => {
      const name = fileNameFor(title);
      expect(name).not.toMatch(/[<>:"/\\|?*\p{Cc}]|^[ .]|[ .]$|^$/u);
      expect(name.length).toBeLessThanOrEqual(80);
    }),
    { seed: 19 },
  );
});
