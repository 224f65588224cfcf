// A heavy set and the jumps that are paired with it. Between them lies the rest of the set (S10), but for a cluster, whose
// jumps belong inside the set: the note of either line says that word. Read by the audit and by what is printed.

const CLUSTER = /\bcluster/iu;

/** Whether a line's note marks its pair as a cluster. */
export const isCluster = (note: string | undefined): boolean => note !== undefined && CLUSTER.test(note);
