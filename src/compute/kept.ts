/** Answers kept beside the thing that they are about, for as long as it lives: asked again with the same things to go by,
 * it gives the same answer without the work. Only for pure functions of values that nobody changes.
 *
 * `goesBy` is compared one by one and by identity; it must hold all that the work looks at beside the subject. */
export function keeping<S extends object, T>(): (subject: S, goesBy: readonly unknown[], work: () => T) => T {
  const answers = new WeakMap<S, { readonly goesBy: readonly unknown[]; readonly answer: T }>();
  return (subject, goesBy, work) => {
    const known = answers.get(subject);
    if (known !== undefined && isSame(known.goesBy, goesBy)) return known.answer;
    const answer = work();
    answers.set(subject, { goesBy, answer });
    return answer;
  };
}

const isSame = (a: readonly unknown[], b: readonly unknown[]) =>
  a.length === b.length && a.every((one, at) => one === b[at]);

/** Gives the list of the last time where it has the same members in the same order, so that what goes by the list can
 * tell by its identity that nothing in it changed. */
export function keepingLists<T extends object>(): (list: readonly T[]) => readonly T[] {
  const kept = keeping<T, readonly T[]>();
  const none: readonly T[] = [];
  return (list) => {
    const [first] = list;
    return first === undefined ? none : kept(first, list, () => list);
  };
}

/** Gives the answer of the last time where the new one says the same: for answers that are quickly made, and that much
 * else goes by. They must be plain data, such as JSON holds. */
export function keepingEqual<S extends object, T>(): (subject: S, answer: T) => T {
  const answers = new WeakMap<S, { readonly said: string; readonly answer: T }>();
  return (subject, answer) => {
    const said = JSON.stringify(answer);
    const known = answers.get(subject);
    if (known?.said === said) return known.answer;
    answers.set(subject, { said, answer });
    return answer;
  };
}
