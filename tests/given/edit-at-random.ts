import { globSync } from 'node:fs';
import { readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

/** Edits one entry as owners do: a title, a number, a date, a measure, the notes, what it was copied from, an entry taken
 * out, one copied, a broken line, a photograph that goes or is another, the collection's own words.
 *
 * @param next  draws from 0 to 1, so that the same draws make the same edit.
 * @returns what was done, for a message. */
export async function editAtRandom(collection: string, next: () => number): Promise<string> {
  const draw = <T>(from: readonly T[]): T | undefined => from[Math.floor(next() * from.length)];
  const files = globSync('{reels,editions,people,stocks,machines,places,notes}/**/*.md', { cwd: collection }).sort();
  const path = draw(files) ?? '';
  const file = join(collection, path);
  const text = await readFile(file, 'utf8');
  const ids = files.map((one) => one.replace(/(\/index)?\.md$/, '').replace(/^\w+\//, ''));
  const some = Math.floor(next() * 1000);
  const front = (line: string) => writeFile(file, text.replace(/^---\n/, `---\n${line}\n`));
  const ways: Record<string, () => Promise<void>> = {
    title: () => writeFile(file, text.replace(/^title: .*$/m, `title: Renamed ${some}`)),
    number: () =>
      writeFile(
        file,
        text.replaceAll(/\b([A-Z]{3}) (\d+)/g, (_, letters: string, figures: string) => `${letters} ${+figures + 1}`),
      ),
    date: () => writeFile(file, text.replaceAll(/19(\d\d)/g, '19$1~').replaceAll('~-', '-')),
    measure: () => writeFile(file, text.replace(/outside-diameter: \d+/, 'outside-diameter: 190')),
    notes: () => writeFile(file, `${text}\nSee ${draw(ids)} and ${draw(ids)}, and QKX 100005; ![x](box-front.jpg)\n`),
    comment: () => front(`# looked at ${some}`),
    out: () => (/^(reels|notes|people)\//.test(path) ? rm(file) : Promise.resolve()),
    copied: () => writeFile(join(collection, `${path.split('/')[0]}/copy-${some}.md`), text),
    broken: () => writeFile(file, text.replace(/^status: .*$/m, 'status: somewhere')),
    edition: () => writeFile(file, text.replace(/^edition: .*$/m, `edition: ${draw(ids)}`)),
    parent: () => writeFile(file, text.replace(/^copied-from: .*$/m, `copied-from: ${draw(ids)}`)),
    place: () => writeFile(file, text.replace(/at: [a-z-]+/, `at: ${draw(ids)}`)),
    photograph: async () => {
      const pictures = globSync('**/*.{jpg,png}', { cwd: collection }).sort();
      const [one, other] = [draw(pictures), draw(pictures)];
      if (one !== undefined && other !== undefined)
        await writeFile(join(collection, one), await readFile(join(collection, other)));
    },
    collection: async () => {
      const own = join(collection, 'collection.md');
      const units = some % 2 === 0 ? 'metric' : 'imperial';
      await writeFile(own, (await readFile(own, 'utf8')).replace(/^units: .*$/m, `units: ${units}`));
    },
  };
  const way = draw(Object.keys(ways)) ?? '';
  await ways[way]?.();
  return `${way} in ${path}`;
}
