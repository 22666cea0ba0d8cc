import type { z } from 'zod';
import type { Diagnostic } from '#model/diagnostic.ts';
import type { Branch } from '#read/tree.ts';
import type { MapSchema } from './branch.ts';
import { problemOf } from './problem-of.ts';
import { prune } from './prune.ts';
import { troubleOf } from './trouble.ts';

export interface ReadFacts<T> {
  /** undefined when the entry can't be used: a fact that it must have is missing or unread. */
  readonly facts: T | undefined;
  readonly problems: readonly Diagnostic[];
}

/** More rounds than an entry has levels never help. */
const ROUNDS = 8;

/** An entry's facts by its schema. What can't be read is a problem at its own character and counts as not recorded; the
 * rest of the entry is used all the same. */
export function readFacts<T>(schema: MapSchema<T>, root: Branch): ReadFacts<T> {
  const first = schema.safeParse(root);
  if (first.success) return { facts: first.data, problems: [] };
  const problems = first.error.issues.map((issue) => problemOf(troubleOf(issue), issue.path, root, schema.keysBelow));
  return { facts: readRest(schema, root, first.error), problems };
}

function readRest<T>(schema: MapSchema<T>, root: Branch, error: z.core.$ZodError): T | undefined {
  let issues = error.issues;
  let rest: Branch | undefined = root;
  for (let round = 0; round < ROUNDS; round++) {
    rest = prune(
      rest,
      issues.map(({ path }) => path),
    );
    if (rest === undefined) return undefined;
    const again = schema.safeParse(rest);
    if (again.success) return again.data;
    issues = again.error.issues;
  }
  return undefined;
}
