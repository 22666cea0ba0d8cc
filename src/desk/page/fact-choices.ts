import { isListWritten, isMapWritten, pathOf } from '#read/written-value.ts';
import type { Field, ManyField, OneField } from '../fields/field.ts';
import { FIELDS } from '../fields/kinds.ts';
import type { SheetState } from './sheet-state.ts';

/** Facts of one part of a reel, with the keys that a reading names them by. */
export interface FactChoices {
  readonly heading: string;
  readonly facts: readonly { readonly key: string; readonly label: string }[];
}

const NOT_READ = ['status', 'photos', 'readings', 'private', 'accepted', 'also'];

/** Every fact that a reading may be of: the reel's own, each line of its lists, and one line more. */
export function factChoices(state: SheetState): readonly FactChoices[] {
  const fields = FIELDS.reels.filter(({ key }) => !NOT_READ.includes(key));
  const flat = fields.filter((field) => field.is === 'one' || field.is === 'many');
  const also = state.at(['also']);
  const own = isMapWritten(also) ? Object.keys(also).map((key) => ({ key: `also.${key}`, label: key })) : [];
  return [
    { heading: 'The reel', facts: flat.map(({ key, label }) => ({ key, label })) },
    ...fields.flatMap((field) => ('fields' in field ? [inGroup(state, field)] : [])),
    ...(own.length === 0 ? [] : [{ heading: 'Also', facts: own }]),
  ];
}

function inGroup(state: SheetState, field: Extract<Field, { fields: unknown }>): FactChoices {
  const whole = { key: field.key, label: 'as a whole' };
  const below = (above: string, words: string) => factsBelow(field.fields, above, words, state);
  if (field.is === 'map') return { heading: field.label, facts: [...below(field.key, ''), whole] };
  const count = state.linesAt([field.key]).length;
  const lines = Array.from({ length: count + 1 }, (_, line) =>
    below(`${field.key}[${line}]`, line === count ? 'a new line: ' : `line ${line + 1}: `),
  );
  return { heading: field.label, facts: [...lines.flat(), whole] };
}

function factsBelow(fields: readonly Field[], above: string, words: string, state: SheetState): FactChoices['facts'] {
  return fields.flatMap((field) => {
    const key = `${above}.${field.key}`;
    if (field.is !== 'list') return [{ key, label: words + field.label }];
    const items = state.at(pathOf(key));
    const count = isListWritten(items) ? items.length : 0;
    return Array.from({ length: count + 1 }, (_, at) =>
      factsBelow(field.fields, `${key}[${at}]`, `${words}${field.label} ${at + 1}, `, state),
    ).flat();
  });
}

/** How a fact is entered that a reading is of; undefined for a whole group, which no text fills in. */
export function textFieldAt(key: string): OneField | ManyField | undefined {
  let fields: readonly Field[] = FIELDS.reels;
  let found: Field | undefined;
  for (const step of pathOf(key)) {
    if (typeof step === 'number') continue;
    found = fields.find((field) => field.key === step);
    fields = found !== undefined && 'fields' in found ? found.fields : [];
  }
  return found?.is === 'one' || found?.is === 'many' ? found : undefined;
}

/** What a fact is called: `Numbers: Matrix number`. */
export function factLabel(state: SheetState, key: string): string {
  for (const { heading, facts } of factChoices(state)) {
    const found = facts.find((fact) => fact.key === key);
    if (found !== undefined) return heading === 'The reel' ? found.label : `${heading}, ${found.label}`;
  }
  return key;
}
