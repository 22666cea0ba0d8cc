import type { Edition } from '#model/edition.ts';
import { itemsOf } from '#model/fact.ts';
import type { CheckContext } from './context.ts';

/** An edition, all that it reissues and all that reissues it, as far as they have entries. */
export function linkedEditions(id: string, context: CheckContext): readonly Edition[] {
  const linked = new Set<string>();
  const next = [id];
  for (let one = next.pop(); one !== undefined; one = next.pop()) {
    if (linked.has(one)) continue;
    linked.add(one);
    next.push(...itemsOf(context.editions.get(one)?.reissueOf).map((earlier) => earlier.value));
    next.push(...(context.reissues.get(one) ?? []));
  }
  return [...linked].flatMap((one) => context.editions.get(one) ?? []);
}
