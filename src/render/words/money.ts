import type { Money } from '#model/reel.ts';

/** `1,250 EUR`: the currency by its code, never by a sign that several share. */
export function moneyWords({ amount, currency }: Money): string {
  const decimals = Number.isInteger(amount) ? 0 : 2;
  const [whole = '', part] = amount.toFixed(decimals).split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return `${part === undefined ? grouped : `${grouped}.${part}`} ${currency}`;
}
