import type { Catalogue, ReelSheet } from '#model/catalogue.ts';
import { itemsOf, valueOf } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import type { Exported } from './export-file.ts';
import { type Element, element, xmlText } from './xml.ts';

const NAMESPACE = 'http://www.pbcore.org/PBCore/PBCoreNamespace.html';
/** The schema compels a location, and where a reel is kept is private: these words say nothing of it. */
const LOCATION = 'private collection';
/** The schema wants to know whose identifier one is. */
const OUR_IDS = 'entry in the owner’s collection';

/** All reels as PBCore 2.1 records in one collection; undefined where there is none, as the schema wants at least one.
 * Source: PBCore 2.1 XML schema. */
export function pbcoreExport(catalogue: Catalogue): Exported | undefined {
  if (catalogue.reels.length === 0) return undefined;
  const title = valueOf(catalogue.entries.collection.title);
  const shown = new Set(catalogue.reels.map(({ reel }) => reel.id));
  const root = element(
    'pbcoreCollection',
    catalogue.reels.map((sheet) => recordOf(sheet, shown)),
    {
      xmlns: NAMESPACE,
      ...(title === undefined ? {} : { collectionTitle: title }),
      collectionDate: catalogue.today,
    },
  );
  return {
    files: new Map([['', xmlText(root)]]),
    leavesOut: [
      `where a reel is kept: the standard compels a place, and "${LOCATION}" stands there`,
      'custody, valuations, prices, your own account, and what is private',
      'readings of photographs, and how sure they are',
      'copy logs, lacquers cut, the winding and size of the pack, condition and handling',
      'editions, machines and stocks',
      'known to be none beside not recorded: both are left out',
    ],
  };
}

function recordOf({ reel, lineage }: ReelSheet, shown: ReadonlySet<string>): Element {
  const description = itemsOf(reel.contents).map(({ title, durationS }) =>
    durationS === undefined ? title.value : `${title.value} (${durationS.written})`,
  );
  const parents = lineage.parents.filter((id) => shown.has(id));
  const rights = valueOf(reel.rights);
  return element('pbcoreDescriptionDocument', [
    element('pbcoreAssetType', 'Reel of studio tape'),
    element('pbcoreIdentifier', reel.id, { source: OUR_IDS }),
    ...numbersOf(reel),
    element('pbcoreTitle', reel.title.value || reel.id),
    // An empty description passes the schema and says nothing: the title again is better.
    element('pbcoreDescription', description.length > 0 ? description.join('; ') : reel.title.value || reel.id),
    ...parents.map((id) =>
      element('pbcoreRelation', [
        element('pbcoreRelationType', 'Is Derived From'),
        element('pbcoreRelationIdentifier', id, { source: OUR_IDS }),
      ]),
    ),
    element('pbcoreRightsSummary', [
      element(
        'rightsSummary',
        `${rights === undefined ? '' : `${rights}. `}Owning a tape is not owning the rights in what is on it.`,
      ),
    ]),
    instantiationOf(reel),
  ]);
}

const USES = ['catalogue', 'matrix', 'job', 'other'] as const;

const numbersOf = ({ numbers }: Reel): readonly Element[] =>
  USES.flatMap((use) =>
    itemsOf(numbers[use]).map(({ written }) => element('pbcoreIdentifier', written, { source: `${use} number` })),
  );

/** The order of the elements is the schema's. */
function instantiationOf(reel: Reel): Element {
  const { format } = reel;
  const made = valueOf(reel.recorded)?.on?.written;
  const generation = valueOf(reel.kind);
  return element('pbcoreInstantiation', [
    element('instantiationIdentifier', reel.id, { source: OUR_IDS }),
    made === undefined ? undefined : element('instantiationDate', made, { dateType: 'recorded' }),
    written('instantiationDimensions', format.width),
    element('instantiationPhysical', 'Open reel audio tape'),
    element('instantiationLocation', LOCATION),
    element('instantiationMediaType', 'Sound'),
    generation === undefined ? undefined : element('instantiationGenerations', generation),
    written('instantiationDuration', reel.durationS),
    written('instantiationTracks', format.tracks),
    trackOf(reel),
    ...(
      [
        ['equalisation', format.equalisation],
        ['noise reduction', format.noiseReduction],
        ['reference level', format.level],
      ] as const
    ).map(([annotationType, fact]) =>
      fact?.is === 'known' ? element('instantiationAnnotation', fact.written, { annotationType }) : undefined,
    ),
  ]);
}

const written = (name: string, fact: { readonly is: string; readonly written: string } | undefined) =>
  fact?.is === 'known' ? element(name, fact.written) : undefined;

function trackOf(reel: Reel): Element | undefined {
  const { speed } = reel.format;
  if (speed?.is !== 'known') return undefined;
  return element('instantiationEssenceTrack', [
    element('essenceTrackType', 'Audio'),
    element('essenceTrackPlaybackSpeed', speed.written),
  ]);
}
