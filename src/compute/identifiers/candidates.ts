import { mistakenFor } from './confusables.ts';
import { FOUND, findFitting } from './fitting.ts';
import { LONGEST_WALKED, type Masks } from './masks.ts';
import { type OpenIndex, placeOf } from './open-index.ts';
import { type Extent, type Form, type Question, SHORTEST_PART } from './question.ts';

/** How a number matched. */
export const HOWS = ['as written', 'other spelling', 'unread', 'misread', 'part'] as const;
export type How = (typeof HOWS)[number];

/** A plain form that matched: how, through which form of the question, and how unlikely that is, from 0. */
export interface Candidate {
  /** The plain form's place in the index. */
  readonly plain: number;
  readonly form: Form;
  readonly how: Exclude<How, 'as written'>;
  readonly unlikely: number;
}

/** How unlikely each way to match is. Common practice, no source: only the order matters. A number with one or two
 *  characters after what was typed stands before a misread one, a longer one after it. */
const UNLIKELY = {
  spelling: 10,
  unread: 20,
  part: 100,
  notAtStart: 50,
  character: 10,
  misread: 105,
  misreadCost: 50,
  misreadPart: 120,
  partOfPart: 60,
} as const;

const LEFT_OUT: Readonly<Record<Extent, number>> = {
  all: 0,
  'without the rest': 2,
  'without the cut': 60,
  'stem only': 130,
  'words of it': 60,
};

/** Forms that leave something of the number itself out match a part of what was typed. */
const isShortened = (extent: Extent) => extent === 'without the cut' || extent === 'stem only';

/** Plain forms that have just the characters of a form, whatever the spelling. */
export function sameCharacters(index: OpenIndex, form: Form): readonly Candidate[] {
  const { plain, extent } = form;
  const found = plain === undefined ? undefined : placeOf(index, plain);
  if (found === undefined) return [];
  const how = isShortened(extent) ? 'part' : 'other spelling';
  return [{ plain: found, form, how, unlikely: UNLIKELY.spelling + LEFT_OUT[extent] }];
}

/** Plain forms that differ from a form by one easily misread character. */
export function misreadCharacters(index: OpenIndex, form: Form): readonly Candidate[] {
  const { plain, extent } = form;
  if (plain === undefined) return [];
  return [...plain].flatMap((read, at) =>
    [...mistakenFor(read)].flatMap(([meant, row]) => {
      const found = placeOf(index, `${plain.slice(0, at)}${meant}${plain.slice(at + 1)}`);
      if (found === undefined) return [];
      const unlikely = UNLIKELY.misread + Math.round(row.cost * UNLIKELY.misreadCost) + LEFT_OUT[extent];
      return [{ plain: found, form, how: 'misread' as const, unlikely }];
    }),
  );
}

/** Plain forms that a form with unread characters fits, or that it is a part of. */
export function fittingCharacters(index: OpenIndex, form: Form, masks: Masks): readonly Candidate[] {
  const found = findFitting(index, masks);
  const candidates: Candidate[] = [];
  for (let each = 0; each < found.length; each += FOUND) {
    const plain = found[each] ?? 0;
    const fitted = fittedIn(form, index.plains[plain] ?? '', found[each + 1] ?? 0);
    const answer = answerOf(form, fitted, found[each + 2] === 1);
    if (answer !== undefined) candidates.push({ plain, form, ...answer });
  }
  return candidates;
}

interface Fitted {
  readonly whole: boolean;
  readonly atStart: boolean;
  /** Characters of the plain form past those asked for. */
  readonly more: number;
}

function fittedIn(form: Form, text: string, end: number): Fitted {
  const more = Math.max(0, text.length - form.asked.length);
  if (!hasRun(form)) return { whole: more === 0, atStart: end === form.asked.length, more };
  const atStart = beginsWith(form, text);
  return { whole: atStart && endsWith(form, text), atStart, more };
}

const hasRun = ({ asked }: Form) => asked.some(({ thenAny }) => thenAny);

type FittingAnswer = Pick<Candidate, 'how' | 'unlikely'>;

/** Undefined where too little is asked for: a part has three characters or more, and two of them are known. */
function answerOf(
  { asked, extent }: Form,
  { whole, atStart, more }: Fitted,
  misread: boolean,
): FittingAnswer | undefined {
  const known = asked.filter(({ mayBe }) => mayBe !== '').length;
  if (whole ? known === 0 : asked.length < SHORTEST_PART || known < 2) return undefined;
  if (whole && !misread) return { how: 'unread', unlikely: UNLIKELY.unread + LEFT_OUT[extent] };
  if (whole) return { how: 'misread', unlikely: UNLIKELY.unread + UNLIKELY.misread + LEFT_OUT[extent] };
  const place = more * UNLIKELY.character + (atStart ? 0 : UNLIKELY.notAtStart);
  const part = UNLIKELY.part + place + (extent === 'all' ? 0 : UNLIKELY.partOfPart) + LEFT_OUT[extent];
  return misread ? { how: 'misread', unlikely: part + UNLIKELY.misreadPart } : { how: 'part', unlikely: part };
}

const fits = (form: Form, at: number, character: string | undefined) => {
  const mayBe = form.asked[at]?.mayBe ?? '';
  return character !== undefined && (mayBe === '' || character === '?' || mayBe.includes(character));
};

/** With an unread run, the walk says that the question is in there; its first and last characters say where. */
const beginsWith = (form: Form, text: string) => fits(form, 0, text[0]);
const endsWith = (form: Form, text: string) =>
  form.asked.at(-1)?.thenAny === true || fits(form, form.asked.length - 1, text.at(-1));

/** The forms that are walked through the index: all that was typed, and the number within it. */
export function walkedForms({ forms }: Question): readonly Form[] {
  const long = forms.filter(({ extent, asked }) => !isShortened(extent) && asked.length <= LONGEST_WALKED);
  return long.length > 0 ? long : forms.slice(-1).filter(({ asked }) => asked.length <= LONGEST_WALKED);
}
