import type { Diagnostic } from '#model/diagnostic.ts';

/** The disagreements that can be seen in a picture of the lineage. */
export const isAboutLineage = (code: string): boolean =>
  code.startsWith('lineage/') || code.startsWith('number/') || code === 'set/side-missing';

/** The sections of a reel's sheet, and the areas and codes of problem that stand in the margin of each. */
const SECTIONS = {
  is: ['entry', 'set', 'share'],
  label: ['photo', 'number'],
  contents: ['time'],
  lineage: ['lineage', 'people', 'speed/copy-log-ambiguous'],
  cuts: [
    'number/cut-order',
    'number/cut-gap',
    'lineage/cut-before-tape',
    'lineage/edition-before-cut',
    'speed/half-speed-cut',
  ],
  playing: ['speed', 'equalisation', 'tracks', 'noise', 'playing'],
  condition: ['stock', 'condition', 'bake', 'climate'],
  custody: ['custody'],
} as const satisfies Record<string, readonly string[]>;

export type SheetSection = keyof typeof SECTIONS;

/** Each problem in the one section that it is about: a code named in full goes before its area; the rest stand first. */
export function bySection(problems: readonly Diagnostic[]): Readonly<Record<SheetSection, readonly Diagnostic[]>> {
  const sections = Object.keys(SECTIONS) as SheetSection[];
  const found: Record<SheetSection, Diagnostic[]> = {
    is: [],
    label: [],
    contents: [],
    lineage: [],
    cuts: [],
    playing: [],
    condition: [],
    custody: [],
  };
  for (const problem of problems) {
    const area = problem.code.split('/')[0] ?? '';
    const named = sections.find((section) => includes(SECTIONS[section], problem.code));
    found[named ?? sections.find((section) => includes(SECTIONS[section], area)) ?? 'is'].push(problem);
  }
  return found;
}

const includes = (list: readonly string[], word: string) => list.includes(word);
