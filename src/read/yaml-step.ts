import { isMap, isScalar, isSeq, type ParsedNode, type Scalar } from 'yaml';
import type { Step } from './first-difference.ts';
import type { Written, WrittenPath } from './written-value.ts';
import {
  isBlockScalar,
  isFlow,
  isNothing,
  keyOf,
  type ListNode,
  type MapNode,
  type PairNode,
  type Splice,
  type YamlPlaces,
} from './yaml-splice.ts';
import { blockText, flowText, pairText, type Quoting, yamlScalar } from './yaml-text.ts';
import { withinText } from './yaml-within.ts';

/** Where a value stands: behind a key, or as an item. */
type Holder =
  | { readonly is: 'pair'; readonly map: MapNode; readonly pair: PairNode }
  | { readonly is: 'item'; readonly list: ListNode; readonly index: number };

/** The piece of text that a step changes, in the ways in which it can be done, the one that changes least first. None where
 * the text has a form that it can't be done in.
 *
 * @param order  Keys in the order in which new ones are put, dotted. */
export function splicesFor(places: YamlPlaces, step: Step, order: readonly string[]): readonly Splice[] {
  const last = step.path.at(-1);
  if (last === undefined) return [];
  if (step.is === 'insert') return given(insertion(places, step.path, last, step.value, order));
  const holder = holderOf(places, step.path);
  if (holder === undefined) return [];
  if (step.is === 'remove') return given(removal(places, holder));
  return [...given(within(places, holder, step.value)), ...given(replacement(places, holder, step.value))];
}

const given = (splice: Splice | undefined): readonly Splice[] => (splice === undefined ? [] : [splice]);

/** A text on several lines, of which only some change. */
function within(places: YamlPlaces, holder: Holder, value: Written): Splice | undefined {
  const node = holder.is === 'pair' ? holder.pair.value : places.items(holder.list)[holder.index];
  if (!isScalar(node) || typeof value !== 'string') return undefined;
  const before = String(node.value ?? '');
  const plain = isBlockScalar(node) ? before.trimEnd() : before;
  return withinText(places.text, node as Scalar.Parsed, places.endOf(node), plain, value);
}

function holderOf(places: YamlPlaces, path: WrittenPath): Holder | undefined {
  const parent = nodeAt(places, path.slice(0, -1));
  const last = path.at(-1);
  if (typeof last === 'number' && isSeq(parent)) return { is: 'item', list: parent as ListNode, index: last };
  if (typeof last !== 'string' || !isMap(parent)) return undefined;
  const pair = places.pairOf(parent as MapNode, last);
  return pair === undefined ? undefined : { is: 'pair', map: parent as MapNode, pair };
}

function nodeAt(places: YamlPlaces, path: WrittenPath): ParsedNode | null {
  let node: ParsedNode | null = places.root;
  for (const step of path) {
    if (typeof step === 'string' && isMap(node)) node = places.pairOf(node as MapNode, step)?.value ?? null;
    else if (typeof step === 'number' && isSeq(node)) node = places.items(node as ListNode)[step] ?? null;
    else return null;
  }
  return node;
}

function replacement(places: YamlPlaces, holder: Holder, value: Written): Splice | undefined {
  const node = holder.is === 'pair' ? holder.pair.value : places.items(holder.list)[holder.index];
  const inFlow = isFlow(holder.is === 'pair' ? holder.map : holder.list);
  if (isNothing(node)) {
    if (holder.is === 'item') return undefined;
    const at = places.colonEnd(holder.pair);
    const text = inFlow ? ` ${flowText(value, true)}` : blockText(value, places.columnOf(places.startOf(holder.pair)));
    return { start: at, end: at, text };
  }
  const end = places.endOf(node);
  if (isScalar(node) && !isBlockScalar(node) && typeof value === 'string') {
    return { start: node.range[0], end, text: yamlScalar(value, inFlow, node.type as Quoting) };
  }
  if (holder.is === 'pair' && !inFlow) {
    const column = places.columnOf(places.startOf(holder.pair));
    return { start: places.colonEnd(holder.pair), end, text: blockText(value, column) };
  }
  return { start: node.range[0], end, text: flowText(value, inFlow) };
}

function removal(places: YamlPlaces, holder: Holder): Splice | undefined {
  if (holder.is === 'pair') {
    const pairs = places.pairs(holder.map);
    const at = pairs.indexOf(holder.pair);
    const spans = pairs.map((pair) => [places.startOf(pair), places.endOfPair(pair)] as const);
    return isFlow(holder.map) ? outOfFlow(spans, at) : outOfBlock(places, spans, at);
  }
  const items = places.items(holder.list);
  if (items.some((item) => item === null)) return undefined;
  const spans = items.map((item) => [(item as ParsedNode).range[0], places.endOf(item as ParsedNode)] as const);
  if (isFlow(holder.list)) return outOfFlow(spans, holder.index);
  const column = places.columnOf(holder.list.range[0]);
  const dashed = spans.map(([start, end]) => [dashOf(places, start, column), end] as const);
  return outOfBlock(places, dashed, holder.index);
}

/** The dash of an item: on the nearest line before it that has one in the list's column. */
function dashOf(places: YamlPlaces, start: number, column: number): number {
  let line = places.lineStart(start);
  while (places.text[line + column] !== '-' && line > 0) line = places.lineStart(line - 1);
  return line + column;
}

type Span = readonly [start: number, end: number];

function outOfFlow(spans: readonly Span[], at: number): Splice | undefined {
  const own = spans[at];
  const next = spans[at + 1];
  const previous = spans[at - 1];
  if (own === undefined || spans.length === 1) return undefined;
  if (next !== undefined) return { start: own[0], end: next[0], text: '' };
  return previous === undefined ? undefined : { start: previous[1], end: own[1], text: '' };
}

function outOfBlock(places: YamlPlaces, spans: readonly Span[], at: number): Splice | undefined {
  const own = spans[at];
  if (own === undefined || spans.length === 1) return undefined;
  const line = places.lineStart(own[0]);
  if (places.text.slice(line, own[0]).trim() === '') {
    return { start: line, end: places.nextLine(own[1]), text: '' };
  }
  // It shares its line with the dash that it stands behind: what follows moves up to it.
  const next = spans[at + 1];
  return next === undefined ? undefined : { start: own[0], end: next[0], text: '' };
}

function insertion(
  places: YamlPlaces,
  path: WrittenPath,
  last: string | number,
  value: Written,
  order: readonly string[],
): Splice | undefined {
  const parent = nodeAt(places, path.slice(0, -1));
  if (typeof last === 'number') return isSeq(parent) ? itemInto(places, parent as ListNode, last, value) : undefined;
  if (!isMap(parent)) return undefined;
  // A key that stands there with nothing behind it gets its value.
  const empty = places.pairOf(parent as MapNode, last);
  if (empty !== undefined) return replacement(places, { is: 'pair', map: parent as MapNode, pair: empty }, value);
  return pairInto(places, parent as MapNode, path, last, value, order);
}

function pairInto(
  places: YamlPlaces,
  map: MapNode,
  path: WrittenPath,
  key: string,
  value: Written,
  order: readonly string[],
): Splice | undefined {
  const pairs = places.pairs(map);
  const above = path.slice(0, -1).filter((step) => typeof step === 'string');
  const rank = (name: string | undefined) => order.indexOf([...above, name].join('.'));
  const own = rank(key);
  const earlier = own < 0 ? pairs : pairs.filter((pair) => rank(keyOf(pair)) >= 0 && rank(keyOf(pair)) < own);
  const previous = earlier.at(-1);
  const [first] = pairs;
  if (isFlow(map)) {
    const text = pairText(key, value);
    if (previous !== undefined) {
      const at = places.endOfPair(previous);
      return { start: at, end: at, text: `, ${text}` };
    }
    if (first === undefined) return { start: map.range[0], end: map.range[1], text: `{ ${text} }` };
    return { start: places.startOf(first), end: places.startOf(first), text: `${text}, ` };
  }
  if (first === undefined) return undefined;
  const column = places.columnOf(places.startOf(first));
  const line = `${yamlScalar(key, false)}:${blockText(value, column)}\n`;
  const indent = ' '.repeat(column);
  if (previous !== undefined) {
    const at = places.lineAfter(places.endOfPair(previous) - 1, column);
    return { start: at, end: at, text: `${indent}${line}` };
  }
  // Behind a dash the new key takes the place of the first one, which moves to a line of its own.
  const at = places.startOf(first);
  return { start: at, end: at, text: `${line}${indent}` };
}

function itemInto(places: YamlPlaces, list: ListNode, index: number, value: Written): Splice | undefined {
  const items = places.items(list);
  if (items.some((item) => item === null)) return undefined;
  const before = items[index - 1] ?? undefined;
  const after = items[index] ?? undefined;
  const text = flowText(value, isFlow(list));
  if (isFlow(list)) {
    if (before !== undefined) return at(places.endOf(before), `, ${text}`);
    return after === undefined
      ? { start: list.range[0], end: list.range[1], text: `[${text}]` }
      : at(after.range[0], `${text}, `);
  }
  const column = places.columnOf(list.range[0]);
  const indent = ' '.repeat(column);
  if (before !== undefined) return at(places.lineAfter(places.endOf(before) - 1, column), `${indent}- ${text}\n`);
  return after === undefined ? undefined : at(dashOf(places, after.range[0], column), `- ${text}\n${indent}`);
}

const at = (offset: number, text: string): Splice => ({ start: offset, end: offset, text });
