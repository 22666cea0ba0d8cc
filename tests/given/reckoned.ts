import type { Diagnostic } from '#model/diagnostic.ts';
import { reckon } from '../../src/commands/reckon.ts';

export interface Reckoned {
  readonly exit: number;
  readonly text: string;
  /** What went to stdout, as JSON. */
  readonly json: Record<string, unknown> & { readonly problems?: readonly Diagnostic[] };
}

/** One calculation, run in this process as the command line would, with JSON asked for. */
export async function reckoned(name: string, args: readonly string[], cwd = import.meta.dirname): Promise<Reckoned> {
  let out = '';
  const io = {
    out: (text: string) => {
      out += text;
    },
    err: () => {},
    cwd,
    now: new Date(2026, 2, 12, 6, 30),
    env: {},
    terminal: false,
  };
  const exit = await reckon([name, ...args, '--format', 'json'], io);
  return { exit, text: out, json: JSON.parse(out) };
}
