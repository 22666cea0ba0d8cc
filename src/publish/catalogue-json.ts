import type { Catalogue, ReelSheet } from '#model/catalogue.ts';
import type { Accepted } from '#model/diagnostic.ts';
import { type Fact, itemsOf, type Known, valueOf } from '#model/fact.ts';
import type { Generation } from '#model/lineage.ts';
import type { Playing } from '#model/playing.ts';
import type { Worked } from '#model/worked.ts';

/** The version of the file's shape. */
const SHAPE = 1;

/** Characters that are given out at a time, or somewhat more. */
const A_PART = 1_000_000;

/** The whole catalogue for programs: plain numbers, the unit in the key's name or in `unit`. It comes in parts, since all
 * of a large one is more than need be held at once; each thing of a list has a line of its own. */
export function* catalogueJson(catalogue: Catalogue): Generator<string, void> {
  let part = '';
  for (const line of linesOf(catalogue)) {
    part += line;
    if (part.length < A_PART) continue;
    yield part;
    part = '';
  }
  yield part;
}

function* linesOf({ today, problems, accepted, attention, reels, lineage }: Catalogue): Generator<string, void> {
  yield `{"catalogue":${SHAPE},"made":${JSON.stringify(today)}`;
  yield* list('problems', problems, (problem) => problem);
  yield* list('accepted', accepted, acceptedJson);
  yield* list('reels', reels, reelJson);
  yield* list('lineages', lineage.byEdition, ({ edition, reels: ids, edges }) => ({
    edition,
    reels: ids,
    edges: edges.map(({ from, to, how }) => ({ from, to, how })),
  }));
  yield* list('attention', attention, ({ code, reel, message, action }) => ({ code, reel, message, action }));
  yield '\n}\n';
}

function* list<T>(name: string, items: readonly T[], told: (item: T) => object): Generator<string, void> {
  yield `,\n"${name}":[`;
  for (const [at, item] of items.entries()) yield `${at === 0 ? '' : ','}\n${JSON.stringify(told(item))}`;
  yield ']';
}

/** An accepted problem in the one shape of all problems, with the owner’s reason beside it. */
export const acceptedJson = ({ problem, why, on }: Accepted) => ({ ...problem, why, on });

function reelJson(sheet: ReelSheet) {
  const { reel, worked, findings, playing, lineage, missing } = sheet;
  return {
    id: reel.id,
    title: reel.title.value,
    status: reel.status.value,
    kind: wordOf(reel.kind),
    set: wordOf(reel.set),
    side: sidesOf(reel.sides),
    edition: itemsOf(reel.editions).map((edition) => edition.value),
    numbers: sheet.numbers.map(({ as, written, plain, cut, side }) => ({ as, written, plain, cut, side })),
    worked: worked.map(workedJson),
    findings: findings.map(({ rule, outcome, because, action, sources }) => ({
      rule,
      outcome,
      because,
      action,
      sources,
    })),
    playing: playingJson(playing),
    lineage: { parents: lineage.parents, children: lineage.children, generation: generationJson(lineage.generation) },
    missing,
  };
}

/** A fact's text, `none` when it is known to be none, null when nobody recorded it. */
const wordOf = (fact: Fact<string> | undefined) => (fact?.is === 'none' ? 'none' : (valueOf(fact) ?? null));

function sidesOf(fact: Fact<readonly Known<string>[]> | undefined) {
  if (fact === undefined) return null;
  if (fact.is === 'none') return 'none';
  const [first, ...rest] = fact.value.map((side) => side.value);
  return rest.length === 0 ? (first ?? null) : [first, ...rest];
}

const workedJson = ({ inputs, low, high, ...figure }: Worked) => ({
  name: figure.name,
  value: figure.value,
  ...(low === undefined ? {} : { low }),
  ...(high === undefined ? {} : { high }),
  unit: figure.unit,
  basis: figure.basis,
  inputs: inputs.map(({ name, written, basis, place }) => ({
    name,
    written,
    basis,
    ...(place === undefined ? {} : { file: place.file, line: place.line }),
  })),
  formula: figure.formula,
  source: figure.source,
});

const playingJson = ({ verdicts }: Playing) =>
  verdicts.map(({ machine, verdict, reasons }) => ({
    machine,
    verdict,
    reasons: reasons.map(({ of, needs, has, verdict: reason }) => ({ of, verdict: reason, needs, has })),
  }));

const generationJson = ({ shortest, longest, unknownLinks, stated }: Generation) => ({
  shortest,
  longest,
  'unknown-links': unknownLinks,
  stated,
});
