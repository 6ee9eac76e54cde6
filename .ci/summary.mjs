// Prints "N passed, N failed" from the test runner's report; ends with 1 when a test failed or none ran.
import { readFileSync } from "node:fs";

const text = readFileSync(process.argv[2], "utf8");
const { numPassedTests: passed, numFailedTests: failedTests, testResults } = text === "" ? { numPassedTests: 0, numFailedTests: 0, testResults: [] } : JSON.parse(text);
// A file that could not be loaded has no tests in it, and counts as one failure.
const brokenFiles = testResults.filter(({ status, assertionResults }) => status === "failed" && assertionResults.length === 0).length;
const failed = failedTests + brokenFiles;
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 && passed > 0 ? 0 : 1;
