import type { SharePlan } from '#model/dossier.ts';
import { many, plain } from './problem-list.ts';

/** What goes along with a share and what stays out, as the terminal shows it. */
export function planText(plan: SharePlan): string {
  const list = (heading: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : [heading, ...lines.map((line) => `  ${line}`)];
  return `${[
    `shares/${plan.share}, for ${plan.audience === 'insurer' || plan.audience === 'engineer' ? 'an' : 'a'} ${plan.audience}, opened by ${plan.opensBy}${plan.until === undefined ? '' : `, until ${plan.until}`}`,
    ...list(
      'Reels',
      plan.reels.map(({ id, title }) => `${id}: ${title}`),
    ),
    ...list('Goes along', [
      ...plan.shown,
      many(plan.photographs, 'photograph'),
      ...(plan.outside === 0 ? [] : [`${many(plan.outside, 'other reel')} by kind and date, in a lineage`]),
    ]),
    ...list('Goes along though it is private, because this share means to', plan.privateShown),
    ...list('Stays out', [
      ...plan.leftOut,
      ...(plan.photographsHeldBack === 0
        ? []
        : [`${many(plan.photographsHeldBack, 'photograph')} on which a fact can be read that you made private`]),
    ]),
    ...list('In shows: and private, so it stays out (shows-private: would show it)', plan.refused),
    ...list('In shows: or shows-private: and no fact', plan.unknown),
    ...list('In reels: and no entry', plan.missingReels),
  ]
    .map(plain)
    .join('\n')}\n`;
}
