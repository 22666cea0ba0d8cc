import type { ShedMarks } from '#model/condition-facts.ts';
import type { PartialDate } from '#model/dates.ts';
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
}

type Mark = { readonly is: 'present' | 'absent'; readonly says: string } | undefined;

/** Whether a stock has all the marks of those that shed. One mark known to be absent rules it out; while none is absent
 * and one isn't known, nothing can be said. */
export function shedMarks({ base, binder, backCoated, made }: StockMarks): ShedMarks | undefined {
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
  if (absent !== undefined) return { are: 'absent', because: absent.says };
  if (marks.includes(undefined)) return undefined;
  return { are: 'present', marks: marks.flatMap((one) => one?.says ?? []) };
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
