import type { Loose } from '#model/entry.ts';
import type { Branch, Node } from '#read/tree.ts';
import { readFacts } from './read-facts.ts';
import { reel } from './schemas/reel.ts';

const NOWHERE = { file: '', line: 1, column: 1, field: '' } as const;
const KNOWN_ENOUGH = 50_000;

/** Answers whether a reel's entry can have a value under a dotted key. What was asked is remembered, as sheets repeat
 * themselves. */
export function reelCellReader(): (key: string, value: Loose) => boolean {
  const known = new Map<string, boolean>();
  return (key, value) => {
    const question = `${key}\0${JSON.stringify(value)}`;
    const before = known.get(question);
    if (before !== undefined) return before;
    const answer = canBeRead(key, value);
    if (known.size < KNOWN_ENOUGH) known.set(question, answer);
    return answer;
  };
}

function canBeRead(key: string, value: Loose): boolean {
  const [first = '', second] = key.split('.');
  const inner = nodeOf(value);
  const facts = {
    title: nodeOf('a title'),
    status: nodeOf('held'),
    [first]: second === undefined ? inner : branchOf({ [second]: inner }),
  };
  return readFacts(reel, branchOf(facts)).problems.length === 0;
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
