/** Where the site stands, so that it works under a sub-path: the head of the page says it. */
export const siteRoot = (): URL =>
  new URL(document.querySelector<HTMLElement>('[data-root]')?.dataset['root'] ?? '/', document.baseURI);

/** A file or page of the site, from its root. */
export const siteAddress = (path: string): string => new URL(path, siteRoot()).href;
