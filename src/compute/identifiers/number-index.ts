import { NUMBER_USES, NUMBERED_THINGS, type Numbered, type NumberOf, WHEREABOUTS } from '#model/numbered.ts';
import { SURENESSES } from '#model/words.ts';
import { inOrder } from './number-order.ts';

/** The form of the index file; a page with another one fetches its own again. */
export const NUMBER_INDEX_FORM = 1;

/** All numbers of a collection in one compact file, in the order of their plain forms.
 *
 * Lists of texts are one text with line ends between, words of closed lists are one letter each (`a` the first), and
 * `thing` counts up: 0 is the next thing not met so far, any other figure is one more than a thing met before.
 */
export interface NumberIndexFile {
  readonly index: typeof NUMBER_INDEX_FORM;
  readonly things: { readonly of: string; readonly id: string; readonly title: string; readonly state: string };
  readonly numbers: {
    readonly written: string;
    readonly as: string;
    readonly sure: string;
    readonly thing: readonly number[];
    /** The place in `from` of each number. */
    readonly readAt: readonly number[];
  };
  readonly from: string;
}

const letterOf = <T>(words: readonly T[], word: T) => String.fromCharCode(97 + words.indexOf(word));
/** How sure a reading was, with nothing read first. */
export const SURE = ['', ...SURENESSES] as const;

/** The same numbers in any order give the same file. */
export function makeNumberIndex(numbers: readonly NumberOf[]): NumberIndexFile {
  const sorted = inOrder(numbers);
  const things = new Map<string, { readonly thing: Numbered; readonly index: number }>();
  const from = new Map<string, number>();
  const thing = sorted.map((number) => {
    const key = JSON.stringify(number.thing);
    const met = things.get(key);
    if (met !== undefined) return met.index + 1;
    things.set(key, { thing: number.thing, index: things.size });
    return 0;
  });
  const readAt = sorted.map((number) => {
    const met = from.get(number.from) ?? from.size;
    from.set(number.from, met);
    return met;
  });
  const all = [...things.values()].map((each) => each.thing);
  return {
    index: NUMBER_INDEX_FORM,
    things: {
      of: all.map(({ of }) => letterOf(NUMBERED_THINGS, of)).join(''),
      id: lines(all.map(({ id }) => id)),
      title: lines(all.map(({ title }) => title)),
      state: all.map(({ state }) => letterOf(WHEREABOUTS, state)).join(''),
    },
    numbers: {
      written: lines(sorted.map(({ number }) => number)),
      as: sorted.map(({ as }) => letterOf(NUMBER_USES, as)).join(''),
      sure: sorted.map(({ sure }) => letterOf<string>(SURE, sure)).join(''),
      thing,
      readAt,
    },
    from: lines([...from.keys()]),
  };
}

const lines = (texts: readonly string[]) => texts.map((text) => text.replaceAll(/\s*\n\s*/g, ' ')).join('\n');
