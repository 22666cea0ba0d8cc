import type { Catalogue } from '#model/catalogue.ts';
import type { ClimateSummary } from '#model/climate.ts';
import { valueOf } from '#model/fact.ts';
import type { Room, RoomCompared } from '#model/room.ts';
import type { Stock } from '#model/stock.ts';
import { celsius, percent } from '#model/units.ts';
import { MEDIUM_TERM } from '../climate/storage-bounds.ts';
import { STORAGE_YEARS_MIND, storageYears } from '../climate/storage-years.ts';
import { OVER_LOG_FORMULA, OVER_LOG_SOURCE } from '../climate/storage-years-over-log.ts';
import { shedMarksOf } from '../condition/shed-marks.ts';

/** Airs that a room is held against, coolest last. */
const WHAT_IF: readonly (readonly [temperatureC: number, humidityPercent: number])[] = [
  [25, 60],
  [22, 55],
  [20, 50],
  [20, 40],
  [18, 40],
  [15, 30],
  [10, 40],
];

type Asked = Pick<Catalogue, 'entries' | 'reels' | 'climate'>;

/** What each place's log says of it, by places/ id; a place whose air was wholly dry can't be compared and has none. */
export function roomsOf(catalogue: Asked): ReadonlyMap<string, Room> {
  const rooms = [...catalogue.climate].filter(([, air]) => Number.isFinite(air.storageYears));
  return new Map(rooms.map(([id, air]) => [id, roomOf(id, air, catalogue)]));
}

function roomOf(id: string, air: ClimateSummary, catalogue: Asked): Room {
  return {
    storageYears: air.storageYears,
    formula: OVER_LOG_FORMULA,
    source: OVER_LOG_SOURCE,
    mind: STORAGE_YEARS_MIND,
    compared: compared(id, air, catalogue),
    whatIf: WHAT_IF.map(([temperatureC, humidityPercent]) => ({
      temperatureC,
      humidityPercent,
      ratio: storageYears(celsius(temperatureC), percent(humidityPercent)) / air.storageYears,
    })),
    swings: air.swings,
    stocks: stocksThere(id, air, catalogue),
    faults: air.faults,
  };
}

function compared(id: string, air: ClimateSummary, { entries, climate }: Asked): readonly RoomCompared[] {
  const others = entries.places.flatMap((place) => {
    const other = climate.get(place.id);
    return place.id === id || other === undefined || !Number.isFinite(other.storageYears)
      ? []
      : [{ with: place.title.value, ratio: air.storageYears / other.storageYears }];
  });
  const steady = storageYears(celsius(20), percent(50));
  return [{ with: 'steady 20 °C and 50 %', ratio: air.storageYears / steady }, ...others];
}

/** What lies there, stock by stock, in order of ids; reels whose stock nobody recorded last. */
function stocksThere(id: string, air: ClimateSummary, { entries, reels }: Asked): Room['stocks'] {
  const there = reels.filter(({ reel }) => valueOf(reel.placeKept)?.at?.value === id);
  const byStock = Map.groupBy(there, ({ reel }) => valueOf(reel.stock));
  const known = entries.stocks.flatMap((stock) => {
    const count = byStock.get(stock.id)?.length ?? 0;
    return count === 0 ? [] : [{ stock: stock.title.value, reels: count, ...meaning(stock, air) }];
  });
  const listed = new Set(entries.stocks.map((stock) => stock.id));
  const unknown = there.filter(({ reel }) => !listed.has(valueOf(reel.stock) ?? '')).length;
  if (unknown === 0) return known;
  const says =
    'What this air does to them can’t be told until their stock is recorded: look on the box, the leader, under the hub.';
  return [...known, { stock: 'stock not recorded', reels: unknown, says, source: '' }];
}

function meaning(stock: Stock, air: ClimateSummary): { says: string; source: string } {
  const base = valueOf(stock.base);
  const outside = hours(air.outsideMedium.hoursInWorstYear);
  if (base === 'acetate') {
    return {
      says: 'Acetate decays the faster the warmer and damper it lies, and the acid that it gives off attacks the tapes beside it. The comparison of rooms was fitted to this base. Keep it cool, aired, and apart.',
      source: 'New Tools for Preservation (1995); IASA-TC 05',
    };
  }
  if (shedMarksOf(stock)?.are === 'present') {
    return {
      says: `A binder of this kind takes up water from damp air and comes off on the heads. ${outside} past the medium-term bounds in the worst year here. Damp is what to keep from it.`,
      source: 'IASA-TC 05, marks of stocks that shed; the hours by this log',
    };
  }
  if (base !== 'polyester') return { says: 'Its base isn’t recorded, so no bounds can be chosen for it.', source: '' };
  return {
    says: `${outside} past the medium-term bounds for polyester tape in the worst year here.`,
    source: MEDIUM_TERM.source,
  };
}

const hours = (count: number) => (count < 1 ? 'No time' : `${Math.round(count)} h`);
