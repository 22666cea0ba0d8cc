/** A duration as ISO 8601 writes it, which schema.org takes: 1132 s is `PT18M52S`.
 * @param seconds  0 or more; fractions are kept to the millisecond. */
export function isoDuration(seconds: number): string {
  const whole = Math.round(seconds * 1000) / 1000;
  const hours = Math.floor(whole / 3600);
  const minutes = Math.floor((whole % 3600) / 60);
  const rest = Math.round((whole % 60) * 1000) / 1000;
  const parts = `${hours > 0 ? `${hours}H` : ''}${minutes > 0 ? `${minutes}M` : ''}${rest > 0 ? `${rest}S` : ''}`;
  return `PT${parts === '' ? '0S' : parts}`;
}
