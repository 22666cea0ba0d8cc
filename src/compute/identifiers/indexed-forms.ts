import { plainForm } from './plain.ts';
import { charactersOf, parseReading, type ReadCharacter } from './reading-pattern.ts';

/** A reading that allows more texts than this is found by its first ones. */
const MOST_FORMS = 8;
/** Far longer than any number; a paragraph pasted into a number's place is cut here. */
export const LONGEST_PLAIN = 200;

const HAS_DOUBTS = /[?{}]/;

/** The plain forms under which a number is found: one, or one for each text that a doubtful reading allows. An unread
 *  character stays as `?`. */
export function indexedForms(written: string): readonly string[] {
  const pattern = HAS_DOUBTS.test(written) ? parseReading(written) : undefined;
  if (pattern?.ok !== true) return [plainForm(written).slice(0, LONGEST_PLAIN)];
  let forms: readonly string[] = [''];
  for (const character of charactersOf(pattern.parts)) {
    const choices = choicesOf(character);
    forms = forms.flatMap((form) => choices.map((choice) => form + choice)).slice(0, MOST_FORMS);
  }
  return [...new Set(forms.map((form) => form.slice(0, LONGEST_PLAIN)))];
}

const choicesOf = ({ mayBe }: ReadCharacter): readonly string[] => (mayBe.length === 0 ? ['?'] : mayBe.map(plainForm));
