import type { MiddlewareHandler } from 'astro';
import { withoutTurns } from '#model/turned-text.ts';

/** Every page, and every other text that is made with the pages, as it leaves the builder. */
export const onRequest: MiddlewareHandler = async (_context, next) => {
  const response = await next();
  const text = await response.text();
  return new Response(withoutTurns(text), response);
};
