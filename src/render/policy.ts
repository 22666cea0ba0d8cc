/** What a page may load: its own files and nothing else; no inline script, no style attribute, no other host.
 * 'wasm-unsafe-eval' lets the search's own program, a WebAssembly file of the site, be compiled.
 * Source: Content Security Policy Level 3, sections 6.1 and 4.4. */
const DIRECTIVES: readonly (readonly [string, string])[] = [
  ['default-src', "'none'"],
  ['script-src', "'self' 'wasm-unsafe-eval'"],
  ['style-src', "'self'"],
  ['img-src', "'self'"],
  ['font-src', "'self'"],
  ['connect-src', "'self'"],
  ['worker-src', "'self'"],
  ['form-action', "'self'"],
  ['base-uri', "'none'"],
];

/** For the `<meta http-equiv="Content-Security-Policy">` that stands first in every page's head. */
export const PAGE_POLICY = DIRECTIVES.map((directive) => directive.join(' ')).join('; ');

/** For the server's header: also not to be framed, which a meta element can't say. */
export const HEADER_POLICY = `${PAGE_POLICY}; frame-ancestors 'none'`;
