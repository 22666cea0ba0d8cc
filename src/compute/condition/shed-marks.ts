import type { ShedMarks } from '#model/condition-facts.ts';
import type { PartialDate } from '#model/dates.ts';
import { valueOf } from '#model/fact.ts';
import type { Stock } from '#model/stock.ts';
import type { BaseFilm, Binder } from '#model/words.ts';

/** The years of the stocks that shed, as two sources have them: the wider is used, and both are shown. */
const SHED_YEARS = { from: 1970, until: 1985 } as const;
export const SHED_SOURCES = [
  'IASA-TC 05: polyester base, polyester-urethane binder, back coat, about 1970 to 1985',
  'a trade column of October 1995, two makers’ engineers: early 1970s to early or mid 1980s; and 1978 to early 1980s',
] as const;

/** What is known of a stock; any of it may be missing. */
export interface StockMarks {
  readonly base: BaseFilm | undefined;
  readonly binder: Binder | undefined;
  readonly backCoated: boolean | undefined;
  /** When the stock was made, or else when the tape was recorded on. */
  readonly made: PartialDate | undefined;
  /** What its own entry says. */
  readonly knownToShed?: boolean | undefined;
}

type Mark = { readonly is: 'present' | 'absent'; readonly says: string } | undefined;

/** The marks of a stock by its entry.
 *
 * @param recorded  when the tape was recorded: it stands in for the years of a stock that has none. */
export const shedMarksOf = (stock: Stock | undefined, recorded?: PartialDate): ShedMarks | undefined =>
  shedMarks({
    base: valueOf(stock?.base),
    binder: valueOf(stock?.binder),
    backCoated: valueOf(stock?.backCoated),
    made: valueOf(stock?.made) ?? recorded,
    knownToShed: valueOf(stock?.knownToShed),
  });

/** Whether a stock sheds, as far as can be told without a look: it is known to, or has all the marks of those that do.
 * One mark known to be absent rules it out; while none is absent and one isn't known, nothing can be said. What its
 * entry says and its marks are held beside each other, and the one that warns is gone by. */
export function shedMarks({ base, binder, backCoated, made, knownToShed }: StockMarks): ShedMarks | undefined {
  const marks: readonly Mark[] = [
    base === undefined ? undefined : mark(base === 'polyester', `${base} base`),
    backCoated === undefined ? undefined : mark(backCoated, backCoated ? 'back coat' : 'no back coat'),
    binder === undefined
      ? undefined
      : mark(
          binder === 'polyurethane',
          binder === 'other' ? 'another binder than polyurethane' : 'polyurethane binder',
        ),
    years(made),
  ];
  const absent = marks.find((one) => one?.is === 'absent');
  const has = marks.flatMap((one) => (one?.is === 'present' ? one.says : []));
  if (knownToShed === true) return { are: 'present', marks: has, known: true, against: absent?.says };
  if (absent !== undefined) return { are: 'absent', because: absent.says };
  if (marks.includes(undefined)) return undefined;
  return { are: 'present', marks: has, against: knownToShed === false ? NOT_KNOWN_TO : undefined };
}

const NOT_KNOWN_TO = 'its own entry says that it isn’t known to shed';

/** What makes a stock one of those that shed, with what speaks against it, in a sentence or two. */
export function shedInWords({ marks, known = false, against }: Extract<ShedMarks, { are: 'present' }>): string {
  const listed = marks.join(', ');
  if (!known) {
    const beside = against === undefined ? '' : ` Against that, ${against}; both stand here.`;
    return `It has every mark of the stocks that shed: ${listed}.${beside}`;
  }
  if (against !== undefined)
    return `Its stock is known to shed. Against that, it lacks a mark of those that do: ${against}; both stand here.`;
  return `Its stock is known to shed${listed === '' ? '' : `, and has marks of those that do: ${listed}`}.`;
}

const mark = (present: boolean, says: string): Mark => ({ is: present ? 'present' : 'absent', says });

/** Years that only touch the span count as inside it: a stock made 1968/1972 may be of 1971. */
function years(made: PartialDate | undefined): Mark {
  if (made === undefined) return undefined;
  const from = made.earliest === null ? undefined : Number(made.earliest.slice(0, 4));
  const until = made.latest === null ? undefined : Number(made.latest.slice(0, 4));
  if (from !== undefined && from > SHED_YEARS.until) return mark(false, `made after ${SHED_YEARS.until}`);
  if (until !== undefined && until < SHED_YEARS.from) return mark(false, `made before ${SHED_YEARS.from}`);
  if (from === undefined && until === undefined) return undefined;
  return mark(true, `made about ${SHED_YEARS.from} to ${SHED_YEARS.until}`);
}
