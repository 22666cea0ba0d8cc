import type { Change } from '#read/entry-edit.ts';
import {
  isListWritten,
  isMapWritten,
  sameWritten,
  type Written,
  type WrittenPath,
  withChange,
} from '#read/written-value.ts';
import type { Listed, Opened } from '../desk.ts';
import type { DeskKind } from '../fields/kinds.ts';
import type { PageWish } from './ask.ts';
import { settled, withoutLine } from './lines.ts';

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
  #lastTyped: string | undefined;

  constructor(opened: Opened, all: readonly Listed[]) {
    this.all = all;
    this.opened = opened;
    this.facts = opened.facts ?? {};
    this.body = opened.body;
  }

  get kind(): DeskKind {
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

  /** The items of a list, or one value that stands in place of it; none for `none`. */
  linesAt(path: WrittenPath): readonly Written[] {
    const value = this.at(path);
    if (isListWritten(value)) return value;
    return value === undefined || value === '' || value === 'none' ? [] : [value];
  }

  put(path: WrittenPath, to: Written | undefined): void {
    this.#remember(undefined);
    this.facts = placed(this.facts, path, to ?? '');
    this.onChange();
  }

  /** Typing on in one field is one step back. */
  type(path: WrittenPath, to: string): void {
    this.#remember(path.join('.'));
    this.facts = placed(this.facts, path, to);
    this.onChange();
  }

  /** Takes an item out of a list; readings of the lines after it follow. */
  takeLine(path: WrittenPath, index: number): void {
    this.#remember(undefined);
    this.facts = placed(withoutLine(this.facts, path, index), path, listWithout(this.linesAt(path), index));
    this.onChange();
  }

  /** Takes a key away with what stands under it. */
  takeKey(path: WrittenPath): void {
    this.#remember(undefined);
    this.facts = withChange(this.facts, path, undefined) ?? {};
    this.onChange();
  }

  typeBody(body: string): void {
    this.#remember('body text');
    this.body = body;
    this.onChange();
  }

  #remember(typed: string | undefined): void {
    if (typed === undefined || typed !== this.#lastTyped) this.#before.push({ facts: this.facts, body: this.body });
    this.#lastTyped = typed;
  }

  canUndo = (): boolean => this.#before.length > 0;

  undo(): void {
    const moment = this.#before.pop();
    if (moment === undefined) return;
    this.#lastTyped = undefined;
    this.facts = moment.facts;
    this.body = moment.body;
    this.onChange();
  }

  changes(): Change[] {
    const was = isMapWritten(this.opened.facts) ? this.opened.facts : {};
    const facts = settled(this.facts);
    const now = isMapWritten(facts) ? facts : {};
    const keys = [...new Set([...Object.keys(was), ...Object.keys(now)])];
    return keys
      .filter((key) => !sameWritten(was[key], now[key]))
      .map((key) => ({ path: [key], to: now[key] }))
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
    this.#lastTyped = undefined;
  }
}

const listWithout = (list: readonly Written[], index: number): Written => list.filter((_, other) => other !== index);

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
