import type { Day, PartialDate } from '#model/dates.ts';
import type { Stretch, Tick } from './strip.ts';

/** One holder of a reel, as far as the dates are known. */
export interface Held {
  readonly words: string;
  readonly from: PartialDate | undefined;
  readonly until: PartialDate | undefined;
}

export interface CustodyStrip {
  readonly stretches: readonly Stretch[];
  readonly ticks: readonly Tick[];
}

const DAY_MS = 86_400_000;
/** Shorter than this between two holders is the way a reel takes from one to the other: 1 year. */
const LEAST_GAP_DAYS = 366;

/** Who had it, in days from the first to today; years in between with no holder stand red. Undefined without a dated holder. */
export function custodyStrip(holders: readonly Held[], today: Day): CustodyStrip | undefined {
  const now = dayNumber(today);
  const spans = holders.flatMap((holder, index) => {
    const from = dayOf(holder.from?.earliest);
    if (from === undefined) return [];
    const next = dayOf(holders[index + 1]?.from?.earliest);
    return [{ words: holder.words, from, to: Math.max(from, dayOf(holder.until?.latest) ?? next ?? now) }];
  });
  if (spans.length === 0) return undefined;
  const stretches: Stretch[] = [];
  let reached: number | undefined;
  for (const span of spans) {
    if (reached !== undefined && span.from - reached > LEAST_GAP_DAYS) {
      stretches.push({ is: 'unknown', from: reached, to: span.from, words: 'not known' });
    }
    const from = Math.max(span.from, reached ?? span.from);
    stretches.push({ is: 'title', from, to: Math.max(from, span.to), words: span.words });
    reached = Math.max(span.to, reached ?? span.to);
  }
  if (reached !== undefined && now - reached > LEAST_GAP_DAYS)
    stretches.push({ is: 'unknown', from: reached, to: now, words: 'not known' });
  return { stretches, ticks: ticksOf(stretches) };
}

/** Years at the joins, where there is room between them. */
function ticksOf(stretches: readonly Stretch[]): readonly Tick[] {
  const first = stretches[0]?.from ?? 0;
  const last = Math.max(...stretches.map((stretch) => stretch.to));
  const room = (last - first) * 0.07;
  const joins = [...new Set([...stretches.map((stretch) => stretch.from), last])].sort((a, b) => a - b);
  const kept: number[] = [];
  for (const at of joins) {
    const fromLast = kept.at(-1);
    if (at === last) {
      if (fromLast !== undefined && last - fromLast < room && kept.length > 1) kept.pop();
      kept.push(at);
    } else if (fromLast === undefined || at - fromLast >= room) kept.push(at);
  }
  return kept.map((at) => ({ at, words: String(new Date(at * DAY_MS).getUTCFullYear()) }));
}

const dayOf = (day: Day | null | undefined) => (day ? dayNumber(day) : undefined);
const dayNumber = (day: Day) => Date.parse(`${day}T00:00:00Z`) / DAY_MS;
