import { alsoLines, figureLines } from '#reckoner/answer-words.ts';
import type { Answer, Calculation } from '#reckoner/calculation.ts';

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
    ...alsoLines(answer).map((line) => `  also     ${line}`),
    ...shared.map((input) => `  from     ${input.name}: ${input.written} (${input.basis})`),
    `  formula  ${answer.formula}`,
    `  source   ${answer.source}`,
    ...answer.mind.map((line) => `  mind     ${line}`),
    '',
  ].join('\n');
}
