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

  const cut = (text: string) => {
    end ??= lineEnd(text);
    let from = 0;
    for (let to = text.indexOf(end, from); to >= 0; to = text.indexOf(end, from)) {
      number += 1;
      const last = to > from && text.charCodeAt(to - 1) === CARRIAGE_RETURN ? to - 1 : to;
      takeLine(tooLong ? undefined : text.slice(from, last), number);
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
    cut(rest + decoder.decode(chunk, { stream: true }));
  }
  cut(rest + (decoder?.decode() ?? ''));
  if (rest !== '' || tooLong) takeLine(tooLong ? undefined : rest, number + 1);
}

const CARRIAGE_RETURN = 13;

function decoderFor(first: Uint8Array): TextDecoder {
  if (first[0] === 0xff && first[1] === 0xfe) return new TextDecoder('utf-16le');
  if (first[0] === 0xfe && first[1] === 0xff) return new TextDecoder('utf-16be');
  return new TextDecoder('utf-8');
}

/** A carriage return alone ends lines only where no line feed is seen before it is long past a line. */
const lineEnd = (text: string) => (!text.includes('\n') && text.includes('\r') ? '\r' : '\n');
