import { type ChildProcess, spawn } from 'node:child_process';
import { constants, setPriority } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import type { Catalogue } from '#model/catalogue.ts';
import type { ServedSite } from '#publish/served-site.ts';
import type { BuildOptions } from './build-site.ts';
import type { Io } from './io.ts';
import { loadCatalogue } from './load.ts';
import { countsOf, countsText, problemText } from './problem-list.ts';
import { ownSharesLater } from './share-dossier.ts';

/** Editors write a file in several steps: it is read when they are done. One that was caught half-way is read again. */
const QUIET_MS = 25;
/** The text index waits until the pages that are open have been read anew. */
const PAGES_MS = 400;
/** The finished site is written when nobody has changed anything for so long. */
const REST_MS = 3000;

/** Keeps a site that is being served current. An edit is read and shown at once; the indexes follow; the finished site
 * is built when edits have come to rest, by a program of its own, so that this one goes on answering. */
export class KeepCurrent {
  readonly #options: BuildOptions;
  readonly #io: Io;
  readonly #served: ServedSite;
  readonly #changed: () => void;
  #timer: NodeJS.Timeout | undefined;
  #running: Promise<void> | undefined;
  #afterwards: Promise<void> = Promise.resolve();
  #later = new AbortController();
  #edits = 0;

  constructor(options: BuildOptions, io: Io, served: ServedSite, changed: () => void) {
    this.#options = options;
    this.#io = io;
    this.#served = served;
    this.#changed = changed;
  }

  /** Something in the collection changed. */
  edited(): void {
    this.#edits += 1;
    this.#later.abort();
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => {
      this.#running ??= this.#follow().finally(() => {
        this.#running = undefined;
      });
    }, QUIET_MS);
  }

  async close(): Promise<void> {
    clearTimeout(this.#timer);
    this.#later.abort();
    await this.#running;
    await this.#afterwards;
  }

  async #follow(): Promise<void> {
    for (let seen = -1; seen !== this.#edits; ) {
      seen = this.#edits;
      try {
        const catalogue = await this.#show();
        // An edit that comes later ends it: it never has to wait for an index, nor for a build.
        this.#later = new AbortController();
        const { signal } = this.#later;
        if (seen === this.#edits) this.#afterwards = this.#afterwards.then(() => this.#settle(catalogue, signal));
      } catch (error) {
        this.#io.err(`${error instanceof Error ? error.message : String(error)}\nWhat was shown before stays.\n`);
      }
    }
  }

  /** What follows an edit when no other comes. */
  async #settle(catalogue: Catalogue, signal: AbortSignal): Promise<void> {
    try {
      await pause(PAGES_MS, undefined, { signal });
      await this.#served.index(catalogue, signal);
      await pause(REST_MS, undefined, { signal });
      await this.#build(signal);
    } catch (error) {
      if (!signal.aborted) this.#io.err(`${error instanceof Error ? error.message : String(error)}\n`);
    }
  }

  async #show(): Promise<Catalogue> {
    const started = performance.now();
    const { catalogue, cache } = await loadCatalogue(
      this.#options,
      { err: this.#io.err, terminal: false },
      this.#options.cache,
      this.#options.memory,
    );
    await this.#served.show(catalogue, { ...this.#options, cache, shares: ownSharesLater(catalogue) });
    this.#changed();
    const ms = Math.round(performance.now() - started);
    for (const problem of catalogue.problems)
      if (problem.severity === 'error') this.#io.err(`${problemText(problem, this.#io.width)}\n`);
    this.#io.err(`Read again in ${ms} ms. ${countsText(countsOf(catalogue.problems), catalogue.accepted)}`);
    return catalogue;
  }

  /** Done when the building program has ended, or was told to. */
  async #build(signal: AbortSignal): Promise<void> {
    const { collection, out, base, today, cache } = this.#options;
    const args = ['build', '--collection', collection, '--out', out, '--base', base, '--today', today];
    const door = join(import.meta.dirname, '..', 'start.mjs');
    const child = spawn(process.execPath, [door, ...args, ...(cache === undefined ? [] : ['--cache', cache])], {
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    inTheBackground(child);
    const stop = () => void child.kill();
    signal.addEventListener('abort', stop);
    let said = '';
    child.stderr.on('data', (chunk: Buffer) => {
      said += chunk.toString();
    });
    const code = await new Promise((resolve) => {
      child.on('close', resolve);
      child.on('error', (error) => {
        said += error.message;
      });
    });
    signal.removeEventListener('abort', stop);
    // 1: it is written, and an entry has an error, which was told above. null: an edit came, or the end.
    if (code === 0 || code === 1) this.#io.err(`The site in ${out} is up to date.\n`);
    else if (code !== null) this.#io.err(`${said}The last good site stays in ${out}.\n`);
  }
}

/** Pages that are asked for meanwhile come first. A system that doesn't allow it builds as it would. */
function inTheBackground({ pid }: ChildProcess): void {
  try {
    if (pid !== undefined) setPriority(pid, constants.priority.PRIORITY_BELOW_NORMAL);
  } catch {
    // It builds all the same.
  }
}
