import type { ClimateSwings, LogFault } from './climate.ts';

/** How a room compares with another, as a ratio: 2 is half as fast a decay. */
export interface RoomCompared {
  readonly with: string;
  readonly ratio: number;
}

/** What a place's log says of it beside the bounds. */
export interface Room {
  /** A measure of the room over its log, for comparing rooms only. */
  readonly storageYears: number;
  readonly formula: string;
  readonly source: string;
  readonly mind: string;
  readonly compared: readonly RoomCompared[];
  /** Each air with the ratio of its measure to this room's. */
  readonly whatIf: readonly {
    readonly temperatureC: number;
    readonly humidityPercent: number;
    readonly ratio: number;
  }[];
  readonly swings: ClimateSwings | undefined;
  /** What the air means for the stocks that lie there. */
  readonly stocks: readonly {
    readonly stock: string;
    readonly reels: number;
    readonly says: string;
    readonly source: string;
  }[];
  readonly faults: readonly LogFault[];
}
