// The version of this footfall; the package says the same, which a test checks.

export const VERSION = '0.1.0';
