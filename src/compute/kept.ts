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
