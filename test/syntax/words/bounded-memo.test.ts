import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { describe, expect, it } from "vitest";
import { BoundedMemo } from "../../../server/syntax/words/bounded-memo.ts";

/** A memo with room for about twice so many numbers under texts of one letter. */
function memoOf(numbers: number): BoundedMemo<number> {
  return new BoundedMemo(numbers * 2 * (64 + 2 + 34), () => 34);
}

describe("a bounded memo", () => {
  it("makes a value once", () => {
    const memo = memoOf(10);
    const made: string[] = [];
    const make = (text: string): number => made.push(text);
    expect([memo.of("a", make), memo.of("b", make), memo.of("a", make), memo.get("b"), memo.get("c")]).toEqual([
      1,
      2,
      1,
      2,
      undefined,
    ]);
    expect(made).toEqual(["a", "b"]);
  });

  it("keeps that there is nothing", () => {
    const memo = new BoundedMemo<null>(10_000);
    memo.of("a", () => null);
    expect(memo.of("a", () => expect.unreachable())).toBeNull();
  });

  it("keeps what is asked for, and lets go of what is not", () => {
    const memo = memoOf(4);
    for (const [i, text] of [..."abcdefghijklmnop"].entries()) {
      memo.set(text, i);
      memo.get("a");
    }
    expect([..."abpo"].map((text) => memo.get(text))).toEqual([0, undefined, 15, 14]);
  });

  it("keeps about so many bytes", () => {
    const bytes = 1_000_000;
    const memo = new BoundedMemo<string>(bytes, (value) => value.length);
    const texts = Array.from({ length: 5000 }, (_, i) => `text ${i}`);
    for (const text of texts) memo.set(text, "x".repeat(1000));
    const kept = texts.filter((text) => memo.get(text) !== undefined).length * 1000;
    expect(kept).toBeGreaterThan(bytes / 3);
    expect(kept).toBeLessThan(bytes);
  });

  it("does not let everything go for one thing that is too large", () => {
    const memo = new BoundedMemo<string>(10_000, (value) => value.length);
    memo.set("a", "small");
    memo.set("b", "x".repeat(20_000));
    expect([memo.get("a"), memo.get("b")]).toEqual(["small", undefined]);
  });

  it("keeps of a long text only the words that were asked for", () => {
    const memo = new BoundedMemo<string>(10_000_000);
    const before = heapUsed();
    for (let i = 0; i < 200; i++) {
      const long = Buffer.from(`word number ${i} `.repeat(10_000)).toString();
      memo.of(long.slice(5000, 5040), (text) => text.slice(3, 30));
      memo.set(long.slice(6000, 6040), "");
    }
    expect(heapUsed() - before).toBeLessThan(5_000_000); // of 40 million letters in all
    expect(memo.get("asked last, so that it is there until now")).toBeUndefined();
  });
});

/** In bytes, with nothing to collect. */
function heapUsed(): number {
  setFlagsFromString("--expose-gc");
  const collect: () => void = runInNewContext("gc");
  collect();
  return process.memoryUsage().heapUsed;
}
