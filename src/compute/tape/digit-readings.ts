import { withArticle } from '../figure/in-words.ts';
import { confusable } from '../identifiers/confusables.ts';

/** One way to read a time's figures otherwise: two neighbours swapped, or one figure taken for another. */
export interface DigitReading {
  /** As it would have been written: `19:45`. */
  readonly gives: string;
  readonly durationS: number;
  readonly because: string;
  readonly is: 'swap' | 'misread';
}

const CLOCK = /^(?:(\d{1,2}):)?(\d{1,3}):(\d{2})$/;
/** Shapes dearer than this are possible, but too weak to charge a label with. */
const DEAREST = 0.3;

/** Every time that a clock time could be with two neighbouring figures swapped, or with one figure misread; none for a
 * time that isn't written with colons. What isn't a time any more (`18:72`) is left out. */
export function digitReadings(written: string): readonly DigitReading[] {
  const text = written.trim();
  const nowS = clockSeconds(text);
  if (nowS === undefined) return [];
  return [...swaps(text), ...misreads(text)].flatMap((reading) => {
    const durationS = clockSeconds(reading.gives);
    return durationS === undefined || durationS === nowS ? [] : [{ ...reading, durationS }];
  });
}

type Spelling = Omit<DigitReading, 'durationS'>;

function swaps(text: string): readonly Spelling[] {
  const places = [...text].flatMap((character, at) => (character === ':' ? [] : [at]));
  return places.slice(1).flatMap((at, index): Spelling[] => {
    const before = places[index] ?? 0;
    const [one, other] = [text[before] ?? '', text[at] ?? ''];
    if (one === other) return [];
    const gives = withCharacter(withCharacter(text, before, other), at, one);
    return [{ gives, is: 'swap', because: `${one} and ${other} swapped` }];
  });
}

function misreads(text: string): readonly Spelling[] {
  return [...text].flatMap((read, at): Spelling[] => {
    if (read === ':') return [];
    return [...'0123456789'].flatMap((meant): Spelling[] => {
      const row = confusable(read, meant);
      if (row === undefined || row.cost > DEAREST) return [];
      return [
        {
          gives: withCharacter(text, at, meant),
          is: 'misread',
          because: `${withArticle(meant)} read as ${withArticle(read)}`,
        },
      ];
    });
  });
}

const withCharacter = (text: string, at: number, character: string) =>
  text.slice(0, at) + character + text.slice(at + 1);

function clockSeconds(text: string): number | undefined {
  const found = CLOCK.exec(text);
  if (found === null) return undefined;
  const [, hours, minutes, seconds] = found;
  if (Number(seconds) > 59 || (hours !== undefined && Number(minutes) > 59)) return undefined;
  return Number(hours ?? 0) * 3600 + Number(minutes) * 60 + Number(seconds);
}
