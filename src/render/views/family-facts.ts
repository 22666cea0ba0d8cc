import type { ReelSheet } from '#model/catalogue.ts';
import type { Diagnostic } from '#model/diagnostic.ts';
import { count } from '../words/number.ts';
import type { Family } from './family.ts';
import type { Lookup } from './lookup.ts';
import { commonTitle } from './shelf.ts';
import { isAboutLineage } from './trouble.ts';

/** What can be said of a family as a whole. */
export interface FamilyFacts {
  readonly family: Family;
  readonly title: string;
  readonly reels: readonly ReelSheet[];
  readonly held: number;
  readonly editions: number;
  readonly cuts: number;
  /** Warnings about its numbers and links, each once. */
  readonly trouble: readonly Diagnostic[];
}

export function familyFacts(family: Family, lookup: Lookup): FamilyFacts {
  const reels = idsOf(family, 'reel:').flatMap((id) => lookup.reel(id) ?? []);
  const editions = idsOf(family, 'edition:').flatMap((id) => lookup.edition(id) ?? []);
  const titles = [...new Set(editions.map((edition) => edition.title.value.replace(/ \([^)]*\)$/, '')))];
  const named = titled(titles) ?? commonTitle(reels.map((sheet) => sheet.reel.title.value));
  const problems = [
    ...reels.flatMap((sheet) => sheet.problems),
    ...editions.flatMap((edition) => lookup.problems(edition.file)),
  ];
  return {
    family,
    title: named,
    reels,
    held: reels.filter(({ reel }) => reel.status.value === 'held').length,
    editions: editions.length,
    cuts: idsOf(family, 'cut:').length,
    trouble: [...new Set(problems)].filter((problem) => problem.severity === 'warning' && isAboutLineage(problem.code)),
  };
}

const idsOf = (family: Family, kind: string) =>
  family.nodes.filter((node) => node.startsWith(kind)).map((node) => node.slice(kind.length));

/** A family may hold several works, joined by a reel that was put together from all of them. */
function titled([first, ...others]: readonly string[]): string | undefined {
  return first === undefined || others.length === 0 ? first : `${first} and ${count(others.length, 'other')}`;
}
