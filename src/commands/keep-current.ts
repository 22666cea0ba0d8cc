import { type ChildProcess, spawn } from 'node:child_process';
import { join } from 'node:path';
import type { Catalogue } from '#model/catalogue.ts';
import type { ServedSite } from '#publish/served-site.ts';
import type { BuildOptions } from './build-site.ts';
import type { Io } from './io.ts';
import { loadCatalogue } from './load.ts';
import { countsOf, countsText, problemText } from './problem-list.ts';
import { ownShares } from './share-dossier.ts';

/** Editors write a file in several steps: it is read when they are done. */
const QUIET_MS = 60;
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
  #building: ChildProcess | undefined;
  #running: Promise<void> | undefined;
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
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => {
      this.#running ??= this.#follow().finally(() => {
        this.#running = undefined;
      });
    }, QUIET_MS);
  }

  async close(): Promise<void> {
    clearTimeout(this.#timer);
    this.#building?.kill();
    await this.#running;
  }

  async #follow(): Promise<void> {
    for (let seen = -1; seen !== this.#edits; ) {
      seen = this.#edits;
      this.#building?.kill();
      try {
        const catalogue = await this.#show();
        if (seen === this.#edits) await this.#served.index(catalogue);
        if (seen === this.#edits) this.#timer = setTimeout(() => this.#build(), REST_MS);
      } catch (error) {
        this.#io.err(`${error instanceof Error ? error.message : String(error)}\nWhat was shown before stays.\n`);
      }
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
    await this.#served.show(catalogue, { ...this.#options, cache, shares: ownShares(catalogue) });
    this.#changed();
    const ms = Math.round(performance.now() - started);
    for (const problem of catalogue.problems)
      if (problem.severity === 'error') this.#io.err(`${problemText(problem, this.#io.width)}\n`);
    this.#io.err(`Read again in ${ms} ms. ${countsText(countsOf(catalogue.problems), catalogue.accepted)}`);
    return catalogue;
  }

  #build(): void {
    const { collection, out, base, today, cache } = this.#options;
    const args = ['build', '--collection', collection, '--out', out, '--base', base, '--today', today];
    const door = join(import.meta.dirname, '..', 'start.mjs');
    const child = spawn(process.execPath, [door, ...args, ...(cache === undefined ? [] : ['--cache', cache])], {
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    this.#building = child;
    let said = '';
    child.stderr.on('data', (chunk: Buffer) => {
      said += chunk.toString();
    });
    child.on('close', (code) => {
      if (this.#building === child) this.#building = undefined;
      // 1: it is written, and an entry has an error, which was told above. null: an edit came, or the end.
      if (code === 0 || code === 1) this.#io.err(`The site in ${out} is up to date.\n`);
      else if (code !== null) this.#io.err(`${said}The last good site stays in ${out}.\n`);
    });
  }
}
