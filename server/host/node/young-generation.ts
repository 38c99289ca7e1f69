import { setFlagsFromString } from "node:v8";
import { YOUNG_GENERATION_STAYS } from "../../../shared/young-generation.ts";

/** Keeps V8's heap for new objects small. In Electron our client says so when it starts the process. */
export function keepYoungGenerationSmall(): void {
  if (!process.versions["electron"]) setFlagsFromString(YOUNG_GENERATION_STAYS);
}
