import { NUMBER_USES, NUMBERED_THINGS, type NumberOf, WHEREABOUTS } from '#model/numbered.ts';
import { indexedForms } from './indexed-forms.ts';
import { NUMBER_INDEX_FORM, type NumberIndexFile, SURE } from './number-index.ts';

/** A number index made ready for questions: the different plain forms in order, as one run of character codes.
 *
 * Neighbours in order share their beginnings, and `shared` says how much, so that a question walks each beginning once:
 * what was worked out for `HLX22` is not worked out again for the thousand numbers that start so.
 */
export interface OpenIndex {
  readonly plains: readonly string[];
  /** All plain forms, one after the other, each character as its place in the index's own alphabet. */
  readonly codes: Uint16Array;
  /** The alphabet: every character of a plain form, from 1. */
  readonly letterOf: ReadonlyMap<string, number>;
  /** Where each plain form starts in `codes`; one more at the end. */
  readonly starts: Uint32Array;
  /** How many characters each plain form shares with the one before. */
  readonly shared: Uint8Array;
  /** Where each plain form's numbers start in `owners`; one more at the end. */
  readonly firstOwner: Uint32Array;
  /** Numbers by their place in the file. */
  readonly owners: Uint32Array;
  /** Every number as written, in the order of the file. */
  readonly written: readonly string[];
  /** Of answers that fit equally the lower comes first: held reels, other reels, editions, cuts, log lines. */
  readonly rank: Uint8Array;
  readonly numberAt: (index: number) => NumberOf;
}

/** Opens an index file. Throws a RangeError for a file of another form: fetch the one that belongs to this program. */
export function openNumberIndex(file: NumberIndexFile): OpenIndex {
  if (file.index !== NUMBER_INDEX_FORM) throw new RangeError(`a number index of form ${String(file.index)}`);
  const written = file.numbers.as.length === 0 ? [] : file.numbers.written.split('\n');
  const { plainOf, numberOf } = formsInOrder(written);
  const plains: string[] = [];
  const firstOwner = new Uint32Array(plainOf.length + 1);
  for (let at = 0; at < plainOf.length; at += 1) {
    const plain = plainOf[at] ?? '';
    if (at > 0 && plain === plainOf[at - 1]) continue;
    firstOwner[plains.length] = at;
    plains.push(plain);
  }
  firstOwner[plains.length] = plainOf.length;
  return { plains, ...packed(plains), firstOwner, owners: numberOf, written, ...reader(file, written) };
}

/** Every indexed form with its number, in order. The file is nearly in this order: only doubtful readings stray. */
function formsInOrder(written: readonly string[]): { plainOf: readonly string[]; numberOf: Uint32Array } {
  const plainOf: string[] = [];
  const numberOf: number[] = [];
  let last = '';
  let inOrder = true;
  for (let number = 0; number < written.length; number += 1) {
    for (const plain of indexedForms(written[number] ?? '')) {
      if (plain === '') continue;
      if (plain < last) inOrder = false;
      plainOf.push(plain);
      numberOf.push(number);
      last = plain;
    }
  }
  if (inOrder) return { plainOf, numberOf: Uint32Array.from(numberOf) };
  const forms = plainOf.map((plain, at) => ({ plain, number: numberOf[at] ?? 0 }));
  forms.sort((a, b) => (a.plain < b.plain ? -1 : a.plain > b.plain ? 1 : a.number - b.number));
  return { plainOf: forms.map(({ plain }) => plain), numberOf: Uint32Array.from(forms, ({ number }) => number) };
}

function packed(plains: readonly string[]): Pick<OpenIndex, 'codes' | 'starts' | 'shared' | 'letterOf'> {
  const starts = new Uint32Array(plains.length + 1);
  for (let at = 0; at < plains.length; at += 1) starts[at + 1] = (starts[at] ?? 0) + (plains[at]?.length ?? 0);
  const codes = new Uint16Array(starts[plains.length] ?? 0);
  const shared = new Uint8Array(plains.length);
  const letters = new Uint16Array(65_536);
  const letterOf = new Map<string, number>();
  let before = 0;
  let lengthBefore = 0;
  for (let at = 0; at < plains.length; at += 1) {
    const plain = plains[at] ?? '';
    const start = starts[at] ?? 0;
    let same = -1;
    for (let each = 0; each < plain.length; each += 1) {
      const code = plain.charCodeAt(each);
      if (letters[code] === 0) {
        letters[code] = letterOf.size + 1;
        letterOf.set(String.fromCharCode(code), letterOf.size + 1);
      }
      codes[start + each] = letters[code] ?? 0;
      if (same < 0 && (each >= lengthBefore || codes[before + each] !== codes[start + each])) same = each;
    }
    shared[at] = same < 0 ? plain.length : same;
    before = start;
    lengthBefore = plain.length;
  }
  return { codes, starts, shared, letterOf };
}

/** Numbers are read out of the file one by one, when an answer needs them. */
function reader(file: NumberIndexFile, written: readonly string[]): Pick<OpenIndex, 'numberAt' | 'rank'> {
  const { things, numbers } = file;
  const ids = things.id.split('\n');
  const titles = things.title.split('\n');
  const places = file.from.split('\n');
  const thingOf = new Uint32Array(written.length);
  let met = 0;
  for (let index = 0; index < thingOf.length; index += 1) {
    const code = numbers.thing[index] ?? 0;
    thingOf[index] = code === 0 ? met : code - 1;
    if (code === 0) met += 1;
  }
  const rank = Uint8Array.from(thingOf, (thing) => rankOf(things.of[thing], things.state[thing]));
  const numberAt = (index: number): NumberOf => {
    const thing = thingOf[index] ?? 0;
    return {
      thing: {
        of: wordAt(NUMBERED_THINGS, things.of, thing),
        id: ids[thing] ?? '',
        title: titles[thing] ?? '',
        state: wordAt(WHEREABOUTS, things.state, thing),
      },
      as: wordAt(NUMBER_USES, numbers.as, index),
      number: written[index] ?? '',
      from: places[numbers.readAt[index] ?? 0] ?? '',
      sure: wordAt(SURE, numbers.sure, index),
    };
  };
  return { numberAt, rank };
}

const REEL = 'a';
const OWNED = 'ab';

/** From the letters of the file: `a` is a reel, and held; `b` is lent. */
function rankOf(of = '', state = ''): number {
  const owned = OWNED.indexOf(state);
  if (of !== REEL) return OWNED.length + of.charCodeAt(0) - REEL.charCodeAt(0);
  return owned < 0 ? OWNED.length : owned;
}

function wordAt<T>(words: readonly T[], letters: string, index: number): T {
  const word = words[letters.charCodeAt(index) - 97];
  if (word === undefined) throw new Error(`fault: the number index has no word for "${letters[index]}" at ${index}`);
  return word;
}

/** Where a plain form stands in the index; undefined when no number has it. */
export function placeOf(index: OpenIndex, plain: string): number | undefined {
  let low = 0;
  let high = index.plains.length - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    const found = index.plains[middle] ?? '';
    if (found === plain) return middle;
    if (found < plain) low = middle + 1;
    else high = middle - 1;
  }
  return undefined;
}
