import type { Page } from 'playwright-core';
import { regionsOf } from './regions.ts';
import type { Shot } from './shot.ts';

/** A line of writing that an entry reads, and where it came to lie in the photograph. */
export interface Found {
  readonly of: string;
  readonly written: string;
  readonly sure: string;
  /** `xywh=percent:…` of the picture, the right way up. */
  readonly region: string;
}

/** Makes long lines fit, draws the figure that could be a 7 or a 1, and measures what is read from the picture. */
export async function settleWriting(page: Page, shot: Shot): Promise<Found[]> {
  const seen = await page.evaluate(async () => {
    await document.fonts.ready;
    for (const text of document.querySelectorAll<SVGTextElement>('text[data-max]')) {
      const most = Number(text.dataset['max']);
      for (let i = 0; i < 40 && text.getComputedTextLength() > most; i += 1) {
        text.setAttribute('font-size', String(Number(text.getAttribute('font-size')) * 0.97));
      }
    }
    for (const text of document.querySelectorAll<SVGTextElement>('text[data-doubt]')) {
      const at = Number(text.dataset['doubt']);
      const start = text.getStartPositionOfChar(at);
      const em = Number(text.getAttribute('font-size'));
      const wide = text.getExtentOfChar(at).width;
      const left = start.x + wide * 0.1;
      const head = start.y - em * 0.43;
      const path = document.createElementNS('http://www.w3.org/2000/svg', 'path');
      // A flag that is short for a 7 and long for a 1, on a stem that leans.
      path.setAttribute(
        'd',
        `M${left} ${head + em * 0.095} q${em * 0.06} ${-em * 0.05} ${em * 0.115} ${-em * 0.095} q${-em * 0.004} ${em * 0.2} ${-em * 0.022} ${em * 0.44}`,
      );
      path.setAttribute('fill', 'none');
      path.setAttribute('stroke', text.getAttribute('fill') ?? '#000');
      path.setAttribute('stroke-width', String(em * 0.036));
      path.setAttribute('stroke-linecap', 'round');
      path.setAttribute('filter', 'url(#ink)');
      path.setAttribute('transform', text.getAttribute('transform') ?? '');
      const letters = [...(text.textContent ?? '')];
      const hidden = document.createElementNS('http://www.w3.org/2000/svg', 'tspan');
      hidden.setAttribute('fill', 'none');
      hidden.textContent = letters[at] ?? '';
      text.replaceChildren(letters.slice(0, at).join(''), hidden, letters.slice(at + 1).join(''));
      text.after(path);
    }
    const boxOf = (nodes: readonly Element[]) => {
      const boxes = nodes.map((node) => node.getBoundingClientRect());
      return {
        left: Math.min(...boxes.map((b) => b.left)),
        top: Math.min(...boxes.map((b) => b.top)),
        right: Math.max(...boxes.map((b) => b.right)),
        bottom: Math.max(...boxes.map((b) => b.bottom)),
      };
    };
    const pens = document.createElement('canvas').getContext('2d');
    // A text's own box is as tall as its face; what is measured is the ink, leant and turned with it.
    const inkOf = (node: SVGGraphicsElement): Element[] => {
      if (!(node instanceof SVGTextElement) || pens === null) return [node];
      const em = Number(node.getAttribute('font-size'));
      pens.font = `${em}px ${node.getAttribute('font-family') ?? ''}`;
      const ink = pens.measureText(node.textContent ?? '');
      const rect = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
      const loose = em * 0.05;
      rect.setAttribute('x', node.getAttribute('x') ?? '0');
      rect.setAttribute('y', String(Number(node.getAttribute('y')) - ink.actualBoundingBoxAscent - loose));
      rect.setAttribute('width', String(Math.max(node.getComputedTextLength(), ink.width)));
      rect.setAttribute('height', String(ink.actualBoundingBoxAscent + ink.actualBoundingBoxDescent + 2 * loose));
      rect.setAttribute('transform', node.getAttribute('transform') ?? '');
      rect.setAttribute('fill', 'none');
      rect.setAttribute('class', 'ink');
      node.after(rect);
      return [rect];
    };
    const measured = [...document.querySelectorAll<SVGGElement>('g[data-of]')].map((group) => {
      const cell = group.dataset['cell']?.split(',') ?? [];
      let around: { left: number; top: number; right: number; bottom: number } | undefined;
      const text = boxOf(
        [...group.querySelectorAll<SVGGraphicsElement>('text, path, rect')].flatMap((node) => inkOf(node)),
      );
      if (cell.length === 4) {
        const rect = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
        for (const [i, name] of ['x', 'y', 'width', 'height'].entries()) rect.setAttribute(name, cell[i] ?? '0');
        rect.setAttribute('fill', 'none');
        group.append(rect);
        const leant = boxOf([rect]);
        // Upright and as large as the cell, so that neighbours on a leaning label don't overlap.
        const dx = Math.max(0, leant.right - leant.left - Number(cell[2])) / 2;
        const dy = Math.max(0, leant.bottom - leant.top - Number(cell[3])) / 2;
        around = { left: leant.left + dx, top: leant.top + dy, right: leant.right - dx, bottom: leant.bottom - dy };
        rect.remove();
      }
      return {
        of: group.dataset['of'] ?? '',
        written: group.dataset['written'] ?? '',
        sure: group.dataset['sure'] ?? '',
        text,
        around,
      };
    });
    for (const rect of document.querySelectorAll('rect.ink')) rect.remove();
    return measured;
  });
  const regions = regionsOf(seen, shot);
  return seen.map(({ of, written, sure }, i) => ({ of, written, sure, region: regions[i] ?? '' }));
}
