import type { Catalogue } from '#model/catalogue.ts';
import type { Numbered, NumberOf, NumberUse, Whereabouts } from '#model/numbered.ts';
import { SURENESSES, type Sureness } from '#model/words.ts';
import { entryHref } from '../links.ts';

/** A page of the list stays light enough to be read on a telephone. */
const NUMBERS_A_PAGE = 300;

/** One number as it is written, with all that it is of. */
export interface NumberRow {
  readonly number: string;
  readonly as: NumberUse;
  readonly of: readonly { readonly title: string; readonly to: string }[];
  /** Where it was read: `box front, legend`; empty when it is only stated. */
  readonly from: string;
  readonly sure: Sureness | undefined;
  readonly state: Whereabouts;
}

/** Every number, in order of letters, then figures; what shares a number and its use shares a row. */
export function numberRows({ numbers }: Catalogue): readonly NumberRow[] {
  const groups = Map.groupBy(numbers(), ({ number, as }) => `${as} ${number}`);
  return [...groups.values()].flatMap((group) => {
    const first = group[0];
    return first === undefined ? [] : [rowOf(first, group)];
  });
}

function rowOf({ number, as }: NumberOf, group: readonly NumberOf[]): NumberRow {
  const of = group.map(({ thing }) => ({ title: titleOf(thing), to: addressOf(thing) }));
  const places = group.flatMap(({ from }) => (from === '' ? [] : from.split(', ')));
  return {
    number,
    as,
    of: of.filter((one, at) => of.findIndex((other) => other.to === one.to && other.title === one.title) === at),
    from: [...new Set(places)].join(', '),
    sure: SURENESSES.find((word) => group.some(({ sure }) => sure === word)),
    state: group.find(({ thing }) => thing.state === 'held')?.thing.state ?? group[0]?.thing.state ?? 'known',
  };
}

/** A reel and the edition made from it often have one title. */
const titleOf = ({ of, title }: Numbered) => (of === 'edition' ? `edition ${title}` : title);

const SECTIONS: Partial<Record<Numbered['of'], string>> = { cut: '#cuts', 'log line': '#lineage' };

const addressOf = ({ of, id }: Numbered) =>
  entryHref(of === 'edition' ? 'editions' : 'reels', id) + (SECTIONS[of] ?? '');

/** The rows in pages, each with the number it starts with. */
export function numberPages(rows: readonly NumberRow[]): readonly (readonly NumberRow[])[] {
  const count = Math.max(1, Math.ceil(rows.length / NUMBERS_A_PAGE));
  return Array.from({ length: count }, (_, at) => rows.slice(at * NUMBERS_A_PAGE, (at + 1) * NUMBERS_A_PAGE));
}
