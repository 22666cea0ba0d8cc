/** What a command may touch: handed in once by run.ts, so that a command can be tested without a process. */
export interface Io {
  /** Results: JSON, or what was asked for. */
  readonly out: (text: string) => void;
  /** Everything else: progress, problems, advice. */
  readonly err: (text: string) => void;
  /** The folder the user stands in; relative paths start here. */
  readonly cwd: string;
  /** The clock, read once. */
  readonly now: Date;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Whether err is a terminal that takes colour and moving lines. */
  readonly terminal: boolean;
  /** Whether out goes to a file or another program, which reads JSON sooner than words. */
  readonly piped?: boolean;
  /** How many characters a line of the terminal has that out goes to; undefined where it is none. */
  readonly width?: number;
  /** Asks whoever sits at the terminal; undefined where nobody does, and then nothing may wait for an answer. */
  readonly ask?: (question: string) => Promise<string>;
}

/** The exit codes: done, problems in the entries, used wrongly, a fault of the program's own. */
export const DONE = 0;
export const PROBLEMS = 1;
export const USED_WRONGLY = 2;
export const FAULT = 3;

/** A command line that can't be followed; run.ts prints it and exits 2. */
export class UsageError extends Error {}
