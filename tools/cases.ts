import { writeFileSync } from "node:fs";
import path from "node:path";
import { caseBook } from "../tests/cases/case-book";
import { casesPage } from "../tests/cases/cases-page";
import { openCrops } from "../tests/cases/open-crops";

// npm run cases: renews docs/cases.md from tests/cases/ and what is said of them today
writeFileSync(path.resolve(import.meta.dirname, "../docs/cases.md"), casesPage(caseBook(), openCrops()));
process.stdout.write("docs/cases.md is up to date\n");
