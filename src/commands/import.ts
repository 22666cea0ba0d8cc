import { readFileSync } from 'node:fs';
import { stat } from 'node:fs/promises';
import { basename, extname, relative, resolve } from 'node:path';
import { headed, type Table } from '#compute/import/header.ts';
import { kindShown } from '#compute/import/kind-shown.ts';
import { NAMED_KINDS, type NamedKind, withNamedEntries } from '#compute/import/named-entries.ts';
import { type ColumnPlan, proposeColumns } from '#compute/import/propose-columns.ts';
import { readRows } from '#compute/import/read-rows.ts';
import { SHEET_KINDS, type SheetKind } from '#model/entry-column.ts';
import { valueOf } from '#model/fact.ts';
import { isCode, writeNew, writeWhole } from '#publish/atomic.ts';
import { splitFiles } from '#read/collection.ts';
import { readCsv, type Sheet, SheetRefused } from '#read/spreadsheet.ts';
import { readWorkbook } from '#read/workbook.ts';
import { cellReader } from '#validate/cell-reader.ts';
import { type Validated, validateAll } from '#validate/entries.ts';
import { ONE_OF } from '../desk/fields/kinds.ts';
import { commandLine } from './arguments.ts';
import { askColumns, askKind } from './import/ask-columns.ts';
import { type ColumnsFile, columnsText, readColumns } from './import/columns-file.ts';
import { photographsIn } from './import/photographs.ts';
import { type Planned, planEntry, refuseUnreadable, writePlanned } from './import/plan-entries.ts';
import { accountText, columnsReport, kindText, namedText, tell } from './import/report.ts';
import { DONE, type Io, UsageError } from './io.ts';
import { loadEntries } from './load.ts';
import { many } from './problem-list.ts';

/** A spreadsheet becomes entries: shows what it would write, and with --write writes it. What nobody can tell is asked at a
 * terminal, and kept. An entry that is there is never touched, but with --fill facts that it lacks are added. */
export async function importSheet(args: readonly string[], io: Io): Promise<number> {
  const { shared, values, positionals } = commandLine(args, io, {
    write: { type: 'boolean' },
    'dry-run': { type: 'boolean' },
    fill: { type: 'boolean' },
    kind: { type: 'string' },
    make: { type: 'string' },
    photographs: { type: 'string' },
    columns: { type: 'string' },
  });
  const [name, ...more] = positionals;
  if (name === undefined || more.length > 0) throw new UsageError('Say which spreadsheet: npm run import -- tapes.csv');
  if (values.write === true && values['dry-run'] === true) throw new UsageError('--write and --dry-run are opposites.');
  const makes = kindsToMake(values.make);
  const file = resolve(io.cwd, name);
  const sheet = await readSheet(file);
  const columnsFile = values.columns === undefined ? `${file}.columns.json` : resolve(io.cwd, values.columns);
  const said = readColumns(columnsFile);
  const table = headed(sheet.rows);
  const there = await entriesIn(shared.collection);
  const currency = valueOf(there.entries.collection.currency);
  for (const note of sheet.notes) io.err(`${note}\n`);

  const { kind, by } = await kindOf(values.kind, said, table, file, io);
  const accepts = cellReader(kind);
  const proposed = proposeColumns(table, kind, said.columns(kind)).map((plan) =>
    plan.as === 'valuations' && plan.unit === undefined ? { ...plan, unit: currency } : plan,
  );
  const plans = io.ask === undefined ? proposed : await askColumns(proposed, table, kind, accepts, io.ask);
  await keepColumns(
    columnsFile,
    said,
    kind,
    plans,
    plans.some((plan, at) => plan !== proposed[at]),
    io,
  );

  const rows = readRows(table, plans, kind, accepts);
  const known = there.entries;
  const titled = (of: NamedKind) => known[of].map(({ id, title }) => ({ id, title: title.value }));
  const titles = {
    editions: titled('editions'),
    people: titled('people'),
    stocks: titled('stocks'),
    places: titled('places'),
  };
  const named = withNamedEntries(rows.entries, makes, titles, cellReader);
  const accounted = {
    ...rows.accounted,
    asFacts: rows.accounted.asFacts + named.moved,
    inAlso: rows.accounted.inAlso - named.moved,
  };
  const photographs = values.photographs === undefined ? [] : photographsIn(resolve(io.cwd, values.photographs));
  const options = { collection: shared.collection, there, photographs, fill: values.fill === true };
  const planned = await Promise.all([...named.entries, ...named.made].map((entry) => planEntry(entry, options)));
  refuseUnreadable(planned);

  io.err(
    `${basename(file)}: ${many(plans.length, 'column')}, ${kindText(kind, by)}\n${columnsReport(plans, makes)}${accountText(accounted, rows)}${namedText(rows.entries, makes)}`,
  );
  const write = values.write === true;
  if (write) await writePlanned(planned, shared.collection);
  tell(planned, write, shared.json, io);
  if (shared.json) {
    const entries = planned.map(jsonOf);
    io.out(
      `${JSON.stringify({ kind, columns: plans, accounted, loose: rows.loose, entries, written: write }, null, 2)}\n`,
    );
  }
  return DONE;
}

const jsonOf = ({ kind, id, state, file, text, lacks, copies }: Planned) => ({
  kind,
  id,
  state,
  file,
  lacks,
  photographs: copies.map((copy) => copy.name),
  text,
});

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

/** What a row is: as said on the command line, else before, else as the sheet shows. */
async function kindOf(word: string | undefined, said: ColumnsFile, table: Table, file: string, io: Io) {
  if (word !== undefined) return { kind: kindNamed(word, '--kind'), by: 'as you said' } as const;
  if (said.kind !== undefined) return { kind: said.kind, by: 'as you said' } as const;
  const shown = kindShown(table.headers, basename(file, extname(file)));
  if (shown.by !== 'its headings' || io.ask === undefined) return shown;
  return { kind: await askKind(shown.kind, io.ask), by: 'as you said' } as const;
}

function kindNamed(word: string, option: string): SheetKind {
  const kind = SHEET_KINDS.find((one) => one === word || ONE_OF[one] === word);
  if (kind !== undefined) return kind;
  throw new UsageError(`${option} takes ${SHEET_KINDS.map((one) => ONE_OF[one]).join(', ')}, not "${word}".`);
}

function kindsToMake(words: string | undefined): ReadonlySet<SheetKind> {
  const kinds = words === 'all' ? NAMED_KINDS : (words ?? '').split(',').filter((word) => word !== '');
  return new Set(
    kinds.map((word) => {
      const kind = kindNamed(word.trim(), '--make');
      if (NAMED_KINDS.some((one) => one === kind)) return kind;
      throw new UsageError(`--make takes ${NAMED_KINDS.join(', ')} or all: rows name no other entries.`);
    }),
  );
}

/** Keeps what the columns are for the next time. What the owner wrote there is changed by nothing but an answer. */
async function keepColumns(
  path: string,
  said: ColumnsFile,
  kind: SheetKind,
  plans: readonly ColumnPlan[],
  answered: boolean,
  io: Io,
): Promise<void> {
  const text = columnsText(plans, kind, said.columns(kind));
  if (answered) await writeWhole(path, text);
  else if (!(await writeNew(path, text))) return;
  io.err(`What each column is stands in ${relative(io.cwd, path)}: change it there, and run this again.\n`);
}
