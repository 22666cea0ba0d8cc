import { valueOf } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import type { Kind } from '#model/words.ts';
import { between, crossCheck, type Doubt, type KnownFacts } from '../check.ts';

type Given = KnownFacts<'reel', 'reel' | 'lineage' | 'knownParents'>;

/** Kinds that come after an original: nothing copied from one of them is an original master. */
const LATER: readonly Kind[] = ['copy master', 'cutting master', 'safety copy', 'running master'];

/** A stated generation against the counted one, or a kind that its parents rule out. A count with an unknown link in it
 * is held against nobody. */
export const generationDiffers = crossCheck({
  code: 'lineage/generation-differs',
  title: 'The generation isn’t what the copies count to',
  severity: 'warning',
  scope: 'reel',
  reads: ['reel', 'lineage', 'knownParents'],
  judge: (given) => [...stated(given), ...kind(given)],
});

function stated({ reel, lineage }: Given): readonly Doubt[] {
  const { generation } = reel;
  const { shortest, longest, unknownLinks } = lineage.generation;
  if (generation === undefined || shortest === null || longest === null || unknownLinks > 0) return [];
  if (shortest <= generation.value && generation.value <= longest) return [];
  const counted = shortest === longest ? String(shortest) : `${shortest} to ${longest}`;
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

function kind({ reel, knownParents }: Given): readonly Doubt[] {
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
