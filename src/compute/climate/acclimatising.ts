import { type Celsius, celsius, type Percent, percent } from '#model/units.ts';

/** How long a tape takes to reach the room's air, as sources give it; never computed to the hour. */
export interface Acclimatising {
  readonly says: string;
  readonly fromHours: number | undefined;
  readonly toHours: number | undefined;
  readonly source: string;
}

/** Shortest first. */
export const ACCLIMATISING: readonly Acclimatising[] = [
  {
    says: 'a few hours, past a difference of 5 °C or 10 %',
    fromHours: undefined,
    toHours: undefined,
    source: 'a tape maker’s archiving advice',
  },
  {
    says: 'from a cold store, 3 to 24 hours, by pack and difference',
    fromHours: 3,
    toHours: 24,
    source: 'a few hours to a day: ascribed to IASA-TC 05, not confirmed there',
  },
  { says: 'wide or cold packs, 24 hours', fromHours: 24, toHours: 24, source: 'from memory' },
];

/** Differences under which a tape can be played at once. Source: a tape maker's archiving advice. */
export const PLAYS_AT_ONCE_WITHIN: { readonly temperatureC: Celsius; readonly humidityPercent: Percent } = {
  temperatureC: celsius(5),
  humidityPercent: percent(10),
};
