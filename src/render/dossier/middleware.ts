import type { MiddlewareHandler } from 'astro';
import { withoutTurns } from '#model/turned-text.ts';
import { quietAttributes } from '../quiet-attributes.ts';

/** Every page of a dossier: what makes one file of them finds its way by the angles of the tags. */
export const onRequest: MiddlewareHandler = async (_context, next) => {
  const response = await next();
  const text = await response.text();
  return new Response(quietAttributes(withoutTurns(text)), response);
};
