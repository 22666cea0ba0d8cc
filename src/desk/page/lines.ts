import {
  isListWritten,
  isMapWritten,
  pathOf,
  type Written,
  type WrittenPath,
  withoutEmpty,
} from '#read/written-value.ts';

/** A path as an entry writes it: `cuts[1].on`. */
const dotted = (path: WrittenPath): string =>
  path.map((step, at) => (typeof step === 'number' ? `[${step}]` : at === 0 ? step : `.${step}`)).join('');

/** Facts as they are saved: what records nothing is left out. Readings that name a line of a list by its number follow it
 * to where it is then; those of a line that is left out are of the whole list. */
export function settled(facts: Written): Written | undefined {
  const kept = (item: Written | undefined) => item !== undefined && withoutEmpty(item) !== undefined;
  return withoutEmpty(
    withReadingsFollowing(facts, (list, index) => {
      const items = at(facts, list);
      if (!isListWritten(items) || !kept(items[index])) return undefined;
      return items.slice(0, index).filter(kept).length;
    }),
  );
}

/** Facts whose readings know that a line is about to be taken out of a list. */
export function withoutLine(facts: Written, list: WrittenPath, gone: number): Written {
  const own = dotted(list);
  return withReadingsFollowing(facts, (path, index) => {
    if (dotted(path) !== own || index < gone) return index;
    return index === gone ? undefined : index - 1;
  });
}

/** @param lineNow  Which line of a list an old one is; undefined when it is no more. */
function withReadingsFollowing(
  facts: Written,
  lineNow: (list: WrittenPath, index: number) => number | undefined,
): Written {
  const readings = isMapWritten(facts) ? facts['readings'] : undefined;
  if (!isMapWritten(facts) || !isListWritten(readings)) return facts;
  const followed = readings.map((reading) => {
    const of = isMapWritten(reading) ? reading['of'] : undefined;
    if (!isMapWritten(reading) || typeof of !== 'string' || !of.includes('[')) return reading;
    return { ...reading, of: followedTo(of, lineNow) };
  });
  return { ...facts, readings: followed };
}

function followedTo(of: string, lineNow: (list: WrittenPath, index: number) => number | undefined): string {
  const path = pathOf(of);
  const now: (string | number)[] = [];
  for (const [at, step] of path.entries()) {
    const line = typeof step === 'number' ? lineNow(path.slice(0, at), step) : step;
    if (line === undefined) return dotted(now);
    now.push(line);
  }
  return dotted(now);
}

function at(facts: Written | undefined, path: WrittenPath): Written | undefined {
  let value = facts;
  for (const step of path) {
    if (typeof step === 'number') value = isListWritten(value) ? value[step] : undefined;
    else value = isMapWritten(value) ? value[step] : undefined;
  }
  return value;
}
