import type { Catalogue, ReelSheet } from '#model/catalogue.ts';
import type { PartialDate } from '#model/dates.ts';
import { byText } from '#model/diagnostic.ts';
import { itemsOf, valueOf } from '#model/fact.ts';
import { dateWords } from '../words/date.ts';
import { listed } from '../words/number.ts';
import type { Lookup } from './lookup.ts';
import { numbersOf } from './numbers.ts';
import { personName } from './person-link.ts';

/** A row of the shelf: reels that belong together, or one that stands alone. */
export interface ShelfSet {
  readonly id: string;
  readonly title: string;
  readonly artist: string | undefined;
  readonly madeAs: string;
  readonly numbers: readonly string[];
  /** In the order of their sides. */
  readonly sheets: readonly ReelSheet[];
}

/** Every set of the collection, those with something held first, then by title. */
export function shelfSets({ reels }: Catalogue, lookup: Lookup): readonly ShelfSet[] {
  const groups = Map.groupBy(reels, ({ reel }) => valueOf(reel.set) ?? `reel ${reel.id}`);
  const sets = [...groups].map(([id, sheets]) => setOf(id, sheets.sort(bySide), lookup));
  return sets.sort((a, b) => Number(hasHeld(b)) - Number(hasHeld(a)) || byText(a.title, b.title) || byText(a.id, b.id));
}

const hasHeld = (set: ShelfSet) => set.sheets.some(({ reel }) => reel.status.value === 'held');

const sideText = ({ reel }: ReelSheet) => itemsOf(reel.sides)[0]?.value ?? '~';
const bySide = (a: ReelSheet, b: ReelSheet) => byText(sideText(a), sideText(b)) || byText(a.reel.id, b.reel.id);

function setOf(id: string, sheets: readonly ReelSheet[], lookup: Lookup): ShelfSet {
  const reels = sheets.map((sheet) => sheet.reel);
  const editions = reels.flatMap((reel) => itemsOf(reel.editions).map((edition) => lookup.edition(edition.value)));
  return {
    id,
    title: commonTitle(reels.map((reel) => reel.title.value)),
    artist: editions.map((edition) => valueOf(edition?.artist)).find((artist) => artist !== undefined),
    madeAs: madeAs(sheets, lookup),
    numbers: [...new Set(reels.flatMap((reel) => numbersOf(reel, 3)))].slice(0, 4),
    sheets,
  };
}

/** Longer than any title is in a heading; what follows is quick on a text of this length only. */
const LONGEST_COMMON = 200;

/** What the titles of a set have in common at their beginning, cut at a mark between words: `Low Water, side 1` and
 * `Low Water, side 2` give `Low Water`. */
export function commonTitle(titles: readonly string[]): string {
  const [first = '', ...others] = titles;
  if (others.length === 0) return first;
  let length = Math.min(first.length, LONGEST_COMMON);
  for (const other of others) while (!other.startsWith(first.slice(0, length))) length -= 1;
  const splitsWord =
    titles.some((title) => /[\p{L}\p{N}]/u.test(title.charAt(length))) && /[\p{L}\p{N}]$/u.test(first.slice(0, length));
  const whole = splitsWord ? first.slice(0, length).replace(/[\p{L}\p{N}]+$/u, '') : first.slice(0, length);
  const common = whole.replace(/[\s,;:.–-]+(?:side|sides|part|reel|programme|tape)?\s*$/iu, '');
  return common.length < 3 ? first : common;
}

function madeAs(sheets: readonly ReelSheet[], lookup: Lookup): string {
  const kinds = [...new Set(sheets.map(({ reel }) => valueOf(reel.kind)).filter((kind) => kind !== undefined))];
  const several = sheets.length > 1 && kinds.length === 1 ? 's' : '';
  const client = sheets.map(({ reel }) => valueOf(reel.client)).find((one) => one !== undefined);
  const year = yearOf(sheets.map(({ reel }) => valueOf(reel.recorded)?.on?.value).find((on) => on !== undefined));
  const made = kinds.length === 0 ? 'kind not recorded' : `${listed(kinds)}${several}`;
  return [`${made}${client === undefined ? '' : ` for ${personName(client, lookup)}`}`, year]
    .filter(Boolean)
    .join(', ');
}

const yearOf = (date: PartialDate | undefined) => {
  if (date?.earliest === undefined) return undefined;
  if (date.earliest === null || date.latest?.slice(0, 4) !== date.earliest.slice(0, 4)) return dateWords(date);
  return `${date.approximate ? 'about ' : ''}${date.earliest.slice(0, 4)}`;
};

/** A page of the shelf holds this many sets; a larger collection goes on over further pages. */
export const SETS_A_PAGE = 60;
