import type { ReelSheet } from '#model/catalogue.ts';
import type { Day } from '#model/dates.ts';
import { type Fact, itemsOf, valueOf } from '#model/fact.ts';
import type { Machine } from '#model/machine.ts';
import type { PlanFact, PlanReel } from '#model/plan.ts';
import type { Reel } from '#model/reel.ts';
import type { Stock } from '#model/stock.ts';
import { bakePermission } from '../condition/bake-permission.ts';
import { gatherFacts } from '../condition/gather-facts.ts';
import { constantsInWords } from '../equalisation/time-constants.ts';
import { tapeCurve } from '../playback/curve-fit.ts';
import { earlierBakes } from './earlier-bakes.ts';
import { machinesFor } from './machines-for.ts';
import { mayBePlayed } from './may-be-played.ts';
import { runTime } from './run-time.ts';

/** What a reel's sheet comes to for a day at the machine. Only what an engineer is shown goes in: no place, holder or price. */
export function planReel(
  { reel, findings, playing, worked }: Pick<ReelSheet, 'reel' | 'findings' | 'playing' | 'worked'>,
  {
    machines,
    stock,
    today,
  }: { readonly machines: readonly Machine[]; readonly stock: Stock | undefined; readonly today: Day },
): PlanReel {
  const facts = gatherFacts(reel, stock, undefined);
  const earlier = earlierBakes(reel);
  const decision = mayBePlayed(reel, findings, earlier, today);
  const { answer, because, action, sources } = bakePermission(facts);
  const { format, pack } = reel;
  return {
    id: reel.id,
    title: reel.title.value,
    set: valueOf(reel.set),
    side:
      itemsOf(reel.sides)
        .map((side) => side.value)
        .join(' and ') || undefined,
    ...decision,
    cautions: [...new Set(decision.cautions)],
    looked: facts.looked,
    speed: told(format.speed),
    equalisation: curve(reel),
    tracks: told(format.tracks),
    level: told(format.level),
    tones: told(format.tones),
    noiseReduction: told(format.noiseReduction),
    carrier: valueOf(pack.woundOn),
    woundOn: carrier(reel),
    wind: told(pack.wind),
    splices: splices(reel),
    runs: valueOf(format.direction) === 'both' ? 2 : 1,
    ...runTime(reel, worked),
    machines: machinesFor(playing, machines),
    base: valueOf(stock?.base),
    bake: { answer, because, action, sources, earlier },
  };
}

const NOT_RECORDED: PlanFact = { says: 'not recorded', known: false };

function told(fact: Fact<unknown> | undefined): PlanFact {
  if (fact === undefined) return NOT_RECORDED;
  return { says: fact.is === 'none' ? 'none' : fact.written.replace(/^\[(?<list>.*)\]$/su, '$<list>'), known: true };
}

/** The curve's name with the time constants that it means, or why they can't be told. */
function curve(reel: Reel): PlanFact {
  const named = reel.format.equalisation;
  if (named?.is !== 'known') return told(named);
  const constants = tapeCurve(reel);
  return 'why' in constants
    ? { says: `${named.written}: ${constants.why}`, known: false }
    : { says: `${named.written}, ${constantsInWords(constants)}`, known: true };
}

function carrier({ pack }: Reel): PlanFact {
  if (pack.woundOn?.is !== 'known') return told(pack.woundOn);
  const size = pack.woundOn.value === 'bare hub' ? pack.outsideDiameter : pack.reelSize;
  return { says: size?.is === 'known' ? `${size.written} ${pack.woundOn.written}` : pack.woundOn.written, known: true };
}

function splices({ splices: fact }: Reel): PlanFact {
  if (fact === undefined) return NOT_RECORDED;
  const all = itemsOf(fact).map(({ at, note }) => [at?.written, note?.written].filter(Boolean).join(' '));
  return { says: all.length === 0 ? 'none' : all.join('; '), known: true };
}
