import { buildCatalogue } from '#catalogue';
import { summariseLog } from '#compute/climate/summarise-log.ts';
import type { Catalogue } from '#model/catalogue.ts';
import type { ClimateSummary } from '#model/climate.ts';
import { day } from '#model/dates.ts';
import { itemsOf } from '#model/fact.ts';
import { readClimateLog } from '#read/climate-log.ts';
import { splitFiles } from '#read/collection.ts';
import { validateAll } from '#validate/entries.ts';

/** A collection given as texts: `reels/a` → front matter, `places/attic/log.csv` → a file beside an entry. */
export type Given = Readonly<Record<string, string>>;

const isFile = (name: string) => /\.[a-z]+$/.test(name);

/** The entries of a collection given as texts, as the files that they stand in. */
export const entryFiles = (given: Given): readonly { readonly path: string; readonly text: string }[] =>
  Object.keys(given)
    .sort()
    .filter((name) => !isFile(name))
    .map((name) => ({ path: pathOf(name, given), text: entryText(name, given[name] ?? '') }));

/** The catalogue of a small collection, read, validated and computed as the commands do it. */
export async function catalogueOf(given: Given, today = '2026-04-01'): Promise<Catalogue> {
  const names = Object.keys(given).sort();
  const images = names.filter((name) => isFile(name) && !name.endsWith('.csv'));
  const photographs = new Map(
    images.map((path) => [path, { path, opens: true as const, widthPx: 4000, heightPx: 3000 }]),
  );
  const read = splitFiles(entryFiles(given), images);
  const validated = validateAll(read, photographs);
  const climate = new Map<string, ClimateSummary>();
  for (const place of validated.entries.places) {
    const whole = summariseLog();
    for (const { file, columns, zone } of itemsOf(place.climate)) {
      const text = given[`${place.file.slice(0, place.file.lastIndexOf('/'))}/${file.value}`];
      if (text === undefined) continue;
      const ours =
        columns === undefined ? undefined : new Map([...columns].map(([key, theirs]) => [key, theirs.value]));
      await readClimateLog(bytesOf(text), { columns: ours, zone: zone?.value }, whole.take);
    }
    const summary = whole.finish();
    if (summary !== undefined) climate.set(place.id, { ...summary, faults: whole.faults() });
  }
  const problems = [...read.problems, ...validated.problems];
  return buildCatalogue({ entries: validated.entries, problems, photographs, climate, today: day(today) });
}

/** An entry with files of its own stands in a folder. */
function pathOf(name: string, given: Given): string {
  const hasFiles = Object.keys(given).some((other) => isFile(other) && other.startsWith(`${name}/`));
  return hasFiles ? `${name}/index.md` : `${name}.md`;
}

/** Front matter with what every entry must have, so that a case gives only what it is about. */
function entryText(name: string, text: string): string {
  const yaml = outdented(text);
  const has = (key: string) => new RegExp(`^${key}:`, 'm').test(yaml);
  const title = has('title') ? '' : `title: ${name.split('/')[1]}\n`;
  const status = !name.startsWith('reels/') || has('status') ? '' : 'status: held\n';
  return `---\n${title}${status}${yaml}\n---\n`;
}

/** A text indented to suit the file it stands in, brought back to the margin. */
function outdented(yaml: string): string {
  const lines = yaml.replace(/^\n+|\s+$/g, '').split('\n');
  const margin = Math.min(
    ...lines.filter((line) => line.trim() !== '').map((line) => line.length - line.trimStart().length),
  );
  return lines.map((line) => line.slice(Number.isFinite(margin) ? margin : 0)).join('\n');
}

async function* bytesOf(text: string): AsyncGenerator<Uint8Array> {
  yield new TextEncoder().encode(text);
}
