// How the tests run: two workers at most, one folder per kind of test, one fixed seed for the property tests.
// TEST_REPORT names a file for the machine-readable report that .ci/run counts; without it only the terminal is told.

import { defineConfig } from 'vitest/config';

const reportFile = process.env['TEST_REPORT'];

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    globalSetup: ['tests/tools/announce-seed.ts'],
    setupFiles: ['tests/tools/fix-seed.ts'],
    maxWorkers: 2,
    // So long that only what hangs meets it: a busy machine takes many times as long as a quiet one.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    allowOnly: false,
    reporters: reportFile === undefined ? ['default'] : ['default', 'json'],
    ...(reportFile === undefined ? {} : { outputFile: { json: reportFile } }),
    coverage: { provider: 'v8', include: ['src/**/*.ts'], reporter: ['text', 'html'] },
  },
});
