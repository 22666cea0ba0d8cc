import type { Answer, Calculation } from './calculation.ts';

/** One answered question; `input` is what tells it from the other rows. */
export interface AnsweredRow {
  readonly written: ReadonlyMap<string, string>;
  readonly answer: Answer;
}

/** The figures as they are, but for the noise of binary fractions past the twelfth figure. */
const tidy = (_key: string, value: unknown): unknown =>
  typeof value === 'number' && Number.isFinite(value) ? Number(value.toPrecision(12)) : value;

/** As programs read it: the first answer, and a row for each when a key was repeated. */
export function answerJson(name: string, rows: readonly AnsweredRow[]): string {
  const [first] = rows;
  if (first === undefined) throw new Error('fault: no question was asked');
  const { value, unit, low, high, inputs, formula, source, also, mind } = first.answer;
  const body = {
    name,
    value,
    unit,
    ...(low === undefined ? {} : { low, high }),
    inputs,
    formula,
    source,
    ...also,
    ...(mind.length === 0 ? {} : { mind }),
    ...(rows.length > 1 ? { rows: rows.map(jsonRow) } : {}),
  };
  return `${JSON.stringify(body, tidy, 2)}\n`;
}

function jsonRow({ written, answer: { value, unit, low, high } }: AnsweredRow) {
  const input = written.size === 1 ? [...written.values()][0] : Object.fromEntries(written);
  return { input, value, unit, ...(low === undefined ? {} : { low, high }) };
}

/** As a person reads it: figure, band, what it rests on, and what to mind. */
export function answerText(calculation: Calculation, rows: readonly AnsweredRow[]): string {
  const [first] = rows;
  if (first === undefined) throw new Error('fault: no question was asked');
  const { answer } = first;
  const figures =
    rows.length === 1
      ? figureLines(answer)
      : rows.map((row) => `${[...row.written.values()].join(', ')}: ${figureLines(row.answer).join('; ')}`);
  const shared = rows.length === 1 ? answer.inputs : answer.inputs.filter((input) => !first.written.has(input.name));
  return [
    `${calculation.name}: ${calculation.does}`,
    ...figures.map((line) => `  ${line}`),
    ...alsoLines(answer),
    ...shared.map((input) => `  from     ${input.name}: ${input.written} (${input.basis})`),
    `  formula  ${answer.formula}`,
    `  source   ${answer.source}`,
    ...answer.mind.map((line) => `  mind     ${line}`),
    '',
  ].join('\n');
}

function figureLines({ value, unit, low, high }: Answer): string[] {
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
        .map(([name, value]) => `${name} ${shown(value)}`)
        .join(', '),
    );
  }
  const band = typeof low === 'number' && typeof high === 'number' ? `, ${round(low)} to ${round(high)}` : '';
  return [`${key}: ${shown(part)}${unit === '' ? '' : ` ${unit}`}${band}`];
}

function alsoLines({ also = {} }: Answer): string[] {
  return Object.entries(also)
    .filter(([key]) => key !== 'problems')
    .map(([key, value]) => `  also     ${key}: ${shown(value)}`);
}

const unitOf = (unit: Answer['unit'], key: string): string =>
  unit === null || typeof unit === 'string' ? '' : (unit[key] ?? '');
const at = (parts: unknown, key: string): unknown => (parts === undefined ? undefined : Object(parts)[key]);

function shown(value: unknown): string {
  if (value === null || value === undefined) return 'none';
  if (typeof value === 'number') return round(value);
  if (Array.isArray(value)) return value.length === 0 ? 'none' : value.map(shown).join(', ');
  if (typeof value === 'object')
    return Object.entries(value)
      .map(([key, part]) => `${key} ${shown(part)}`)
      .join(', ');
  return String(value);
}

/** Six figures are more than any tape deserves; JSON has them all. */
const round = (value: number): string => String(Number(value.toPrecision(6)));
