import type { Check } from './check.ts';

/** Every cross-check, one a line, sorted by code. */
export const CHECKS: readonly Check[] = [];
