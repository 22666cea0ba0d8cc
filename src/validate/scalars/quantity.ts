import { quoted, type Refusal, refused } from './parsed.ts';

/** Vulgar fractions in one character, exactly. */
const VULGAR: Readonly<Record<string, number>> = {
  '¼': 1 / 4,
  '½': 1 / 2,
  '¾': 3 / 4,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
  '⅙': 1 / 6,
  '⅚': 5 / 6,
};

/** Every part is bounded, so that the patterns stay linear whatever they are given. */
const COUNT = String.raw`(?:(?:\d{1,9} ?)?[¼½¾⅓⅔⅛⅜⅝⅞⅙⅚]|\d{1,9}(?:\.\d{1,12})?|(?:\d{1,9} )?\d{1,4}[/⁄]\d{1,4})`;
const BARE = new RegExp(`^${COUNT}$`, 'u');
const WITH_UNIT = new RegExp(`^(?<count>${COUNT}) ?(?<unit>[^\\d\\s.,¼-¾⅓-⅞][^\\d.,]{0,15})$`, 'u');
const WHOLE_AND_FRACTION = /^(?:(?<whole>\d{1,9}) )?(?<above>\d{1,4})[/⁄](?<below>\d{1,4})$/u;
const WITH_COMMA = /^(?<whole>\d{1,9}),(?<rest>\d{1,9})(?<unit> ?[^\d\s.,][^\d.,]{0,15})?$/u;

export interface CountAndUnit {
  readonly count: number;
  readonly unit: string;
}

/** No-break and thin spaces, which copied texts are full of, count as spaces. */
export const spaced = (text: string): string => text.replace(/[\u00a0\u2009\u202f]/gu, ' ').trim();

/** A plain number: `10.5`, `10½`, `10 1/2`, `1/4`. undefined for anything else. */
export function parseCount(text: string): number | undefined {
  const plain = spaced(text);
  if (!BARE.test(plain)) return undefined;
  const vulgar = VULGAR[plain.at(-1) ?? ''];
  if (vulgar !== undefined) return Number(plain.slice(0, -1)) + vulgar;
  const parts = WHOLE_AND_FRACTION.exec(plain)?.groups;
  if (parts === undefined) return Number(plain);
  const below = Number(parts.below);
  return below === 0 ? undefined : Number(parts.whole ?? 0) + Number(parts.above) / below;
}

/** A number with its unit, the space between them optional: `10½ in`, `2500ft`. */
export function splitQuantity(text: string): CountAndUnit | undefined {
  const groups = WITH_UNIT.exec(spaced(text))?.groups;
  const count = parseCount(groups?.count ?? '');
  const unit = groups?.unit;
  return count === undefined || unit === undefined ? undefined : { count, unit: unit.trimEnd() };
}

export interface QuantityForms {
  /** With its article: `a speed`. */
  readonly what: string;
  /** Two forms that would be taken. */
  readonly forms: readonly [string, string];
  readonly units: readonly [string, string];
}

/** Why a text isn't this quantity: no unit, a comma for the point, another unit, or no quantity at all. */
export function refuseQuantity(text: string, { what, forms, units }: QuantityForms): Refusal {
  const plain = spaced(text);
  const expected = `${forms[0]}, or ${forms[1]}`;
  if (BARE.test(plain)) {
    const either = `${plain} ${units[0]} or ${plain} ${units[1]}`;
    return refused(`${plain} has no unit: which unit is it?`, expected, `Write the unit behind the number: ${either}.`);
  }
  const comma = WITH_COMMA.exec(plain)?.groups;
  if (comma !== undefined) return refuseComma(comma, expected);
  const split = splitQuantity(plain);
  if (split !== undefined) {
    const message = `${quoted(split.unit)} isn't a unit of ${what}.`;
    return refused(message, expected, `Write it in ${units[0]} or ${units[1]}.`);
  }
  const action = `Write a number and its unit, or leave the key out if nobody has recorded it.`;
  return refused(`${quoted(text)} can't be read as ${what}.`, expected, action);
}

function refuseComma(groups: Readonly<Record<string, string | undefined>>, expected: string): Refusal {
  const [whole, rest, unit] = [groups.whole, groups.rest, groups.unit ?? ''];
  const point = `${whole}.${rest}${unit}`;
  const action =
    rest?.length === 3
      ? `Write ${whole}${rest}${unit} if the comma sets off thousands, ${point} if it is a decimal comma.`
      : `Write ${point}, with a point.`;
  return refused('A comma stands in the number.', expected, action);
}
