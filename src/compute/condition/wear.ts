/** What playing costs. Source: IASA-TC 05 section 2.2.1.1.4, Deterioration by replay. */
export const WEAR_BY_PLAYING = {
  says: 'several hundred plays without measurable loss, on a well-kept machine of the latest generation; an old or badly kept one can destroy a tape',
  source: 'IASA-TC 05 section 2.2.1.1.4, Deterioration by replay',
} as const;
