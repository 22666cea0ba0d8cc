import { itemsOf, valueOf } from '#model/fact.ts';
import type { LogLine, Reel } from '#model/reel.ts';
import { plainForm } from '../identifiers/plain.ts';
import { orderOf } from '../identifiers/sides.ts';
import { isDoubtful, isWhollyBefore, width } from './intervals.ts';

/** What speaks for and against a log line being about a reel. */
export interface Evidence {
  /** Over 0 where the line may be about the reel at all. */
  readonly weight: number;
  readonly reasons: readonly string[];
  readonly against: readonly string[];
}

interface Clue {
  readonly points: number;
  readonly says: string;
  /** Tells this reel from others: a number, a client, a near date. */
  readonly telling?: boolean;
}

/** Below this, or without a clue that tells one reel from another, nothing is proposed. The points only order the
 * pairs: common practice, no source. */
const LEAST_POINTS = 5;

/** Holds one line of a parent's copy log against a reel. A date that can't be, or a side that isn't the parent's, rules
 * the pair out; all else only counts for or against. */
export function evidenceFor(
  parent: Reel,
  line: LogLine,
  reel: Reel,
  clientsOf: { readonly line: string | undefined; readonly reel: readonly string[] },
): Evidence | undefined {
  const clues = [
    dateClue(line, reel),
    numberClue(line, reel),
    clientClue(line, clientsOf),
    speedClue(line, reel),
    kindClue(line, reel),
    editionClue(parent, reel),
    sideClue(parent, reel),
  ];
  if (clues.includes('ruled out')) return undefined;
  const found = clues.filter((clue): clue is Clue => clue !== undefined && clue !== 'ruled out');
  const weight = found.reduce((sum, clue) => sum + clue.points, 0);
  if (weight < LEAST_POINTS || !found.some((clue) => clue.telling === true)) return undefined;
  return {
    weight,
    reasons: found.filter((clue) => clue.points > 0).map((clue) => clue.says),
    against: found.filter((clue) => clue.points <= 0).map((clue) => clue.says),
  };
}

type Answer = Clue | 'ruled out' | undefined;

function dateClue(line: LogLine, reel: Reel): Answer {
  const logged = line.on;
  const recorded = valueOf(reel.recorded)?.on;
  if (logged === undefined || recorded === undefined) return undefined;
  const apart = isWhollyBefore(logged.value, recorded.value) || isWhollyBefore(recorded.value, logged.value);
  if (apart && !isDoubtful(logged.value) && !isDoubtful(recorded.value)) return 'ruled out';
  if (apart)
    return { points: -2, says: `the dates differ, though one is in doubt: ${logged.written} and ${recorded.written}` };
  const open = Math.max(width(logged.value), width(recorded.value));
  const says =
    open === 1
      ? `the same day, ${recorded.written}`
      : `the dates can be the same: ${logged.written} and ${recorded.written}`;
  if (open === 1) return { points: 4, says, telling: true };
  return open <= 31 ? { points: 3, says, telling: true } : { points: 1, says };
}

function numberClue(line: LogLine, reel: Reel): Answer {
  if (line.number === undefined) return undefined;
  const logged = plainForm(line.number.value);
  const { catalogue, matrix, job, other } = reel.numbers;
  const own = [matrix, catalogue, job, other].flatMap(itemsOf);
  if (own.length === 0) return undefined;
  const same = own.find((number) => plainForm(number.value) === logged);
  if (same !== undefined) return { points: 6, says: `the same number, ${same.written}`, telling: true };
  return {
    points: -3,
    says: `the log has ${line.number.written}, the reel ${own.map((number) => number.written).join(', ')}`,
  };
}

function clientClue(
  line: LogLine,
  clients: { readonly line: string | undefined; readonly reel: readonly string[] },
): Answer {
  if (clients.line === undefined || clients.reel.length === 0 || line.for === undefined) return undefined;
  if (clients.reel.includes(clients.line))
    return { points: 3, says: `made for the same client, ${line.for.written}`, telling: true };
  return { points: -4, says: `the log has it made for ${line.for.written}` };
}

function speedClue(line: LogLine, reel: Reel): Answer {
  const speed = reel.format.speed;
  if (line.speed === undefined || speed?.is !== 'known') return undefined;
  if (line.speed.value === speed.value) return { points: 1, says: `the same speed, ${speed.written}` };
  return {
    points: -1,
    says: `the log has ${line.speed.written}, the reel ${speed.written}: a log may mean a run faster than real time`,
  };
}

function kindClue(line: LogLine, reel: Reel): Answer {
  if (line.kind === undefined || reel.kind?.is !== 'known') return undefined;
  if (line.kind.value === reel.kind.value) return { points: 2, says: `the same kind, ${reel.kind.written}` };
  return { points: -2, says: `the log has a ${line.kind.written}, the reel is a ${reel.kind.written}` };
}

function editionClue(parent: Reel, reel: Reel): Answer {
  const own = new Set(itemsOf(parent.editions).map((edition) => edition.value));
  const shared = itemsOf(reel.editions).find((edition) => own.has(edition.value));
  return shared === undefined ? undefined : { points: 2, says: `of the same edition, ${shared.written}` };
}

function sideClue(parent: Reel, reel: Reel): Answer {
  const parentSides = itemsOf(parent.sides).map((side) => orderOf(side.value) ?? side.value);
  const sides = itemsOf(reel.sides);
  if (parentSides.length === 0 || sides.length === 0) return undefined;
  const shared = sides.find((side) => parentSides.includes(orderOf(side.value) ?? side.value));
  return shared === undefined ? 'ruled out' : { points: 1, says: `of the same side, ${shared.written}` };
}
