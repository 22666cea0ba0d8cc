import type { Loose } from '#model/entry.ts';
import type { SheetKind } from '#model/entry-column.ts';
import type { Branch, Node } from '#read/tree.ts';
import type { MapSchema } from './branch.ts';
import { namesFact } from './field-names.ts';
import { readFacts } from './read-facts.ts';
import { edition } from './schemas/edition.ts';
import { machine } from './schemas/machine.ts';
import { person } from './schemas/person.ts';
import { storagePlace } from './schemas/place.ts';
import { reel } from './schemas/reel.ts';
import { stock } from './schemas/stock.ts';

const SCHEMAS: Readonly<Record<SheetKind, MapSchema<unknown>>> = {
  reels: reel,
  editions: edition,
  machines: machine,
  stocks: stock,
  places: storagePlace,
  people: person,
};

const NOWHERE = { file: '', line: 1, column: 1, field: '' } as const;
const KNOWN_ENOUGH = 50_000;

/** Answers whether an entry of a kind can have a value under a dotted key. What was asked is remembered, as sheets repeat
 * themselves. */
export function cellReader(kind: SheetKind): (key: string, value: Loose) => boolean {
  const known = new Map<string, boolean>();
  return (key, value) => {
    const question = `${key}\0${JSON.stringify(value)}`;
    const before = known.get(question);
    if (before !== undefined) return before;
    const answer = canBeRead(kind, key, value);
    if (known.size < KNOWN_ENOUGH) known.set(question, answer);
    return answer;
  };
}

function canBeRead(kind: SheetKind, key: string, value: Loose): boolean {
  const [first = '', second] = key.split('.');
  const inner = nodeOf(value);
  const facts = {
    title: nodeOf('a title'),
    ...(kind === 'reels' ? { status: nodeOf('held') } : {}),
    [first]: second === undefined ? inner : branchOf({ [second]: inner }),
  };
  return (
    readFacts(SCHEMAS[kind], branchOf(facts)).problems.length === 0 &&
    keysIn(key, value).every((one) => namesFact(kind, one))
  );
}

/** Keys of facts that a value names: what is kept private, what a reading is of. */
function keysIn(key: string, value: Loose): readonly string[] {
  const items: readonly Loose[] = Array.isArray(value) ? value : [value];
  if (key === 'private') return items.filter((item) => typeof item === 'string');
  if (key !== 'readings') return [];
  return items.flatMap((item) =>
    typeof item === 'object' && 'of' in item && typeof item.of === 'string' ? [item.of] : [],
  );
}

function nodeOf(value: Loose): Node {
  if (typeof value === 'string') return { is: 'scalar', text: value, place: NOWHERE };
  if (Array.isArray(value)) return { is: 'list', items: value.map(nodeOf), place: NOWHERE };
  return branchOf(Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, nodeOf(inner as Loose)])));
}

const branchOf = (fields: Readonly<Record<string, Node>>): Branch => ({
  is: 'map',
  fields: Object.assign(Object.create(null), fields),
  keyPlaces: new Map(),
  place: NOWHERE,
});
