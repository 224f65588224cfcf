// The version of this footfall, for --version and for what is written as SARIF. The package says the same, which a test
// checks.

export const VERSION = '0.1.0';
