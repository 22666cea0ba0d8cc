import { decimal } from './number.ts';

const MINUTE_S = 60;
const HOUR_S = 3600;

/** As on a label: `19:26`, `1:06:40`, `0:06`. */
export function clock(durationS: number): string {
  const whole = Math.round(durationS);
  const hours = Math.floor(whole / HOUR_S);
  const minutes = Math.floor((whole % HOUR_S) / MINUTE_S);
  const two = (part: number) => String(part).padStart(2, '0');
  const rest = two(whole % MINUTE_S);
  return hours > 0 ? `${hours}:${two(minutes)}:${rest}` : `${minutes}:${rest}`;
}

/** As one would say it: `3 s`, `19 min 26 s`, `36 h`. */
export function spoken(durationS: number): string {
  if (durationS < MINUTE_S) return `${decimal(durationS, 1)} s`;
  const whole = Math.round(durationS);
  const hours = Math.floor(whole / HOUR_S);
  const minutes = Math.floor((whole % HOUR_S) / MINUTE_S);
  const rest = whole % MINUTE_S;
  return [hours > 0 && `${hours} h`, minutes > 0 && `${minutes} min`, rest > 0 && `${rest} s`]
    .filter(Boolean)
    .join(' ');
}
