import { refusal } from "../features/explain/refusal.ts";
import { serverTexts } from "./server-texts.ts";

/** Why there is no answer about a file that belongs to no journal. */
export const unknownFile = refusal(serverTexts.unknownFile);
