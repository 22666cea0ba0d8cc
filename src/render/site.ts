import { shedMarksOf } from '#compute/condition/shed-marks.ts';
import { allSpeedCurves } from '#compute/equalisation/speed-curves.ts';
import type { CalculationForm } from '#model/calculation-form.ts';
import type { Care } from '#model/care.ts';
import type { Catalogue } from '#model/catalogue.ts';
import type { Dossier, OwnShare } from '#model/dossier.ts';
import type { PublishedPhotograph } from '#model/published-photograph.ts';

/** What the pages are made from; built once, before the pages. */
export interface Site {
  readonly catalogue: Catalogue;
  /** By path relative to the collection, as in `catalogue.photographs`; one that doesn't open isn't here. */
  readonly photographs: ReadonlyMap<string, PublishedPhotograph>;
  /** Where the site stands on its host: `/` or `/sub/`, always with both slashes. */
  readonly base: string;
  /** The lines of entries that have problems, by file, to be shown beside what is said of them. */
  readonly entryLines?: ReadonlyMap<string, readonly string[]>;
  /** What the pages about keeping, baking and playing are made from; without it they are empty. */
  readonly care?: Care;
  /** The sums of the reckoner, each with an example worked out. */
  readonly calculations?: readonly CalculationForm[];
  /** The owner's shares, by id; on the owner's site only. */
  readonly shares?: ReadonlyMap<string, OwnShare>;
  /** What is being sealed, when it is a dossier that is rendered: `catalogue` is then its reduced one. */
  readonly dossier?: Dossier;
}

const NO_CARE: Care = { reels: [], plans: [], bakeCautions: [], rooms: new Map(), calendar: [] };

/** The builder bundles the pages, so they have their own copy of every module: only the global object is shared. */
const KEY = Symbol.for('tailout.site');
const shared = globalThis as unknown as Record<symbol, Site | undefined>;

/** The site being built. Throws when asked before the builder has handed one over. */
export function site(): Site {
  const given = shared[KEY];
  if (given === undefined) throw new Error('fault: a page asked for the site before it was handed over');
  return given;
}

/** Called by the builder around a build; `undefined` lets the catalogue go. */
export function handOver(given: Site | undefined): void {
  shared[KEY] = given;
}

/** Plans, rooms and what falls due, of the site being built. */
export const care = (): Care => site().care ?? NO_CARE;

/** The curves that standards define, by speed: the same for every collection. */
export const speedCurves = allSpeedCurves;

/** Whether a stock has the marks of those that shed, or is known to. */
export const stockSheds = shedMarksOf;
