import { valueOf } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import type { Kind } from '#model/words.ts';
import { between, crossCheck, type Doubt, type KnownFacts } from '../check.ts';

type Stated = KnownFacts<'reel', 'reel' | 'lineage' | 'isKnownCopy'>;
type Copied = KnownFacts<'reel', 'reel' | 'knownParents'>;

/** Kinds that come after an original: nothing copied from one of them is an original master. */
const LATER: readonly Kind[] = ['copy master', 'cutting master', 'safety copy', 'running master'];

/** A stated generation against the counted one. A count with an unknown link in it is held against nobody, but that a
 * copy isn't a first tape. */
const statedDiffers = crossCheck({
  code: 'lineage/generation-differs',
  title: 'The generation isn’t what the copies count to',
  severity: 'warning',
  scope: 'reel',
  reads: ['reel', 'lineage', 'isKnownCopy'],
  judge: (given) => stated(given),
});

/** A kind that its parents rule out. */
const kindRuledOut = crossCheck({
  code: 'lineage/generation-differs',
  title: 'The kind isn’t one that is copied from its parent',
  severity: 'warning',
  scope: 'reel',
  reads: ['reel', 'knownParents'],
  judge: (given) => kind(given),
});

export const generationDiffers = [statedDiffers, kindRuledOut] as const;

function stated({ reel, lineage, isKnownCopy }: Stated): readonly Doubt[] {
  const { generation } = reel;
  const { shortest, longest, unknownLinks } = lineage.generation;
  if (generation === undefined) return [];
  const isCounted = shortest !== null && longest !== null && unknownLinks === 0;
  const isCopy = isKnownCopy && LATER.includes(valueOf(reel.kind) ?? 'session tape');
  if (isCounted ? shortest <= generation.value && generation.value <= longest : !isCopy || generation.value > 1)
    return [];
  const counted = isCounted ? (shortest === longest ? String(shortest) : `${shortest} to ${longest}`) : '2 or more';
  return [
    {
      place: generation.place,
      message: 'The stated generation isn’t the one that the known copies count to.',
      found: generation.written,
      expected: counted,
      action:
        'Count again from the first tape, which is 1: some houses call the first copy 1. Or a tape between them isn’t known yet: add it, or accept this with a reason.',
    },
  ];
}

function kind({ reel, knownParents }: Copied): readonly Doubt[] {
  const own = reel.kind;
  if (own?.is !== 'known' || (own.value !== 'original master' && own.value !== 'session tape')) return [];
  return knownParents
    .filter(({ parent }) => LATER.includes(valueOf(parent.kind) ?? 'session tape'))
    .map(
      ({ parent, place }): Doubt => ({
        ...between(
          {
            place: own.place,
            message: `${reel.title.written}: ${own.written}`,
            found: own.written,
            expected: 'a copy’s kind, such as safety copy, or another parent',
          },
          {
            place,
            message: `${parent.title.written}: ${kindOf(parent)}`,
            found: kindOf(parent),
            expected: 'a copy that is called one',
          },
        ),
        message: `${reel.title.written} is called ${article(own.value)}, and was copied from ${article(kindOf(parent))}.`,
        action:
          'Look at the box again: a copy often keeps its master’s label. If it is the original, the copy was made from it and not the other way round.',
      }),
    );
}

const kindOf = (reel: Reel): Kind => valueOf(reel.kind) ?? 'session tape';
const article = (word: Kind) => (word === 'original master' ? `an ${word}` : `a ${word}`);
