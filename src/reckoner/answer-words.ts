import type { Answer } from './calculation.ts';

/** The figure or the figures of an answer, each with its band, as a person reads them. */
export function figureLines({ value, unit, low, high, told }: Answer): readonly string[] {
  if (told !== undefined) return told;
  if (typeof value === 'number') {
    const band = typeof low === 'number' && typeof high === 'number' ? `, ${round(low)} to ${round(high)}` : '';
    return [`${round(value)} ${unit}${band}`];
  }
  return Object.entries(Object(value)).flatMap(([key, part]) =>
    partLines(key, part, unitOf(unit, key), at(low, key), at(high, key)),
  );
}

function partLines(key: string, part: unknown, unit: string, low: unknown, high: unknown): string[] {
  if (Array.isArray(part) && part.some((item) => typeof item === 'object')) {
    return part.map((item) =>
      Object.entries(Object(item))
        .map(([name, value]) => named(name, value, ' '))
        .join(', '),
    );
  }
  const band = typeof low === 'number' && typeof high === 'number' ? `, ${round(low)} to ${round(high)}` : '';
  // `grooves: 628.9` needs no second `grooves`.
  const after = unit === '' || unit === key.replaceAll('-', ' ') ? '' : ` ${unit}`;
  return [`${named(key, part)}${after}${band}`];
}

/** What else follows from the same inputs. */
export function alsoLines({ also = {} }: Answer): string[] {
  return Object.entries(also)
    .filter(([key]) => key !== 'problems')
    .map(([key, value]) => named(key, value));
}

/** A key of the JSON and its value in words: `pitch_mm` 0.12 → pitch: 0.12 mm; `open-end` false → open end: no. */
function named(key: string, value: unknown, between = ': '): string {
  const [name = '', unit] = key.split('_');
  return `${name.replaceAll('-', ' ')}${between}${shown(value)}${unit === undefined ? '' : ` ${unit}`}`;
}

const unitOf = (unit: Answer['unit'], key: string): string =>
  unit === null || typeof unit === 'string' ? '' : (unit[key] ?? '');
const at = (parts: unknown, key: string): unknown => (parts === undefined ? undefined : Object(parts)[key]);

function shown(value: unknown): string {
  if (value === null || value === undefined) return 'none';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  // What JSON has no number for, it has as a word.
  if (value === 'inf') return '∞';
  if (typeof value === 'number') return round(value);
  if (Array.isArray(value)) return value.length === 0 ? 'none' : value.map(shown).join(', ');
  if (typeof value === 'object')
    return Object.entries(value)
      .map(([key, part]) => named(key, part, ' '))
      .join(', ');
  return String(value);
}

/** Four figures are as many as a tape deserves, and no whole one is dropped; JSON has them all. */
function round(value: number): string {
  if (value === 0 || !Number.isFinite(value)) return String(value);
  const decimals = 3 - Math.floor(Math.log10(Math.abs(value)));
  return String(Number(value.toFixed(Math.min(Math.max(decimals, 0), 20))));
}
