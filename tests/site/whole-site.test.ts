import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { type ConfigData, HtmlValidate, StaticConfigLoader } from 'html-validate';
import { LinkChecker } from 'linkinator';
import { describe, expect } from 'vitest';
import { PAGE_POLICY } from '#render/policy.ts';
import { test } from './harness.ts';

const RULES: ConfigData = {
  extends: ['html-validate:recommended', 'html-validate:a11y'],
  rules: {
    // Matters of taste, and the builder's own way of writing.
    'long-title': 'off',
    'no-trailing-whitespace': 'off',
    'doctype-style': 'off',
    'attribute-boolean-style': 'off',
    // A group of ticks answers under one name: HTML Standard, 4.10.22.4, constructing the entry list.
    'form-dup-name': ['error', { shared: ['radio', 'checkbox', 'submit', 'button', 'reset'] }],
    // What may be typed is offered under the number box: a select can't be typed into.
    'prefer-native-element': ['error', { exclude: ['listbox'] }],
  },
};

interface PageFile {
  readonly path: string;
  readonly html: string;
}

const pagesOf = (folder: string): PageFile[] =>
  globSync('**/*.html', { cwd: folder })
    .sort()
    .map((path) => ({ path, html: readFileSync(join(folder, path), 'utf8') }));

describe('every file of the site', () => {
  test('is valid HTML', async ({ demo }) => {
    const validator = new HtmlValidate(new StaticConfigLoader(RULES));
    const reports = await Promise.all(
      pagesOf(demo.folder).map(({ path }) => validator.validateFile(join(demo.folder, path))),
    );
    const found = reports.flatMap(({ results }) =>
      results.flatMap(({ filePath, messages }) =>
        messages.map(({ ruleId, message, line, column }) => ({
          fault: `${ruleId}: ${message}`,
          at: `${filePath}:${line}:${column}`,
        })),
      ),
    );
    // The same fault stands on many pages: one of them is enough to find it.
    expect([...Map.groupBy(found, ({ fault }) => fault)].map(([fault, [first]]) => `${fault} (${first?.at})`)).toEqual(
      [],
    );
  });

  test('leads to nothing that isn’t there', async ({ demo }) => {
    const { links } = await new LinkChecker().check({ path: demo.address, recurse: true, concurrency: 20 });
    const broken = Map.groupBy(
      links.filter((link) => link.state === 'BROKEN'),
      (link) => link.url,
    );
    // One page of each that leads there is enough to find it.
    expect([...broken].map(([url, [first]]) => `${first?.parent} → ${url}`)).toEqual([]);
    expect(links.length).toBeGreaterThan(100);
  }, 120_000);

  test('leads to parts of pages that are there', async ({ demo }) => {
    const pages = new Map(pagesOf(demo.folder).map(({ path, html }) => [`/${path.replace(/index\.html$/, '')}`, html]));
    const lost: string[] = [];
    for (const [path, html] of pages) {
      for (const [, href = ''] of html.matchAll(/\bhref="([^"]*#[^"]+)"/g)) {
        const url = new URL(href.replaceAll('&amp;', '&'), `http://site${path}`);
        const target = pages.get(url.pathname);
        const id = decodeURIComponent(url.hash.slice(1));
        if (target !== undefined && !target.includes(`id="${id}"`)) lost.push(`${path} → ${href}`);
      }
    }
    expect(lost).toEqual([]);
  });

  test('has the policy first in its head, and nothing that the policy forbids', ({ demo }) => {
    for (const { path, html } of pagesOf(demo.folder)) {
      const head = /<head>(.*?)<\/head>/s.exec(html)?.[1] ?? '';
      const policy = `<meta http-equiv="Content-Security-Policy" content="${PAGE_POLICY}">`;
      expect(head.replace(/^\s*<meta charset="utf-8">\s*/, '').startsWith(policy), path).toBe(true);
      expect(html.match(/<[a-z][^>]*\sstyle\s*=/gi) ?? [], path).toEqual([]);
      expect(html.match(/<[a-z][^>]*\son[a-z]+\s*=/gi) ?? [], path).toEqual([]);
      // Facts for programs are a data block, which is never run and which script-src isn't about (HTML, 4.12.1).
      const run = html.replaceAll('<script type="application/ld+json">', '');
      expect(run.match(/<style\b|<script(?![^>]*\ssrc=)[^>]*>(?!\s*<\/script>)|javascript:/gi) ?? [], path).toEqual([]);
    }
  });

  test('loads nothing from anywhere else', ({ demo }) => {
    for (const path of globSync('**/*.{html,css}', { cwd: demo.folder })) {
      const text = readFileSync(join(demo.folder, path), 'utf8');
      expect(
        text.match(/(?:\bsrc|\bsrcset|\bposter)="(?:https?:)?\/\/[^"]*|url\(\s*["']?(?:https?:)?\/\/[^)]*/g) ?? [],
        path,
      ).toEqual([]);
      expect(text.match(/<link[^>]*href="(?:https?:)?\/\/[^"]*/g) ?? [], path).toEqual([]);
    }
  });

  test('weighs at most 60 kB a page, gzipped, with its style sheets and scripts, without fonts and photographs', ({
    demo,
  }) => {
    for (const { path, html } of pagesOf(demo.folder)) {
      const parts = [...html.matchAll(/<(?:link rel="stylesheet" href|script[^>]* src)="\/([^"]+)"/g)];
      const files = parts.map((part) => readFileSync(join(demo.folder, part[1] ?? '')));
      const bytes = [Buffer.from(html), ...files].reduce((sum, file) => sum + gzipSync(file).length, 0);
      expect(bytes, path).toBeLessThanOrEqual(60_000);
    }
  });
});

describe('in the browser', () => {
  test('the first page reads, in its own type, with nothing said on the console', async ({ open }) => {
    const page = await open('');
    await expect(page.locator('h1').textContent()).resolves.not.toBe('');
    await page.evaluate('document.fonts.ready');
    const families = await page.evaluate(
      "[...document.fonts].filter((face) => face.status === 'loaded').map((face) => face.family)",
    );
    expect(families).toEqual(expect.arrayContaining([expect.stringMatching(/Archivo/)]));
  });

  test('every page reads without a script', async ({ demo, open }) => {
    const kinds = new Map(
      pagesOf(demo.folder).map(({ path }) => [path.split('/').slice(0, -2).join('/') + path.split('/').length, path]),
    );
    for (const path of kinds.values()) {
      const page = await open(path.replace(/index\.html$/, ''), { javaScriptEnabled: false });
      expect((await page.locator('main').textContent())?.length, path).toBeGreaterThan(40);
    }
  });
});
