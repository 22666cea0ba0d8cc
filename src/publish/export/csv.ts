import { cellOf } from '#compute/interchange/cell-text.ts';
import { reelAsWritten } from '#compute/interchange/reel-as-written.ts';
import { csvText } from '#compute/interchange/spreadsheet-text.ts';
import type { Reel } from '#model/reel.ts';
import { REEL_COLUMNS } from '#model/reel-column.ts';
import type { Exported } from './export-file.ts';

/** All reels, one a row, one column a fact; what `import` reads back to the same facts. */
export function csvExport({ reels }: { readonly reels: readonly { readonly reel: Reel }[] }): Exported {
  const rows = reels.map(({ reel }) => {
    const facts = reelAsWritten(reel);
    return REEL_COLUMNS.map(({ key, form }) => {
      const value = facts.get(key);
      return value === undefined ? '' : cellOf(value, form);
    });
  });
  return {
    files: new Map([['', csvText([REEL_COLUMNS.map(({ key }) => key), ...rows])]]),
    leavesOut: [
      'editions, machines, stocks, places, people, shares and notes: only reels are rows',
      'photographs themselves: their names stand in the column "photos"',
      'comments in your entries, and the order of their keys',
      'what the program worked out or found: catalogue.json of the site has that',
      'a spreadsheet program may rewrite 0123, 18:52 or 1978-02 when it saves: have it read every column as text',
    ],
  };
}
