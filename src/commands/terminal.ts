import { createInterface, type Interface } from 'node:readline';
import { UsageError } from './io.ts';

/** Questions to whoever sits at the terminal. One reader for all of them, so that lines which were typed ahead, or
 * pasted, answer the questions after. */
export class Terminal {
  readonly #lines: string[] = [];
  #reader: Interface | undefined;
  #answer: ((line: string) => void) | undefined;
  #refuse: ((error: Error) => void) | undefined;

  /** The line that is typed, without blanks round it. Throws UsageError when the input ends: Ctrl-D or Ctrl-C. */
  ask = async (question: string): Promise<string> => {
    this.#begin();
    process.stderr.write(question);
    const typed = this.#lines.shift();
    if (typed !== undefined) return typed;
    return await new Promise<string>((answer, refuse) => {
      this.#answer = answer;
      this.#refuse = refuse;
    });
  };

  /** Lets the process end. */
  close(): void {
    this.#refuse = undefined;
    this.#reader?.close();
  }

  #begin(): void {
    if (this.#reader !== undefined) return;
    this.#reader = createInterface({ input: process.stdin, output: process.stderr });
    this.#reader.on('line', (line) => {
      const answer = this.#answer;
      this.#answer = undefined;
      if (answer === undefined) this.#lines.push(line.trim());
      else answer(line.trim());
    });
    this.#reader.on('close', () => {
      process.stderr.write('\n');
      this.#refuse?.(new UsageError('The questions were broken off. Nothing was written.'));
    });
  }
}
