import { gatherNumbers } from '#compute/identifiers/gather-numbers.ts';
import { wordsOfNumber } from '#compute/identifiers/search-words.ts';
import type { PartialDate } from '#model/dates.ts';
import type { Entries } from '#model/entries.ts';
import type { EntryBase } from '#model/entry.ts';
import { type Fact, itemsOf, type Known, valueOf } from '#model/fact.ts';
import type { PersonRef } from '#model/person.ts';
import type { Reel } from '#model/reel.ts';
import type { EntryKind } from '#model/words.ts';
import { inchesSpeed } from '#render/words/speed.ts';
import type { SearchRecord } from './search.ts';

/** What a kind of entry is called among the filters. */
const WHAT: Record<Exclude<EntryKind, 'shares'>, string> = {
  reels: 'Reel',
  editions: 'Edition',
  machines: 'Machine',
  stocks: 'Stock',
  places: 'Place',
  people: 'Person',
  notes: 'Note',
};

/** Every page of an entry as the text index holds it, with the filters that sort a shelf of tapes. Its text is put
 * together when it is read: the texts of all pages are much.
 *
 * @param all  the numbers of these entries, where they are at hand already. */
export function searchRecords(entries: Entries, all = gatherNumbers(entries)): readonly SearchRecord[] {
  const titles = titlesOf(entries);
  const numbers = Map.groupBy(all, ({ thing }) => `${thing.of === 'edition' ? 'editions' : 'reels'}/${thing.id}`);
  const numbersOf = ({ folder, id }: EntryBase) => (numbers.get(`${folder}/${id}`) ?? []).map((one) => one.number);
  const personName = (ref: PersonRef | undefined) => personText(ref, titles);

  const record = recorder(numbersOf);
  const few = fewEnough(entries.reels);

  const reels = entries.reels.map((reel) =>
    record(reel, () => reelTexts(reel, titles, personName), few(reelFilters(reel, titles))),
  );
  const editions = entries.editions.map((edition) => {
    const { artist, label, territory, madeAs, issued } = edition;
    const texts = () => [textOf(artist), textOf(label), textOf(territory)];
    return record(edition, texts, { made: kindOf(madeAs), year: yearsOf(valueOf(issued)) });
  });
  const people = entries.people.map((person) =>
    record(person, () => [...written(person.initials), ...written(person.did)]),
  );
  const stocks = entries.stocks.map((stock) => record(stock, () => [textOf(stock.base), textOf(stock.binder)]));
  const places = entries.places.map((place) => record(place, () => [textOf(place.address)]));
  const rest = [...entries.machines, ...entries.notes].map((entry) => record(entry, () => []));
  return [...reels, ...editions, ...people, ...stocks, ...places, ...rest];
}

/** Nobody chooses from more sets or editions than this, and the index would hold each of them. */
const MOST_CHOICES = 300;

/** Takes sets and editions out of a reel's filters where there are too many of them to choose from. */
function fewEnough(reels: Entries['reels']): (filters: Filters) => Filters {
  const isFew = (namesOf: (reel: Reel) => readonly string[]) => new Set(reels.flatMap(namesOf)).size <= MOST_CHOICES;
  const sets = isFew(({ set }) => kindOf(set));
  const editions = isFew((reel) => itemsOf(reel.editions).map(({ value }) => value));
  return (filters) => ({ ...filters, ...(sets ? {} : { set: [] }), ...(editions ? {} : { edition: [] }) });
}

type Titles = ReadonlyMap<string, string>;
type Filters = Readonly<Record<string, readonly string[]>>;

const recorder =
  (numbersOf: (entry: EntryBase) => readonly string[]) =>
  (entry: EntryBase, texts: () => readonly string[], filters: Filters = {}): SearchRecord => {
    if (entry.folder === 'shares') throw new Error('fault: a share has no page');
    const title = entry.title.value;
    const what = WHAT[entry.folder];
    const given = Object.entries(filters).filter(([, values]) => values.length > 0);
    return {
      url: `/${entry.folder}/${entry.id}/`,
      get content() {
        const numbers = numbersOf(entry);
        // The words for numbers stand last, so that an excerpt seldom shows them.
        const words = [...new Set(numbers.flatMap(wordsOfNumber))].join(' ');
        return [title, ...texts(), ...numbers, entry.body, words].filter((text) => text.trim() !== '').join('. ');
      },
      meta: { title, what },
      filters: { what: [what], ...Object.fromEntries(given) },
    };
  };

function reelTexts(reel: Reel, titles: Titles, personName: (ref: PersonRef | undefined) => string): string[] {
  const recorded = valueOf(reel.recorded);
  const people = [valueOf(reel.client), recorded?.by?.value, recorded?.for?.value].map(personName);
  const log = itemsOf(reel.copyLog).flatMap((line) => [personName(line.for?.value), line.note?.value ?? '']);
  const contents = itemsOf(reel.contents).flatMap((one) => [
    one.title.value,
    one.by?.value ?? '',
    one.note?.value ?? '',
  ]);
  const readings = itemsOf(reel.readings).map((reading) => reading.written.value);
  const editions = itemsOf(reel.editions).map((id) => titles.get(`editions/${id.value}`) ?? id.value);
  return [textOf(reel.set), ...editions, ...people, recorded?.at?.value ?? '', ...contents, ...readings, ...log];
}

function reelFilters(reel: Reel, titles: Titles): Filters {
  const stock = valueOf(reel.stock);
  const place = valueOf(reel.placeKept)?.at?.value;
  const speed = valueOf(reel.format.speed);
  return {
    kind: kindOf(reel.kind),
    status: [reel.status.value],
    set: kindOf(reel.set),
    edition: itemsOf(reel.editions).map(({ value }) => titles.get(`editions/${value}`) ?? value),
    stock: stock === undefined ? [] : [titles.get(`stocks/${stock}`) ?? stock],
    place: place === undefined ? [] : [titles.get(`places/${place}`) ?? place],
    tracks: kindOf(reel.format.tracks),
    speed: speed === undefined ? [] : [inchesSpeed(speed)],
    year: yearsOf(valueOf(reel.recorded)?.on?.value),
  };
}

function titlesOf({ editions, stocks, places, people }: Entries): Titles {
  return new Map(
    [...editions, ...stocks, ...places, ...people].map((entry) => [`${entry.folder}/${entry.id}`, entry.title.value]),
  );
}

function personText(ref: PersonRef | undefined, titles: Titles): string {
  if (ref === undefined || ref.is === 'owner') return '';
  return ref.is === 'entry' ? (titles.get(`people/${ref.id}`) ?? ref.id) : ref.text;
}

/** A date that may lie in several years is found under each, up to ten; a wider one under none. */
function yearsOf(date: PartialDate | undefined): string[] {
  const [first, last] = [date?.earliest, date?.latest].map((day) => (day ? Number(day.slice(0, 4)) : undefined));
  if (first === undefined || last === undefined || last - first >= 10) return [];
  return Array.from({ length: last - first + 1 }, (_, at) => String(first + at));
}

const textOf = (fact: Fact<string> | undefined) => valueOf(fact) ?? '';
const kindOf = (fact: Fact<string> | undefined) => [valueOf(fact) ?? []].flat();
const written = (fact: Fact<readonly Known<string>[]> | undefined) => itemsOf(fact).map((one) => one.value);
