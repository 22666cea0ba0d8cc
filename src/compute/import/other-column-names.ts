import type { SheetKind } from '#model/entry-column.ts';

type Said = Readonly<Record<string, readonly string[]>>;

const PHOTOS = ['photo', 'photos', 'photograph', 'photographs', 'picture', 'pictures', 'image', 'images', 'scan'];
const BODY = ['notes', 'note', 'remarks', 'remark', 'comments', 'comment', 'description', 'memo'];
const EVERY: Said = { id: ['id', 'ident', 'key'], photos: PHOTOS, body: BODY };

/** What collectors call the columns of sheets that aren't of reels. Common usage, no source. */
export const SAID_OF_OTHERS: Readonly<Record<Exclude<SheetKind, 'reels'>, Said>> = {
  editions: {
    ...EVERY,
    title: ['title', 'name', 'album', 'record', 'release', 'record title', 'album title'],
    artist: ['artist', 'artists', 'performer', 'performers', 'group', 'band'],
    label: ['label', 'record label', 'record company', 'company'],
    catalogue: [
      'catalogue',
      'catalogue number',
      'catalogue no',
      'catalog number',
      'catalog no',
      'cat',
      'cat no',
      'cat number',
      'release number',
    ],
    'made-as': ['made as', 'format', 'medium', 'kind', 'type'],
    territory: ['territory', 'country', 'market', 'country of release'],
    issued: ['issued', 'released', 'release date', 'release year', 'year', 'date', 'year of release'],
    speed: ['speed', 'rpm'],
    'reissue-of': ['reissue of'],
  },
  machines: {
    ...EVERY,
    title: ['title', 'name', 'machine', 'model', 'tape machine', 'recorder', 'deck'],
    speeds: ['speeds', 'speed', 'ips', 'tape speeds'],
    equalisations: ['equalisations', 'equalisation', 'equalization', 'eq', 'curves', 'curve'],
    tracks: ['tracks', 'heads', 'head', 'head block', 'track format', 'heads fitted'],
    'largest-reel': ['largest reel', 'max reel', 'maximum reel', 'reel size', 'largest spool', 'max spool'],
    takes: ['takes', 'reels or hubs'],
    width: ['width', 'tape width', 'widths'],
    'noise-reduction': ['noise reduction', 'nr'],
    state: ['state', 'condition', 'working', 'status'],
    'belongs-to': ['belongs to', 'owner', 'whose'],
  },
  stocks: {
    ...EVERY,
    title: ['title', 'name', 'stock', 'tape stock', 'tape type', 'tape'],
    base: ['base', 'base film', 'backing', 'base material'],
    binder: ['binder'],
    'back-coated': ['back coated', 'back coat', 'backcoat', 'back coating', 'matt back'],
    thickness: ['thickness', 'total thickness'],
    made: ['made', 'years made', 'manufactured', 'years', 'produced'],
    'known-to-shed': ['known to shed', 'sheds', 'sticky', 'sticky shed'],
    source: ['source', 'known from'],
  },
  places: {
    ...EVERY,
    title: ['title', 'name', 'place', 'room', 'store', 'location'],
    address: ['address', 'street', 'where'],
    climate: ['climate', 'climate log', 'logger'],
  },
  people: {
    ...EVERY,
    title: ['title', 'name', 'person', 'full name', 'who'],
    initials: ['initials', 'initial', 'initials on labels'],
    did: ['did', 'role', 'roles', 'job', 'work', 'what they did', 'occupation', 'function'],
    active: ['active', 'years active', 'years', 'when', 'dates'],
  },
};
