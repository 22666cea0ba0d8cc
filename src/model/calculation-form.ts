/** A calculation as a form that is filled with an example, worked out at build. */
export interface CalculationForm {
  readonly name: string;
  readonly title: string;
  readonly group: string;
  readonly keys: readonly {
    readonly name: string;
    readonly form: string;
    readonly optional: boolean;
    /** Several of it make one question: they are typed with semicolons between. */
    readonly together: boolean;
    readonly example: string;
  }[];
  readonly answer: CalculationAnswer;
}

/** What a calculation answers, in words. */
export type CalculationAnswer =
  | {
      readonly is: 'answered';
      readonly figures: readonly string[];
      readonly also: readonly string[];
      readonly formula: string;
      readonly source: string;
      readonly mind: readonly string[];
    }
  | { readonly is: 'refused'; readonly problems: readonly { readonly key: string; readonly says: string }[] };
