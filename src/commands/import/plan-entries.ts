import { mkdir, readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { ImportedEntry } from '#compute/import/read-rows.ts';
import type { SheetKind } from '#model/entry-column.ts';
import { writeNew, writeWhole } from '#publish/atomic.ts';
import { splitFiles } from '#read/collection.ts';
import { type Validated, validateAll } from '#validate/entries.ts';
import { entryText, factsOf } from './entry-text.ts';
import { filled } from './filled.ts';
import { copyPhotograph, type PhotographToCopy, withPhotographs } from './photographs.ts';

/** One entry as it would be: new, added to, or left as it is. */
export interface Planned {
  readonly state: 'new' | 'filled' | 'there';
  readonly kind: SheetKind;
  readonly id: string;
  readonly file: string;
  readonly text: string;
  readonly copies: readonly PhotographToCopy[];
  /** For one that is there: facts that the sheet has and it lacks. */
  readonly lacks: readonly string[];
}

export interface PlanOptions {
  readonly collection: string;
  readonly there: Validated;
  /** Absolute paths, from which a reel's own are chosen. */
  readonly photographs: readonly string[];
  /** Whether an entry that is there is given what it lacks. */
  readonly fill: boolean;
}

/** What is to be done about one imported entry. Nothing is written yet. */
export async function planEntry(given: ImportedEntry, options: PlanOptions): Promise<Planned> {
  const { entries } = options.there;
  const { entry, copies } = withPhotographs(given, options.photographs);
  const { id, kind } = entry;
  const before = entries[kind].find((one) => one.id === id);
  const file = before?.file ?? (copies.length > 0 ? `${kind}/${id}/index.md` : `${kind}/${id}.md`);
  if (before === undefined) {
    const taken = entries.unusable.has(`${kind}/${id}`);
    const state = taken ? 'there' : 'new';
    return { state, kind, id, file, text: entryText(entry), copies: taken ? [] : copies, lacks: [] };
  }
  const { lacks, text } = filled(await readFile(join(options.collection, file), 'utf8'), file, factsOf(entry));
  if (!options.fill || text === undefined) return { state: 'there', kind, id, file, text: '', copies: [], lacks };
  return { state: 'filled', kind, id, file, text, copies: [], lacks };
}

/** What would be written is read first, as the check reads it: nothing is written that can't be read again. */
export function refuseUnreadable(planned: readonly Planned[]): void {
  const texts = planned.filter(({ state }) => state !== 'there').map(({ file, text }) => ({ path: file, text }));
  const [unusable] = validateAll(splitFiles(texts)).entries.unusable;
  if (unusable !== undefined)
    throw new Error(`fault: the entry made for ${unusable} can't be read again; nothing was written`);
}

/** Writes what was planned, each entry whole or not at all. */
export async function writePlanned(planned: readonly Planned[], collection: string): Promise<void> {
  for (const { state, file, text, copies } of planned) {
    if (state === 'there') continue;
    const path = join(collection, file);
    await mkdir(dirname(path), { recursive: true });
    for (const copy of copies) await copyPhotograph(copy, dirname(path));
    if (state === 'filled') await writeWhole(path, text);
    else await writeNew(path, text);
  }
}
