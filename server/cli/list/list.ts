import type { Arguments } from "../command.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { notOneOf } from "../nearest.ts";
import { jsonText } from "../printable.ts";
import { type Listing, listingText } from "./listing.ts";
import { codesListed, instrumentsListed, kindsListed, patternsListed } from "./listings.ts";
import { LISTS, type ListName } from "./lists.ts";
import { termsListed } from "./terms-listed.ts";

const LISTED: Readonly<Record<ListName, () => Listing>> = {
  instruments: instrumentsListed,
  kinds: kindsListed,
  patterns: patternsListed,
  terms: termsListed,
  codes: codesListed,
};

/** `daystave list`: what is known without a declaration. */
export async function list({ positionals, flags }: Arguments, io: Io): Promise<Status> {
  const [said] = positionals;
  if (said === undefined) return fail(io, `Say what to list: daystave list ${LISTS.join("|")}`);
  const name = LISTS.find((each) => each === said.toLowerCase());
  if (name === undefined) return fail(io, notOneOf(`list ${said}`, said, LISTS));
  const listing = LISTED[name]();
  io.stdout.write(
    flags.has("json") ? jsonText({ [name]: listing.rows.map(({ json }) => json) }) : listingText(listing, io),
  );
  return STATUS.done;
}
