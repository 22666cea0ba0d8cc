import type { Branch, Node } from '#read/tree.ts';

/** The same entry without the values at these paths, so that what is sound can be read. A path that leads to nothing
 * stands for a key that is missing: the map that lacks it goes. undefined when that is the entry itself. */
export function prune(root: Branch, paths: readonly (readonly PropertyKey[])[]): Branch | undefined {
  const cut: Cut = { whole: false, below: new Map() };
  for (const path of paths)
    mark(
      cut,
      path.at(-1) !== undefined && nodeAt(root, path) === undefined && !hasKey(root, path) ? path.slice(0, -1) : path,
    );
  if (cut.whole) return undefined;
  return without(root, cut) as Branch;
}

/** What to take out of a node: all of it, or something below. */
interface Cut {
  whole: boolean;
  readonly below: Map<PropertyKey, Cut>;
}

function mark(cut: Cut, path: readonly PropertyKey[]): void {
  let here = cut;
  for (const step of path) {
    let next = here.below.get(step);
    if (next === undefined) {
      next = { whole: false, below: new Map() };
      here.below.set(step, next);
    }
    here = next;
  }
  here.whole = true;
}

function without(node: Node, cut: Cut): Node | undefined {
  if (cut.whole) return undefined;
  if (node.is === 'scalar' || cut.below.size === 0) return node;
  if (node.is === 'list') {
    const items = node.items.flatMap((item, index) => {
      const inner = cut.below.get(index);
      if (inner?.whole) return [];
      return [inner === undefined || item === undefined ? item : without(item, inner)];
    });
    return { ...node, items };
  }
  const fields: Record<string, Node | undefined> = Object.create(null);
  for (const [key, value] of Object.entries(node.fields)) {
    const inner = cut.below.get(key);
    if (inner?.whole) continue;
    fields[key] = inner === undefined || value === undefined ? value : without(value, inner);
  }
  return { ...node, fields };
}

/** The node at a path of keys and indexes; undefined when there is none. */
export function nodeAt(root: Node, path: readonly PropertyKey[]): Node | undefined {
  let here: Node | undefined = root;
  for (const step of path) {
    if (here?.is === 'map') here = typeof step === 'string' ? here.fields[step] : undefined;
    else if (here?.is === 'list') here = typeof step === 'number' ? here.items[step] : undefined;
    else return undefined;
  }
  return here;
}

/** Whether the path's last step is written, with a value or without one. */
function hasKey(root: Branch, path: readonly PropertyKey[]): boolean {
  const parent = nodeAt(root, path.slice(0, -1));
  const last = path.at(-1);
  if (parent?.is === 'list') return typeof last === 'number' && last < parent.items.length;
  return parent?.is === 'map' && typeof last === 'string' && parent.keyPlaces.has(last) && last in parent.fields;
}
