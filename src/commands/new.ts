import { mkdir, stat } from 'node:fs/promises';
import { join, relative } from 'node:path';
import { createInterface } from 'node:readline/promises';
import { idLike, isId } from '#model/entry-id.ts';
import { ENTRY_KINDS, type EntryKind } from '#model/words.ts';
import { writeNew } from '#publish/atomic.ts';
import { commandLine } from './arguments.ts';
import { DONE, type Io, UsageError } from './io.ts';
import { startingEntry } from './new/starts.ts';

/** `reel` → `reels`: what a person calls one entry of each kind. */
const SINGULAR: Readonly<Record<string, EntryKind>> = {
  reel: 'reels',
  edition: 'editions',
  machine: 'machines',
  stock: 'stocks',
  place: 'places',
  person: 'people',
  share: 'shares',
  note: 'notes',
};

/** Writes a commented, valid starting entry, and never over one that is there. Asks for what wasn't said when someone
 * sits at the terminal. */
export async function newEntry(args: readonly string[], io: Io): Promise<number> {
  const { shared, values, positionals } = commandLine(args, io, {
    title: { type: 'string' },
    folder: { type: 'boolean' },
  });
  const [kindWord, id, ...more] = await filledIn(positionals, io);
  if (more.length > 0) throw new UsageError(`"${more.join(' ')}" is one word too many: npm run new -- reel ID.`);
  const kind = kindOf(kindWord);
  const checked = idOf(id);
  const title = values.title ?? capital(checked.replaceAll('-', ' '));
  await refuseTaken(shared.collection, kind, checked);
  const path = values.folder === true ? join(kind, checked, 'index.md') : join(kind, `${checked}.md`);
  const file = join(shared.collection, path);
  await mkdir(join(file, '..'), { recursive: true });
  if (!(await writeNew(file, startingEntry(kind, title)))) throw taken(path);
  io.err(`Wrote ${relative(io.cwd, file)}. Open it in any text editor; "npm run check" says what it makes of it.\n`);
  if (shared.json) io.out(`${JSON.stringify({ id: checked, folder: kind, file: path.replaceAll('\\', '/') })}\n`);
  return DONE;
}

async function filledIn(given: readonly string[], io: Io): Promise<readonly (string | undefined)[]> {
  if (given.length >= 2 || !io.terminal || process.stdin.isTTY !== true) return given;
  const asking = createInterface({ input: process.stdin, output: process.stderr });
  try {
    const kind = given[0] ?? (await asking.question(`What is it? (${Object.keys(SINGULAR).join(', ')}) `)).trim();
    const title = (await asking.question('What is it called? ')).trim();
    const proposed = idLike(title);
    const id = (await asking.question(`Its id, for other entries to use? (${proposed}) `)).trim();
    return [kind, id === '' ? proposed : id];
  } finally {
    asking.close();
  }
}

function kindOf(word: string | undefined): EntryKind {
  const kind = SINGULAR[word ?? ''] ?? ENTRY_KINDS.find((one) => one === word);
  if (kind === undefined) {
    throw new UsageError(
      `Say what it is: npm run new -- KIND ID, where KIND is one of ${Object.keys(SINGULAR).join(', ')}.`,
    );
  }
  return kind;
}

function idOf(text: string | undefined): string {
  if (text === undefined || text === '') throw new UsageError('Say its id too: npm run new -- reel almanac-side-1.');
  if (isId(text)) return text;
  const near = idLike(text);
  const proposal = near === '' ? '' : ` Take ${near}, for example.`;
  throw new UsageError(`"${text}" can't be an id: lower-case letters, digits and hyphens.${proposal}`);
}

/** An entry may be a file or a folder: neither may be there. */
async function refuseTaken(collection: string, kind: EntryKind, id: string): Promise<void> {
  for (const path of [join(kind, `${id}.md`), join(kind, id, 'index.md')]) {
    const there = await stat(join(collection, path)).then(Boolean, () => false);
    if (there) throw taken(path);
  }
}

const taken = (path: string) => new UsageError(`${path} is there already, and stays as it is. Choose another id.`);
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
