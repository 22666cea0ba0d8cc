import type { NumberedThing, NumberOf, NumberUse, Whereabouts } from '#model/numbered.ts';
import { align, costOfAligning } from './alignment.ts';
import { becauseNear, becauseOf } from './because.ts';
import {
  type Candidate,
  fittingCharacters,
  HOWS,
  type How,
  misreadCharacters,
  sameCharacters,
  walkedForms,
} from './candidates.ts';
import { masksOf } from './masks.ts';
import { findNearest } from './nearest.ts';
import type { OpenIndex } from './open-index.ts';
import { type Form, type Question, questionOf, wordsAsForms } from './question.ts';

/** A number that leads to something, as an answer gives it. */
export interface Lead {
  /** The entry's id; a cut and a log line are on their reel. */
  readonly id: string;
  readonly of: NumberedThing;
  readonly as: NumberUse;
  readonly number: string;
  readonly title: string;
  readonly state: Whereabouts;
  /** Where it was read, and how sure that reading is; empty when nothing was read. */
  readonly from: string;
  readonly sure: string;
  /** Why it is shown, in a sentence. */
  readonly because: string;
}

export interface Hit extends Lead {
  readonly how: How;
  /** Another number fits just as well. */
  readonly tied: boolean;
}

export interface Near extends Lead {
  /** Levenshtein's distance in plain characters. */
  readonly distance: number;
}

export interface Answer {
  readonly query: string;
  /** The likeliest first. */
  readonly hits: readonly Hit[];
  /** How many hits there are, with those past the limit. */
  readonly total: number;
  /** Numbers that don't match, only come near. */
  readonly near: readonly Near[];
}

/** Everything that a number, or a part of one, or a whole etching can mean.
 *
 * @param limit  how many hits are given at most, from 1; the rest is counted.
 */
export function searchNumbers(index: OpenIndex, text: string, limit: number): Answer {
  const question = questionOf(text);
  const candidates = candidatesOf(index, question);
  return { query: text, ...hitsOf(index, question, candidates, limit), near: nearest(index, question, candidates) };
}

/** Candidates as hits, the likeliest first, each number once. */
export function hitsOf(
  index: OpenIndex,
  question: Question,
  candidates: readonly Candidate[],
  limit: number,
): Pick<Answer, 'hits' | 'total'> {
  const { placed, total } = inOrder(index, question, candidates, limit);
  const hits = placed.map((hit, at): Hit => {
    const tied = [placed[at - 1], placed[at + 1]].some((other) => other !== undefined && isTied(index, hit, other));
    const { how, form, number } = hit;
    return { ...lead(number), how, tied, because: becauseOf(question, form, how, number) };
  });
  return { hits, total };
}

const lead = ({ thing, as, number, from, sure }: NumberOf) => ({
  id: thing.id,
  of: thing.of,
  as,
  number,
  title: thing.title,
  state: thing.state,
  from,
  sure,
});

function candidatesOf(index: OpenIndex, question: Question): readonly Candidate[] {
  const { forms } = question;
  const certain = forms.flatMap((form) => [...sameCharacters(index, form), ...misreadCharacters(index, form)]);
  const walked = walkedForms(question).flatMap((form) =>
    fittingCharacters(index, form, masksOf(form.asked, index.letterOf)),
  );
  if (certain.length + walked.length > 0) return certain.concat(walked);
  return wordsAsForms(question.typed).flatMap((form) => sameCharacters(index, form));
}

interface Placed {
  readonly unlikely: number;
  /** Among the index's owners. */
  readonly place: number;
  readonly how: How;
  readonly form: Form;
  readonly number: NumberOf;
}

const PLACES = 2 ** 21;
const RANKS = 8;
const FORMS = 16;

/** The likeliest first. Each number of each candidate is packed into one figure, so that many are put in order quickly:
 *  how unlikely, the rank of what it is of, how it matched, through which form, its place among the index's owners. */
function inOrder(index: OpenIndex, { typed }: Question, candidates: readonly Candidate[], limit: number) {
  const forms = [...new Set(candidates.map(({ form }) => form))].slice(0, FORMS);
  const keys: number[] = [];
  for (const { plain, form, how, unlikely } of candidates) {
    const formAt = Math.max(0, forms.indexOf(form));
    const to = index.firstOwner[plain + 1] ?? 0;
    for (let place = index.firstOwner[plain] ?? 0; place < to; place += 1) {
      const number = index.owners[place] ?? 0;
      const { exactly, unlikelier } = spelling(index.written[number] ?? '', typed, form, how);
      const front = ((unlikely + unlikelier) * RANKS + (index.rank[number] ?? 0)) * RANKS + HOWS.indexOf(exactly);
      keys.push((front * FORMS + formAt) * PLACES + place);
    }
  }
  const placed: Placed[] = [];
  const met = new Set<number>();
  for (const key of Float64Array.from(keys).sort()) {
    const place = key % PLACES;
    const number = index.owners[place] ?? 0;
    if (met.has(number)) continue;
    met.add(number);
    if (placed.length >= limit) continue;
    const front = Math.floor(key / PLACES);
    const form = forms[front % FORMS];
    const how = HOWS[Math.floor(front / FORMS) % RANKS];
    if (form === undefined || how === undefined) throw new Error('fault: a hit came without its form');
    const unlikely = Math.floor(front / FORMS / RANKS / RANKS);
    placed.push({ unlikely, place, how, form, number: index.numberAt(number) });
  }
  return { placed, total: met.size };
}

/** The very spelling is likelier than another, and another than a doubtful reading that only allows it. */
function spelling(written: string, typed: string, { extent }: Form, how: How) {
  if (how !== 'other spelling') return { exactly: how, unlikelier: 0 };
  if (/[?{]/.test(written)) return { exactly: 'unread' as const, unlikelier: 10 };
  if (!typed.includes(written)) return { exactly: how, unlikelier: 0 };
  return { exactly: 'as written' as const, unlikelier: extent === 'all' ? -10 : -1 };
}

/** Two entries that share a number aren't tied: both have it. */
const isTied = (index: OpenIndex, one: Placed, other: Placed) =>
  one.unlikely === other.unlikely && one.number.number !== other.number.number && !sharePlain(index, one, other);

function sharePlain({ firstOwner, plains }: OpenIndex, one: Placed, other: Placed): boolean {
  const [low, high] = one.place < other.place ? [one.place, other.place] : [other.place, one.place];
  let from = 0;
  let to = plains.length;
  while (to - from > 1) {
    const middle = (from + to) >> 1;
    if ((firstOwner[middle] ?? 0) <= low) from = middle;
    else to = middle;
  }
  return high < (firstOwner[from + 1] ?? 0);
}

const MOST_NEAR = 10;
/** Two characters may be wrong in four or more, one in three; in fewer, everything would be near. */
const SHORTEST_FOR_TWO = 4;
const SHORTEST_FOR_ONE = 3;

interface NearPlain {
  readonly plain: number;
  readonly form: Form;
  readonly distance: number;
  readonly cost: number;
}

function nearest(index: OpenIndex, question: Question, candidates: readonly Candidate[]): readonly Near[] {
  const met = new Set(candidates.map(({ plain }) => plain));
  const near: NearPlain[] = [];
  for (const form of walkedForms(question).filter(canBeNear)) {
    const most = form.asked.length >= SHORTEST_FOR_TWO ? 2 : 1;
    const found = findNearest(index, masksOf(form.asked, index.letterOf), most);
    for (let each = 0; each < found.length; each += 2) {
      const plain = found[each] ?? 0;
      if (met.has(plain)) continue;
      met.add(plain);
      const cost = costOfAligning(form.asked, index.plains[plain] ?? '');
      near.push({ plain, form, distance: found[each + 1] ?? 0, cost });
    }
  }
  const ordered = near.toSorted((a, b) => a.cost - b.cost || a.distance - b.distance || a.plain - b.plain);
  return ordered
    .slice(0, MOST_NEAR)
    .flatMap((one) => owned(index, one))
    .filter(({ place }, at, all) => all.findIndex((other) => other.place === place) === at)
    .slice(0, MOST_NEAR)
    .map(({ near: one }) => one);
}

const canBeNear = ({ asked }: Form) =>
  asked.length >= SHORTEST_FOR_ONE &&
  asked.every(({ thenAny }) => !thenAny) &&
  asked.filter(({ mayBe }) => mayBe !== '').length >= SHORTEST_FOR_ONE;

function owned(
  index: OpenIndex,
  { plain, form, distance }: NearPlain,
): readonly { readonly place: number; readonly near: Near }[] {
  const places = [...index.owners.subarray(index.firstOwner[plain], index.firstOwner[plain + 1])];
  const because = becauseNear(align(form.asked, index.plains[plain] ?? '', false), distance);
  return places.map((place) => ({ place, near: { ...lead(index.numberAt(place)), distance, because } }));
}
