import { chance } from '../bench/chance.ts';

/** Bytes with one to four seeded accidents: a bit turned, a run cut out, doubled, filled or moved, an end cut off. */
export function* mutations(sound: Uint8Array, seed: number, count: number): Generator<Uint8Array> {
  const next = chance(seed);
  const below = (most: number) => Math.floor(next() * most);
  for (let made = 0; made < count; made += 1) {
    let bytes = Buffer.from(sound);
    for (let accidents = 1 + below(4); accidents > 0; accidents -= 1) {
      const at = below(bytes.length);
      const run = 1 + below(40);
      const [head, body, tail] = [bytes.subarray(0, at), bytes.subarray(at, at + run), bytes.subarray(at + run)];
      const ways: readonly (() => Buffer)[] = [
        () => Buffer.concat([head, Buffer.from(body.map((byte) => byte ^ (1 << below(8)))), tail]),
        () => Buffer.concat([head, tail]),
        () => Buffer.concat([head, body, body, tail]),
        () => Buffer.concat([head, Buffer.alloc(run, below(256)), tail]),
        () => Buffer.concat([tail, head, body]),
        () => Buffer.from(head),
        () => Buffer.concat([head, Buffer.from(SIGNS[below(SIGNS.length)] ?? ''), tail]),
      ];
      bytes = Buffer.from(ways[below(ways.length)]?.() ?? bytes);
    }
    yield bytes;
  }
}

/** What means something to a reader of logs, of numbers or of text. */
const SIGNS = ['"', '""', ';', ',', '\t', '\r', '\n', '\0', '\ufeff', '=1+1', '-', '1e999', 'NaN', '٣', '24:61', 'é'];
