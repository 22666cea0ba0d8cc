import { hash } from 'node:crypto';
import type { Site } from '#render/site.ts';
import { type Ask, type Question, type Questions, questionsOf } from './page-questions.ts';
import { seenSite } from './seen-site.ts';

/** What a page asked, in the order in which it asked first. */
export type Reads = readonly (readonly [question: Question, about: string])[];

/** What pages read of a site, and what the answers come to. A page is made by the program from its answers and from
 * nothing else: while they are the same, so is the page. */
export class PageReads {
  readonly #site: Site;
  readonly #questions: Questions;
  readonly #known = new WeakMap<object, string>();

  /** The site must have been handed over: links are made with its base. */
  constructor(site: Site) {
    this.#site = site;
    this.#questions = questionsOf(site);
  }

  /** The site as a page sees it, and what it has asked so far. */
  watch(): { readonly seen: Site; readonly reads: () => Reads } {
    const asked = new Map<string, readonly [Question, string]>();
    const ask: Ask = (question, about = '') => {
      asked.set(`${question} ${about}`, [question, about]);
      return this.#answer(question, about);
    };
    return { seen: seenSite(this.#site.base, ask), reads: () => [...asked.values()] };
  }

  /** What the answers come to now, as one checksum; undefined when something is asked that nobody answers. */
  digest(reads: Reads): string | undefined {
    const parts: string[] = [];
    for (const [question, about] of reads) {
      if (!Object.hasOwn(this.#questions, question)) return undefined;
      parts.push(question, about, this.#digestOf(this.#answer(question, about)));
    }
    return checksum(JSON.stringify(parts));
  }

  #answer<Q extends Question>(question: Q, about: string): ReturnType<Questions[Q]> {
    const answer = this.#questions[question] as (about: string) => ReturnType<Questions[Q]>;
    return answer(about);
  }

  /** Of lists, from those of their items: a reel's sheet is in many lists, and is gone through once. */
  #digestOf(value: unknown): string {
    if (typeof value === 'string') return JSON.stringify(value);
    if (typeof value !== 'object' || value === null) return `${typeof value} ${String(value)}`;
    const known = this.#known.get(value);
    if (known !== undefined) return known;
    const digest = Array.isArray(value)
      ? `list ${checksum(JSON.stringify(value.map((item) => this.#digestOf(item))))}`
      : checksum(JSON.stringify(value, nothingLost));
    this.#known.set(value, digest);
    return digest;
  }
}

/** What JSON would leave out or take for something else is written as a list with a name of its own in front. */
function nothingLost(_key: string, value: unknown): unknown {
  if (value === undefined) return ['\0undefined'];
  if (typeof value === 'number') {
    return Number.isFinite(value) && !Object.is(value, -0) ? value : ['\0number', String(1 / value), String(value)];
  }
  if (typeof value === 'function') throw new Error('fault: a page was answered with a function');
  if (typeof value !== 'object') return value;
  if (value instanceof Map) return ['\0map', ...value];
  if (value instanceof Set) return ['\0set', ...value];
  return value;
}

const checksum = (of: string) => hash('sha256', of, 'base64');
