import { fitInside, panned, tilesFor, type View, type ZoomSource, zoomedAt } from './zoom-view.ts';

const WHEEL_STEP = 1.2;
const KEY_STEP = 1.4;
const PAN_PX = 60;

/** Opens a photograph to the whole window: wheel or pinch to zoom, drag or arrow keys to move, plus and minus, 0 for the
 * whole, Escape to close; the focus goes back to what opened it. Nothing in it has a style of its own, as a strict
 * policy asks. */
export function openZoom(label: string, source: ZoomSource, opener: HTMLElement): void {
  const { dialog, canvas, close } = buildDialog(label);
  const context = canvas.getContext('2d');
  const pictures = new Map<string, HTMLImageElement>();
  let view: View = { scale: 1, x: 0, y: 0 };
  let queued = false;
  const draw = () => {
    queued = false;
    if (context === null) return;
    context.clearRect(0, 0, canvas.width, canvas.height);
    for (const tile of tilesFor(source, view, canvas.width, canvas.height)) {
      const picture = pictures.get(tile.url) ?? fetchPicture(tile.url);
      if (picture.complete && picture.naturalWidth > 0)
        context.drawImage(picture, tile.x, tile.y, tile.width, tile.height);
    }
  };
  const drawSoon = () => {
    if (!queued) requestAnimationFrame(draw);
    queued = true;
  };
  const fetchPicture = (url: string) => {
    const picture = new Image();
    picture.addEventListener('load', drawSoon);
    picture.src = url;
    pictures.set(url, picture);
    return picture;
  };
  const show = (next: View) => {
    view = next;
    drawSoon();
  };
  const whole = () => {
    const density = window.devicePixelRatio;
    canvas.width = Math.round(canvas.clientWidth * density);
    canvas.height = Math.round(canvas.clientHeight * density);
    show(fitInside(source, canvas.width, canvas.height));
  };
  const middle = () => [canvas.width / 2, canvas.height / 2] as const;
  const keys: Record<string, () => void> = {
    '+': () => show(zoomedAt(view, ...middle(), KEY_STEP)),
    '=': () => show(zoomedAt(view, ...middle(), KEY_STEP)),
    '-': () => show(zoomedAt(view, ...middle(), 1 / KEY_STEP)),
    '0': whole,
    ArrowLeft: () => show(panned(view, PAN_PX, 0)),
    ArrowRight: () => show(panned(view, -PAN_PX, 0)),
    ArrowUp: () => show(panned(view, 0, PAN_PX)),
    ArrowDown: () => show(panned(view, 0, -PAN_PX)),
  };
  dialog.addEventListener('keydown', (event) => {
    const act = keys[event.key];
    if (act === undefined) return;
    event.preventDefault();
    act();
  });
  for (const button of dialog.querySelectorAll<HTMLButtonElement>('button[data-key]')) {
    button.addEventListener('click', () => keys[button.dataset['key'] ?? '']?.());
  }
  followPointers(canvas, () => view, show);
  canvas.addEventListener('wheel', (event) => {
    event.preventDefault();
    const density = window.devicePixelRatio;
    show(
      zoomedAt(view, event.offsetX * density, event.offsetY * density, event.deltaY < 0 ? WHEEL_STEP : 1 / WHEEL_STEP),
    );
  });
  window.addEventListener('resize', whole);
  dialog.addEventListener('close', () => {
    window.removeEventListener('resize', whole);
    dialog.remove();
    opener.focus();
  });
  close.addEventListener('click', () => dialog.close());
  document.body.append(dialog);
  dialog.showModal();
  canvas.focus();
  whole();
}

/** One finger or the mouse moves; two fingers zoom about the point between them. */
function followPointers(canvas: HTMLCanvasElement, view: () => View, show: (next: View) => void): void {
  const down = new Map<number, { x: number; y: number }>();
  const spread = () => {
    const [a, b] = [...down.values()];
    return a === undefined || b === undefined
      ? undefined
      : { far: Math.hypot(a.x - b.x, a.y - b.y), x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  };
  const at = (event: PointerEvent) => ({
    x: event.offsetX * window.devicePixelRatio,
    y: event.offsetY * window.devicePixelRatio,
  });
  canvas.addEventListener('pointerdown', (event) => {
    canvas.setPointerCapture(event.pointerId);
    down.set(event.pointerId, at(event));
  });
  canvas.addEventListener('pointermove', (event) => {
    const before = down.get(event.pointerId);
    if (before === undefined) return;
    const was = spread();
    const now = at(event);
    down.set(event.pointerId, now);
    const is = spread();
    if (was !== undefined && is !== undefined) {
      show(panned(zoomedAt(view(), was.x, was.y, is.far / was.far), is.x - was.x, is.y - was.y));
    } else show(panned(view(), now.x - before.x, now.y - before.y));
  });
  for (const end of ['pointerup', 'pointercancel'] as const) {
    canvas.addEventListener(end, (event) => {
      down.delete(event.pointerId);
    });
  }
}

function buildDialog(label: string) {
  const dialog = document.createElement('dialog');
  dialog.className = 'zoom';
  dialog.setAttribute('aria-label', `${label}, large`);
  const canvas = document.createElement('canvas');
  canvas.tabIndex = 0;
  canvas.setAttribute('role', 'img');
  canvas.setAttribute('aria-label', `${label}. Plus and minus zoom, arrows move, 0 shows the whole, Escape closes.`);
  const tools = document.createElement('p');
  tools.className = 'zoom-tools';
  const button = (words: string, key?: string) => {
    const made = document.createElement('button');
    made.type = 'button';
    made.className = 'btn';
    made.textContent = words;
    if (key !== undefined) made.dataset['key'] = key;
    tools.append(made);
    return made;
  };
  button('Nearer', '+');
  button('Further', '-');
  button('Whole', '0');
  const close = button('Close');
  dialog.append(canvas, tools);
  return { dialog, canvas, close };
}
