import type { Money } from '#model/reel.ts';
import { type Parsed, parsed, quoted, refused } from './parsed.ts';
import { spaced } from './quantity.ts';

const AMOUNT = /^(?<amount>\d{1,12}(?:\.\d{1,4})?) ?(?<code>[A-Z]{3})$/u;
const CODE_FIRST = /^(?<code>[A-Z]{3}) ?(?<amount>\d{1,12}(?:\.\d{1,4})?)$/u;
const WITH_SIGN = /^(?:(?<before>[£$€¥₤])\s?(?<a>[\d.,' ]{1,20})|(?<b>[\d.,' ]{1,20})(?<after>[£$€¥₤]))$/u;
const NO_CODE = /^\d{1,12}(?:[.,]\d{1,4})?$/u;
const FORMS = '450 GBP, or 1200.50 EUR';

/** Currencies that a sign can mean, the likeliest first; not all of them. ISO 4217. */
const OF_SIGN: Readonly<Record<string, readonly string[]>> = {
  '£': ['GBP', 'EGP', 'GIP', 'FKP', 'SHP', 'LBP'],
  '₤': ['GBP', 'ITL'],
  $: ['USD', 'CAD', 'AUD', 'NZD', 'HKD', 'SGD'],
  '€': ['EUR'],
  '¥': ['JPY', 'CNY'],
};

/** Codes withdrawn from ISO 4217 (its list three; these from memory) that a receipt of the time can carry. */
const PAST =
  'ARP ATS BEF BGL BRC BRE CSK CYP DDM DEM EEK ESP FIM FRF GRD HRD HRK IEP ILP ISJ ITL LTL LUF LVL MTL MXP NLG PLZ PTE ROL RUR SIT SKK SUR TRL YUD YUM ZRN';

/** ISO 4217: today's codes as the platform lists them, and past ones. */
const CURRENCIES: ReadonlySet<string> = new Set([...Intl.supportedValuesOf('currency'), ...PAST.split(' ')]);

/** An amount with its ISO 4217 currency code behind it: `450 GBP`. */
export function parseMoney(text: string): Parsed<Money> {
  const plain = spaced(text);
  const groups = AMOUNT.exec(plain)?.groups;
  const code = groups?.code ?? '';
  if (groups !== undefined && CURRENCIES.has(code)) return parsed({ amount: Number(groups.amount), currency: code });
  if (groups !== undefined) {
    return refused(
      `${code} is no currency's code.`,
      FORMS,
      'Write the three letters of ISO 4217, such as GBP, EUR or USD.',
    );
  }
  const first = CODE_FIRST.exec(plain)?.groups;
  if (first !== undefined) {
    return refused('The code stands before the amount.', FORMS, `Write ${first.amount} ${first.code}.`);
  }
  const sign = WITH_SIGN.exec(plain)?.groups;
  if (sign !== undefined) return refuseSign(sign.before ?? sign.after ?? '', sign.a ?? sign.b ?? '');
  const message = NO_CODE.test(plain)
    ? `${plain} has no currency: which one?`
    : `${quoted(text)} can't be read as an amount of money.`;
  return refused(message, FORMS, 'Write the amount, a space and the three letters of its currency.');
}

function refuseSign(sign: string, amount: string) {
  const codes = OF_SIGN[sign] ?? [];
  const plain = amount.trim().replace(/[, '](?=\d{3}(?:\D|$))/gu, '');
  const [likeliest = 'GBP', ...others] = codes;
  const rest = others.length === 0 ? '' : `, or one of ${others.join(', ')} if that is meant`;
  return refused(
    `${sign} alone names no currency: which code?`,
    `${plain} ${likeliest}`,
    `Write ${plain} ${likeliest}${rest}.`,
  );
}

/** An ISO 4217 code by itself, as in the collection's own `currency`. */
export function parseCurrency(text: string): Parsed<string> {
  if (CURRENCIES.has(text)) return parsed(text);
  return refused(
    `${quoted(text)} is no currency's code.`,
    'GBP, or EUR',
    'Write the three capital letters of ISO 4217.',
  );
}
