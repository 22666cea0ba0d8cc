import { mkdir, stat } from 'node:fs/promises';
import { join, relative } from 'node:path';
import { idLike, isId } from '#model/entry-id.ts';
import { ENTRY_KINDS, type EntryKind } from '#model/words.ts';
import { writeNew } from '#publish/atomic.ts';
import { commandLine } from './arguments.ts';
import { DONE, type Io, UsageError } from './io.ts';
import { nameOf, needsOf } from './new/asked-for.ts';
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
  const { kindWord, idWord, more, title: called, needs } = await askedFor(positionals, values.title, io.ask);
  if (more.length > 0) throw new UsageError(`"${more.join(' ')}" is one word too many: npm run new -- reel ID.`);
  const kind = kindOf(kindWord);
  const checked = idOf(idWord);
  const title = called ?? capital(checked.replaceAll('-', ' '));
  await refuseTaken(shared.collection, kind, checked);
  const path = values.folder === true ? join(kind, checked, 'index.md') : join(kind, `${checked}.md`);
  const file = join(shared.collection, path);
  await mkdir(join(file, '..'), { recursive: true });
  if (!(await writeNew(file, startingEntry(kind, title, needs)))) throw taken(path);
  io.err(`Wrote ${relative(io.cwd, file)}. Open it in any text editor; "npm run check" says what it makes of it.\n`);
  if (shared.json) io.out(`${JSON.stringify({ id: checked, folder: kind, file: path.replaceAll('\\', '/') })}\n`);
  return DONE;
}

interface Asked {
  readonly kindWord: string | undefined;
  readonly idWord: string | undefined;
  readonly more: readonly string[];
  readonly title: string | undefined;
  readonly needs: ReadonlyMap<string, string>;
}

/** What the command line leaves out is asked for; where nobody can be asked, it stays missing and is told. */
async function askedFor(given: readonly string[], titled: string | undefined, ask: Io['ask']): Promise<Asked> {
  const [kindWord, idWord, ...more] = given;
  if (ask === undefined || idWord !== undefined) return { kindWord, idWord, more, title: titled, needs: new Map() };
  let word = kindWord ?? (await ask(`What is it? (${Object.keys(SINGULAR).join(', ')}) `));
  for (let attempt = 1; attempt < TRIES && kindNamed(word) === undefined; attempt++)
    word = await ask(`"${word}" is no kind of entry. One of ${Object.keys(SINGULAR).join(', ')}: `);
  const kind = kindOf(word);
  const { title, id } = await nameOf(titled, ask);
  return { kindWord: word, idWord: id, more, title: title === '' ? undefined : title, needs: await needsOf(kind, ask) };
}

const TRIES = 3;

const kindNamed = (word: string | undefined): EntryKind | undefined =>
  (word !== undefined && Object.hasOwn(SINGULAR, word) ? SINGULAR[word] : undefined) ??
  ENTRY_KINDS.find((one) => one === word);

function kindOf(word: string | undefined): EntryKind {
  const kind = kindNamed(word);
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
