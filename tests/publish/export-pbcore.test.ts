import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { validateXML } from 'xmllint-wasm';
import type { Catalogue } from '#model/catalogue.ts';
import { pbcoreExport } from '#publish/export/pbcore.ts';
import { dossierOf } from '../given/share-of.ts';
import { catalogueOf } from '../given/small-collection.ts';
import { MAY_BE_TOLD, TOLD_EVERYTHING, wordsToldIn } from '../given/told-everything.ts';

const RULES = readFileSync(join(import.meta.dirname, '../tables/pbcore-rules.xsd'), 'utf8');
const NAMESPACE = 'http://www.pbcore.org/PBCore/PBCoreNamespace.html';

/** By libxml2's schema validator. */
async function complaints(xml: string): Promise<readonly string[]> {
  const { errors } = await validateXML({ xml: [{ fileName: 'reels.xml', contents: xml }], schema: [RULES] });
  return errors.map((error) => error.message);
}

const exported = (catalogue: Catalogue) => String(pbcoreExport(catalogue)?.files.get(''));
const whole = () => catalogueOf(TOLD_EVERYTHING);

describe('PBCore 2.1', () => {
  test('C-501, C-505, C-506, C-516: records of reels that use every key are valid, in the namespace of the standard', async () => {
    const xml = exported(await whole());
    expect(await complaints(xml)).toEqual([]);
    expect(xml).toContain(`xmlns="${NAMESPACE}"`);
  });

  test('C-151, C-502, C-503, C-504, C-507, C-513, C-514: the validator refuses what the standard refuses', async () => {
    const xml = exported(await whole());
    const without = (pattern: RegExp) => {
      const changed = xml.replace(pattern, '');
      expect(changed).not.toBe(xml);
      return changed;
    };
    expect(await complaints(without(/<instantiationLocation>.*?<\/instantiationLocation>/))).not.toEqual([]);
    expect(await complaints(without(/<instantiationIdentifier.*?<\/instantiationIdentifier>/))).not.toEqual([]);
    expect(await complaints(without(/(?<=<instantiationIdentifier) source="[^"]*"/))).not.toEqual([]);
    expect(await complaints(without(/<pbcoreRelationType>.*?<\/pbcoreRelationType>/))).not.toEqual([]);
    expect(await complaints(without(/ xmlns="[^"]*"/))).not.toEqual([]);
    const swapped = xml.replace(
      /(<pbcoreTitle>.*?<\/pbcoreTitle>)(\s*)(<pbcoreDescription>.*?<\/pbcoreDescription>)/,
      '$3$2$1',
    );
    expect(await complaints(swapped)).not.toEqual([]);
  });

  test('C-505: two locations are refused by the validator, and never written', async () => {
    const xml = exported(await whole());
    expect(await complaints(xml.replace(/(<instantiationLocation>.*?<\/instantiationLocation>)/, '$1$1'))).not.toEqual(
      [],
    );
  });

  test('C-508: the location is a neutral word; no place, address or shelf is in the file', async () => {
    const xml = exported(await whole());
    expect([...xml.matchAll(/<instantiationLocation>(.*?)</g)].map((match) => match[1])).toEqual(
      Array.from({ length: 4 }, () => 'private collection'),
    );
    for (const secret of ['QQ53', 'QQ54', 'QR02', 'QR03', '58101', '62103', 'QQ55'])
      expect(xml.toUpperCase()).not.toContain(secret);
  });

  test('C-509: the speed stands with the essence track', async () => {
    expect(exported(await whole())).toMatch(
      /<instantiationEssenceTrack>\s*<essenceTrackType>Audio<\/essenceTrackType>\s*<essenceTrackPlaybackSpeed>15 in\/s</,
    );
  });

  test('C-510, C-511: no source is empty, and a reel without contents has its title for a description', async () => {
    const xml = exported(await catalogueOf({ 'reels/a': 'title: Low & <Water>' }));
    expect(xml).not.toMatch(/source=""/);
    expect(xml).toContain('<pbcoreDescription>Low &amp; &lt;Water&gt;</pbcoreDescription>');
    expect(await complaints(xml)).toEqual([]);
  });

  test('C-512: a date as far as it is known is taken as it stands', async () => {
    const xml = exported(await catalogueOf({ 'reels/a': 'recorded: { on: 197X }' }));
    expect(xml).toContain('<instantiationDate dateType="recorded">197X</instantiationDate>');
    expect(await complaints(xml)).toEqual([]);
  });

  test('C-515: without a reel there is no file, as an empty collection is invalid', async () => {
    expect(pbcoreExport(await catalogueOf({}))).toBeUndefined();
    expect(await complaints(`<pbcoreCollection xmlns="${NAMESPACE}"/>`)).not.toEqual([]);
  });

  test('characters that XML can’t have are shown as unread', async () => {
    const xml = exported(await catalogueOf({ 'reels/a': 'title: "bell \\u0007 and \\uFFFE"' }));
    expect(await complaints(xml)).toEqual([]);
  });

  test('a share’s records hold what the share allows and nothing else', async () => {
    const { dossier } = dossierOf(await whole(), 'qr13-friend');
    const told = wordsToldIn(exported(dossier.reduced));
    expect(told.filter((word) => !(MAY_BE_TOLD['friend'] ?? []).includes(word))).toEqual([]);
  });
});
