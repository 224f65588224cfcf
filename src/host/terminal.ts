// What the terminal can do: how wide it is and how many colours it shows. A pipe or a file gets no colour; NO_COLOR
// turns colour off on a terminal as well, FORCE_COLOR turns it on anywhere.

/** As chalk counts: none, 16, 256, or all. */
export type ColourDepth = 0 | 1 | 2 | 3;

export interface Terminal {
  /** Columns to fill. */
  readonly width: number;
  readonly colours: ColourDepth;
}

/** The stream's side of a terminal: what Node says of it. */
export interface Stream {
  readonly isTTY?: boolean | undefined;
  readonly columns?: number | undefined;
}

export type Environment = Readonly<Record<string, string | undefined>>;

/** Of a pipe, and of a terminal that doesn't say how wide it is. */
const USUAL_WIDTH = 100;
const LEAST_WIDTH = 40;
const MOST_WIDTH = 160;

/** The terminal behind a stream: its width from 40 to 160, COLUMNS before what the stream says. */
export function terminalOf(stream: Stream, environment: Environment): Terminal {
  const width = [Number(environment['COLUMNS']), stream.columns].find(isWidth) ?? USUAL_WIDTH;
  return {
    width: Math.max(LEAST_WIDTH, Math.min(MOST_WIDTH, width)),
    colours: coloursOf(stream, environment),
  };
}

/** A terminal that doesn't know its width may say 0. */
const isWidth = (columns: number | undefined): columns is number => Number.isInteger(columns) && Number(columns) > 0;

function coloursOf(stream: Stream, environment: Environment): ColourDepth {
  const forced = environment['FORCE_COLOR'];
  if (forced !== undefined) return forced === '0' || forced === 'false' ? 0 : 1;
  const refused = environment['NO_COLOR'];
  if (refused !== undefined && refused !== '') return 0;
  return stream.isTTY === true && environment['TERM'] !== 'dumb' ? 1 : 0;
}

/** What results are laid out for. */
export const outputTerminal = (): Terminal => terminalOf(process.stdout, process.env);

/** What findings and refusals are laid out for. */
export const errorTerminal = (): Terminal => terminalOf(process.stderr, process.env);
