/** The version of the entries' own form, written as `format:` in collection.md; without it, 1. It changes only when a
 * key's name or meaning does. */
export const FORMAT = 1;
