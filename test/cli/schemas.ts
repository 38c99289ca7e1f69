import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import { ROOT } from "../architecture/source.ts";

// The schemas of what `--json` prints: JSON Schema, draft 2020-12, validated by Ajv in its strict mode.

const FOLDER = join(ROOT, "syntaxes/schemas");

/** By name: that of the command, and after a hyphen the option with which it prints another document. */
export const SCHEMAS: ReadonlyMap<string, Schema> = new Map(
  readdirSync(FOLDER).map((file) => [
    file.replace(/\.json$/, ""),
    JSON.parse(readFileSync(join(FOLDER, file), "utf8")) as Schema,
  ]),
);

export interface Schema {
  readonly [keyword: string]: unknown;
}

const ajv = new Ajv2020({ strict: true, allErrors: true, allowUnionTypes: true });

export const VALIDATORS: ReadonlyMap<string, ValidateFunction> = new Map(
  Array.from(SCHEMAS, ([name, schema]) => [name, ajv.compile(schema)]),
);

/** The option with which a command prints the document of a schema; none where it is the command's own. */
export function optionOf(schema: string, command: string): string | undefined {
  return schema.startsWith(`${command}-`) ? schema.slice(command.length + 1) : undefined;
}

/** The schemas of a command, its own among them. */
export function schemasOf(command: string): string[] {
  return [...SCHEMAS.keys()].filter((name) => name === command || optionOf(name, command) !== undefined);
}

/** Which schema holds for what a command line prints. */
export function schemaFor([command, ...argv]: readonly string[]): string {
  const options = new Set(argv.map((each) => each.replace(/=.*/s, "")));
  const special = schemasOf(command!).find((name) => options.has(`--${optionOf(name, command!)}`));
  return special ?? command!;
}

/** What is wrong with a document, each with its place in it. */
export function faultsIn(document: unknown, schema: string): string[] {
  const validate = VALIDATORS.get(schema);
  if (!validate) return [`There is no schema ${schema}.json.`];
  if (validate(document)) return [];
  return validate.errors!.map(({ instancePath, message, params }) => {
    return `${instancePath || "/"} ${message} ${JSON.stringify(params)}`;
  });
}

/** Every object below a value, with the keys that lead to it. */
export function* objectsIn(value: unknown, keys: readonly string[] = []): Generator<[readonly string[], Schema]> {
  if (typeof value !== "object" || value === null) return;
  if (!Array.isArray(value)) yield [keys, value as Schema];
  for (const [key, each] of Object.entries(value)) yield* objectsIn(each, [...keys, key]);
}
