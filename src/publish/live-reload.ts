import type { ServerResponse } from 'node:http';

export const LIVE_SCRIPT = '/.live/reload.js';
export const LIVE_EVENTS = '/.live/events';

/** A script of its own, as the policy allows no inline one. It is told on connecting how the site is now, so that a change
 * that came while the page was loading isn't missed, nor one while the program was stopped. */
export const LIVE_SCRIPT_TEXT = `const own = new URL(import.meta.url).searchParams.get('site');
const events = new EventSource('${LIVE_EVENTS}');
const follow = ({ data }) => { if (data !== own) location.reload(); };
events.addEventListener('ready', follow);
events.addEventListener('changed', follow);
`;

/** A page with the script in it. The files of the site never hold it: it is added as a page is served.
 *
 * @param state  of the site when it was asked for the page. */
export function withLiveScript(html: string, state: string): string {
  const tag = `<script src="${LIVE_SCRIPT}?site=${state}" type="module"></script>`;
  const at = html.lastIndexOf('</body>');
  return at < 0 ? html + tag : html.slice(0, at) + tag + html.slice(at);
}

/** The pages that are open in browsers, each holding a connection on which it is told that the site changed.
 * Source: HTML Standard, 9.2 Server-sent events. */
export class OpenPages {
  readonly #open = new Set<ServerResponse>();
  readonly #started = Date.now().toString(36);
  #changes = 0;

  /** Another one for each change, and for each start of the program. */
  get state(): string {
    return `${this.#started}.${this.#changes}`;
  }

  add(response: ServerResponse): void {
    response.write(`retry: 500\nevent: ready\ndata: ${this.state}\n\n`);
    this.#open.add(response);
    response.on('close', () => this.#open.delete(response));
  }

  changed(): void {
    this.#changes += 1;
    for (const response of this.#open) response.write(`event: changed\ndata: ${this.state}\n\n`);
  }

  end(): void {
    for (const response of this.#open) response.end();
  }
}
