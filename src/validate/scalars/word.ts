import { nearestOf } from '#model/nearest.ts';
import { type Parser, parsed, quoted, refused } from './parsed.ts';

/** A parser for a closed list of words, capitals aside. What isn't in it is refused with the whole list. */
export function wordOf<const W extends string>(words: readonly W[], what: string): Parser<W> {
  const byLower: ReadonlyMap<string, W> = new Map(words.map((word) => [word.toLowerCase(), word]));
  return (text) => {
    const word = byLower.get(text.toLowerCase());
    if (word !== undefined) return parsed(word);
    const near = nearestOf(text, words);
    const action =
      near === undefined
        ? 'Write one of these, or leave the key out if it is not known.'
        : `Write ${near}, if that is meant.`;
    return refused(`${quoted(text)} isn't ${what}.`, words.join(', '), action);
  };
}
