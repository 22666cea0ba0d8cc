/** Spellings with one meaning only, and how EDTF writes them. Tried in order. */
const RESPELLINGS: readonly {
  readonly form: RegExp;
  readonly write: (match: RegExpExecArray) => string | undefined;
}[] = [
  // c. 1974, circa 1974, about 1974
  { form: /^(?:c|ca|circa|about|approx)\.? ?(\d{4}(?:-\d{2})?)$/iu, write: ([, year]) => `${year}~` },
  // 1974 ?, 1974 or so
  { form: /^(\d{4}) (?:or so|approx\.?)$/iu, write: ([, year]) => `${year}~` },
  { form: /^(?:probably |perhaps |maybe )(\d{4})$|^(\d{4}) \?$/iu, write: ([, a, b]) => `${a ?? b}?` },
  // 1970s, the 1970s, 1970's
  { form: /^(?:the )?(\d{3})0['’]?s$/iu, write: ([, decade]) => `${decade}X` },
  { form: /^(?:the )?['’]?(\d)0['’]?s$/iu, write: ([, decade]) => `19${decade}X` },
  // 197?, 197-
  { form: /^(\d{3})[-_*]$/u, write: ([, decade]) => `${decade}X` },
  // 4/1971
  { form: /^(\d{1,2})[/.-](\d{4})$/u, write: ([, month, year]) => monthOf(year, Number(month)) },
  // 1974-1976, 1974 – 1976, 1974 to 1976
  { form: /^(\d{4}) ?(?:-|–|—|to) ?(\d{4})$/u, write: ([, from, until]) => `${from}/${until}` },
  { form: /^(?:before|until|by) (\d{4}(?:-\d{2}){0,2})$/iu, write: ([, date]) => `../${date}` },
  { form: /^(?:after|since|from) (\d{4}(?:-\d{2}){0,2})$/iu, write: ([, date]) => `${date}/..` },
  // March 1974, 12 March 1974, March 12, 1974
  { form: /^(\p{L}{3,9})\.? (\d{4})$/u, write: ([, name, year]) => monthOf(year, named(name)) },
  {
    form: /^(\d{1,2})(?:st|nd|rd|th)? (\p{L}{3,9})\.? (\d{4})$/u,
    write: ([, d, name, year]) => dayOf(year, named(name), d),
  },
  {
    form: /^(\p{L}{3,9})\.? (\d{1,2})(?:st|nd|rd|th)?,? (\d{4})$/u,
    write: ([, name, d, year]) => dayOf(year, named(name), d),
  },
  // 1974/3/12, 1974.03.12
  { form: /^(\d{4})[/.](\d{1,2})[/.](\d{1,2})$/u, write: ([, year, month, d]) => dayOf(year, Number(month), d) },
  { form: /^(\d{4}-\d{2}) ([?~%])$/u, write: ([, date, sign]) => `${date}${sign}` },
];

const SHORT_NAMES = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

/** The EDTF spelling of a date that is written another way, where only one can be meant. */
export function respelled(text: string): string | undefined {
  for (const { form, write } of RESPELLINGS) {
    const match = form.exec(text);
    if (match !== null) return write(match);
  }
  return undefined;
}

const named = (name: string | undefined) => SHORT_NAMES.indexOf(name?.slice(0, 3).toLowerCase() ?? '') + 1;

function monthOf(year: string | undefined, month: number): string | undefined {
  return month >= 1 && month <= 12 ? `${year}-${String(month).padStart(2, '0')}` : undefined;
}

function dayOf(year: string | undefined, month: number, day: string | undefined): string | undefined {
  const start = monthOf(year, month);
  return start === undefined || day === undefined ? undefined : `${start}-${day.padStart(2, '0')}`;
}
