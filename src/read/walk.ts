import {
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type Pair,
  type ParsedNode,
  type YAMLMap,
  type Scalar as YamlScalar,
} from 'yaml';
import type { Diagnostic } from '#model/diagnostic.ts';
import type { Place } from '#model/place.ts';
import { entryProblem } from './entry-problem.ts';
import type { Branch, Node, Scalar } from './tree.ts';

/** No entry needs more than five levels. */
const DEEPEST = 24;

export interface Walked {
  readonly root: Branch;
  readonly problems: readonly Diagnostic[];
  /** True when something in it must not be read at all: an alias, an anchor, a tag, a bomb of levels. */
  readonly refused: boolean;
}

/** Walks a YAML map once, into values with their places. Aliases, anchors and tags are refused where they stand.
 *
 * @param yaml        The text that was parsed.
 * @param lineStarts  Offset of each line, the first being 0. */
export function walk(map: YAMLMap, yaml: string, lineStarts: readonly number[], file: string): Walked {
  const problems: Diagnostic[] = [];
  let refused = false;
  let at = 0;

  function placeOf(offset: number, field: string): Place {
    if (offset < (lineStarts[at] ?? 0)) at = 0;
    while (offset >= (lineStarts[at + 1] ?? Infinity)) at++;
    return { file, line: at + 1, column: offset - (lineStarts[at] ?? 0) + 1, field };
  }

  function refuse(place: Place, what: string, found: string, action: string): undefined {
    refused = true;
    const expected = 'plain texts, lists and maps';
    problems.push(
      entryProblem('entry/code-refused', place, { message: `${what} isn't read.`, found, expected, action }),
    );
  }

  function node(value: ParsedNode | null, field: string, depth: number): Node | undefined {
    if (value === null) return undefined;
    const offset = value.range[0];
    if (isAlias(value)) {
      const action = `Write the value out again, or put it in quotes if it really begins with *.`;
      return refuse(placeOf(offset, field), 'A YAML alias', `*${value.source}`, action);
    }
    if (value.tag !== undefined || value.anchor !== undefined) return property(value, offset, field);
    if (isScalar(value)) return scalar(value, offset, field);
    if (depth > DEEPEST)
      return refuse(placeOf(offset, field), `A value ${DEEPEST} levels down`, field, 'Write it nearer to the top.');
    if (isMap(value)) return branch(value, field, depth);
    if (!isSeq(value)) throw new Error('fault: a YAML node of a kind that the walk does not know');
    const place = placeOf(offset, field);
    const items = value.items.map((item, index) => node(item as ParsedNode | null, `${field}[${index}]`, depth + 1));
    return { is: 'list', items, place };
  }

  /** A tag or an anchor, told where its own sign stands: the parser only keeps where the value behind it begins. */
  function property(value: ParsedNode, offset: number, field: string): undefined {
    const [what, sign] = value.tag === undefined ? ['A YAML anchor', '&'] : ['A YAML tag', '!'];
    let start = Math.max(yaml.lastIndexOf(sign, offset - 1), 0);
    while (start > 0 && yaml[start - 1] === sign) start--;
    const found = yaml.slice(start, offset).trim();
    const action = `Take it away, or put the whole value in quotes if it really begins with "${sign}".`;
    return refuse(placeOf(start, field), what, found, action);
  }

  function scalar(value: YamlScalar, offset: number, field: string): Scalar | undefined {
    const written = String(value.value ?? '');
    const text = value.type === 'BLOCK_LITERAL' || value.type === 'BLOCK_FOLDED' ? written.trimEnd() : written;
    return text === '' ? undefined : { is: 'scalar', text, place: placeOf(offset, field) };
  }

  function branch(value: YAMLMap, field: string, depth: number): Branch {
    const place = placeOf(value.range?.[0] ?? 0, field);
    const fields: Record<string, Node | undefined> = Object.create(null);
    const keyPlaces = new Map<string, Place>();
    for (const pair of value.items as Pair<ParsedNode | null, ParsedNode | null>[]) {
      const key = pair.key;
      if (
        !isScalar(key) ||
        key.tag !== undefined ||
        key.anchor !== undefined ||
        typeof key.value !== 'string' ||
        key.value === ''
      ) {
        oddKey(key, place, field);
        continue;
      }
      const name = key.value;
      const path = field === '' ? name : `${field}.${name}`;
      const keyPlace = placeOf(key.range[0], path);
      const before = keyPlaces.get(name);
      if (before !== undefined) {
        repeated(name, keyPlace, before);
        continue;
      }
      keyPlaces.set(name, keyPlace);
      fields[name] = node(pair.value, path, depth + 1);
    }
    return { is: 'map', fields, keyPlaces, place };
  }

  function oddKey(key: ParsedNode | null, parent: Place, field: string) {
    const place = key === null ? parent : placeOf(key.range[0], field);
    refuse(
      place,
      'A key that is no plain word',
      key === null ? '' : String(key),
      'Write a key as one word, then a colon.',
    );
  }

  function repeated(name: string, place: Place, before: Place) {
    const words = {
      message: `"${name}" stands here a second time; the first one is used.`,
      found: name,
      expected: 'each key once',
      action: 'Take one of the two away, or join their values in a list.',
    };
    const related = [{ message: 'The first one.', place: before }];
    problems.push({ ...entryProblem('entry/repeated-key', place, words), related });
  }

  return { root: branch(map, '', 0), problems, refused };
}
