import { openZoom } from '#render/client/zoom-dialog.ts';

/** Each photograph of an opened dossier gets a button that opens it to the whole window, in place of the larger picture
 * that the page has for those who read it without this script. */
export function offerCloserLooks(page: Document): void {
  for (const figure of page.querySelectorAll('figure')) {
    const shown = figure.querySelector<HTMLImageElement>('.plate img');
    if (shown === null) continue;
    const folded = figure.querySelector('details.closer');
    const larger = folded?.querySelector('img') ?? shown;
    const button = page.createElement('button');
    button.type = 'button';
    button.className = 'closer no-print';
    button.textContent = 'Look closer';
    button.setAttribute('aria-label', `Look closer: ${shown.alt}`);
    const source = {
      whole: larger.getAttribute('src') ?? '',
      widthPx: Number(larger.getAttribute('width')),
      heightPx: Number(larger.getAttribute('height')),
    };
    button.addEventListener('click', () => openZoom(shown.alt, source, button));
    if (folded === null) figure.append(button);
    else folded.replaceWith(button);
  }
}
