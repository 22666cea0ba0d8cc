import type { Catalogue, ReelSheet } from '#model/catalogue.ts';
import { byText } from '#model/diagnostic.ts';
import { itemsOf, valueOf } from '#model/fact.ts';
import type { Money, Reel, Valuation } from '#model/reel.ts';
import { madeOnce } from '../made-once.ts';
import { dateWords } from '../words/date.ts';
import { type ListPage, listPages } from './list-pages.ts';
import { type Lookup, lookupOf } from './lookup.ts';
import { personName } from './person-link.ts';

/** One item of an insurer's schedule: what an insurer is shown and nothing else. Neither where it is kept, nor what was
 * paid, nor from whom. Empty texts are not recorded. */
export interface ScheduleItem {
  readonly id: string;
  readonly title: string;
  readonly numbers: readonly string[];
  readonly kind: string;
  readonly condition: 'at-risk' | 'not-recorded' | 'clear';
  readonly conditionWords: string;
  readonly howGot: string;
  readonly since: string;
  readonly photographs: number;
  readonly value: Money | undefined;
  readonly byWhom: string;
  readonly on: string;
  readonly basis: string;
}

interface ScheduleTotal {
  readonly currency: string;
  readonly sum: number;
  readonly items: number;
  /** Of the sum, by the owner's own word. */
  readonly byOwner: number;
}

export interface Schedule {
  readonly items: readonly ScheduleItem[];
  /** By currency; amounts in two currencies are never added. */
  readonly totals: readonly ScheduleTotal[];
  readonly withoutFigure: number;
}

/** The schedule of the reels that the owner has, held or lent, in order of their titles. A reel that a share shows without
 * saying where it is counts as one. What an entry keeps private stays out. */
export const scheduleOf = madeOnce('schedule', (catalogue: Catalogue): Schedule => {
  const lookup = lookupOf(catalogue);
  const common = catalogue.entries.collection.private.map((key) => key.value);
  const items = catalogue.reels
    .filter(({ reel }) => reel.status.value === 'held' || reel.status.value === 'lent')
    .sort((a, b) => byText(a.reel.title.value, b.reel.title.value) || byText(a.reel.id, b.reel.id))
    .map((sheet) => itemOf(sheet, common, lookup));
  return { items, totals: totalsOf(items), withoutFigure: items.filter(({ value }) => value === undefined).length };
});

/** For a table that is printed: more than on other pages. */
const ITEMS_A_PAGE = 500;

export const schedulePages = madeOnce('schedule pages', (catalogue: Catalogue): readonly ListPage<ScheduleItem>[] =>
  listPages(scheduleOf(catalogue).items, ({ title }) => title, ITEMS_A_PAGE),
);

/** Of a reel that nobody looked at, the list of all that isn't known says no more than that. */
const MOST_NAMED = 4;
const inASentence = ({ title }: { readonly title: string }) => title.charAt(0).toLowerCase() + title.slice(1);

function itemOf(sheet: ReelSheet, common: readonly string[], lookup: Lookup): ScheduleItem {
  const { reel, findings } = sheet;
  const hidden = [...common, ...reel.private.map((key) => key.value)];
  const shows = (key: string) => !hidden.some((one) => key === one || key.startsWith(`${one}.`));
  const valuation = shows('valuations') ? latest(itemsOf(reel.valuations)) : undefined;
  const held = shows('custody') ? itemsOf(reel.custody).at(-1) : undefined;
  const risks = findings.filter(({ outcome }) => outcome === 'at-risk');
  const unknown = findings.filter(({ outcome }) => outcome === 'not-recorded');
  const condition =
    risks.length > 0 ? 'at-risk' : unknown.length > 0 || findings.length === 0 ? 'not-recorded' : 'clear';
  const told = condition === 'at-risk' ? risks : condition === 'not-recorded' ? unknown : [];
  return {
    id: reel.id,
    title: titleWithSide(reel, shows),
    numbers: shows('numbers') ? numbersOf(reel) : [],
    kind: shows('kind') ? (valueOf(reel.kind) ?? '') : '',
    condition,
    conditionWords: condition === 'not-recorded' && told.length > MOST_NAMED ? '' : told.map(inASentence).join('; '),
    howGot: shows('custody.how') ? (held?.how?.value ?? '') : '',
    since: held?.from !== undefined && shows('custody.from') ? dateWords(held.from.value) : '',
    photographs: shows('photos') ? itemsOf(reel.photos).length : 0,
    value: valuation?.amount?.value,
    byWhom: valuation?.by === undefined ? '' : personName(valuation.by.value, lookup),
    on: valuation?.on === undefined ? '' : dateWords(valuation.on.value),
    basis: valuation?.basis?.value ?? '',
  };
}

function titleWithSide(reel: Reel, shows: (key: string) => boolean): string {
  const sides = shows('side') ? itemsOf(reel.sides).map((side) => side.value) : [];
  const title = reel.title.value;
  return sides.length === 0 || /\b(?:side|programme|program)\b/iu.test(title)
    ? title
    : `${title}, side ${sides.join(' and ')}`;
}

const numbersOf = ({ numbers }: Reel): readonly string[] =>
  [numbers.catalogue, numbers.matrix, numbers.job, numbers.other].flatMap((list) =>
    itemsOf(list).map((one) => one.written),
  );

/** The last one made; of several of one day the one written last. One without an amount is no figure. */
function latest(valuations: readonly Valuation[]): Valuation | undefined {
  const priced = valuations.filter(({ amount }) => amount !== undefined);
  const dayOf = ({ on }: Valuation) => on?.value.latest ?? '';
  return priced.reduce<Valuation | undefined>(
    (best, one) => (best === undefined || dayOf(one) >= dayOf(best) ? one : best),
    undefined,
  );
}

function totalsOf(items: readonly ScheduleItem[]): readonly ScheduleTotal[] {
  const byCurrency = Map.groupBy(
    items.filter(({ value }) => value !== undefined),
    ({ value }) => value?.currency ?? '',
  );
  return [...byCurrency]
    .sort(([a], [b]) => byText(a, b))
    .map(([currency, priced]) => ({
      currency,
      items: priced.length,
      sum: sumOf(priced),
      byOwner: sumOf(priced.filter(({ byWhom }) => byWhom === 'the owner' || byWhom === 'owner')),
    }));
}

/** In hundredths, so that many amounts add up to the cent. */
const sumOf = (items: readonly ScheduleItem[]) =>
  items.reduce((sum, { value }) => sum + Math.round((value?.amount ?? 0) * 100), 0) / 100;
