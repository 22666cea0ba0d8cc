import { NAMEABLE } from '#compute/sharing/table.ts';
import { AUDIENCES, ENTRY_KINDS, type EntryKind } from '#model/words.ts';
import { splitFiles } from '#read/collection.ts';
import { validateAll } from '#validate/entries.ts';
import { collection } from '#validate/schemas/collection.ts';
import type { Field } from '../../src/desk/fields/field.ts';
import { FIELDS } from '../../src/desk/fields/kinds.ts';

type Written = string | readonly Written[] | { readonly [key: string]: Written };

/** What ends every text of the collection: it would run, load, hide, turn round or end something if anything took it for
 * more than text. It begins as a formula in a spreadsheet, has lines as of a calendar, and marks of templates. */
const SHORT = `"'><img src=x onerror=window.ran=1>`;
const LONG = [
  SHORT,
  `<script>window.ran=1</script></script></title></style></textarea></svg>]]><svg onload=window.ran=1>`,
  '<style>*{display:none}</style><link rel=stylesheet href=//remote.example/x.css><base href=//remote.example>',
  '<a href="javascript:window.ran=1">l</a> [l](javascript:window.ran=1) ![p](//remote.example/p.png) <!--',
  '<iframe srcdoc="<script>parent.ran=1</script>"></iframe><meta http-equiv=refresh content=0;url=//remote.example>',
  '{{constructor.constructor("window.ran=1")()}} $\u007bwindow.ran=1} <%= 1 %> {% raw %} %0d%0a&lt;b&gt;&#60;i&#62;',
  '\u202Eturned \u2067inside \u2069\u2069 \u202D and out',
  '\nEND:VEVENT\nBEGIN:VALARM\r\nX: y',
].join(' ');

/** How the text of a fact begins, whatever comes after. */
export const markOf = (at: number): string => `=Q${String(at).padStart(3, '0')}`;
/** What has to stand after the mark where such a text is shown. */
export const SHOWN_AFTER_MARK = SHORT;
export const PHOTOGRAPH = `a"'><img src=x onerror=window.ran=1> \u202Ergb.jpg`;
const LOG = `l"'><img src=x onerror=window.ran=1>.csv`;

export interface HostileCollection {
  /** By path: entries, and the log. */
  readonly texts: ReadonlyMap<string, string>;
  readonly photographs: readonly string[];
  /** The facts that take any text, `reels.contents.title`, by the number in the mark of theirs. */
  readonly facts: readonly string[];
}

/** A collection with one entry of each kind that holds hostile text in every fact that takes any text, found by asking
 * the schemas themselves; one with it in every fact whatever, which is refused and quoted; and one for each audience. */
export function hostileCollection(): HostileCollection {
  const facts: string[] = [];
  const textOf = (path: string) => {
    facts.push(path);
    return `${markOf(facts.length - 1)}${LONG}`;
  };
  const texts = new Map<string, string>();
  const hostileKeys = collection.keysBelow.filter((key) =>
    takesAny('collection', { ...PLAIN_COLLECTION, [key]: LONG }),
  );
  texts.set(
    'collection.md',
    entry({ ...PLAIN_COLLECTION, ...Object.fromEntries(hostileKeys.map((key) => [key, textOf(`collection.${key}`)])) }),
  );
  for (const kind of ENTRY_KINDS) {
    const free = freePaths(kind);
    const values = filled(FIELDS[kind], '', (field, path) =>
      free.has(path) ? asWritten(field, textOf(`${kind}.${path}`)) : plainValue(kind, field, path),
    );
    const body = BODY.replaceAll('MARK', textOf(`${kind}.body`));
    if (kind === 'shares') {
      for (const audience of AUDIENCES) {
        const { shows: _, ...rest } = values;
        const own = { ...rest, for: audience, 'shows-private': [...NAMEABLE], until: '2027' };
        texts.set(`shares/to-${audience}.md`, entry({ ...own, reels: ['hostile'], 'opened-by': 'link' }, body));
      }
      texts.set('shares/strange.md', entry(values));
    } else texts.set(`${kind}/hostile/index.md`, entry(values, body));
    texts.set(`${kind}/refused.md`, entry(filled(FIELDS[kind], '', () => `${markOf(999)}${LONG}`)));
    if (kind !== 'shares') texts.set(`${kind}/plain.md`, entry({ title: `Plain ${kind}`, ...statusOf(kind) }));
  }
  texts.set(`places/hostile/${LOG}`, logText());
  const beside = ENTRY_KINDS.map((kind) => (kind === 'shares' ? kind : `${kind}/hostile`));
  return { texts, facts, photographs: beside.map((folder) => `${folder}/${PHOTOGRAPH}`) };
}

const PLAIN_COLLECTION = { private: 'accepted' };
const COLUMNS = { time: `time ${SHORT}`, temperature: `"t" ${SHORT}`, humidity: `h,${SHORT}` };

const entry = (values: Written, body = '') => `---\n${JSON.stringify(values, undefined, 1)}\n---\n${body}`;
const statusOf = (kind: EntryKind): Record<string, string> => (kind === 'reels' ? { status: 'held' } : {});

/** Keys of the owner's own are hostile too. */
const asWritten = (field: Field, text: string): Written => (field.key === 'also' ? { [text]: [text] } : text);

function filled(fields: readonly Field[], above: string, leaf: (field: Field, path: string) => Written | undefined) {
  const values: Record<string, Written> = {};
  for (const field of fields) {
    const path = `${above}${field.key}`;
    const value = 'fields' in field ? filled(field.fields, `${path}.`, leaf) : leaf(field, path);
    if (value !== undefined) values[field.key] = field.is === 'list' || field.is === 'many' ? [value] : value;
  }
  return values;
}

/** A value of a fact that doesn't take any text, or is to be left as it is. */
function plainValue(kind: EntryKind, field: Field, path: string): Written | undefined {
  if (path === 'climate.columns') return COLUMNS;
  if (path === 'climate.file') return LOG;
  if (path === 'photos.file' || path === 'readings.photo') return PHOTOGRAPH;
  if (path === 'private') return 'accepted';
  if (field.is !== 'one' && field.is !== 'many') return undefined;
  if (field.refers !== undefined) return field.refers === kind ? 'plain' : 'hostile';
  return field.words?.[0] ?? field.example;
}

/** The dotted keys of a kind that take any text whatever. */
function freePaths(kind: EntryKind): ReadonlySet<string> {
  const paths: string[] = [];
  filled(FIELDS[kind], '', (_field, path) => {
    paths.push(path);
    return undefined;
  });
  const files = ['photos.file', 'readings.photo', 'climate.file', 'climate.columns', 'private'];
  return new Set(
    paths.filter((path) => {
      const values = filled(FIELDS[kind], '', (field, one) => (one === path ? LONG : plainValue(kind, field, one)));
      return !files.includes(path) && takesAny(kind, values);
    }),
  );
}

/** Whether an entry can be read with these values; what they refer to isn't asked. */
function takesAny(kind: EntryKind | 'collection', values: Written): boolean {
  const path = kind === 'collection' ? 'collection.md' : `${kind}/hostile/index.md`;
  const { problems } = validateAll(splitFiles([{ path, text: entry(values) }]));
  return !problems.some(({ code, severity }) => severity === 'error' && UNREADABLE.has(code));
}
const UNREADABLE = new Set([
  'entry/bad-value',
  'entry/unknown-key',
  'entry/missing-key',
  'entry/missing',
  'entry/unreadable',
]);

const BODY = `MARK

# MARK

<script>window.ran=1</script> <img src=x onerror=window.ran=1> <div style="position:fixed;inset:0">over all</div>

[link](javascript:window.ran=1) [link](JaVaScRiPt:window.ran=1) [link](data:text/html,<script>window.ran=1</script>)
<javascript:window.ran=1> ![p](https://remote.example/p.png) ![p](x" onerror="window.ran=1) [r]: [r][r] {{7*7}}

[r]: javascript:window.ran=1 "x" onmouseover="window.ran=1"

| a | b |
|---|---|
| <svg/onload=window.ran=1> | \u202Eturned |

\`\`\`html
</code></pre><script>window.ran=1</script>
\`\`\`

Note[^1] &lt;script&gt;window.ran=1&lt;/script&gt;

[^1]: <script>window.ran=1</script>
`;

function logText(): string {
  const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;
  const rows = Array.from(
    { length: 30 },
    (_, at) => `2025-03-${String(at + 1).padStart(2, '0')} 10:00,20.5,4${at % 10}`,
  );
  return [Object.values(COLUMNS).map(quoted).join(','), ...rows, quoted(LONG), ''].join('\r\n');
}
