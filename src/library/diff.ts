// How far a diff goes to tell what came of what. Common practice (C).

export const DIFF = {
  /** So many athletes' seasons are compiled besides, to try edits one by one; about as many seconds as hundreds. */
  mostSeasons: 400,
} as const;
