/** A duration as a label writes it: `7:46`, `1:06:40`; to the nearest second. */
export function clock(durationS: number): string {
  const whole = Math.round(durationS);
  const [hours, minutes, left] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  const two = (count: number) => String(count).padStart(2, '0');
  return hours > 0 ? `${hours}:${two(minutes)}:${two(left)}` : `${minutes}:${two(left)}`;
}
