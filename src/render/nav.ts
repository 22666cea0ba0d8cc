/** The parts of the collection, in the order in which they stand at the head of a page. A page that isn't a part
 * of its own says which part it belongs to. */
export const PARTS = [
  { part: 'reels', words: 'Reels', path: '' },
  { part: 'editions', words: 'Editions', path: 'editions/' },
  { part: 'lineage', words: 'Lineage', path: 'lineage/' },
  { part: 'numbers', words: 'Numbers', path: 'numbers/' },
  { part: 'machines', words: 'Machines', path: 'machines/' },
  { part: 'stocks', words: 'Stocks', path: 'stocks/' },
  { part: 'places', words: 'Places', path: 'places/' },
  { part: 'plan', words: 'Plan', path: 'plan/' },
  { part: 'reckoner', words: 'Reckoner', path: 'reckoner/' },
  { part: 'people', words: 'People', path: 'people/' },
  { part: 'shares', words: 'Shares', path: 'shares/' },
  { part: 'to-mend', words: 'To mend', path: 'to-mend/' },
] as const;

export type Part = (typeof PARTS)[number]['part'];

/** Pages to print, and pages that explain; they stand at the foot. */
export const ASIDES = [
  { words: 'Labels', path: 'labels/' },
  { words: 'Insurer’s schedule', path: 'schedule/' },
  { words: 'Replay curves', path: 'curves/' },
  { words: 'How to read these sheets', path: 'how-to-read/' },
  { words: 'Words of the trade', path: 'glossary/' },
  { words: 'Sources', path: 'sources/' },
] as const;
