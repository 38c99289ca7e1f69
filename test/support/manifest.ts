import { inWords } from "../../client/packaging/texts.mjs";
import inKeys from "../../package.json";
import english from "../../package.nls.json";

/** package.json as an editor shows it in English. */
export const manifest = inWords(inKeys, english);
