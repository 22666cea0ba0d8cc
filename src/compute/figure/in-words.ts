import type { Decibels, Millimetres, MillimetresPerSecond } from '#model/units.ts';
import { asInchesPerSecond, asMetres } from '#model/units.ts';

/** `18:52`, `1:06:40`, from whole seconds; what the messages of checks print. */
export function clock(durationS: number): string {
  const whole = Math.round(durationS);
  const two = (count: number) => String(count).padStart(2, '0');
  const hours = Math.floor(whole / 3600);
  const minutes = Math.floor((whole % 3600) / 60);
  return hours > 0 ? `${hours}:${two(minutes)}:${two(whole % 60)}` : `${minutes}:${two(whole % 60)}`;
}

/** `9 s`, `1 min 20 s`: a difference rather than a length. */
export function spanInWords(durationS: number): string {
  const whole = Math.round(Math.abs(durationS));
  if (whole < 60) return `${whole} s`;
  return whole % 60 === 0 ? `${whole / 60} min` : `${Math.floor(whole / 60)} min ${whole % 60} s`;
}

/** `15 in/s`. */
export const speedInWords = (speedMmPerS: MillimetresPerSecond): string =>
  `${Number(asInchesPerSecond(speedMmPerS).toPrecision(6))} in/s`;

/** `862.6 m`. */
export const metresInWords = (lengthMm: Millimetres): string => `${asMetres(lengthMm).toFixed(1)} m`;

/** `+2.3 dB`, `−2.7 dB`, `0.0 dB`. */
export function decibelsInWords(levelDb: Decibels): string {
  const size = Math.abs(levelDb).toFixed(1);
  if (size === '0.0') return '0.0 dB';
  return `${levelDb > 0 ? '+' : '−'}${size} dB`;
}

/** `a`, `a and b`, `a, b and c`. */
export function listInWords(words: readonly string[], last: 'and' | 'or' = 'and'): string {
  if (words.length < 2) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;
}

/** `a 7`, `an 8`, `an O`, `a K`: a single character as it is said, with its article. */
export const withArticle = (character: string): string =>
  /^[8AEFHILMNORSX]$/i.test(character) ? `an ${character}` : `a ${character}`;
