import { randomBytes, randomInt, timingSafeEqual } from 'node:crypto';
import type { IncomingMessage } from 'node:http';

/** Why a request isn't answered: a status and a sentence. */
export interface Refused {
  readonly status: number;
  readonly sentence: string;
}

const MOST_GUESSES = 5;
const CODE_LASTS_MS = 10 * 60_000;
/** A page of another site can't send this header without being asked first, and the desk doesn't answer that. */
const OWN_HEADER = 'x-desk';

/** Who may ask the desk for anything: a browser that came in by the address with the secret in it, or, on the network of
 * the room, with the code that works once. Names and origins other than the desk's own are refused, so that no page of
 * another site reaches it, whatever name it gives itself (DNS rebinding) and whatever it makes a browser send (CSRF). */
export class Gate {
  readonly secret = randomBytes(24).toString('base64url');
  readonly hosts: readonly string[];
  /** Six figures for one device, or undefined where the desk is for this computer only. */
  readonly code: string | undefined;
  readonly #cookie: string;
  readonly #now: () => number;
  readonly #until: number;
  #guesses = MOST_GUESSES;
  #codeUsed = false;

  constructor(hosts: readonly string[], port: number, lan: boolean, now: () => number) {
    this.hosts = hosts.map((host) => `${host}:${port}`);
    // Cookies are kept by name of the machine, not by port: two desks on one computer must not meet.
    this.#cookie = `desk-${port}`;
    this.#now = now;
    this.#until = now() + CODE_LASTS_MS;
    this.code = lan ? String(randomInt(0, 1_000_000)).padStart(6, '0') : undefined;
  }

  /** Before anything else is looked at. */
  refuseName(request: IncomingMessage): Refused | undefined {
    const names = request.headersDistinct.host ?? [];
    const own = names.length === 1 && this.hosts.includes(names[0]?.toLowerCase() ?? '');
    return own ? undefined : { status: 421, sentence: 'The desk answers to its own address and to no other name.' };
  }

  /** Whether a browser that asks has been let in. */
  knows(request: IncomingMessage): boolean {
    const pairs = (request.headers.cookie ?? '').split(/; */u);
    return pairs.some(
      (pair) => pair.startsWith(`${this.#cookie}=`) && same(pair.slice(this.#cookie.length + 1), this.secret),
    );
  }

  /** What changes something, or asks for data, must come from the desk's own page. */
  refuseStranger(request: IncomingMessage): Refused | undefined {
    if (!this.knows(request)) return { status: 403, sentence: 'Open the desk by the address that it printed.' };
    const site = request.headers['sec-fetch-site'];
    if (site !== undefined && site !== 'same-origin') return STRANGE;
    if (request.method === 'GET') return undefined;
    const origin = request.headers.origin ?? '';
    if (!this.hosts.some((host) => origin === `http://${host}`)) return STRANGE;
    return request.headers[OWN_HEADER] === '1' ? undefined : STRANGE;
  }

  opensBy = (secret: string): boolean => same(secret, this.secret);

  /** The code works once, for ten minutes, and may be mistyped four times. */
  opensByCode(given: string): boolean {
    if (this.code === undefined || this.#codeUsed || this.#guesses <= 0 || this.#now() > this.#until) return false;
    this.#guesses -= 1;
    if (!same(given, this.code)) return false;
    this.#codeUsed = true;
    return true;
  }

  cookie = (): string => `${this.#cookie}=${this.secret}; HttpOnly; SameSite=Strict; Path=/`;
}

const STRANGE: Refused = { status: 403, sentence: 'Only the desk’s own page may ask for this.' };

/** Takes the same time wherever two texts first differ. */
function same(a: string, b: string): boolean {
  const left = Buffer.from(a);
  const right = Buffer.from(b);
  return left.length === right.length && timingSafeEqual(left, right);
}
