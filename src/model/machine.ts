import type { EntryBase } from './entry.ts';
import type { Equalisation } from './equalisation.ts';
import type { Fact, Known } from './fact.ts';
import type { PersonRef } from './person.ts';
import type { Place } from './place.ts';
import type { Measure, Millimetres, MillimetresPerSecond } from './units.ts';
import type { Carrier, MachineState, TrackFormat } from './words.ts';

/** A tape machine that the owner has, or can get at. */
export interface Machine extends EntryBase {
  readonly folder: 'machines';
  readonly speeds?: Fact<readonly Known<MillimetresPerSecond>[]>;
  readonly equalisations?: Fact<readonly MachineCurve[]>;
  readonly tracks?: Fact<readonly Known<TrackFormat>[]>;
  readonly largestReel?: Fact<Measure<Millimetres>>;
  readonly takes?: Fact<readonly Known<Carrier>[]>;
  readonly widths?: Fact<readonly Known<Measure<Millimetres>>[]>;
  readonly noiseReduction?: Fact<readonly Known<string>[]>;
  readonly state?: Fact<MachineState>;
  readonly belongsTo?: Fact<PersonRef>;
}

export interface MachineCurve {
  readonly place: Place;
  readonly speed?: Known<MillimetresPerSecond>;
  readonly curve?: Known<Equalisation>;
}
