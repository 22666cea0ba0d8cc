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

  test('has no new field of a part of an entry either', () => {
    const grown = (value: unknown): unknown => {
      if (value instanceof Map || value instanceof Set || typeof value !== 'object' || value === null) return value;
      if (Array.isArray(value)) return value.map(grown);
      return {
        ...Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, grown(inner)])),
        newField: 'NEW',
      };
    };
    const reels = whole.entries.reels.map((reel) => ({
      ...reel,
      ...Object.fromEntries(
        [
          'copyLog',
          'cuts',
          'contents',
          'custody',
          'condition',
          'handling',
          'readings',
          'splices',
          'photos',
          'recorded',
          'valuations',
          'placeKept',
          'runOutSound',
        ].map((key) => {
          const fact = reel[key as keyof typeof reel] as { value: unknown } | undefined;
          return [
            key,
            fact && {
              ...fact,
              newField: 'NEW',
              value: Array.isArray(fact.value)
                ? fact.value.map((one: object) => ({ ...one, newField: 'NEW' }))
                : { ...(fact.value as object), newField: 'NEW' },
            },
          ];
        }),
      ),
    })) as unknown as Catalogue['entries']['reels'];
    expect(JSON.stringify(grown(reels[0]))).toContain('NEW');
    for (const audience of AUDIENCES)
      expect(
        textsIn(dossierOf({ ...whole, entries: { ...whole.entries, reels } }, `qr13-${audience}`).dossier),
      ).not.toContain('NEW');
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
