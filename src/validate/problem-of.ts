import type { Diagnostic } from '#model/diagnostic.ts';
import { nearestOf } from '#model/nearest.ts';
import type { Place } from '#model/place.ts';
import type { Branch, Node } from '#read/tree.ts';
import { nodeAt } from './prune.ts';
import type { Trouble } from './trouble.ts';

/** A trouble with one value, told at the character where that value or its key stands.
 *
 * @param keysBelow  All keys of the entry's kind, dotted, to find the one that was meant. */
export function problemOf(
  trouble: Trouble,
  path: readonly PropertyKey[],
  root: Branch,
  keysBelow: readonly string[],
): Diagnostic {
  switch (trouble.is) {
    case 'bad-value': {
      const node = nodeAt(root, path) ?? shorthand(root, path);
      const { code = 'entry/bad-value', ...words } = trouble.refusal;
      return {
        severity: 'error',
        ...words,
        code,
        found: written(node),
        place: node?.place ?? keyPlace(root, path),
        related: [],
      };
    }
    case 'missing': {
      const key = String(path.at(-1) ?? '');
      return {
        code: 'entry/missing',
        severity: 'error',
        message: `"${key}" is missing.`,
        action: `Write ${trouble.expected.startsWith(`${key}:`) ? `a line ${trouble.expected}` : key}.`,
        found: '',
        expected: trouble.expected,
        place: keyPlace(root, path),
        related: [],
      };
    }
    case 'unknown-key':
      return nodeAt(root, path) === undefined && /[ ,]/u.test(String(path.at(-1)))
        ? loosePart(String(path.at(-1)), keyPlace(root, path))
        : unknownKey(String(path.at(-1)), keyPlace(root, path), trouble.known, keysBelow);
    default:
      throw new Error(`fault: ${JSON.stringify(trouble satisfies never)} has no words`);
  }
}

/** In `{ note: bought, unseen }` the comma ends the note, and what follows looks like a key with nothing behind it. */
function loosePart(text: string, place: Place): Diagnostic {
  return {
    code: 'entry/unknown-key',
    severity: 'error',
    message:
      'Words stand where a key and a colon are read; a comma before them may have ended the value they belong to.',
    action: 'Put the whole value in quotes, from its start to the end of these words.',
    found: text,
    expected: 'a key, a colon and its value',
    place,
    related: [],
  };
}

function unknownKey(key: string, place: Place, known: readonly string[], keysBelow: readonly string[]): Diagnostic {
  const near = nearestOf(key, known) ?? elsewhere(key, keysBelow);
  return {
    code: 'entry/unknown-key',
    severity: 'error',
    message:
      near === undefined
        ? `There is no key "${key}" here.`
        : `There is no key "${key}" here; the nearest is "${near}".`,
    action:
      near === undefined
        ? 'Move it under also: if no key fits; what stands there is shown and never computed with.'
        : `Write ${near}${near.includes('.') ? ', the last part set in under the first' : ''}; or move it under also: if that isn't meant.`,
    found: key,
    expected: near ?? known.join(', '),
    place,
    related: [],
  };
}

/** The same key, or one a slip away, in another part of the entry: `speed` at the top is `format.speed`. */
function elsewhere(key: string, keysBelow: readonly string[]): string | undefined {
  const last = (dotted: string) => dotted.slice(dotted.lastIndexOf('.') + 1);
  const same = keysBelow.find((dotted) => dotted === key || last(dotted) === key);
  if (same !== undefined) return same;
  const near = nearestOf(key, new Set(keysBelow.map(last)));
  return keysBelow.find((dotted) => last(dotted) === near);
}

/** The text that stands in place of a whole map, for the one key of it that the text is. */
function shorthand(root: Branch, path: readonly PropertyKey[]): Node | undefined {
  const parent = nodeAt(root, path.slice(0, -1));
  return parent?.is === 'scalar' ? parent : undefined;
}

/** Where the key at the end of a path is written, or where the map begins that lacks it. */
function keyPlace(root: Branch, path: readonly PropertyKey[]): Place {
  const key = path.at(-1);
  const parent = nodeAt(root, path.slice(0, -1));
  const field = fieldOf(path);
  const place =
    parent?.is === 'map' && typeof key === 'string' ? (parent.keyPlaces.get(key) ?? parent.place) : parent?.place;
  return { ...(place ?? root.place), field };
}

function fieldOf(path: readonly PropertyKey[]): string {
  let field = '';
  for (const step of path)
    field += typeof step === 'number' ? `[${step}]` : `${field === '' ? '' : '.'}${String(step)}`;
  return field;
}

function written(node: Node | undefined): string {
  if (node === undefined) return '';
  if (node.is === 'scalar') return node.text;
  return node.is === 'list' ? `a list of ${node.items.length}` : `a map of ${Object.keys(node.fields).join(', ')}`;
}
