// The order of texts that no locale changes. Used wherever texts are put in order.

/** Negative, 0 or positive, as `sort` asks for it: by UTF-16 code units. */
export const byCodeUnit = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
