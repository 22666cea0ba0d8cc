import { likeliestText, parseReading } from '../identifiers/reading-pattern.ts';

/** Whether a label's text can mean this many seconds: its figures, taken as minutes and seconds or as hours, minutes and
 * seconds, wherever they stand in it. A text with an unread figure, or with no two figures to compare, allows anything. */
export function timeIsRead(read: string, durationS: number): boolean {
  const pattern = parseReading(read);
  if (!pattern.ok || pattern.parts.some((part) => part.is === 'character' && part.doubt !== 'none')) return true;
  const text = likeliestText(pattern.parts);
  const figures = (text.match(/\d+/g) ?? []).map(Number);
  const times = figures.flatMap((_, at) => timesFrom(figures, at));
  return times.length === 0 || times.includes(Math.round(durationS));
}

function timesFrom(figures: readonly number[], at: number): readonly number[] {
  const [first = 0, second, third] = figures.slice(at, at + 3);
  if (second === undefined || second > 59) return [];
  const minutes = first * 60 + second;
  return third === undefined || third > 59 ? [minutes] : [minutes, minutes * 60 + third];
}
