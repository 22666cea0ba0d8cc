/** Lines longer than this are hard to read, however wide the terminal. */
const WIDEST = 100;
const NARROWEST = 40;
/** Between two words; never between a figure and its unit. */
const BREAKS = /(?<=\S) (?=\S)(?!(?<=\p{N} )(?:%|[°µ\p{L}]{1,3}\b))/u;

/** A paragraph broken at blanks, so that no line is wider than a terminal; a word that is wider stands alone on its line.
 *
 * @param width    In characters; undefined leaves the text as it is, for files and other programs.
 * @param hanging  Blanks before every line but the first. */
export function foldedText(text: string, width: number | undefined, hanging: number): string {
  if (width === undefined) return text;
  const most = Math.max(NARROWEST, Math.min(WIDEST, width));
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(BREAKS)) {
    if (line !== '' && lengthOf(line) + 1 + lengthOf(word) > most) {
      lines.push(line);
      line = ' '.repeat(hanging) + word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line].join('\n');
}

const lengthOf = (text: string) => [...text].length;
