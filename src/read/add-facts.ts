/** An entry with facts added at the end of its front matter; every byte that was there stays, and the new lines end as the
 * others do. undefined when the text has no front matter to add to.
 *
 * @param yaml  whole lines, each ended by a line feed. */
export function addFacts(text: string, yaml: string): string | undefined {
  const opening = /^\ufeff?---[ \t]*(\r\n|\n|\r)/u.exec(text);
  if (opening === null) return undefined;
  const end = opening[1] ?? '\n';
  const closing = new RegExp(`${end}---[ \\t]*(?:${end}|$)`, 'u').exec(text.slice(opening[0].length - end.length));
  if (closing === null) return undefined;
  const at = opening[0].length - end.length + closing.index + end.length;
  return text.slice(0, at) + yaml.replaceAll('\n', end) + text.slice(at);
}
