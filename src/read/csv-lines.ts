/** Longest line that is looked at; past it the text is no table of readings. */
const LONGEST_LINE = 1 << 16;

/** Cuts bytes into lines as they come, keeping no more than one chunk and a line. UTF-8, or UTF-16 by its mark; any of
 * the three line ends; a byte order mark is dropped.
 *
 * @param takeLine  the line without its end, and its number from 1; `undefined` for one too long to be a row.
 */
export async function eachLine(
  chunks: AsyncIterable<Uint8Array>,
  takeLine: (line: string | undefined, number: number) => void,
): Promise<void> {
  let decoder: TextDecoder | undefined;
  let end: string | undefined;
  let rest = '';
  let number = 0;
  let tooLong = false;

  const cut = (text: string, last: boolean) => {
    end ??= lineEnd(text, last);
    if (end === undefined) {
      rest = text;
      return;
    }
    let from = 0;
    for (let to = text.indexOf(end, from); to >= 0; to = text.indexOf(end, from)) {
      number += 1;
      const stop = to > from && text.charCodeAt(to - 1) === CARRIAGE_RETURN ? to - 1 : to;
      takeLine(tooLong ? undefined : text.slice(from, stop), number);
      tooLong = false;
      from = to + 1;
    }
    rest = text.slice(from);
    if (rest.length > LONGEST_LINE) {
      rest = '';
      tooLong = true;
    }
  };

  for await (const chunk of chunks) {
    decoder ??= decoderFor(chunk);
    cut(rest + decoder.decode(chunk, { stream: true }), false);
  }
  cut(rest + (decoder?.decode() ?? ''), true);
  if (rest !== '' || tooLong) takeLine(tooLong ? undefined : rest, number + 1);
}

const CARRIAGE_RETURN = 13;

function decoderFor(first: Uint8Array): TextDecoder {
  if (first[0] === 0xff && first[1] === 0xfe) return new TextDecoder('utf-16le');
  if (first[0] === 0xfe && first[1] === 0xff) return new TextDecoder('utf-16be');
  return new TextDecoder('utf-8');
}

/** What ends the lines, from the first end that is met: a carriage return alone only where another character follows
 * it. undefined while none is met; a line too long for a row is taken to end with a line feed, if it ever does. */
function lineEnd(text: string, last: boolean): string | undefined {
  const feed = text.indexOf('\n');
  const back = text.indexOf('\r');
  if (back >= 0 && (feed < 0 || feed > back + 1) && (last || back + 1 < text.length)) return '\r';
  return feed >= 0 || last || text.length > LONGEST_LINE ? '\n' : undefined;
}
