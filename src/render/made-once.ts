/** Where an object brings what would otherwise be made of it. The builder bundles the pages, so that they have their own
 * copy of every module: a symbol of the whole program is the same in both. */
const GIVEN = Symbol.for('tailout.given');

/** By the name under which it is made. */
export type Given = Readonly<Record<string, unknown>>;

/** A function that makes something of an object once, and then gives it back. An object that was `given` its own answer
 * gives that one. */
export function madeOnce<From extends object, To>(name: string, make: (from: From) => To): (from: From) => To {
  const known = new WeakMap<From, To>();
  return (from) => {
    const given = (from as { readonly [GIVEN]?: Given })[GIVEN];
    if (given !== undefined && name in given) return given[name] as To;
    const before = known.get(from);
    if (before !== undefined) return before;
    const made = make(from);
    known.set(from, made);
    return made;
  };
}

/** The same object, bringing its own answers; they aren't among its keys. */
export function giving<From extends object>(from: From, given: Given): From {
  return Object.defineProperty(from, GIVEN, { value: given });
}
