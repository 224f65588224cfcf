// Writes to standard output and standard error in pieces, waiting whenever the reader is slower than we are. A reader
// that has gone (`footfall build | head`) ends the writing without a word; any other failure is told to the caller.

const PIECE_CHARACTERS = 64 * 1024;

/** The reader closed the pipe: nothing is wrong, and there is nobody left to write to. */
export class ReaderGone extends Error {
  override readonly name = 'ReaderGone';
}

/** The output can't be written: a full disk, a broken device. */
export class OutputFailed extends Error {
  override readonly name = 'OutputFailed';
}

export interface Output {
  /** Resolves when the stream can take more. Rejects with ReaderGone or OutputFailed. */
  readonly write: (text: string) => Promise<void>;
  /** Writes many short texts as few large pieces. */
  readonly writeAll: (texts: Iterable<string>) => Promise<void>;
  /** Resolves when all that was written has left the process. */
  readonly end: () => Promise<void>;
}

/** Results go here. To be made once, as each listens to the stream. */
export const standardOutput = (): Output => createOutput(process.stdout);

/** What is said about the run is lost without a word when nobody can hear it. */
export function standardError(): Output {
  const { write, writeAll, end } = createOutput(process.stderr);
  return {
    write: (text) => unheard(write(text)),
    writeAll: (texts) => unheard(writeAll(texts)),
    end: () => unheard(end()),
  };
}

async function unheard(said: Promise<void>): Promise<void> {
  try {
    await said;
  } catch (error) {
    if (!(error instanceof ReaderGone) && !(error instanceof OutputFailed)) throw error;
  }
}

/** An Output over a stream; what goes wrong on the stream is thrown by the next call. */
export function createOutput(stream: NodeJS.WritableStream): Output {
  const { throwFailure, drained } = watch(stream);
  const write = async (text: string): Promise<void> => {
    throwFailure();
    if (!stream.write(text)) await drained();
    throwFailure();
  };
  const writeAll = async (texts: Iterable<string>): Promise<void> => {
    let piece = '';
    for (const text of texts) {
      piece += text;
      if (piece.length < PIECE_CHARACTERS) continue;
      await write(piece);
      piece = '';
    }
    if (piece !== '') await write(piece);
  };
  const end = async (): Promise<void> => {
    throwFailure();
    await new Promise<void>((resolve) => {
      stream.write('', () => {
        resolve();
      });
    });
    throwFailure();
  };
  return { write, writeAll, end };
}

interface StreamState {
  /** Throws what has gone wrong so far. */
  readonly throwFailure: () => void;
  /** Resolves when the stream can take more, or has failed. */
  readonly drained: () => Promise<void>;
}

function watch(stream: NodeJS.WritableStream): StreamState {
  let failure: Error | undefined;
  const waiting = new Set<() => void>();
  const wakeAll = (): void => {
    for (const wake of waiting) wake();
    waiting.clear();
  };
  stream.on('error', (error: NodeJS.ErrnoException) => {
    failure ??= outputError(error);
    wakeAll();
  });
  stream.on('drain', wakeAll);
  return {
    throwFailure: () => {
      if (failure !== undefined) throw failure;
    },
    drained: async () => {
      if (failure !== undefined) return;
      await new Promise<void>((resolve) => {
        waiting.add(resolve);
      });
    },
  };
}

function outputError(error: NodeJS.ErrnoException): Error {
  return error.code === 'EPIPE' ? new ReaderGone() : new OutputFailed(error.message, { cause: error });
}
