import type { ClimateSummary } from './climate.ts';
import type { WrongCurves } from './curve-sheet.ts';
import type { Day } from './dates.ts';
import type { Accepted, Diagnostic } from './diagnostic.ts';
import type { Entries } from './entries.ts';
import type { Finding } from './finding.ts';
import type { Lineage, ReelLineage } from './lineage.ts';
import type { NumberSeen } from './number-seen.ts';
import type { NumberOf } from './numbered.ts';
import type { PackVerdict } from './pack-verdict.ts';
import type { Playing } from './playing.ts';
import type { Reel } from './reel.ts';
import type { Worked } from './worked.ts';

/** What the program says of one reel, beside what its entry says. */
export interface ReelSheet {
  readonly reel: Reel;
  readonly numbers: readonly NumberSeen[];
  readonly worked: readonly Worked[];
  /** Which speeds the measured pack allows; missing while it isn't measured. */
  readonly packVerdict?: PackVerdict | undefined;
  /** How it would sound on other curves; missing while its own isn't known. */
  readonly wrongCurves?: WrongCurves | undefined;
  readonly findings: readonly Finding[];
  readonly playing: Playing;
  readonly lineage: ReelLineage;
  /** Dotted keys that nobody recorded, in the order of the contract. */
  readonly missing: readonly string[];
  /** Unaccepted problems whose place is in this entry, or that name it as related. */
  readonly problems: readonly Diagnostic[];
}

/** What needs attention first: unaccepted warnings and at-risk findings of held reels. */
export interface Attention {
  readonly code: string;
  readonly reel: string;
  readonly message: string;
  readonly action: string;
  readonly risk: boolean;
}

/** A photograph as measured before the catalogue is built; `path` is relative to the collection. */
export type PhotographFact =
  | { readonly path: string; readonly opens: true; readonly widthPx: number; readonly heightPx: number }
  | { readonly path: string; readonly opens: false; readonly problem: string; readonly action: string };

/** Everything that pages, files and commands say; built once. */
export interface Catalogue {
  readonly today: Day;
  readonly entries: Entries;
  /** Sorted by id. */
  readonly reels: readonly ReelSheet[];
  readonly lineage: Lineage;
  /** Every number of reels, editions, cuts and copy logs, in order of letters, then figures. */
  readonly numbers: () => readonly NumberOf[];
  readonly problems: readonly Diagnostic[];
  readonly accepted: readonly Accepted[];
  readonly attention: readonly Attention[];
  readonly photographs: ReadonlyMap<string, PhotographFact>;
  /** What the logs of each place come to together, by places/ id; a place without a readable log has none. */
  readonly climate: ReadonlyMap<string, ClimateSummary>;
}
