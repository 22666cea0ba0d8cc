const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth'];
const nth = (place: number) => ORDINALS[place - 1] ?? `${place}th`;

/** What is in doubt in a reading, a sentence each. Places are counted in characters of the label. */
export function doubtsIn(written: string): string[] {
  const doubts: string[] = [];
  let place = 0;
  for (const [part] of written.matchAll(/\{[^{}]*\}|./gsu)) {
    place++;
    if (part === '?') doubts.push(`The ${nth(place)} character can’t be read.`);
    else if (/^\{.\?\}$/u.test(part))
      doubts.push(`The ${nth(place)} character is read as ${part.slice(1, -2)}, in doubt.`);
    else if (part.startsWith('{') && part.includes('|'))
      doubts.push(`The ${nth(place)} character is ${part.slice(1, -1).split('|').join(' or ')}.`);
  }
  return doubts;
}

/** The fact that a reading gives, or undefined while a character of it isn't decided. */
export function factFrom(written: string): string | undefined {
  const decided = written.replace(/\{([^{}|])\?\}/gu, '$1');
  if (/[?{}]/u.test(decided)) return undefined;
  const ticked = decided.split(/(?=[☑☐]|\[[ x]\])/u);
  const boxed = ticked.filter((part) => /^(?:☑|\[x\])/u.test(part));
  const plain =
    ticked.length > 1 || boxed.length > 0 ? boxed.map((part) => part.replace(/^(?:☑|\[x\])/u, '')).join(' ') : decided;
  const text = plain.replaceAll(' / ', ' ').trim();
  return text === '' ? undefined : text;
}
