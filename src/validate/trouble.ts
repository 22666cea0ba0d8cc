import type { z } from 'zod';
import type { Refusal } from './scalars/parsed.ts';

/** What is wrong with one value of an entry, without its place: the path of the issue that carries it says where. */
export type Trouble =
  | { readonly is: 'bad-value'; readonly refusal: Omit<Refusal, 'ok'> }
  | { readonly is: 'missing'; readonly expected: string }
  | { readonly is: 'unknown-key'; readonly known: readonly string[] };

/** Puts a trouble on zod's list. The path is counted from the value being read. */
export function report(ctx: z.core.ParsePayload, trouble: Trouble, path: readonly PropertyKey[] = []): never {
  ctx.issues.push({ code: 'custom', input: undefined, path: [...path], message: trouble.is, params: { trouble } });
  // zod drops what is returned beside an issue; NEVER only satisfies the types.
  return undefined as never;
}

/** The trouble that an issue carries. Every issue of our schemas carries one. */
export function troubleOf(issue: z.core.$ZodIssue): Trouble {
  const trouble = issue.code === 'custom' ? (issue.params?.['trouble'] as Trouble | undefined) : undefined;
  if (trouble === undefined) throw new Error(`fault: a schema answered ${issue.code} at ${issue.path.join('.')}`);
  return trouble;
}
