declare const unit: unique symbol;

/** A number that knows its unit. Arithmetic drops the unit; the last line of a formula puts it back. */
type Quantity<Unit extends string> = number & { readonly [unit]: Unit };

export type Millimetres = Quantity<'mm'>;
export type Micrometres = Quantity<'µm'>;
export type MillimetresPerSecond = Quantity<'mm/s'>;
export type Seconds = Quantity<'s'>;
export type Microseconds = Quantity<'µs'>;
export type Hertz = Quantity<'Hz'>;
export type Decibels = Quantity<'dB'>;
export type Celsius = Quantity<'°C'>;
export type Percent = Quantity<'%'>;
export type RevolutionsPerMinute = Quantity<'rpm'>;
export type NanowebersPerMetre = Quantity<'nWb/m'>;

export const millimetres = (count: number) => count as Millimetres;
export const micrometres = (count: number) => count as Micrometres;
export const millimetresPerSecond = (count: number) => count as MillimetresPerSecond;
export const seconds = (count: number) => count as Seconds;
export const microseconds = (count: number) => count as Microseconds;
export const hertz = (count: number) => count as Hertz;
export const decibels = (count: number) => count as Decibels;
export const celsius = (count: number) => count as Celsius;
export const percent = (count: number) => count as Percent;
export const revolutionsPerMinute = (count: number) => count as RevolutionsPerMinute;
export const nanowebersPerMetre = (count: number) => count as NanowebersPerMetre;

/** Exact: the international yard and pound agreement of 1959 makes the inch 25.4 mm. Every other factor follows from it. */
const MM_IN_AN_INCH = 25.4;
const INCHES_IN_A_FOOT = 12;

export const inches = (count: number) => millimetres(count * MM_IN_AN_INCH);
export const feet = (count: number) => millimetres(count * INCHES_IN_A_FOOT * MM_IN_AN_INCH);
export const metres = (count: number) => millimetres(count * 1000);
/** One mil is a thousandth of an inch. */
export const mils = (count: number) => micrometres(count * MM_IN_AN_INCH);
export const inchesPerSecond = (count: number) => millimetresPerSecond(count * MM_IN_AN_INCH);
export const fahrenheit = (degrees: number) => celsius(((degrees - 32) * 5) / 9);

export const asInches = (mm: Millimetres) => mm / MM_IN_AN_INCH;
export const asFeet = (mm: Millimetres) => mm / (INCHES_IN_A_FOOT * MM_IN_AN_INCH);
export const asMetres = (mm: Millimetres) => mm / 1000;
export const asInchesPerSecond = (mmPerS: MillimetresPerSecond) => mmPerS / MM_IN_AN_INCH;
export const asCentimetresPerSecond = (mmPerS: MillimetresPerSecond) => mmPerS / 10;
export const inMillimetres = (um: Micrometres) => millimetres(um / 1000);

/** A measured quantity with the error it was written with (`260 mm ± 1 mm`); undefined when none was given. */
export interface Measure<Q extends number> {
  readonly value: Q;
  readonly plusMinus?: Q;
}
