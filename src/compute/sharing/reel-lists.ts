import type { Fact, Known } from '#model/fact.ts';
import type {
  Custody,
  Cut,
  Handling,
  Inspection,
  LogLine,
  PlaceKept,
  Reading,
  Recorded,
  RunOutSound,
  Splice,
  Title,
  Valuation,
} from '#model/reel.ts';
import type { Copier } from './copier.ts';

/** A key without its indexes: `cuts[1].on` is `cuts.on`. */
export const keyOf = (field: string): string => field.replace(/\[\d+\]/g, '');

type List<T> = Fact<readonly T[]> | undefined;

export const reference = (
  copy: Copier,
  key: string,
  kind: string,
  fact: Fact<string> | undefined,
): Fact<string> | undefined =>
  fact?.is === 'known' ? (copy.allows(key) ? copy.id(kind, fact) : undefined) : copy.fact(key, fact);

export const contents = (copy: Copier, fact: List<Title>): List<Title> =>
  copy.list('contents', fact, (one) => ({
    place: copy.place(one.place),
    title: copy.known('contents.title', one.title) ?? hidden(copy, one.title, 'a title'),
    durationS: copy.known('contents.length', one.durationS),
    gapAfterS: copy.fact('contents.gap-after', one.gapAfterS),
    side: copy.known('contents.side', one.side),
    by: copy.known('contents.by', one.by),
    note: copy.known('contents.note', one.note),
  }));

export const runOutSound = (copy: Copier, fact: Fact<RunOutSound> | undefined): Fact<RunOutSound> | undefined =>
  copy.map('run-out-sound', fact, (one) => ({
    holds: copy.known('run-out-sound.holds', one.holds),
    durationS: copy.known('run-out-sound.length', one.durationS),
    form: copy.known('run-out-sound.form', one.form),
    counted: copy.known('run-out-sound.counted', one.counted),
  }));

export const recorded = (copy: Copier, fact: Fact<Recorded> | undefined): Fact<Recorded> | undefined =>
  copy.map('recorded', fact, (one) => ({
    on: copy.known('recorded.on', one.on),
    by: copy.person('recorded.by', one.by),
    at: copy.known('recorded.at', one.at),
    for: copy.person('recorded.for', one.for),
  }));

/** A line's number stays out where it is that of a reel outside the share. */
export const copyLog = (
  copy: Copier,
  fact: List<LogLine>,
  others: { readonly shared: (id: string) => boolean; readonly taken: (number: string) => boolean },
): List<LogLine> =>
  copy.list('copy-log', fact, (line) => {
    const telling = line.reel === undefined ? others.taken(line.number?.value ?? '') : !others.shared(line.reel.value);
    return {
      place: copy.place(line.place),
      on: copy.known('copy-log.on', line.on),
      for: copy.person('copy-log.for', line.for),
      by: copy.person('copy-log.by', line.by),
      speed: copy.known('copy-log.speed', line.speed),
      equalisation: copy.known('copy-log.equalisation', line.equalisation),
      kind: copy.known('copy-log.kind', line.kind),
      number: telling ? undefined : copy.known('copy-log.number', line.number),
      reel: line.reel && copy.id(others.shared(line.reel.value) ? 'reel' : 'outside', line.reel),
      note: copy.known('copy-log.note', line.note),
    };
  });

export const splices = (copy: Copier, fact: List<Splice>): List<Splice> =>
  copy.list('splices', fact, (one) => ({
    place: copy.place(one.place),
    at: copy.known('splices.at', one.at),
    note: copy.known('splices.note', one.note),
  }));

export const cuts = (copy: Copier, fact: List<Cut>): List<Cut> =>
  copy.list('cuts', fact, (one) => ({
    place: copy.place(one.place),
    number: copy.known('cuts.number', one.number),
    matrix: copy.known('cuts.matrix', one.matrix),
    side: copy.known('cuts.side', one.side),
    on: copy.known('cuts.on', one.on),
    by: copy.person('cuts.by', one.by),
    halfSpeed: copy.known('cuts.half-speed', one.halfSpeed),
    used: copy.known('cuts.used', one.used),
    edition: one.edition && copy.id('edition', one.edition),
    note: copy.known('cuts.note', one.note),
  }));

/** A reading goes along where the fact that it is a reading of does. */
export const readings = (copy: Copier, fact: List<Reading>, photographs: ReadonlyMap<string, string>): List<Reading> =>
  copy.list('readings', fact, (one) => {
    if (!copy.allows(keyOf(one.of.value))) return undefined;
    const name = photographs.get(one.photo?.value ?? '');
    return {
      place: copy.place(one.place),
      of: { is: 'known', value: one.of.value, written: one.of.value, place: copy.place(one.of.place) },
      photo:
        one.photo && name !== undefined
          ? { is: 'known', value: name, written: name, place: copy.place(one.photo.place) }
          : undefined,
      region: name === undefined ? undefined : copy.known('readings.region', one.region),
      written: {
        is: 'known',
        value: one.written.value,
        written: one.written.written,
        place: copy.place(one.written.place),
      },
      sure: copy.known('readings.sure', one.sure),
      note: copy.known('readings.note', one.note),
    };
  });

export const condition = (copy: Copier, fact: List<Inspection>): List<Inspection> =>
  copy.list('condition', fact, (one) => ({
    place: copy.place(one.place),
    on: copy.known('condition.on', one.on),
    by: copy.person('condition.by', one.by),
    found: copy.texts('condition.found', one.found),
    note: copy.known('condition.note', one.note),
  }));

/** Names of transferred files stay out, as every original file name does. */
export const handling = (copy: Copier, fact: List<Handling>): List<Handling> =>
  copy.list('handling', fact, (one) => {
    const what = copy.known('handling.what', one.what);
    return (
      what && {
        place: copy.place(one.place),
        what,
        on: copy.known('handling.on', one.on),
        by: copy.person('handling.by', one.by),
        temperatureC: copy.known('handling.temperature', one.temperatureC),
        durationS: copy.known('handling.duration', one.durationS),
        started: copy.known('handling.started', one.started),
        ended: copy.known('handling.ended', one.ended),
        machine: one.machine && copy.allows('handling.machine') ? copy.id('machine', one.machine) : undefined,
        settings: copy.known('handling.settings', one.settings),
        passes: copy.known('handling.passes', one.passes),
        planned: copy.known('handling.planned', one.planned),
        note: copy.known('handling.note', one.note),
      }
    );
  });

export const placeKept = (copy: Copier, fact: Fact<PlaceKept> | undefined): Fact<PlaceKept> | undefined =>
  copy.map('place', fact, (one) => ({
    at: one.at && copy.allows('place.at') ? copy.id('place', one.at) : undefined,
    shelf: copy.known('place.shelf', one.shelf),
    stored: copy.known('place.stored', one.stored),
  }));

/** How and when; by whom only where the share means to. */
export const custody = (copy: Copier, fact: List<Custody>): List<Custody> => {
  if (fact?.is !== 'known' || !CUSTODY_PARTS.some((part) => copy.allows(`custody.${part}`)))
    return copy.fact('custody', fact);
  return {
    is: 'known',
    written: '',
    place: copy.place(fact.place),
    value: fact.value.map((one) => ({
      place: copy.place(one.place),
      holder:
        copy.person('custody.holder', one.holder) ??
        hidden(copy, one.holder, { is: 'text' as const, text: 'not told here' }),
      from: copy.known('custody.from', one.from),
      until: copy.known('custody.until', one.until),
      how: copy.known('custody.how', one.how),
      price: copy.known('custody.price', one.price),
      evidence: copy.known('custody.evidence', one.evidence),
      note: copy.known('custody.note', one.note),
    })),
  };
};
const CUSTODY_PARTS = ['holder', 'from', 'until', 'how', 'price', 'evidence', 'note'] as const;

export const valuations = (copy: Copier, fact: List<Valuation>): List<Valuation> =>
  copy.list('valuations', fact, (one) => ({
    place: copy.place(one.place),
    on: copy.known('valuations.on', one.on),
    by: copy.person('valuations.by', one.by),
    amount: copy.known('valuations.amount', one.amount),
    basis: copy.known('valuations.basis', one.basis),
  }));

/** In place of a part that an entry can't be without. */
const hidden = <T>(copy: Copier, fact: Known<unknown>, value: T): Known<T> => ({
  is: 'known',
  value,
  written: typeof value === 'string' ? value : '',
  place: copy.place(fact.place),
});
