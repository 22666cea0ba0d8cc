import { openZoom } from './zoom-dialog.ts';
import type { ZoomSource } from './zoom-view.ts';

/** The link that it takes over leads to the large picture for those without scripts. */
function offerZoom(link: HTMLAnchorElement): void {
  const plate = link.closest('figure')?.querySelector<HTMLElement>('.plate[data-zoom]');
  if (plate === null || plate === undefined) return;
  link.addEventListener('click', (event) => {
    if (event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    openZoom(plate.querySelector('img')?.alt ?? 'Photograph', sourceOf(plate), link);
  });
}

function sourceOf(plate: HTMLElement): ZoomSource {
  const { zoom = '', tiles, tilePx, scales = '', width, height } = plate.dataset;
  return {
    whole: zoom,
    widthPx: Number(width),
    heightPx: Number(height),
    tiles:
      tiles === undefined ? undefined : { root: tiles, tilePx: Number(tilePx), scales: scales.split(' ').map(Number) },
  };
}

for (const link of document.querySelectorAll<HTMLAnchorElement>('a.larger')) offerZoom(link);
