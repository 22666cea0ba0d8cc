import type { ClimateSummary } from '#model/climate.ts';
import type { ConditionFacts, RoomAir, SeenSign } from '#model/condition-facts.ts';
import { itemsOf, valueOf } from '#model/fact.ts';
import type { Inspection, Reel } from '#model/reel.ts';
import type { Stock } from '#model/stock.ts';
import type { Sign, Treatment } from '#model/words.ts';
import { shedMarksOf } from './shed-marks.ts';

/** Treatments after which a sign may be gone; every other sign stays, whatever a later inspection saw. */
const REMEDIES: Partial<Record<Sign, Treatment>> = {
  mould: 'clean',
  'splice failing': 'splice repair',
  cinching: 'rewind',
  spoking: 'rewind',
};

/** A log shorter than four weeks says nothing about a store: common practice, no source. */
const LEAST_LOGGED_HOURS = 28 * 24;

/** The facts that condition rules read, once a reel. What the entries leave out is left out here. */
export function gatherFacts(reel: Reel, stock: Stock | undefined, climate: ClimateSummary | undefined): ConditionFacts {
  const looked = lastLooked(reel);
  return given({
    base: valueOf(stock?.base),
    shedMarks: shedMarksOf(stock, valueOf(reel.recorded)?.on?.value),
    looked,
    signs: signsOf(reel),
    splices: reel.splices === undefined ? undefined : itemsOf(reel.splices).length,
    wind: valueOf(reel.pack.wind),
    woundOn: valueOf(reel.pack.woundOn),
    stored: valueOf(reel.placeKept)?.stored?.value,
    roomAir: airOf(climate),
  });
}

/** Leaves out what is undefined, so that a missing fact has no key. */
function given(facts: Readonly<Record<keyof ConditionFacts, ConditionFacts[keyof ConditionFacts]>>): ConditionFacts {
  const known = Object.entries(facts).filter(([, value]) => value !== undefined);
  return { signs: [], ...Object.fromEntries(known) };
}

/** Inspections that wrote down what they found, in the order of their dates; an undated one keeps its place. */
function inspections(reel: Reel): readonly Inspection[] {
  const dated = itemsOf(reel.condition).filter((inspection) => inspection.found !== undefined);
  return dated.toSorted((a, b) => dayOf(a).localeCompare(dayOf(b), 'en'));
}

const dayOf = (inspection: Inspection): string => inspection.on?.value.latest ?? '';

function lastLooked(reel: Reel): string | undefined {
  const last = inspections(reel).at(-1);
  return last === undefined ? undefined : (last.on?.written ?? 'a day not written down');
}

function signsOf(reel: Reel): readonly SeenSign[] {
  const inOrder = inspections(reel);
  const last = inOrder.at(-1);
  const seen = new Map<Sign, SeenSign>();
  for (const inspection of inOrder) {
    for (const sign of itemsOf(inspection.found)) {
      if (isRemedied(reel, sign.value, inspection, last)) continue;
      const gone =
        last !== undefined && last !== inspection && !itemsOf(last.found).some((one) => one.value === sign.value);
      seen.set(sign.value, {
        sign: sign.value,
        on: inspection.on?.written,
        notFoundOn: gone ? last.on?.written : undefined,
      });
    }
  }
  return [...seen.values()];
}

/** Treated after it was seen, and not found again by a still later look. */
function isRemedied(reel: Reel, sign: Sign, seen: Inspection, last: Inspection | undefined): boolean {
  const remedy = REMEDIES[sign];
  const seenBy = seen.on?.value.latest;
  const lookedAfter = last?.on?.value.earliest;
  if (remedy === undefined || seenBy == null || lookedAfter == null || last === seen) return false;
  if (itemsOf(last?.found).some((one) => one.value === sign)) return false;
  return itemsOf(reel.handling).some((handling) => {
    const on = handling.on?.value;
    if (
      handling.what.value !== remedy ||
      handling.planned?.value === true ||
      on?.earliest == null ||
      on.latest === null
    )
      return false;
    return seenBy <= on.earliest && on.latest <= lookedAfter;
  });
}

function airOf(climate: ClimateSummary | undefined): RoomAir | undefined {
  if (climate === undefined || climate.coveredHours < LEAST_LOGGED_HOURS) return undefined;
  return {
    coveredHours: climate.coveredHours,
    outsideOuterHours: climate.outsideOuter.hoursInWorstYear,
    disputedHours: climate.disputed.hoursInWorstYear,
    outsideMediumHours: climate.outsideMedium.hoursInWorstYear,
    lowC: climate.lowC,
    highC: climate.highC,
    lowPercent: climate.lowPercent,
    highPercent: climate.highPercent,
  };
}
