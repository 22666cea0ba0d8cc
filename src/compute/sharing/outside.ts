import type { Entries } from '#model/entries.ts';
import { itemsOf } from '#model/fact.ts';
import type { Edge, Lineage, NodeId, ReelLineage } from '#model/lineage.ts';
import type { Reel } from '#model/reel.ts';
import type { Copier } from './copier.ts';
import type { NeutralNames } from './neutral-names.ts';

/** A reel that isn't part of the share: its kind and its date, and nothing else of it. */
export function reduceOutside(reel: Reel, id: string, copy: Copier): Reel {
  const place = { file: copy.file, line: 0, column: 0, field: '' };
  const title = 'A reel that is not part of this dossier';
  const own = new Set(reel.private.map((key) => key.value));
  const on = reel.recorded?.is === 'known' && !own.has('recorded') ? reel.recorded.value.on : undefined;
  return {
    folder: 'reels',
    id,
    file: copy.file,
    place,
    keys: new Map(),
    title: { is: 'known', value: title, written: title, place },
    body: '',
    bodyLine: 0,
    accepted: [],
    private: [],
    status: { is: 'known', value: 'elsewhere', written: 'elsewhere', place },
    kind: copy.fact('kind', reel.kind),
    numbers: {},
    format: {},
    pack: {},
    recorded:
      on && copy.allows('recorded.on')
        ? {
            is: 'known',
            value: { on: { is: 'known', value: on.value, written: on.written, place } },
            written: '',
            place,
          }
        : undefined,
  };
}

/** The reels outside a share that its own were copied from, or that were copied from them; sorted. */
export function outsideReels(shared: readonly Reel[], entries: Entries, lineage: Lineage): readonly Reel[] {
  const own = new Set(shared.map((reel) => reel.id));
  const kin = new Set(
    shared.flatMap((reel) => {
      const found = lineage.byReel.get(reel.id);
      return found === undefined ? [] : [...found.ancestors, ...found.descendants];
    }),
  );
  return entries.reels.filter((reel) => kin.has(reel.id) && !own.has(reel.id));
}

/** The part of the lineage that a share shows: links between its own reels, those outside by neutral names, cuts of
 * its own and its records. Links that the program only proposed stay out, and so does why each is thought so. */
export function reduceLineage(
  lineage: Lineage,
  shown: {
    readonly names: NeutralNames;
    readonly reels: readonly Reel[];
    readonly cuts: boolean;
    readonly lineage: boolean;
  },
): Lineage {
  const { names, reels } = shown;
  const nameOf = (node: NodeId): NodeId | undefined => {
    const [kind = '', rest = ''] = split(node);
    if (kind === 'reel') {
      if (reels.some((reel) => reel.id === rest)) return `reel:${names.of('reel', rest)}`;
      return names.has('outside', rest) ? `reel:${names.of('outside', rest)}` : undefined;
    }
    if (kind === 'edition') return names.has('edition', rest) ? `edition:${names.of('edition', rest)}` : undefined;
    const at = rest.indexOf('#');
    const reel = reels.find((one) => one.id === rest.slice(0, at));
    return reel !== undefined && shown.cuts && itemsOf(reel.cuts).length > 0
      ? `cut:${names.of('reel', reel.id)}${rest.slice(at)}`
      : undefined;
  };
  const edges = !shown.lineage
    ? []
    : lineage.edges.flatMap((edge): Edge[] => {
        const [from, to] = [nameOf(edge.from), nameOf(edge.to)];
        return edge.how === 'proposed' || from === undefined || to === undefined
          ? []
          : [{ from, to, how: edge.how, because: [] }];
      });
  const byReel = new Map(
    reels.map((reel): [string, ReelLineage] => {
      const own = lineage.byReel.get(reel.id);
      return [
        names.of('reel', reel.id),
        shown.lineage && own ? { ...NO_KIN, generation: { ...own.generation } } : { ...NO_KIN, generation: UNKNOWN },
      ];
    }),
  );
  return { edges, byReel, byEdition: [], proposals: [], cycles: [] };
}

const UNKNOWN = { shortest: null, longest: null, unknownLinks: 0, stated: null } as const;
const NO_KIN = { parents: [], children: [], ancestors: [], descendants: [] } as const;

const split = (node: NodeId) => [node.slice(0, node.indexOf(':')), node.slice(node.indexOf(':') + 1)] as const;
