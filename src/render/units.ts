import { valueOf } from '#model/fact.ts';
import type { UnitSystem } from '#model/words.ts';
import { site } from './site.ts';

/** The owner's units, metric when the collection doesn't say. */
export const units = (): UnitSystem => valueOf(site().catalogue.entries.collection.units) ?? 'metric';
