import { addFacts } from '#read/add-facts.ts';
import { CannotEdit, editEntry } from '#read/entry-edit.ts';
import { splitEntry } from '#read/front-matter.ts';
import type { Branch } from '#read/tree.ts';
import { isMapWritten, type Written } from '#read/written-value.ts';
import { keyOrder } from '../../desk/fields/kinds.ts';
import { yamlOf } from './entry-text.ts';

/** What a sheet would add to an entry that is there. */
export interface Filled {
  /** Keys that the sheet has and the entry lacks, `format.speed` within a map. */
  readonly lacks: readonly string[];
  /** The entry with them; undefined when it lacks nothing, or can't be added to. */
  readonly text: string | undefined;
}

/** Photographs are copied for new entries only: which of them an old one means, its owner decides. */
const NEVER = ['photos'];

/** What an entry lacks of a sheet's facts, within its maps too. What it says already stays byte for byte, and so does a
 * key that has nothing behind it: its owner left it so.
 *
 * @param path  The entry's, relative to the collection. */
export function filled(text: string, path: string, facts: ReadonlyMap<string, Written>): Filled {
  const { address, entry } = splitEntry({ path, text });
  if (entry === undefined || address === undefined) return { lacks: [], text: undefined };
  const whole = [...facts].filter(([key]) => !NEVER.includes(key) && !entry.root.keyPlaces.has(key));
  const inner = [...facts].flatMap(([key, value]) => {
    const there = entry.root.fields[key];
    return there?.is === 'map' ? lackedBy(there, value).map(([below, item]) => ({ path: [key, below], to: item })) : [];
  });
  const lacks = [...inner.map((one) => one.path.join('.')), ...whole.map(([key]) => key)];
  if (lacks.length === 0) return { lacks, text: undefined };
  try {
    const order = keyOrder(entry.folder);
    const edited = inner.length === 0 ? text : editEntry(text, inner, order);
    const added = addFacts(edited, yamlOf(whole));
    if (added !== undefined && splitEntry({ path, text: added }).entry !== undefined) return { lacks, text: added };
    // Facts in brackets as a whole take no lines at their end.
    const changes = whole.map(([key, value]) => ({ path: [key], to: value }));
    return { lacks, text: editEntry(edited, changes, order) };
  } catch (error) {
    if (error instanceof CannotEdit) return { lacks, text: undefined };
    throw error;
  }
}

const lackedBy = (there: Branch, value: Written): readonly (readonly [string, Written])[] =>
  isMapWritten(value) ? Object.entries(value).filter(([key]) => !there.keyPlaces.has(key)) : [];
