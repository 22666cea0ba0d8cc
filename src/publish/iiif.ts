import type { Entries } from '#model/entries.ts';
import { itemsOf, valueOf } from '#model/fact.ts';
import { photographPath } from '#model/photograph-path.ts';
import type { PublishedPhotograph, ZoomTiles } from '#model/published-photograph.ts';
import type { Reading, Reel } from '#model/reel.ts';
import { cropBox } from './crop-box.ts';

/** Where exported files will stand: every id is an absolute http(s) address. Undefined when `text` is none.
 * Source: IIIF Presentation API 3.0, 3.2 and 5.2. */
export function baseAddress(text: string): string | undefined {
  const url = URL.canParse(text) ? new URL(text) : undefined;
  if (url === undefined || !/^https?:$/.test(url.protocol) || url.search !== '' || url.hash !== '') return undefined;
  return url.href.endsWith('/') ? url.href : `${url.href}/`;
}

/** A manifest a reel that has photographs, with its readings as annotations, and what a viewer must know of each set
 * of tiles: by path below the base address. What isn't in the entries isn't in them, so that a reduced
 * collection gives reduced files.
 * Sources: IIIF Presentation API 3.0; IIIF Image API 3.0, 5; W3C Web Annotation Data Model, 3 and 4. */
export function iiifFiles(
  entries: Pick<Entries, 'collection' | 'reels'>,
  photographs: ReadonlyMap<string, PublishedPhotograph>,
  base: string,
): ReadonlyMap<string, string> {
  const language = valueOf(entries.collection.language) ?? 'none';
  const files = new Map<string, string>();
  for (const reel of entries.reels) {
    const manifest = manifestOf(reel, photographs, { base, language });
    if (manifest !== undefined) files.set(manifestPath(reel), `${JSON.stringify(manifest, null, 1)}\n`);
  }
  for (const photograph of photographs.values()) {
    if (photograph.zoom === undefined) continue;
    const information = imageInformation(photograph, photograph.zoom, base);
    files.set(`${photograph.zoom.root}/info.json`, `${JSON.stringify(information, null, 1)}\n`);
  }
  return files;
}

interface Where {
  readonly base: string;
  /** Of the owner's words; `none` when it isn't recorded. */
  readonly language: string;
}

const manifestPath = (reel: Reel) => `reels/${reel.id}/manifest.json`;

function manifestOf(reel: Reel, photographs: ReadonlyMap<string, PublishedPhotograph>, where: Where) {
  const shown = itemsOf(reel.photos).flatMap((photo) => {
    const path = photographPath(reel.file, photo.file.value);
    const photograph = path === undefined ? undefined : photographs.get(path);
    return photograph === undefined ? [] : [{ photo, photograph }];
  });
  // A manifest must hold a canvas.
  if (shown.length === 0) return undefined;
  const words = (text: string) => ({ [where.language]: [text] });
  const rights = valueOf(reel.rights);
  return {
    '@context': 'http://iiif.io/api/presentation/3/context.json',
    id: where.base + manifestPath(reel),
    type: 'Manifest',
    label: words(reel.title.value),
    metadata: factsOf(reel).map(([name, value]) => ({ label: { en: [name] }, value: { none: [unmarked(value)] } })),
    requiredStatement: {
      label: { en: ['Rights'] },
      value: {
        en: [
          unmarked(
            `${rights === undefined ? '' : `${rights}. `}Owning a tape is not owning the rights in what is on it.`,
          ),
        ],
      },
    },
    items: shown.map(({ photo, photograph }, at) => {
      const label = words(photo.shows?.value ?? `photograph ${at + 1}`);
      const readings = itemsOf(reel.readings).filter((reading) => reading.photo?.value === photo.file.value);
      return canvasOf(
        { id: `${where.base}reels/${reel.id}/canvas/${at + 1}`, label, photograph, readings },
        where.base,
      );
    }),
  };
}

interface Canvas {
  readonly id: string;
  readonly label: Readonly<Record<string, readonly string[]>>;
  readonly photograph: PublishedPhotograph;
  readonly readings: readonly Reading[];
}

/** As large as the photograph itself, so that a region is whole pixels of it, the same that its crop is cut by. */
function canvasOf({ id, label, photograph, readings }: Canvas, base: string) {
  const { widthPx: width, heightPx: height } = photograph;
  const annotations = readings.flatMap((reading, at) =>
    annotationOf(reading, `${id}/reading/${at + 1}`, id, photograph),
  );
  const painting = {
    id: `${id}/page/1/image`,
    type: 'Annotation',
    motivation: 'painting',
    body: imageOf(photograph, base),
    target: id,
  };
  return {
    id,
    type: 'Canvas',
    label,
    height,
    width,
    thumbnail: thumbnailOf(photograph, base),
    items: [{ id: `${id}/page/1`, type: 'AnnotationPage', items: [painting] }],
    ...(annotations.length === 0
      ? {}
      : { annotations: [{ id: `${id}/readings`, type: 'AnnotationPage', items: annotations }] }),
  };
}

function annotationOf(reading: Reading, id: string, canvas: string, { widthPx, heightPx }: PublishedPhotograph) {
  const box = reading.region === undefined ? undefined : cropBox(reading.region.value, widthPx, heightPx);
  if (reading.region !== undefined && box === undefined) return [];
  const sure = reading.sure === undefined ? 'how sure is not recorded' : reading.sure.value;
  const annotation = {
    id,
    type: 'Annotation',
    motivation: 'supplementing',
    body: [
      { type: 'TextualBody', value: reading.written.value, format: 'text/plain' },
      { type: 'TextualBody', value: `${reading.of.value}: ${sure}`, format: 'text/plain', purpose: 'describing' },
    ],
    target: box === undefined ? canvas : `${canvas}#xywh=${box.left},${box.top},${box.width},${box.height}`,
  };
  return [annotation];
}

function imageOf(photograph: PublishedPhotograph, base: string) {
  const largest = largestOf(photograph);
  const size = { format: 'image/jpeg', height: largest.heightPx, width: largest.widthPx };
  if (photograph.zoom === undefined) return { id: base + largest.jpeg, type: 'Image', ...size };
  const service = base + photograph.zoom.root;
  return {
    id: `${service}/full/max/0/default.jpg`,
    type: 'Image',
    ...size,
    service: [{ id: service, type: 'ImageService3', profile: 'level0' }],
  };
}

function thumbnailOf({ sizes }: PublishedPhotograph, base: string) {
  return sizes.slice(0, 1).map(({ jpeg, widthPx, heightPx }) => {
    return { id: base + jpeg, type: 'Image', format: 'image/jpeg', height: heightPx, width: widthPx };
  });
}

/** What a viewer must know to ask for tiles that lie there as files; `max` is the largest of the sizes. */
function imageInformation(photograph: PublishedPhotograph, zoom: ZoomTiles, base: string) {
  const { widthPx, heightPx } = largestOf(photograph);
  // A square, as tiles must fit into it as well: the largest size is what fits into it of the whole photograph.
  const most = Math.max(widthPx, heightPx);
  return {
    '@context': 'http://iiif.io/api/image/3/context.json',
    id: base + zoom.root,
    type: 'ImageService3',
    protocol: 'http://iiif.io/api/image',
    profile: 'level0',
    width: photograph.widthPx,
    height: photograph.heightPx,
    maxWidth: most,
    maxHeight: most,
    sizes: [{ width: zoom.smallest.widthPx, height: zoom.smallest.heightPx }],
    tiles: [{ width: zoom.tilePx, scaleFactors: zoom.scaleFactors }],
  };
}

function largestOf({ sizes }: PublishedPhotograph) {
  const largest = sizes.at(-1);
  if (largest === undefined) throw new Error('fault: a published photograph has no sizes');
  return largest;
}

function factsOf(reel: Reel): readonly (readonly [string, string])[] {
  const sides = itemsOf(reel.sides).map((side) => side.value);
  const facts: (readonly [string, string | undefined])[] = [
    ['Kind', valueOf(reel.kind)],
    ['Side', sides.length === 0 ? undefined : sides.join(' and ')],
    ['Set', valueOf(reel.set)],
    ...(['catalogue', 'matrix', 'job', 'other'] as const).flatMap((as) =>
      itemsOf(reel.numbers[as]).map((number) => [`Number (${as})`, number.written] as const),
    ),
    ['Recorded', valueOf(reel.recorded)?.on?.written],
  ];
  return facts.flatMap(([name, value]) => (value === undefined ? [] : [[name, value] as const]));
}

/** A value that begins with `<` and ends with `>` is taken for HTML: it is shown as the text that it is.
 * Source: IIIF Presentation API 3.0, 4.5. */
function unmarked(value: string): string {
  const text = value.trim();
  if (!text.startsWith('<') || !text.endsWith('>')) return value;
  return `<span>${text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')}</span>`;
}
