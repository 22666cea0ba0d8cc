import type { EntryKind } from '#model/words.ts';
import type { Change } from '#read/entry-edit.ts';
import { isMapWritten, sameWritten, type Written, type WrittenPath, withoutEmpty } from '#read/written-value.ts';
import type { Listed, Opened } from '../desk.ts';
import type { PageWish } from './ask.ts';

interface Moment {
  readonly facts: Written;
  readonly body: string;
}

/** What is typed and not yet saved, and the way back. */
export class SheetState {
  all: readonly Listed[];
  opened: Opened;
  facts: Written;
  body: string;
  onChange: () => void = () => undefined;
  readonly #before: Moment[] = [];
  #lastTouched = '';

  constructor(opened: Opened, all: readonly Listed[]) {
    this.all = all;
    this.opened = opened;
    this.facts = opened.facts ?? {};
    this.body = opened.body;
  }

  get kind(): EntryKind {
    return this.opened.kind;
  }

  at(path: WrittenPath): Written | undefined {
    let value: Written | undefined = this.facts;
    for (const step of path) {
      if (typeof step === 'number') value = Array.isArray(value) ? (value[step] as Written | undefined) : undefined;
      else value = isMapWritten(value) ? value[step] : undefined;
    }
    return value;
  }

  /** Typing on in one field is one step back. */
  put(path: WrittenPath, to: Written | undefined): void {
    this.#remember(path.join('.'));
    this.facts = placed(this.facts, path, to ?? '');
    this.onChange();
  }

  putBody(body: string): void {
    this.#remember('body text');
    this.body = body;
    this.onChange();
  }

  #remember(touched: string): void {
    if (touched !== this.#lastTouched) this.#before.push({ facts: this.facts, body: this.body });
    this.#lastTouched = touched;
  }

  canUndo = (): boolean => this.#before.length > 0;

  undo(): void {
    const moment = this.#before.pop();
    if (moment === undefined) return;
    this.#lastTouched = '';
    this.facts = moment.facts;
    this.body = moment.body;
    this.onChange();
  }

  changes(): Change[] {
    const was = isMapWritten(this.opened.facts) ? this.opened.facts : {};
    const now = isMapWritten(this.facts) ? this.facts : {};
    const keys = [...new Set([...Object.keys(was), ...Object.keys(now)])];
    return keys
      .filter((key) => !sameWritten(was[key], now[key]))
      .map((key) => ({ path: [key], to: withoutEmpty(now[key] ?? '') }))
      .filter(({ path: [key], to }) => !sameWritten(was[key as string], to));
  }

  isChanged = (): boolean => this.changes().length > 0 || this.body !== this.opened.body;

  wish(): PageWish {
    const { kind, id, hash, body } = this.opened;
    return { kind, id, hash, changes: this.changes(), ...(this.body === body ? {} : { body: this.body }) };
  }

  /** After saving; the way back goes on before it. */
  saved(opened: Opened): void {
    this.opened = opened;
    this.#lastTouched = '';
  }
}

/** A value put in its place. What is emptied stays as an empty text, so that the lines of a list keep their numbers while
 * someone types. */
function placed(whole: Written | undefined, path: WrittenPath, to: Written): Written {
  const [step, ...rest] = path;
  if (step === undefined) return to;
  if (typeof step === 'number') {
    const list = Array.isArray(whole) ? [...(whole as readonly Written[])] : [];
    list[step] = placed(list[step], rest, to);
    return list;
  }
  return {
    ...(isMapWritten(whole) ? whole : {}),
    [step]: placed(isMapWritten(whole) ? whole[step] : undefined, rest, to),
  };
}
