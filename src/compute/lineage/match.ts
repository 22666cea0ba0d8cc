import type { PartialDate } from '#model/dates.ts';
import { byText } from '#model/diagnostic.ts';
import type { Entries } from '#model/entries.ts';
import { itemsOf, type Known, valueOf } from '#model/fact.ts';
import type { Edge, Proposal } from '#model/lineage.ts';
import type { LogLine, Reel } from '#model/reel.ts';
import { plainForm } from '../identifiers/plain.ts';
import { bestAssignment, type Option } from './assignment.ts';
import { type Evidence, evidenceFor } from './evidence.ts';
import { monthsOf } from './intervals.ts';
import { reelOf } from './nodes.ts';
import { personKeys } from './people.ts';

/** A line of a copy log that names no reel. */
interface OpenLine {
  readonly parent: Reel;
  readonly index: number;
  readonly line: LogLine;
  readonly client: string | undefined;
}

/** Which lines of the copy logs fit which reels that nobody linked: at most one reel a line and one line a reel, chosen
 * so that the whole fits best. Copies already linked to the log's own reel compete for its lines, so that a line which
 * is theirs isn't given to another; only unlinked reels are proposed. Sorted by parent, line. */
export function proposeMatches(entries: Entries, known: readonly Edge[]): readonly Proposal[] {
  const keyOf = personKeys(entries);
  const clientsOf = (reel: Reel) =>
    [valueOf(reel.client), valueOf(reel.recorded)?.for?.value].flatMap((ref) =>
      ref === undefined ? [] : [keyOf(ref)],
    );
  const lines = entries.reels.flatMap((parent) =>
    itemsOf(parent.copyLog).flatMap((line, index) =>
      line.reel === undefined
        ? [{ parent, index, line, client: line.for === undefined ? undefined : keyOf(line.for.value) }]
        : [],
    ),
  );
  if (lines.length === 0) return [];
  const links = new Links(known, entries.reels);
  const candidates = new Candidates(
    entries.reels.filter((reel) => links.isFree(reel)),
    lines,
    clientsOf,
  );
  const byId = new Map(entries.reels.map((reel, at) => [reel.id, { reel, at }]));
  const pairs = lines.map((open) => {
    const linked = links.childrenOf(open.parent.id).flatMap((id) => byId.get(id)?.reel ?? []);
    const reels = new Set([...candidates.for(open), ...linked]);
    return [...reels]
      .sort((a, b) => byText(a.id, b.id))
      .flatMap((reel) => {
        if (reel.id === open.parent.id) return [];
        const evidence = evidenceFor(open.parent, open.line, reel, { line: open.client, reel: clientsOf(reel) });
        return evidence === undefined ? [] : [{ reel, evidence }];
      });
  });
  const options: Option[][] = pairs.map((row) =>
    row.map(({ reel, evidence }) => ({ column: byId.get(reel.id)?.at ?? -1, weight: evidence.weight })),
  );
  return bestAssignment(options).flatMap((column, row) => {
    const open = lines[row];
    const pair = pairs[row]?.find(({ reel }) => byId.get(reel.id)?.at === column);
    if (open === undefined || pair === undefined || !links.isFree(pair.reel)) return [];
    return [proposal(open, pair, pairs[row] ?? [])];
  });
}

interface Pair {
  readonly reel: Reel;
  readonly evidence: Evidence;
}

function proposal(open: OpenLine, pair: Pair, others: readonly Pair[]): Proposal {
  const asGood = others.filter(({ reel, evidence }) => reel !== pair.reel && evidence.weight >= pair.evidence.weight);
  return {
    parent: open.parent.id,
    line: open.index,
    reel: pair.reel.id,
    reasons: pair.evidence.reasons,
    against: [...pair.evidence.against, ...asGood.map(({ reel }) => `${reel.id} fits this line as well`)],
  };
}

/** Who is already linked to whom. */
class Links {
  readonly #children = new Map<string, string[]>();
  readonly #linked = new Set<string>();

  constructor(known: readonly Edge[], reels: readonly Reel[]) {
    const logged = new Set(
      reels.flatMap((reel) => itemsOf(reel.copyLog).map((line) => `${reel.id} ${line.reel?.value ?? ''}`)),
    );
    for (const edge of known) {
      const parent = reelOf(edge.from);
      const child = reelOf(edge.to);
      if (parent === undefined || child === undefined) continue;
      this.#linked.add(child);
      const children = this.#children.get(parent);
      // A copy that has its own line already is no rival for the open ones.
      if (logged.has(`${parent} ${child}`)) continue;
      if (children === undefined) this.#children.set(parent, [child]);
      else children.push(child);
    }
  }

  /** Nothing is said about what it was copied from: neither a reel nor `none`. */
  isFree(reel: Reel): boolean {
    return reel.copiedFrom === undefined && !this.#linked.has(reel.id);
  }

  childrenOf(id: string): readonly string[] {
    return this.#children.get(id) ?? [];
  }
}

/** More reels or lines than this under one clue, and it tells none of them from the others: it is left to the rest. */
const TOO_COMMON = 200;
/** A date as wide as this still finds a reel by month. */
const MOST_MONTHS = 24;

/** Reels by the clues that could tie a log line to them, so that no line is held against every reel. */
class Candidates {
  readonly #byClue: ReadonlyMap<string, readonly Reel[]>;
  readonly #linesWith: ReadonlyMap<string, readonly OpenLine[]>;

  constructor(reels: readonly Reel[], lines: readonly OpenLine[], clientsOf: (reel: Reel) => readonly string[]) {
    this.#byClue = grouped(reels, (reel) => cluesOfReel(reel, clientsOf(reel)));
    this.#linesWith = grouped(lines, cluesOfLine);
  }

  for(open: OpenLine): readonly Reel[] {
    return cluesOfLine(open).flatMap((clue) => {
      const reels = this.#byClue.get(clue) ?? [];
      const lines = this.#linesWith.get(clue) ?? [];
      return reels.length > TOO_COMMON || lines.length > TOO_COMMON ? [] : reels;
    });
  }
}

function grouped<T>(items: readonly T[], cluesOf: (item: T) => readonly string[]): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    for (const clue of new Set(cluesOf(item))) {
      const group = groups.get(clue);
      if (group === undefined) groups.set(clue, [item]);
      else group.push(item);
    }
  }
  return groups;
}

function cluesOfReel(reel: Reel, clients: readonly string[]): readonly string[] {
  const { catalogue, matrix, job, other } = reel.numbers;
  const numbers = [catalogue, matrix, job, other].flatMap(itemsOf).map((number) => number.value);
  return cluesOf(numbers, valueOf(reel.recorded)?.on?.value, clients, itemsOf(reel.editions));
}

function cluesOfLine({ parent, line, client }: OpenLine): readonly string[] {
  const numbers = line.number === undefined ? [] : [line.number.value];
  return cluesOf(numbers, line.on?.value, client === undefined ? [] : [client], itemsOf(parent.editions));
}

function cluesOf(
  numbers: readonly string[],
  on: PartialDate | undefined,
  clients: readonly string[],
  editions: readonly Known<string>[],
): readonly string[] {
  const months = on === undefined ? [] : monthsOf(on, MOST_MONTHS);
  const day = on !== undefined && on.earliest === on.latest ? on.earliest : null;
  return [
    ...numbers.map((number) => `number ${plainForm(number)}`),
    ...months.flatMap((month) => clients.map((client) => `${month} for ${client}`)),
    ...months.flatMap((month) => editions.map((edition) => `${month} of ${edition.value}`)),
    ...editions.flatMap((edition) => clients.map((client) => `${edition.value} for ${client}`)),
    ...(day === null ? [] : [`on ${day}`]),
  ];
}
