/** Checks of what is said between the editor's side of a page and the page: neither trusts the other. */

/** Whether a value that came from the other side has the shape of a type. */
export type Check<T> = (value: unknown) => value is T;

export const isText: Check<string> = (value) => typeof value === "string";
export const isFlag: Check<boolean> = (value) => typeof value === "boolean";
export const isNumber: Check<number> = (value): value is number => typeof value === "number" && Number.isFinite(value);
/** A whole number from 0. */
export const isCount: Check<number> = (value): value is number =>
  isNumber(value) && Number.isInteger(value) && value >= 0;

/** An object with these fields at least, each of its kind. */
export function object<T extends object>(fields: { readonly [Name in keyof Required<T>]: Check<T[Name]> }): Check<T> {
  const checks = Object.entries<Check<unknown>>(fields);
  return (value): value is T =>
    typeof value === "object" &&
    value !== null &&
    !Array.isArray(value) &&
    checks.every(([name, check]) => check((value as Readonly<Record<string, unknown>>)[name]));
}

export function list<T>(check: Check<T>): Check<readonly T[]> {
  return (value): value is readonly T[] => Array.isArray(value) && value.every(check);
}

export function orNull<T>(check: Check<T>): Check<T | null> {
  return (value): value is T | null => value === null || check(value);
}

export function only<const T>(...values: readonly T[]): Check<T> {
  return (value): value is T => (values as readonly unknown[]).includes(value);
}

export function either<A, B>(one: Check<A>, other: Check<B>): Check<A | B> {
  return (value): value is A | B => one(value) || other(value);
}
