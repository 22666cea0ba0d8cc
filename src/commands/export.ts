import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join, relative, resolve } from 'node:path';
import { writeWhole } from '#publish/atomic.ts';
import { HeldElsewhere } from '#publish/build-lock.ts';
import { Vanished } from '#publish/export/bag.ts';
import { csvExport } from '#publish/export/csv.ts';
import type { Exported } from '#publish/export/export-file.ts';
import { AlreadyThere, makeFolder } from '#publish/export/folder.ts';
import { jsonldExport } from '#publish/export/jsonld.ts';
import { pbcoreExport } from '#publish/export/pbcore.ts';
import { scheduleExport } from '#publish/export/schedule.ts';
import { commandLine } from './arguments.ts';
import { exportBag } from './export/bag.ts';
import { type ForWhom, forWhom } from './export/for-whom.ts';
import { exportIiif } from './export/iiif.ts';
import { DONE, type Io, PROBLEMS, UsageError } from './io.ts';
import { loadCatalogue } from './load.ts';
import { many } from './problem-list.ts';

const FORMS = ['csv', 'schedule', 'pbcore', 'iiif', 'jsonld', 'bag'] as const;
type Form = (typeof FORMS)[number];

/** Writes what other programs and people read, whole or not at all, and says what it can't carry. With --for it holds what
 * that share allows and nothing else. */
export async function exportAs(args: readonly string[], io: Io): Promise<number> {
  const { shared, values } = commandLine(args, io, {
    as: { type: 'string' },
    for: { type: 'string' },
    out: { type: 'string' },
    base: { type: 'string' },
    cache: { type: 'string' },
  });
  const form = FORMS.find((one) => one === values.as);
  if (form === undefined) throw new UsageError(`Say what as: --as ${FORMS.join(', --as ')}.`);
  if (values.out === undefined) throw new UsageError('Say where to: --out PATH.');
  const out = resolve(io.cwd, values.out);
  refuseInside(shared.collection, out);
  const cache = values.cache === undefined ? undefined : resolve(io.cwd, values.cache);
  const loaded = await loadCatalogue(shared, io, cache);
  const whom = forWhom(loaded.catalogue, values.for, shared.collection);
  if ('ended' in whom) {
    io.err(`${whom.ended}\n`);
    return PROBLEMS;
  }
  const waiting = (sentence: string) => io.err(`${sentence}\n`);
  const leavesOut = await orRefusal(async () => {
    if (form === 'bag') return await exportBag({ ...loaded, ...shared, out, share: values.for }, io);
    if (form === 'iiif') return await exportIiif(whom, { out, base: values.base, cache: loaded.cache, waiting });
    return await writeExported(made(form, whom), form, out, waiting);
  });
  io.err(
    `${many(form === 'bag' ? loaded.catalogue.reels.length : whom.catalogue.reels.length, 'reel')} in ${relative(io.cwd, out) || '.'}.\n`,
  );
  io.err(`It can't carry:\n${leavesOut.map((line) => `  - ${line}\n`).join('')}`);
  if (values.for !== undefined) io.err('Facts that the share doesn’t show aren’t in it at all.\n');
  if (shared.json)
    io.out(`${JSON.stringify({ as: form, out, reels: whom.catalogue.reels.length, 'leaves-out': leavesOut })}\n`);
  return DONE;
}

function made(form: Exclude<Form, 'bag' | 'iiif'>, { catalogue }: ForWhom): Exported {
  if (form === 'csv') return csvExport(catalogue);
  if (form === 'jsonld') return jsonldExport(catalogue);
  if (form === 'schedule') return scheduleExport(catalogue);
  const pbcore = pbcoreExport(catalogue);
  if (pbcore === undefined) throw new UsageError('There is no reel to export, and PBCore wants at least one.');
  return pbcore;
}

/** One file where the export has one, else a folder. */
async function writeExported(
  { files, leavesOut }: Exported,
  form: Form,
  out: string,
  waiting: (sentence: string) => void,
): Promise<readonly string[]> {
  const whole = files.get('');
  if (whole !== undefined) {
    await mkdir(dirname(out), { recursive: true });
    await writeWhole(out, whole);
  } else {
    await makeFolder(
      out,
      async (into) => {
        for (const [name, data] of files) await writeFile(join(into, name), data);
      },
      waiting,
    );
  }
  return [
    ...leavesOut,
    ...(form === 'csv'
      ? [
          'what stands first in a cell as =, +, - or @ has an apostrophe before it, so that no spreadsheet runs it; the import takes it away',
        ]
      : []),
  ];
}

function refuseInside(collection: string, out: string): void {
  const inside = relative(collection, out);
  if (inside === '' || !(inside.startsWith('..') || resolve(inside) === inside))
    throw new UsageError('--out leads into the collection itself. Choose a place outside it.');
}

async function orRefusal<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof AlreadyThere || error instanceof HeldElsewhere || error instanceof Vanished)
      throw new UsageError(error.message);
    throw error;
  }
}
