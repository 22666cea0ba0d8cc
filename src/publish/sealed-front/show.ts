import { offerCloserLooks } from './look-closer.ts';

/** Asks before a dossier past its date is shown. True when it may be. */
export function askFirst(page: string): Promise<boolean> {
  const lastDay = /<meta name="last-day" content="(\d{4}-\d{2}-\d{2})">/.exec(page)?.[1];
  const now = new Date();
  const two = (count: number) => String(count).padStart(2, '0');
  const today = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  if (lastDay === undefined || lastDay >= today) return Promise.resolve(true);
  for (const one of document.querySelectorAll<HTMLElement>('[data-state]'))
    one.hidden = one.dataset['state'] !== 'past';
  const day = document.getElementById('last-day');
  if (day !== null) day.textContent = lastDay;
  const button = document.getElementById('show-anyway');
  button?.focus();
  return new Promise((resolve) => button?.addEventListener('click', () => resolve(true), { once: true }));
}

/** Puts an opened dossier in the front's place. Its text is parsed as a page of its own, whose scripts never run, and
 * the front's policy forbids them once more. */
export function showDossier(page: string): void {
  const opened = new DOMParser().parseFromString(page, 'text/html');
  for (const script of opened.querySelectorAll('script')) script.remove();
  offerCloserLooks(opened);
  for (const style of document.querySelectorAll('style')) style.remove();
  document.head.append(...[...opened.head.querySelectorAll('style')].map((style) => document.adoptNode(style)));
  document.body.replaceChildren(...[...opened.body.childNodes].map((node) => document.adoptNode(node)));
  document.body.className = '';
  delete document.body.dataset['now'];
  document.documentElement.lang = opened.documentElement.lang;
  document.title = opened.title;
  window.scrollTo(0, 0);
  const main = document.getElementById('main');
  main?.setAttribute('tabindex', '-1');
  main?.focus();
}
