import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { importSheet } from '../../src/commands/import.ts';
import { listener } from './listener.ts';

/** What `import --format json` answers. */
export interface ImportAnswer {
  readonly kind: string;
  readonly columns: readonly { header: string; as: string }[];
  readonly accounted: Readonly<Record<'cells' | 'asFacts' | 'inAlso' | 'sayNothing' | 'headings' | 'loose', number>>;
  readonly entries: readonly {
    readonly kind: string;
    readonly id: string;
    readonly state: string;
    readonly file: string;
    readonly text: string;
    readonly lacks: readonly string[];
    readonly photographs: readonly string[];
  }[];
}

export interface ImportOptions {
  readonly more?: readonly string[];
  readonly name?: string;
  /** Answers to the questions, in their order, as they would be typed; without it nobody sits at the terminal. */
  readonly typed?: readonly string[];
}

/** Imports a sheet into `c` within a folder, as the command does. Every question that was asked is in `asked`. */
export async function importedIn(
  dir: string,
  sheet: string | Uint8Array,
  { more = [], name = 'tapes.csv', typed }: ImportOptions = {},
) {
  await writeFile(join(dir, name), sheet);
  const { said, hear } = listener();
  const asked: string[] = [];
  const answers = [...(typed ?? [])];
  const io = {
    ...hear,
    cwd: dir,
    now: new Date('2026-04-01'),
    env: {},
    terminal: typed !== undefined,
    ...(typed === undefined
      ? {}
      : {
          ask: async (question: string) => {
            asked.push(question);
            const answer = answers.shift();
            if (answer === undefined) throw new Error(`nobody answers: ${question}`);
            return answer;
          },
        }),
  };
  await importSheet([name, '--collection', 'c', '--format', 'json', ...more], io);
  return { ...(JSON.parse(said.out) as ImportAnswer), err: said.err, asked, unused: answers };
}

/** Rows as a CSV file, every cell in quotes. */
export const csvOf = (rows: readonly (readonly string[])[]) =>
  rows.map((row) => row.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(',')).join('\r\n');
