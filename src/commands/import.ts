import { readFileSync } from 'node:fs';
import { mkdir, readFile, stat } from 'node:fs/promises';
import { basename, dirname, join, relative, resolve } from 'node:path';
import { headed } from '#compute/import/header.ts';
import { proposeColumns } from '#compute/import/propose-columns.ts';
import { type ImportedReel, readRows } from '#compute/import/read-rows.ts';
import { valueOf } from '#model/fact.ts';
import { isCode, writeNew, writeWhole } from '#publish/atomic.ts';
import { addFacts } from '#read/add-facts.ts';
import { splitFiles } from '#read/collection.ts';
import { readCsv, type Sheet, SheetRefused } from '#read/spreadsheet.ts';
import { readWorkbook } from '#read/workbook.ts';
import { type Validated, validateAll } from '#validate/entries.ts';
import { reelCellReader } from '#validate/reel-cell.ts';
import { commandLine } from './arguments.ts';
import { columnsText, readColumns } from './import/columns-file.ts';
import { entryText, frontMatterOf } from './import/entry-text.ts';
import { copyPhotograph, type PhotographToCopy, photographsIn, withPhotographs } from './import/photographs.ts';
import { accountText, columnsReport } from './import/report.ts';
import { DONE, type Io, UsageError } from './io.ts';
import { loadEntries } from './load.ts';
import { many } from './problem-list.ts';

/** One entry as it would be: new, added to, or left as it is. */
interface Planned {
  readonly state: 'new' | 'filled' | 'there';
  readonly id: string;
  readonly file: string;
  readonly text: string;
  readonly copies: readonly PhotographToCopy[];
  /** For one that is there: top-level facts that the sheet has and it lacks. */
  readonly lacks: readonly string[];
}

const SHOWN = 3;

/** A spreadsheet becomes entries: shows what it would write, and with --write writes it. An entry that is there is never
 * touched, but with --fill facts that it lacks are added at its end. */
export async function importSheet(args: readonly string[], io: Io): Promise<number> {
  const { shared, values, positionals } = commandLine(args, io, {
    write: { type: 'boolean' },
    'dry-run': { type: 'boolean' },
    fill: { type: 'boolean' },
    photographs: { type: 'string' },
    columns: { type: 'string' },
  });
  const [name, ...more] = positionals;
  if (name === undefined || more.length > 0) throw new UsageError('Say which spreadsheet: npm run import -- tapes.csv');
  if (values.write === true && values['dry-run'] === true) throw new UsageError('--write and --dry-run are opposites.');
  const file = resolve(io.cwd, name);
  const sheet = await readSheet(file);
  const columnsFile = values.columns === undefined ? `${file}.columns.json` : resolve(io.cwd, values.columns);
  const table = headed(sheet.rows);
  const plans = proposeColumns(table, readColumns(columnsFile));
  const there = await entriesIn(shared.collection);
  const currency = valueOf(there.entries.collection.currency);
  const inMoney = plans.map((plan) =>
    plan.as === 'valuations' && plan.unit === undefined ? { ...plan, unit: currency } : plan,
  );
  const rows = readRows(table, inMoney, reelCellReader());
  const photographs = values.photographs === undefined ? [] : photographsIn(resolve(io.cwd, values.photographs));
  const planned = await Promise.all(
    rows.reels.map((reel) => plan(reel, photographs, there, shared.collection, values.fill === true)),
  );
  refuseUnreadable(planned);

  for (const note of sheet.notes) io.err(`${note}\n`);
  io.err(
    `${basename(file)}: ${many(plans.length, 'column')}\n${columnsReport(inMoney)}${accountText(rows.accounted, rows)}`,
  );
  if (await writeNew(columnsFile, columnsText(inMoney)))
    io.err(`What each column is stands in ${relative(io.cwd, columnsFile)}: change it there, and run this again.\n`);
  const write = values.write === true;
  if (write) await writeAll(planned, shared.collection);
  tell(planned, write, shared.json, io);
  if (shared.json) {
    const entries = planned.map(({ id, state, file: path, text, lacks, copies }) => ({
      id,
      state,
      file: path,
      lacks,
      photographs: copies.map((copy) => copy.name),
      text,
    }));
    io.out(
      `${JSON.stringify({ columns: inMoney, accounted: rows.accounted, loose: rows.loose, entries, written: write }, null, 2)}\n`,
    );
  }
  return DONE;
}

async function readSheet(file: string): Promise<Sheet> {
  try {
    const bytes = readFileSync(file);
    return /\.(?:xlsx|xlsm)$/iu.test(file) ? await readWorkbook(bytes) : readCsv(bytes);
  } catch (error) {
    if (error instanceof SheetRefused) throw new UsageError(error.message);
    if (isCode(error, 'ENOENT') || isCode(error, 'EISDIR')) throw new UsageError(`There is no file ${file} to import.`);
    throw error;
  }
}

/** A first import may come before there is any collection. */
async function entriesIn(collection: string): Promise<Validated> {
  const there = await stat(collection).then(
    (found) => found.isDirectory(),
    () => false,
  );
  return there ? loadEntries(collection) : validateAll(splitFiles([]));
}

async function plan(
  given: ImportedReel,
  photographs: readonly string[],
  { entries }: Validated,
  collection: string,
  fill: boolean,
): Promise<Planned> {
  const { reel, copies } = withPhotographs(given, photographs);
  const { id } = reel;
  const before = entries.reels.find((one) => one.id === id);
  const file = before?.file ?? (copies.length > 0 ? `reels/${id}/index.md` : `reels/${id}.md`);
  if (before === undefined) {
    const taken = entries.unusable.has(`reels/${id}`);
    return { state: taken ? 'there' : 'new', id, file, text: entryText(reel), copies: taken ? [] : copies, lacks: [] };
  }
  const lacking = [...frontMatterOf(reel)].filter(([key]) => key !== 'photos' && !before.keys.has(key));
  const lacks = lacking.map(([key]) => key);
  if (!fill || lacking.length === 0) return { state: 'there', id, file, text: '', copies: [], lacks };
  const text = addFacts(await readFile(join(collection, file), 'utf8'), lacking.map(([, yaml]) => yaml).join(''));
  if (text === undefined) return { state: 'there', id, file, text: '', copies: [], lacks };
  return { state: 'filled', id, file, text, copies: [], lacks };
}

/** What would be written is read first, as the check reads it: nothing is written that can't be read again. */
function refuseUnreadable(planned: readonly Planned[]): void {
  const texts = planned.filter(({ state }) => state !== 'there').map(({ file, text }) => ({ path: file, text }));
  const [unusable] = validateAll(splitFiles(texts)).entries.unusable;
  if (unusable !== undefined)
    throw new Error(`fault: the entry made for ${unusable} can't be read again; nothing was written`);
}

async function writeAll(planned: readonly Planned[], collection: string): Promise<void> {
  for (const { state, file, text, copies } of planned) {
    if (state === 'there') continue;
    const path = join(collection, file);
    await mkdir(dirname(path), { recursive: true });
    for (const copy of copies) await copyPhotograph(copy, dirname(path));
    if (state === 'filled') await writeWhole(path, text);
    else await writeNew(path, text);
  }
}

function tell(planned: readonly Planned[], written: boolean, json: boolean, io: Io): void {
  const of = (state: Planned['state']) => planned.filter((one) => one.state === state);
  const copies = planned.reduce((sum, one) => sum + one.copies.length, 0);
  if (!json && !written) for (const { file, text } of of('new').slice(0, SHOWN)) io.out(`${file}\n${text}\n`);
  if (!json && !written && of('new').length > SHOWN)
    io.err(`and ${of('new').length - SHOWN} more like these (--format json lists all).\n`);
  const verb = written ? 'Wrote' : 'Would write';
  io.err(`${verb} ${many(of('new').length, 'new reel')}${copies === 0 ? '' : ` and ${many(copies, 'photograph')}`}`);
  io.err(
    `${of('filled').length === 0 ? '' : `, and add facts to ${of('filled').length}`}; ${of('there').length} already there, left as they are.\n`,
  );
  const lacking = of('there').filter(({ lacks }) => lacks.length > 0);
  if (lacking.length > 0)
    io.err(`Of these, ${lacking.length} lack facts that the sheet has: --fill adds them, and changes nothing else.\n`);
  if (!written) io.err('Nothing is written yet: --write writes.\n');
  else io.err('"npm run check" says what it makes of them.\n');
}
