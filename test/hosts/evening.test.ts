import { evening } from "./evening.ts";
import { describeNodeHost, describeWorkbench } from "./workbench.ts";

const NAME = "typing an evening";
const JOURNAL = { sample: "test/hosts/journals/evening", open: "book.practice", asOpened: true };

describeWorkbench(NAME, JOURNAL, evening);
describeNodeHost(NAME, JOURNAL, evening);
