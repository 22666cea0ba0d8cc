import type { Catalogue } from './catalogue.ts';
import type { Day } from './dates.ts';
import type { PlayingPlan } from './plan.ts';
import type { Audience, OpenedBy } from './words.ts';

/** What goes along with a share, and what stays out, in words for its owner. */
export interface SharePlan {
  readonly share: string;
  readonly audience: Audience;
  readonly opensBy: OpenedBy;
  readonly reels: readonly { readonly id: string; readonly title: string }[];
  /** Facts shown, as the owner's page and the command say them. */
  readonly shown: readonly string[];
  /** Facts left out. */
  readonly leftOut: readonly string[];
  /** Private facts that this share means to show. */
  readonly privateShown: readonly string[];
  /** Keys among `shows` and `shows-private` that no entry can have. */
  readonly unknown: readonly string[];
  /** Keys among `shows` that are private, and so aren't shown. */
  readonly refused: readonly string[];
  /** Reels that aren't there. */
  readonly missingReels: readonly string[];
  readonly photographs: number;
  /** Photographs that show a fact the owner made private. */
  readonly photographsHeldBack: number;
  /** Reels outside the share that its lineage mentions by kind and date. */
  readonly outside: number;
  readonly until: string | undefined;
  readonly ended: boolean;
}

/** All that a sealed dossier is made from: a catalogue with nothing in it that the share doesn't allow. */
export interface Dossier {
  readonly title: string;
  readonly to: string | undefined;
  readonly audience: Audience;
  readonly until: string | undefined;
  /** The last day on which it is meant to be read. */
  readonly lastDay: Day | undefined;
  readonly made: Day;
  /** Which state of the owner's catalogue it was made from. */
  readonly fingerprint: string;
  /** What was left out, in general words. */
  readonly leftOut: readonly string[];
  readonly reduced: Catalogue;
  /** The reels that it shows, as `reduced` names them, in the share's order. */
  readonly reels: readonly string[];
  /** A day at the machine for those of them whose condition it may go by. */
  readonly plan: DossierPlan | undefined;
  /** The keys of which each may be shown, by its name: what isn't among them is left out, and not missing. */
  readonly shows: ReadonlyMap<string, ReadonlySet<string>>;
}

export interface DossierPlan {
  readonly playing: PlayingPlan;
  /** Reels that aren't on it, by their names in the dossier: whether they may be played rests on what stays out. */
  readonly notOnIt: readonly string[];
}

/** A share as its owner's site tells of it. */
export interface OwnShare {
  readonly dossier: Dossier;
  readonly plan: SharePlan;
  /** Where each photograph of the dossier lies in the collection, by the path that the dossier has for it. */
  readonly originals: ReadonlyMap<string, string>;
}
