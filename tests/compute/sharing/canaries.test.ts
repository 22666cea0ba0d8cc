import { beforeAll, describe, expect, test } from 'vitest';
import type { Catalogue } from '#model/catalogue.ts';
import { AUDIENCES } from '#model/words.ts';
import { dossierOf, textsIn } from '../../given/share-of.ts';
import { catalogueOf } from '../../given/small-collection.ts';
import { MAY_BE_TOLD, TOLD_EVERYTHING, wordsToldIn } from '../../given/told-everything.ts';

describe('what a dossier is made from', () => {
  let whole: Catalogue;
  beforeAll(async () => {
    whole = await catalogueOf(TOLD_EVERYTHING);
  });

  test('the collection was read: nothing in it was refused', () => {
    expect(whole.problems.filter((problem) => problem.severity === 'error')).toEqual([]);
    expect(whole.entries.unusable.size).toBe(0);
  });

  test.each(AUDIENCES)('holds for the %s just what the table gives', (audience) => {
    const { dossier } = dossierOf(whole, `qr13-${audience}`);
    expect(wordsToldIn(textsIn(dossier))).toEqual([...(MAY_BE_TOLD[audience] ?? [])].sort());
  });

  test.each(AUDIENCES)('names no id and no file of the collection for the %s', (audience) => {
    const { dossier } = dossierOf(whole, `qr13-${audience}`);
    for (const list of [
      whole.entries.reels,
      whole.entries.editions,
      whole.entries.people,
      whole.entries.stocks,
      whole.entries.places,
      whole.entries.machines,
    ])
      for (const { id } of list) expect(textsIn(dossier), id).not.toContain(id);
    expect(textsIn(dossier)).not.toMatch(/\.(jpg|wav|csv)/);
  });

  test.each(AUDIENCES)('has no field of any entry that was added later, for the %s', (audience) => {
    const { collection, unusable, ...lists } = whole.entries;
    const grown = Object.fromEntries(
      Object.entries(lists).map(([kind, list]) => [
        kind,
        list.map((entry) => ({ ...entry, newField: `NEW-${kind}`, nested: { deep: [`NEW-${kind}-deep`] } })),
      ]),
    );
    const entries = {
      collection: { ...collection, newField: 'NEW-collection' },
      unusable,
      ...grown,
    } as unknown as Catalogue['entries'];
    const { dossier } = dossierOf({ ...whole, entries }, `qr13-${audience}`);
    expect(textsIn(dossier)).not.toContain('NEW-');
  });

  test.each(AUDIENCES)('has no new field of any part of an entry either, at any depth, for the %s', (audience) => {
    // Whatever has a place of its own is a part that the owner wrote: a fact, a line of a list, a map.
    const grown = (value: unknown): unknown => {
      if (Array.isArray(value)) return value.map(grown);
      if (value instanceof Map || value instanceof Set || typeof value !== 'object' || value === null) return value;
      const inner = Object.fromEntries(Object.entries(value).map(([key, one]) => [key, grown(one)]));
      return 'place' in value ? { ...inner, newField: 'NEW-' } : inner;
    };
    const { unusable, ...lists } = whole.entries;
    const entries = { ...(grown(lists) as object), unusable } as Catalogue['entries'];
    for (const kind of ['reels', 'editions', 'machines', 'stocks', 'places', 'people', 'shares'] as const)
      expect(JSON.stringify(entries[kind])).toContain('NEW-');
    expect(textsIn(dossierOf({ ...whole, entries }, `qr13-${audience}`).dossier)).not.toContain('NEW-');
  });

  test('lays out for the engineer no machine but the ones that a plan of its reels would name', () => {
    const { dossier } = dossierOf(whole, 'qr13-engineer');
    expect(dossier.reduced.entries.machines.map((machine) => machine.title.value)).toEqual(['QQ95 machine']);
    expect(wordsToldIn(textsIn(dossier.plan))).not.toContain('QQ33');
    for (const audience of AUDIENCES.filter((one) => one !== 'engineer'))
      expect(dossierOf(whole, `qr13-${audience}`).dossier.plan).toBeUndefined();
  });

  test('a reel outside the share is its kind and its date', () => {
    const { dossier } = dossierOf(whole, 'qr13-engineer');
    const outside = dossier.reduced.entries.reels.filter((reel) => reel.id.startsWith('outside-'));
    expect(
      outside.map((reel) => [
        reel.kind?.is === 'known' && reel.kind.value,
        reel.recorded?.is === 'known' && reel.recorded.value.on?.written,
      ]),
    ).toEqual([
      ['production master', '1977-11'],
      ['copy master', false],
    ]);
    expect(dossier.reduced.lineage.edges.map((edge) => [edge.from, edge.to])).toContainEqual([
      'reel:outside-1',
      'reel:reel-1',
    ]);
  });
});
