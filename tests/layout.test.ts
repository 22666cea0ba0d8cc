import { globSync, readFileSync } from 'node:fs';
import { dirname, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

const ROOT = resolve(import.meta.dirname, '..');
const SOURCES = globSync('src/**/*.{ts,astro}', { cwd: ROOT }).sort();
const textOf = (file: string) => readFileSync(resolve(ROOT, file), 'utf8');

/** What each layer may import: layers of ours, and packages. `model` is allowed to all. */
const ALLOWED: Record<string, { layers: readonly string[]; packages: readonly (string | RegExp)[] }> = {
  model: { layers: [], packages: [] },
  read: {
    layers: [],
    packages: [
      'gray-matter',
      'yaml',
      'csv-parse',
      /^csv-parse\//,
      'fflate',
      /^read-excel-file\//,
      'remark-parse',
      'unified',
      /^node:/,
    ],
  },
  validate: { layers: ['read'], packages: ['zod', 'edtf'] },
  compute: { layers: [], packages: [] },
  reckoner: { layers: ['compute', 'validate'], packages: [] },
  render: {
    layers: ['compute'],
    packages: [/^astro/, 'unified', /^(remark|rehype)-/, 'd3-dag', 'uqr', /^@fontsource/, /^node:/],
  },
  publish: {
    layers: ['render', 'compute', 'reckoner'],
    packages: ['sharp', 'pagefind', 'age-encryption', /^astro/, 'esbuild', /^node:/],
  },
  desk: { layers: ['read', 'validate', 'compute', 'publish'], packages: ['esbuild', /^node:/] },
};

/** Packages with one door each. */
const ONE_DOOR: Record<string, RegExp> = {
  sharp: /^src\/publish\/images\.ts$/,
  pagefind: /^src\/publish\/search\.ts$/,
  'age-encryption': /^src\/(publish|render)\/.*seal.*\.ts$/,
  zod: /^src\/validate\//,
  fflate: /^src\/read\/workbook\.ts$/,
  'read-excel-file/node': /^src\/read\/workbook\.ts$/,
};

/** Scripts of the browser read what is typed with the very parsers of the entries: those of single values only, which
 * bring no schema library along. */
const READS_VALUES = { from: /^src\/render\/client\//, of: /^#(validate\/scalars|reckoner)\// };

/** In render, what computes is asked for by the scripts of the browser only; pages are handed a catalogue. */
const ASKS_COMPUTE = /^src\/render\/(client\/|site)/;

interface Import {
  readonly file: string;
  readonly of: string;
}

function importsOf(file: string): Import[] {
  const text = textOf(file).replaceAll(/^\s*(\/\/|\*|\/\*).*$/gm, '');
  // A statement's own `from`, not the word in a sentence or a key that ends in it.
  const found = text.matchAll(/(?:^(?:import\b|export\b|\})[^'"`\n]*?\bfrom\s*|\bimport\s*\(?\s*)['"]([^'"]+)['"]/gm);
  return [...found].map((match) => ({ file, of: match[1] ?? '' }));
}

/** The layer that an import leads to, or the package's name. */
function target({ file, of }: Import): { layer: string } | { package: string } {
  if (of.startsWith('#')) return { layer: of.slice(1).split('/')[0] ?? '' };
  if (!of.startsWith('.')) return { package: of };
  const path = relative(resolve(ROOT, 'src'), resolve(ROOT, dirname(file), of));
  return { layer: path.split('/')[0] ?? '' };
}

const layerOf = (file: string) => file.split('/')[1] ?? '';
const fits = (name: string, allowed: readonly (string | RegExp)[]) =>
  allowed.some((one) => (typeof one === 'string' ? one === name : one.test(name)));

describe('the layers', () => {
  test('a layer imports only what stands under it, and its own packages', () => {
    const wrong = SOURCES.flatMap((file) => {
      const layer = layerOf(file);
      const rule = ALLOWED[layer];
      if (rule === undefined) return [];
      return importsOf(file).flatMap((one) => {
        const to = target(one);
        if ('package' in to) {
          return fits(to.package, rule.packages)
            ? []
            : [`${file} imports ${to.package}: ${layer}/ may not. Pass in what it gives.`];
        }
        if (READS_VALUES.from.test(file) && READS_VALUES.of.test(one.of)) return [];
        const own = to.layer === layer || to.layer === 'model' || rule.layers.includes(to.layer);
        return own ? [] : [`${file} imports ${one.of}: ${layer}/ may not ask ${to.layer}/. Pass in what it gives.`];
      });
    });
    expect(wrong).toEqual([]);
  });

  test('only the commands know the commands', () => {
    const wrong = SOURCES.filter((file) => layerOf(file) !== 'commands').flatMap((file) =>
      importsOf(file).filter((one) => {
        const to = target(one);
        return 'layer' in to && to.layer === 'commands';
      }),
    );
    expect(wrong).toEqual([]);
  });

  test('a page is handed its facts and works nothing out', () => {
    const wrong = SOURCES.filter((file) => layerOf(file) === 'render' && !ASKS_COMPUTE.test(file)).flatMap((file) =>
      importsOf(file).filter((one) => {
        const to = target(one);
        return 'layer' in to && to.layer === 'compute';
      }),
    );
    expect(wrong.map((one) => `${one.file} imports ${one.of}`)).toEqual([]);
  });

  test('a package that does something dear or dangerous has one door', () => {
    const wrong = SOURCES.flatMap((file) =>
      importsOf(file).filter((one) => {
        const door = ONE_DOOR[one.of];
        return door !== undefined && !door.test(file);
      }),
    );
    expect(wrong.map((one) => `${one.file} imports ${one.of}`)).toEqual([]);
  });

  test('what computes has no clock, no chance and no process', () => {
    const impure = /\bDate\.now\b|\bnew Date\(\)|\bMath\.random\b|\bprocess\b\.|\bconsole\b\./;
    const wrong = SOURCES.filter((file) => ['compute', 'model'].includes(layerOf(file)) && impure.test(textOf(file)));
    expect(wrong).toEqual([]);
  });
});

describe('the files', () => {
  test('a file can be seen across: 250 lines at most, 80 for the table of contents', () => {
    const long = SOURCES.filter(
      (file) => textOf(file).split('\n').length - 1 > (file === 'src/catalogue.ts' ? 80 : 250),
    );
    expect(long).toEqual([]);
  });

  test('no file is named for being left over', () => {
    const vague = SOURCES.filter((file) => /\/(utils?|helpers?|common|types|manager|misc|index)\.ts$/.test(file));
    expect(vague.filter((file) => !/(checks|condition\/rules)\/index\.ts$/.test(file))).toEqual([]);
  });

  test('a check and a rule is where its code says, with its cases beside it', () => {
    const modules = SOURCES.filter((file) =>
      /^src\/compute\/(checks\/[a-z]+|condition\/rules)\/[^/]+\.ts$/.test(file),
    ).filter((file) => !/(\.cases|\/index)\.ts$/.test(file));
    expect(modules.length).toBeGreaterThan(10);
    const wrong = modules.flatMap((file) => {
      const code = /\b(?:code|id): '([^']+)'/.exec(textOf(file))?.[1];
      if (code === undefined) return [];
      const told = file.replace(/^src\/compute\/(checks|condition\/rules)\//, '').replace(/\.ts$/, '');
      const problems = code === told ? [] : [`${file} holds ${code}`];
      return SOURCES.includes(file.replace(/\.ts$/, '.cases.ts'))
        ? problems
        : [...problems, `${file} has no cases beside it`];
    });
    expect(wrong).toEqual([]);
  });
});
