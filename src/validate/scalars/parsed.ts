/** What a scalar parser answers: the value in our units, or why the text isn't read and what to write instead. */
export type Parsed<T> = { readonly ok: true; readonly value: T } | Refusal;

/** The parts of a problem that don't depend on where the text stands. */
export interface Refusal {
  readonly ok: false;
  /** `entry/bad-value` where it isn't given. */
  readonly code?: 'entry/ambiguous-date' | 'photo/region-outside';
  readonly message: string;
  readonly expected: string;
  readonly action: string;
}

/** Takes all of the text or none of it. */
export type Parser<T> = (text: string) => Parsed<T>;

export const parsed = <T>(value: T): Parsed<T> => ({ ok: true, value });

export const refused = (message: string, expected: string, action: string, code?: Refusal['code']): Refusal =>
  code === undefined ? { ok: false, message, expected, action } : { ok: false, message, expected, action, code };

/** The same text in quotes, cut for a sentence; the whole of it stands in `found`. */
export const quoted = (text: string): string => `"${text.length > 60 ? `${text.slice(0, 60)}…` : text}"`;
