import { NUMBER_USES, NUMBERED_THINGS, type NumberOf } from '#model/numbered.ts';
import { indexedForms } from './indexed-forms.ts';

/** Numbers in the order of their plain forms, then of what they are of; the same for the same numbers in any order. */
export function inOrder(numbers: readonly NumberOf[]): readonly NumberOf[] {
  const keyed = numbers.map((number) => ({ number, key: sortKey(number) }));
  return keyed.sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0)).map(({ number }) => number);
}

function sortKey({ number, as, thing, from, sure }: NumberOf): string {
  const plain = indexedForms(number)[0] ?? '';
  const order = NUMBERED_THINGS.indexOf(thing.of);
  return [plain, number, order, NUMBER_USES.indexOf(as), thing.id, thing.title, from, sure].join('\u0000');
}
