import { bytesOf } from '../sealed.ts';

const STARTS = 'data:image/webp;base64,';
const START = new TextEncoder().encode(STARTS);
const QUOTE = '"'.charCodeAt(0);

/** An opened page with its pictures out of it, each under an address that lasts as long as the tab: a telephone would
 * otherwise hold every picture as text, two bytes a letter, several times over.
 *
 * @param page  UTF-8; pictures stand in it as data within double quotes. */
export function picturesApart(page: Uint8Array): string {
  const decoder = new TextDecoder();
  let text = '';
  let done = 0;
  for (let at = indexOf(page, START, 0); at >= 0; at = indexOf(page, START, done)) {
    const end = page.indexOf(QUOTE, at);
    if (end < 0) break;
    text += decoder.decode(page.subarray(done, at), { stream: true });
    const picture = bytesOf(new TextDecoder('latin1').decode(page.subarray(at + START.length, end)));
    text += URL.createObjectURL(new Blob([picture], { type: 'image/webp' }));
    done = end;
  }
  return text + decoder.decode(page.subarray(done));
}

function indexOf(bytes: Uint8Array, what: Uint8Array, from: number): number {
  const first = what[0] ?? 0;
  for (let at = bytes.indexOf(first, from); at >= 0; at = bytes.indexOf(first, at + 1)) {
    if (what.every((byte, offset) => bytes[at + offset] === byte)) return at;
  }
  return -1;
}
