import { joined } from "./joined.ts";

/** English verbs that `up` or `down` belongs to and says no direction: from memory, no source. */
export const VERBS_WITH_UP: ReadonlySet<string> = new Set(
  joined(
    "made | make | making | gave | give | gives | giving | went | go | goes | going | came | come | comes | messed | mess",
    "mixed | mix | locked | locks | seized | seizes | tensed | tenses | tightened | tightens | tensing | tightening",
    "speed | sped | speeding | speeded | slowed | slows | slowing | broke | breaks | broken | breaking | warmed",
    "warming | warms | kept | keep | keeps | keeping | ended | fell | falls | picked | picks | joined | caught | built",
    "building | build | cut | cutting | calm | calmed | set | wind | wound | wake | woke | sit | sat | stand | stood",
    "screwed | cocked | loosened | loosen | opened | opens | closed | closes | dried | dries | stuffed | hung | held",
    "hold | tied | cleaned | tidied | write | wrote | written | noted | finish | finished | let",
    "lets | turned | turn | burn | burned | burnt | settle | settled | wear | wore | worn | ramp | ramped",
  ).split(" | "),
);
