// What the system says when it refuses something, as a code and in words. Called wherever files are read or written.

/** The code of an error of the system, `ENOENT` say; empty where it has none. */
export const codeOf = (error: unknown): string =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : '';

/** An error in its own words. */
export const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'permission denied',
  EPERM: 'permission denied',
  ENOENT: 'it is not there',
  ENOTDIR: 'a part of the path is not a folder',
  EEXIST: 'a part of the path is not a folder',
  EISDIR: 'it is a folder',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk quota is used up',
  EFBIG: 'a file is larger than the system allows',
  EMFILE: 'too many files are open',
  ENFILE: 'too many files are open',
  EBUSY: 'another program holds it',
  ELOOP: 'its links lead in a circle',
  ENAMETOOLONG: 'the path is too long',
  EIO: 'the disk reports an error',
};

/** What a code means, in words; of one that is seldom met the code itself. */
export function reasonOf(error: unknown): string {
  const code = codeOf(error);
  return REASONS[code] ?? (code === '' ? 'the system refuses it' : `the system refuses it (${code})`);
}
