// Turns the report of a test run into the one line that ends a check: "N passed, N failed". Called by .ci/run with the
// report's file and the exit status of the check. A check that failed without a failed test, because a file didn't load
// or a step before the tests stopped it, counts as one failure.

import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';

/**
 * @typedef {{numPassedTests: number, numFailedTests: number, testResults: ReadonlyArray<{status: string, assertionResults: readonly unknown[]}>}} Report
 * @param {Report | undefined} report undefined when the tests weren't reached
 * @param {number} status exit status of the whole check
 */
export function countTests(report, status) {
  const unloaded = report?.testResults.filter((file) => file.status === 'failed' && file.assertionResults.length === 0);
  const failed = (report?.numFailedTests ?? 0) + (unloaded?.length ?? 0);
  return { passed: report?.numPassedTests ?? 0, failed: failed === 0 && status !== 0 ? 1 : failed };
}

/** @param {string} file @returns {Report | undefined} */
function loadReport(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const [file = '', status = '1'] = process.argv.slice(2);
  const { passed, failed } = countTests(loadReport(file), Number(status));
  console.log(`${passed} passed, ${failed} failed`);
  process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
}
