/** A calendar day, `YYYY-MM-DD`; such texts compare by time with `<`. */
export type Day = string & { readonly __day: true };
export const day = (text: string) => text as Day;

/** A date as far as it is known (EDTF, ISO 8601-2). Bounds are as written: `~` and `?` widen nothing. */
export interface PartialDate {
  /** First possible day; null for an open or unknown start. */
  readonly earliest: Day | null;
  /** Last possible day; null for an open or unknown end. */
  readonly latest: Day | null;
  readonly uncertain: boolean;
  readonly approximate: boolean;
  readonly openStart: boolean;
  readonly openEnd: boolean;
  readonly unknownStart: boolean;
  readonly unknownEnd: boolean;
  /** 21 to 24 for spring to winter; its bounds are its year's. */
  readonly season: number | null;
}

/** An instant on the local clock of the place, `YYYY-MM-DDTHH:MM`, no zone. */
export type LocalTime = string & { readonly __localTime: true };
