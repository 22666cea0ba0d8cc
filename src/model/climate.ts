import type { Celsius, Percent } from './units.ts';

/** Takes one reading of a log: its line, the instant in ms since 1970 (UTC), and the air. */
export type TakeReading = (line: number, timeMs: number, temperatureC: Celsius, humidityPercent: Percent) => void;

export type LogFaultCode =
  | 'climate/columns'
  | 'climate/empty'
  | 'climate/row-unread'
  | 'climate/time-repeated'
  | 'climate/time-backwards'
  | 'climate/gap'
  | 'climate/stuck'
  | 'climate/impossible';

/** One kind of damage in a log, told once: where it is met first, and how often. */
export interface LogFault {
  readonly code: LogFaultCode;
  /** The first line that has it, from 1. */
  readonly line: number;
  readonly count: number;
  readonly message: string;
  readonly found: string;
  readonly expected: string;
  readonly action: string;
}

/** What a log's columns are called: ours → the logger's. Ours: time, date, temperature_C, temperature_F,
 * humidity_percent. */
export type LogColumns = ReadonlyMap<string, string>;

/** A stretch of a log drawn as one point. */
export interface ClimateStretch {
  readonly fromMs: number;
  readonly readings: number;
  readonly lowC: Celsius;
  readonly meanC: Celsius;
  readonly highC: Celsius;
  readonly lowPercent: Percent;
  readonly meanPercent: Percent;
  readonly highPercent: Percent;
  /** Missing where the air was wholly dry. */
  readonly meanDewPointC: Celsius | undefined;
}

/** Time outside some bounds: in all, and in the worst 365 days. */
export interface TimeOutside {
  readonly hours: number;
  readonly hoursInWorstYear: number;
  /** First instant outside; undefined when never. */
  readonly firstMs: number | undefined;
}

/** How far the air goes up and down: within a day, and between the means of months; of those logged for the most part. */
export interface ClimateSwings {
  readonly days: number;
  readonly dailyC: number;
  readonly worstDailyC: number;
  readonly dailyPercent: number;
  readonly worstDailyPercent: number;
  readonly months: number;
  readonly seasonalC: number;
  readonly seasonalPercent: number;
}

/** What a climate log comes to. */
export interface ClimateSummary {
  readonly readings: number;
  readonly fromMs: number;
  readonly untilMs: number;
  readonly usualStepMs: number;
  /** Time that readings stand for; gaps are left out. */
  readonly coveredHours: number;
  /** By time, not by reading. Infinite in wholly dry air. */
  readonly storageYears: number;
  readonly lowC: Celsius;
  readonly meanC: Celsius;
  readonly highC: Celsius;
  readonly lowPercent: Percent;
  readonly meanPercent: Percent;
  readonly highPercent: Percent;
  /** Past the outer bounds of every source: under 8, over 35 °C, under 20, over 60 %. */
  readonly outsideOuter: TimeOutside;
  /** 20 to 25 %: inside one source's bounds and outside the other's. */
  readonly disputed: TimeOutside;
  /** Past the medium-term bounds: over 23 °C, under 20 or over 50 %. */
  readonly outsideMedium: TimeOutside;
  readonly swings?: ClimateSwings;
  /** In time order, at most about 1,000, each of `stretchMs`. */
  readonly series: readonly ClimateStretch[];
  readonly stretchMs: number;
  readonly faults: readonly LogFault[];
}
