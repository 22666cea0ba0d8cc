import { itemsOf } from '#model/fact.ts';
import type { Finding } from '#model/finding.ts';
import type { Place } from '#model/place.ts';
import type { Reel } from '#model/reel.ts';
import type { ConditionRule } from '../condition/rule.ts';
import { type Check, crossCheck } from './check.ts';

/** The check that tells a condition rule's finding among the problems: a warning where somebody saw or heard it, a note
 * where it follows from the stock or the place alone. Only reels that are here are told of.
 * @param restsOn  the entry's key that an unobserved finding rests on. */
export function findingCheck(check: {
  readonly code: string;
  readonly rule: ConditionRule;
  readonly restsOn: string;
}): Check {
  const { code, rule, restsOn } = check;
  return crossCheck({
    code,
    title: rule.title,
    severity: 'note',
    scope: 'reel',
    reads: ['reel', 'findings', 'isHere'],
    judge: ({ reel, findings }) =>
      findings
        .filter((finding) => finding.rule === rule.id && finding.outcome === 'at-risk')
        .map((finding) => ({
          place: placeOf(finding, reel, rule, restsOn),
          message: finding.because,
          found: finding.title,
          expected: finding.observed
            ? 'no sign of it'
            : 'a stock, a pack or a place without this risk; or a look at it that settles it',
          action: [finding.action, ...finding.cautions].join(' '),
          ...(finding.observed && { severity: 'warning' as const }),
        })),
  });
}

/** The inspection that saw it, or what the finding rests on. */
function placeOf(finding: Finding, reel: Reel, rule: ConditionRule, restsOn: string): Place {
  if (finding.observed) {
    for (const inspection of itemsOf(reel.condition).toReversed()) {
      const sign = itemsOf(inspection.found).find((one) => rule.shownBy.includes(one.value));
      if (sign !== undefined) return sign.place;
    }
  }
  return reel.keys.get(restsOn) ?? reel.place;
}
