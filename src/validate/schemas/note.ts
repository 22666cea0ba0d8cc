import type { Note } from '#model/entries.ts';
import { type Complete, mapOf } from '../branch.ts';
import { baseFacts, baseShape, type Facts } from './base.ts';

/** A notes/ entry. */
export const note = mapOf({ ...baseShape }, (fields): Complete<Facts<Note>> => baseFacts(fields));
