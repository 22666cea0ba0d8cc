import type { ServerResponse } from 'node:http';

export const LIVE_SCRIPT = '/.live/reload.js';
export const LIVE_EVENTS = '/.live/events';

/** A script of its own, as the policy allows no inline one. When the program was stopped and started again the
 * connection comes back by itself, and the page is read anew. */
export const LIVE_SCRIPT_TEXT = `const events = new EventSource('${LIVE_EVENTS}');
let first = true;
events.addEventListener('ready', () => { if (!first) location.reload(); first = false; });
events.addEventListener('changed', () => location.reload());
`;

const TAG = `<script src="${LIVE_SCRIPT}" type="module"></script>`;

/** A page with the script in it. The files of the site never hold it: it is added as a page is served. */
export function withLiveScript(html: string): string {
  const at = html.lastIndexOf('</body>');
  return at < 0 ? html + TAG : html.slice(0, at) + TAG + html.slice(at);
}

/** The pages that are open in browsers, each holding a connection on which it is told that the site changed.
 * Source: HTML Standard, 9.2 Server-sent events. */
export class OpenPages {
  readonly #open = new Set<ServerResponse>();

  add(response: ServerResponse): void {
    response.write('retry: 500\nevent: ready\ndata:\n\n');
    this.#open.add(response);
    response.on('close', () => this.#open.delete(response));
  }

  changed(): void {
    for (const response of this.#open) response.write('event: changed\ndata:\n\n');
  }

  end(): void {
    for (const response of this.#open) response.end();
  }
}
