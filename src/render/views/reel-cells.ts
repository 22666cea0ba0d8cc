import type { ReelSheet } from '#model/catalogue.ts';
import { itemsOf, valueOf } from '#model/fact.ts';
import type { UnitSystem } from '#model/words.ts';
import { entryHref } from '../links.ts';
import { none, notRecorded, statusMark } from '../marks.ts';
import { html, joined, type Markup, NOTHING, type Printable } from '../markup.ts';
import { dateWords } from '../words/date.ts';
import { clock, spoken } from '../words/duration.ts';
import { equalisationWords } from '../words/equalisation.ts';
import { asWritten, factWords } from '../words/fact.ts';
import { capital, decimal } from '../words/number.ts';
import { measured, nominal, thickness } from '../words/size.ts';
import { inchesSpeed, metricSpeed } from '../words/speed.ts';
import type { Lookup } from './lookup.ts';
import { personLink } from './person-link.ts';

/** A cell of the boxed form: a caption, what is known, and a smaller line under it. */
export interface Cell {
  readonly caption: string;
  readonly value: Markup;
  readonly sub?: Printable;
  /** How wide, on a desk and on a phone. */
  readonly width?: string;
  readonly big?: boolean;
  /** A word of the glossary that the caption leads to. */
  readonly term?: string;
  /** The key of the entry that a reading may speak for. */
  readonly key: string;
}

/** The identity of a reel, cell by cell, in the order in which a copy room's form has them. */
export function reelCells({ reel, lineage }: ReelSheet, lookup: Lookup, units: UnitSystem): readonly Cell[] {
  const { format, numbers, pack } = reel;
  const recorded = valueOf(reel.recorded);
  return [
    { caption: 'Title', value: html`${reel.title.value}`, width: 'c6', big: true, key: 'title' },
    {
      caption: 'Side',
      value: factWords(reel.sides, (sides) => sides.map((side) => side.value).join(' and ')),
      width: 'c2 n2',
      big: reel.sides?.is === 'known',
      key: 'side',
    },
    {
      caption: 'What it is',
      value: factWords(reel.kind, capital),
      sub: generationWords(lineage.generation),
      width: 'c4 n4',
      key: 'kind',
    },
    { caption: 'Catalogue', value: numberWords(numbers.catalogue), width: 'n2', key: 'numbers.catalogue' },
    {
      caption: 'Matrix',
      term: 'matrix-number',
      value: numberWords(numbers.matrix),
      width: 'n2',
      key: 'numbers.matrix',
    },
    { caption: 'Job, other', value: jobWords(reel), width: 'n2', key: 'numbers.job' },
    {
      caption: 'Made for',
      value: factWords(reel.client, (client) => personLink(client, lookup)),
      width: 'n2',
      key: 'client',
    },
    {
      caption: 'Speed',
      value: factWords(format.speed, inchesSpeed),
      sub: format.speed?.is === 'known' && metricSpeed(format.speed.value),
      width: 'n2',
      key: 'format.speed',
    },
    {
      caption: 'Equalisation',
      term: 'equalisation',
      value: factWords(format.equalisation, equalisationWords),
      width: 'n2',
      key: 'format.equalisation',
    },
    {
      caption: 'Tracks',
      term: 'tracks',
      value: factWords(format.tracks, capital),
      sub: trackWords(format),
      key: 'format.tracks',
    },
    {
      caption: 'Level',
      term: 'level',
      value: factWords(format.level, (level) => `${decimal(level, 1)} nWb/m`),
      sub: toneWords(format),
      key: 'format.level',
    },
    {
      caption: 'Noise reduction',
      term: 'noise-reduction',
      value: factWords(format.noiseReduction, (system) => system),
      width: 'n2',
      key: 'format.noise-reduction',
    },
    {
      caption: 'Stock',

      value: stockWords(reel, lookup),
      sub: stockLine(reel, lookup),
      width: 'n4',
      key: 'stock',
    },
    { caption: 'Pack', term: 'pack', value: packWords(pack, units), sub: carrierWords(pack), width: 'n4', key: 'pack' },
    {
      caption: 'Length',
      value: factWords(reel.durationS, clock),
      sub: reel.durationS?.is === 'known' && 'as stated',
      width: 'n2',
      key: 'length',
    },
    {
      caption: 'Gaps',
      value: factWords(reel.gaps, (gaps) => (gaps.is === 'mixed' ? 'mixed' : `${spoken(gaps.gapS)} each`)),
      width: 'n2',
      key: 'gaps',
    },
    {
      caption: 'Recorded',
      value: recorded?.on ? html`${dateWords(recorded.on.value)}` : notRecorded(),
      sub: recorded?.by && html`by ${personLink(recorded.by.value, lookup)}`,
      width: 'n4',
      key: 'recorded.on',
    },
    { caption: 'At', value: recorded?.at ? html`${recorded.at.value}` : notRecorded(), key: 'recorded.at' },
    { caption: 'Here?', value: statusMark(reel.status.value), sub: whereWords(reel, lookup), key: 'status' },
  ];
}

type Reel = ReelSheet['reel'];

function generationWords({ shortest, longest, stated }: ReelSheet['lineage']['generation']): string | undefined {
  if (shortest === null) return stated === null ? undefined : `generation ${stated}, as stated`;
  if (shortest === 1 && longest === 1) return 'the first tape with this programme';
  const copies = longest === null || longest === shortest ? `${shortest - 1}` : `${shortest - 1} or ${longest - 1}`;
  return `${copies} ${copies === '1' ? 'copy' : 'copies'} from the first tape, counted`;
}

const numberWords = (fact: Reel['numbers']['matrix']): Markup =>
  factWords(fact, (numbers) =>
    joined(
      numbers.map((number) => html`<span class="as-written nb">${number.value}</span>`),
      ' ',
    ),
  );

function jobWords({ numbers }: Reel): Markup {
  const all = [...itemsOf(numbers.job), ...itemsOf(numbers.other)];
  if (all.length > 0)
    return joined(
      all.map((number) => html`<span class="as-written nb">${number.value}</span>`),
      ' ',
    );
  return numbers.job?.is === 'none' ? none() : notRecorded();
}

function trackWords(format: Reel['format']): string {
  const width = valueOf(format.width);
  const direction = valueOf(format.direction);
  return [width && nominal(width.value), direction && (direction === 'one' ? 'one direction' : 'both directions')]
    .filter(Boolean)
    .join(', ');
}

function toneWords({ tones }: Reel['format']): string {
  if (tones === undefined) return 'tones not recorded';
  if (tones.is === 'none') return 'no tones on the tape';
  return `tones: ${tones.value.map((tone) => tone.written).join(', ')}`;
}

const stockWords = (reel: Reel, lookup: Lookup): Markup =>
  factWords(reel.stock, (id) => html`<a href="${entryHref('stocks', id)}">${lookup.stock(id)?.title.value ?? id}</a>`);

function stockLine(reel: Reel, lookup: Lookup): string | undefined {
  const stock = lookup.stock(valueOf(reel.stock) ?? '');
  if (stock === undefined) return reel.stock === undefined ? 'look on the box, the leader, under the hub' : undefined;
  const coat = valueOf(stock.backCoated);
  const measure = valueOf(stock.thickness);
  return [
    measure && thickness(measure.value),
    valueOf(stock.base),
    coat !== undefined && (coat ? 'back-coated' : 'no back coat'),
  ]
    .filter(Boolean)
    .join(', ');
}

function packWords(pack: Reel['pack'], units: UnitSystem): Markup {
  const [outside, hub] = [valueOf(pack.outsideDiameter), valueOf(pack.hubDiameter)];
  if (outside === undefined && hub === undefined) return notRecorded();
  if (outside === undefined) return html`on a ${hub && measured(hub, units)} hub`;
  return html`${measured(outside, units)}${hub && ` on a ${measured(hub, units)} hub`}`;
}

function carrierWords(pack: Reel['pack']): string {
  const on = valueOf(pack.woundOn);
  const size = valueOf(pack.reelSize);
  const carrier = on === 'bare hub' ? 'pancake, bare hub' : size ? `${nominal(size.value)} reel` : on;
  return [carrier ?? 'carrier not recorded', valueOf(pack.wind) ?? 'wind not recorded'].join(', ');
}

function whereWords(reel: Reel, lookup: Lookup): Printable {
  if (reel.status.value === 'lent') {
    return html`${reel.lent?.to && html`to ${personLink(reel.lent.to.value, lookup)}`}${reel.lent?.until && ` until ${dateWords(reel.lent.until.value)}`}`;
  }
  if (reel.left !== undefined)
    return [reel.left.how?.value, reel.left.on && dateWords(reel.left.on.value)].filter(Boolean).join(', ');
  return placeWords(reel, lookup);
}

/** Where it is kept: the place and the shelf. */
export function placeWords(reel: Reel, lookup: Lookup): Markup {
  const kept = valueOf(reel.placeKept);
  if (kept?.at === undefined) return reel.status.value === 'held' ? notRecorded('place not recorded') : NOTHING;
  const name = lookup.place(kept.at.value)?.title.value ?? kept.at.value;
  return html`<a href="${entryHref('places', kept.at.value)}">${name}</a>${kept.shelf && html`, ${asWritten(kept.shelf.value)}`}`;
}
