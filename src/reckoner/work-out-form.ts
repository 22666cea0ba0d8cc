import type { CalculationAnswer } from '#model/calculation-form.ts';
import { alsoLines, figureLines } from './answer-words.ts';
import { ask, type Surroundings } from './asked.ts';
import type { Calculation } from './calculation.ts';

/** Works a form out: what was typed for each key, empty ones left out. What can't be read is told key by key.
 * @param typed  of a key that takes several, all of them with semicolons between. */
export async function workOutForm(
  calculation: Calculation,
  typed: ReadonlyMap<string, string>,
  around: Surroundings,
): Promise<CalculationAnswer> {
  const given = new Map<string, readonly string[]>();
  const missing: { key: string; says: string }[] = [];
  for (const { name, together, optional, form } of calculation.keys) {
    const text = (typed.get(name) ?? '').trim();
    const values = (together === true ? text.split(';') : [text]).map((one) => one.trim()).filter((one) => one !== '');
    if (values.length > 0) given.set(name, values);
    else if (optional !== true) missing.push({ key: name, says: `Nothing was typed. Write it as ${form}.` });
  }
  if (missing.length > 0) return { is: 'refused', problems: missing };
  const asked = ask(given, around);
  const answer = await calculation.answer(asked);
  if (answer === undefined || asked.problems.length > 0) {
    const problems = asked.problems.map(({ place, message, expected, action }) => ({
      key: place.field,
      says: `${message} Taken would be: ${expected}. ${action}`.replaceAll('--', ''),
    }));
    return { is: 'refused', problems };
  }
  const { formula, source, mind } = answer;
  return { is: 'answered', figures: figureLines(answer), also: alsoLines(answer), formula, source, mind };
}
