// How far a diff goes to tell what came of what, in seasons that are compiled. Common practice (C). Read by
// diff/trials.ts.

export const DIFF = {
  /** So many athletes' seasons are compiled besides, to try edits one by one; about as many seconds as hundreds. */
  mostSeasons: 400,
} as const;
