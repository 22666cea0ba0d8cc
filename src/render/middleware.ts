import type { MiddlewareHandler } from 'astro';
import { holdsTurns, withoutTurns } from '#model/turned-text.ts';

/** Every page, and every other text that is made with the pages, as it leaves the builder. */
export const onRequest: MiddlewareHandler = async (_context, next) => {
  const response = await next();
  const bytes = Buffer.from(await response.arrayBuffer());
  return new Response(holdsTurns(bytes) ? withoutTurns(bytes.toString('utf8')) : bytes, response);
};
