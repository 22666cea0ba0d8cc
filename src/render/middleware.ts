import type { MiddlewareHandler } from 'astro';
import { holdsTurns, withoutTurns } from '#model/turned-text.ts';
import { giveBytes } from './page-bytes.ts';

/** Every page, and every other text that is made with the pages, as it leaves the builder. */
export const onRequest: MiddlewareHandler = async (_context, next) => {
  const response = await next();
  const made = Buffer.from(await response.arrayBuffer());
  const bytes = holdsTurns(made) ? Buffer.from(withoutTurns(made.toString('utf8'))) : made;
  return new Response(response.status === 200 && giveBytes(bytes) ? null : bytes, response);
};
