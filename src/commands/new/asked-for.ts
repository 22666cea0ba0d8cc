import { idLike, isId } from '#model/entry-id.ts';
import { AUDIENCES, type EntryKind, STATUSES } from '#model/words.ts';

type Ask = (question: string) => Promise<string>;

/** A fact that an entry can't be without: one of a list of words, or ids of other entries. */
interface Need {
  readonly key: string;
  readonly question: string;
  readonly words?: readonly string[];
}

const NEEDS: Partial<Readonly<Record<EntryKind, readonly Need[]>>> = {
  reels: [{ key: 'status', question: 'Where is it?', words: STATUSES }],
  shares: [
    { key: 'for', question: 'Who is it made for?', words: AUDIENCES },
    { key: 'reels', question: 'Which reels, by their ids, with a comma between?' },
  ],
};

const TRIES = 3;

/** One of the words, the first for an empty answer; asked again for another, and the first after three tries. */
async function wordFor({ question, words = [] }: Need, ask: Ask): Promise<string> {
  const [first = ''] = words;
  let asked = `${question} (${words.join(', ')}; Enter for ${first}) `;
  for (let attempt = 0; attempt < TRIES; attempt++) {
    const typed = await ask(asked);
    if (typed === '') return first;
    if (words.includes(typed)) return typed;
    asked = `"${typed}" is none of these. ${question} (${words.join(', ')}; Enter for ${first}) `;
  }
  return first;
}

async function idsFor({ question }: Need, ask: Ask): Promise<string> {
  let asked = `${question} (Enter for none yet) `;
  for (let attempt = 0; attempt < TRIES; attempt++) {
    const ids = (await ask(asked)).split(/[,;\s]+/u).filter((id) => id !== '');
    const wrong = ids.find((id) => !isId(id));
    if (wrong === undefined) return `[${ids.join(', ')}]`;
    asked = `"${wrong}" can't be an id. ${question} (Enter for none yet) `;
  }
  return '[]';
}

/** Facts that an entry of a kind must have beside its title, as its front matter writes them. */
export async function needsOf(kind: EntryKind, ask: Ask): Promise<ReadonlyMap<string, string>> {
  const facts = new Map<string, string>();
  for (const need of NEEDS[kind] ?? [])
    facts.set(need.key, need.words === undefined ? await idsFor(need, ask) : await wordFor(need, ask));
  return facts;
}

/** A title and an id, one proposed from the other. An id that can't be one is asked for again.
 *
 * @param titled  A title that was given already. */
export async function nameOf(titled: string | undefined, ask: Ask): Promise<{ title: string; id: string }> {
  const title = titled ?? (await ask('What is it called? '));
  const proposed = idLike(title);
  let id = await ask(`Its id, for other entries to use?${proposed === '' ? '' : ` (Enter for ${proposed})`} `);
  for (let attempt = 1; attempt < TRIES && id !== '' && !isId(id); attempt++)
    id = await ask(`"${id}" can't be an id: lower-case letters, digits and hyphens. Its id? `);
  return { title, id: id === '' ? proposed : id };
}
