/** News about the object. A missing fact never gives `clear`. */
const OUTCOMES = ['at-risk', 'not-recorded', 'clear'] as const;
export type Outcome = (typeof OUTCOMES)[number];

export interface Finding {
  readonly rule: string;
  readonly title: string;
  readonly outcome: Outcome;
  readonly because: string;
  readonly action: string;
  /** Cautions that must stand where the action is shown. */
  readonly cautions: readonly string[];
  readonly sources: readonly string[];
  /** True when someone saw or heard it on this reel; false when it follows from the stock or the place alone. */
  readonly observed: boolean;
}
