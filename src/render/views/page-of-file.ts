import type { Catalogue } from '#model/catalogue.ts';
import { knownLinks } from '../known-links.ts';

/** The page of the entry in a file; undefined for one that couldn't be used, and for shares. */
export const pageOfFile = (catalogue: Catalogue, file: string): string | undefined =>
  knownLinks(catalogue).pageOf(file);
