/** Does one thing at a time, in the order in which they are asked for. */
export class Turns {
  #last: Promise<unknown> = Promise.resolve();

  take<T>(work: () => Promise<T>): Promise<T> {
    const next = this.#last.then(work, work);
    this.#last = next.catch(() => undefined);
    return next;
  }
}
