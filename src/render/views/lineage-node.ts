import type { ReelSheet } from '#model/catalogue.ts';
import type { Edition } from '#model/edition.ts';
import { itemsOf, valueOf } from '#model/fact.ts';
import type { NodeId } from '#model/lineage.ts';
import type { Cut } from '#model/reel.ts';
import type { Status } from '#model/words.ts';
import { entryHref } from '../links.ts';
import { dateWords } from '../words/date.ts';
import { sideWords } from '../words/side.ts';
import type { Lookup } from './lookup.ts';
import { numbersOf } from './numbers.ts';
import { isAboutLineage } from './trouble.ts';

/** What a box of the lineage says, in the drawing and in the list. */
export interface LineageNode {
  readonly id: NodeId;
  readonly is: 'reel' | 'cut' | 'edition';
  readonly caption: string;
  /** Short: a number where there is one. */
  readonly title: string;
  /** The whole title, for the list and for those who point at the box. */
  readonly name: string;
  readonly line: string;
  readonly status: Status | 'unknown';
  readonly link: string | undefined;
  /** Where its contradiction is told. */
  readonly trouble: boolean;
}

/** Describes a node from its entry; one that no entry has is said to be so. */
export function describeNode(id: NodeId, lookup: Lookup): LineageNode {
  const rest = id.slice(id.indexOf(':') + 1);
  if (id.startsWith('reel:')) {
    const sheet = lookup.reel(rest);
    if (sheet !== undefined) return reelNode(id, sheet);
  }
  if (id.startsWith('edition:')) {
    const edition = lookup.edition(rest);
    if (edition !== undefined) return editionNode(id, edition, lookup.trouble(edition.file));
  }
  if (id.startsWith('cut:')) return cutNode(id, rest, lookup);
  return {
    id,
    is: 'reel',
    caption: 'no entry',
    title: rest,
    name: rest,
    line: '',
    status: 'unknown',
    link: undefined,
    trouble: false,
  };
}

function reelNode(id: NodeId, { reel, problems }: ReelSheet): LineageNode {
  const kind = valueOf(reel.kind) ?? 'kind not recorded';
  const recorded = valueOf(reel.recorded)?.on;
  const [number] = numbersOf(reel, 1);
  return {
    id,
    is: 'reel',
    caption: `${kind} · ${reel.status.value}`,
    title: number === undefined ? reel.title.value : `${number} · ${sideWords(reel)}`,
    name: reel.title.value,
    line: recorded === undefined ? 'not dated' : dateWords(recorded.value),
    status: reel.status.value,
    link: entryHref('reels', reel.id),
    trouble: problems.some((problem) => problem.severity === 'warning' && isAboutLineage(problem.code)),
  };
}

function editionNode(id: NodeId, edition: Edition, trouble: boolean): LineageNode {
  const issued = valueOf(edition.issued);
  return {
    id,
    is: 'edition',
    caption: [valueOf(edition.madeAs) ?? 'edition', valueOf(edition.territory)].filter(Boolean).join(' · '),
    title: itemsOf(edition.catalogue)[0]?.value ?? edition.title.value,
    name: edition.title.value,
    line: issued === undefined ? 'not dated' : dateWords(issued),
    status: 'elsewhere',
    link: entryHref('editions', edition.id),
    trouble,
  };
}

function cutNode(id: NodeId, rest: string, lookup: Lookup): LineageNode {
  const at = rest.indexOf('#');
  const reelId = rest.slice(0, at);
  const number = rest.slice(at + 1);
  const reel = lookup.reel(reelId)?.reel;
  const cut = itemsOf(reel?.cuts).find((one) => one.number?.written === number);
  const stem = valueOf(cut?.matrix) ?? itemsOf(reel?.numbers.matrix)[0]?.value;
  return {
    id,
    is: 'cut',
    caption: `lacquer${usedWords(cut)}`,
    title: stem === undefined ? `cut ${number}` : `${stem}-${number}`,
    name: `cut ${number} of ${reel?.title.value ?? reelId}`,
    line:
      [cut?.on && dateWords(cut.on.value), cut?.halfSpeed?.value === true && 'half speed'].filter(Boolean).join(', ') ||
      'not dated',
    status: 'elsewhere',
    link: reel === undefined ? undefined : `${entryHref('reels', reelId)}#cuts`,
    trouble: false,
  };
}

function usedWords(cut: Cut | undefined): string {
  if (cut?.used === undefined) return '';
  return cut.used.value ? ' · pressed from' : ' · not used';
}
