import { describe, expect, test } from 'vitest';
import { jsonldExport } from '#publish/export/jsonld.ts';
import { lookupOf } from '#render/views/lookup.ts';
import { reelScript } from '#render/views/schema-org.ts';
import { isoDuration } from '#render/words/iso-duration.ts';
import { dossierOf } from '../given/share-of.ts';
import { catalogueOf } from '../given/small-collection.ts';
import { MAY_BE_TOLD, TOLD_EVERYTHING, wordsToldIn } from '../given/told-everything.ts';

interface Node {
  readonly '@id': string;
  readonly [key: string]: unknown;
}
const graphOf = (text: string) => (JSON.parse(text) as { '@graph': Node[] })['@graph'];

describe('schema.org', () => {
  test.each([
    ['C-547', 1132, 'PT18M52S'],
    ['C-548', 4000, 'PT1H6M40S'],
    ['ISO 8601-1', 0, 'PT0S'],
    ['ISO 8601-1', 3600, 'PT1H'],
    ['ISO 8601-1', 59.5, 'PT59.5S'],
  ])('%s: %d s is %s', (_, seconds, text) => {
    expect(isoDuration(seconds)).toBe(text);
  });

  test('every node that is pointed at is there, and no id stands twice', async () => {
    const text = String(jsonldExport(await catalogueOf(TOLD_EVERYTHING)).files.get(''));
    const ids = graphOf(text).map((node) => node['@id']);
    expect(new Set(ids).size).toBe(ids.length);
    const pointed = [...text.matchAll(/"@id": "([^"]+)"/g)].map((match) => match[1] ?? '');
    expect(pointed.filter((id) => !ids.includes(id))).toEqual([]);
    expect(text).toContain('"timeRequired": "PT8M"');
  });

  test('where it is kept, what was paid and what it is worth aren’t in it', async () => {
    const text = String(jsonldExport(await catalogueOf(TOLD_EVERYTHING)).files.get('')).toUpperCase();
    for (const secret of ['QQ53', 'QQ54', 'QQ55', 'QR02', 'QR03', '58101', '62103']) expect(text).not.toContain(secret);
  });

  test('a date that schema.org can’t take is a text', async () => {
    const text = String(jsonldExport(await catalogueOf({ 'reels/a': 'recorded: { on: 197X }' })).files.get(''));
    expect(text).not.toContain('dateCreated');
    expect(text).toContain('"temporal": "197X"');
  });

  test('a share’s file holds what the share allows and nothing else', async () => {
    const { dossier } = dossierOf(await catalogueOf(TOLD_EVERYTHING), 'qr13-insurer');
    const told = wordsToldIn(String(jsonldExport(dossier.reduced).files.get('')));
    expect(told.filter((word) => !(MAY_BE_TOLD['insurer'] ?? []).includes(word))).toEqual([]);
  });

  test('in a page, nothing in it ends the element that it stands in', async () => {
    const catalogue = await catalogueOf({ 'reels/a': 'title: "</script><script>x"' });
    const [sheet] = catalogue.reels;
    const text = sheet === undefined ? '' : reelScript(sheet, lookupOf(catalogue));
    expect(text).not.toContain('<');
    expect(JSON.parse(text).name).toBe('</script><script>x');
  });
});
