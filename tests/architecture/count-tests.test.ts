// The last line of a check counts every failure, also those that no test reports.

import { expect, test } from 'vitest';
import { countTests } from '../tools/count-tests.mjs';

const passed = { status: 'passed', assertionResults: [{}] };

test('a good run', () => {
  const report = { numPassedTests: 3, numFailedTests: 0, testResults: [passed] };
  expect(countTests(report, 0)).toEqual({ passed: 3, failed: 0 });
});

test('failed tests', () => {
  const report = { numPassedTests: 3, numFailedTests: 2, testResults: [{ status: 'failed', assertionResults: [{}] }] };
  expect(countTests(report, 1)).toEqual({ passed: 3, failed: 2 });
});

test('a test file that did not load', () => {
  const report = {
    numPassedTests: 3,
    numFailedTests: 0,
    testResults: [passed, { status: 'failed', assertionResults: [] }],
  };
  expect(countTests(report, 1)).toEqual({ passed: 3, failed: 1 });
});

test('a check that stopped before the tests, or failed after them', () => {
  expect(countTests(undefined, 2)).toEqual({ passed: 0, failed: 1 });
  expect(countTests({ numPassedTests: 3, numFailedTests: 0, testResults: [passed] }, 1)).toEqual({
    passed: 3,
    failed: 1,
  });
});
