import { seededNoise } from './noise.ts';
import { type Reading, readFrom, written } from './pens.ts';

export const THING = { width: 1200, height: 1000 } as const;
const CX = 600;
const CY = 505;

/** The turns of a pack, drawn as fine rings with the odd one standing out. */
function turns(from: number, to: number, colour: string, seed: number): string {
  const noise = seededNoise(seed);
  const rings: string[] = [
    `<circle cx="${CX}" cy="${CY}" r="${(from + to) / 2}" fill="none" stroke="${colour}" stroke-width="${to - from}"/>`,
  ];
  for (let r = from; r < to; r += 2.3) {
    const tone = noise.normal();
    const popped = noise.unit() > 0.985;
    rings.push(
      `<circle cx="${CX}" cy="${CY}" r="${r.toFixed(1)}" fill="none" stroke="${tone > 0 ? '#fff3df' : '#000'}" stroke-opacity="${popped ? 0.34 : Math.min(0.16, Math.abs(tone) * 0.07).toFixed(3)}" stroke-width="${popped ? 2.2 : 1.4}"/>`,
    );
  }
  return rings.join('');
}

/** Light on a wound pack: two opposite fans, as on a record. */
const sheen = (r: number, inner: number, id: string) =>
  `<defs><radialGradient id="${id}"><stop offset="0" stop-color="#fff" stop-opacity=".32"/><stop offset="1" stop-color="#fff" stop-opacity="0"/></radialGradient><mask id="${id}m"><circle cx="${CX}" cy="${CY}" r="${r}" fill="#fff"/><circle cx="${CX}" cy="${CY}" r="${inner}" fill="#000"/></mask></defs>` +
  `<g mask="url(#${id}m)" filter="url(#soft)"><path d="M${CX} ${CY} L${CX - 420} ${CY - 250} L${CX - 260} ${CY - 420}Z M${CX} ${CY} L${CX + 420} ${CY + 250} L${CX + 260} ${CY + 420}Z" fill="#fff6e2" opacity=".32"/></g>`;

/** A pack on a bare hub between two sheets: no flanges. */
export function pancake(colour: string, dot: string): string {
  const r = 420;
  const hub = 160;
  const notches = [20, 140, 260]
    .map(
      (deg) =>
        `<rect x="${CX - 13}" y="${CY - 62}" width="26" height="30" rx="3" fill="#3a3a38" transform="rotate(${deg} ${CX} ${CY})"/>`,
    )
    .join('');
  return (
    `<rect x="66" y="34" width="1060" height="940" fill="#d9d2c0" filter="url(#paper)" transform="rotate(-3 ${CX} ${CY})"/>` +
    `<circle cx="${CX + 14}" cy="${CY + 20}" r="${r + 4}" fill="#0c0804" opacity=".6" filter="url(#soft)"/>` +
    turns(hub, r, colour, 5) +
    sheen(r, hub, 'ps') +
    `<circle cx="${CX}" cy="${CY}" r="${hub}" fill="#8c8d88" filter="url(#card)"/><circle cx="${CX}" cy="${CY}" r="${hub - 3}" fill="none" stroke="#000" stroke-opacity=".35" stroke-width="6"/>` +
    `<circle cx="${CX}" cy="${CY}" r="112" fill="none" stroke="#55564f" stroke-width="5"/><circle cx="${CX}" cy="${CY}" r="58" fill="#2a2623"/><circle cx="${CX}" cy="${CY}" r="44" fill="#d9d2c0" filter="url(#paper)"/>${notches}` +
    `<g transform="rotate(-14 ${CX + 82} ${CY + 92})"><circle cx="${CX + 82}" cy="${CY + 92}" r="34" fill="#efe6cf" filter="url(#paper)"/>${written({ x: CX + 58, y: CY + 108, text: dot, pen: 'felt', size: 46 })}</g>` +
    `<path d="M${CX + r - 2} ${CY - 30} q30 120 -10 250" stroke="${colour}" stroke-width="3" fill="none"/>`
  );
}

/** A tape on a reel with its flange towards the camera. */
export function reelSeen(
  flange: string,
  tape: string,
  pack: number,
  label: readonly { text: string; reading?: Reading }[],
  translucent = false,
): string {
  const r = 440;
  const window = (deg: number) =>
    `<path d="M${CX - 92} ${CY - 172} A195 195 0 0 1 ${CX + 92} ${CY - 172} L${CX + 172} ${CY - 350} A390 390 0 0 0 ${CX - 172} ${CY - 350}Z" transform="rotate(${deg} ${CX} ${CY})"/>`;
  const windows = [0, 120, 240].map(window).join('');
  const lines = label
    .map((line, i) =>
      readFrom(
        line.reading,
        line.text,
        written({ x: CX - 118, y: CY - 34 + i * 58, text: line.text, pen: 'felt', size: 44, max: 236 }),
        [CX - 128, CY - 88 + i * 58, 256, 60],
      ),
    )
    .join('');
  return (
    `<circle cx="${CX + 16}" cy="${CY + 24}" r="${r}" fill="#0c0804" opacity=".6" filter="url(#soft)"/>` +
    `<defs><mask id="cut"><rect width="1200" height="1000" fill="#000"/><g fill="#fff">${windows}</g></mask></defs>` +
    `<circle cx="${CX}" cy="${CY}" r="${r}" fill="${flange}" filter="url(#card)"/>` +
    `<defs><linearGradient id="metal" x1="0" y1="0" x2="1" y2="1"><stop offset="0" stop-color="#fff" stop-opacity=".5"/><stop offset=".35" stop-color="#000" stop-opacity=".1"/><stop offset=".5" stop-color="#fff" stop-opacity=".4"/><stop offset=".75" stop-color="#000" stop-opacity=".2"/><stop offset="1" stop-color="#000" stop-opacity=".3"/></linearGradient></defs><circle cx="${CX}" cy="${CY}" r="${r}" fill="url(#metal)"/>` +
    `<g mask="url(#cut)"><circle cx="${CX}" cy="${CY}" r="${r}" fill="#3a342d"/>${turns(170, pack, tape, 9)}${translucent ? `<circle cx="${CX}" cy="${CY}" r="${pack}" fill="#c98f4e" opacity=".22"/>` : ''}</g>` +
    `<g fill="none" stroke="#000" stroke-opacity=".4" stroke-width="4">${windows}</g><g fill="none" stroke="#fff" stroke-opacity=".4" stroke-width="2" transform="translate(-2 -3)">${windows}</g>` +
    `<circle cx="${CX}" cy="${CY}" r="${r - 3}" fill="none" stroke="#fff" stroke-opacity=".35" stroke-width="5"/>` +
    sheen(r, 60, 'rs') +
    `<circle cx="${CX}" cy="${CY}" r="150" fill="${flange}" filter="url(#card)"/>` +
    (label.length === 0
      ? ''
      : `<rect x="${CX - 134}" y="${CY - 92}" width="268" height="${label.length * 58 + 28}" fill="#eae1c9" filter="url(#paper)" transform="rotate(-2 ${CX} ${CY})"/>${lines}`) +
    `<circle cx="${CX}" cy="${CY + 102}" r="34" fill="#221e1b"/>`
  );
}

/** The end of a tape laid out, with its leader; gummy or clean. */
export function tapeEnd(end: { leader: string; oxide: string; back: string; gum: boolean }): string {
  const run = 'M-20 300 C 260 250 430 420 700 380 S 1030 250 1230 330';
  const back = 'M-20 640 C 240 720 520 560 790 640 S 1080 720 1230 650';
  const strip = (path: string, colour: string, width = 84) =>
    `<path d="${path}" transform="translate(8 14)" stroke="#0c0804" stroke-opacity=".5" stroke-width="${width}" fill="none" filter="url(#near-line)"/>` +
    `<path d="${path}" stroke="${colour}" stroke-width="${width}" fill="none" filter="url(#card-line)"/>` +
    `<path d="${path}" transform="translate(0 ${-width / 2 + 5})" stroke="#fff" stroke-opacity=".2" stroke-width="5" fill="none"/>`;
  const noise = seededNoise(77);
  const crumbs = Array.from({ length: 130 }, () => {
    const x = noise.unit() * 1200;
    return `<ellipse cx="${x.toFixed(0)}" cy="${(430 + noise.normal() * 46).toFixed(0)}" rx="${(1.5 + noise.unit() * 6).toFixed(1)}" ry="${(1.2 + noise.unit() * 3).toFixed(1)}" fill="#4a2d18" opacity=".8"/>`;
  }).join('');
  return (
    strip(run, end.oxide) +
    `<path d="M-20 300 C 120 274 210 296 330 330" stroke="${end.leader}" stroke-width="84" fill="none" filter="url(#card-line)"/>` +
    `<path d="M330 288 l16 84" stroke="#f3ead2" stroke-width="30" opacity=".85" filter="url(#rough)"/>` +
    strip(back, end.back) +
    (end.gum
      ? `<path d="M360 372 C 520 420 620 410 800 400 S 1000 330 1100 320" stroke="#2f1a0d" stroke-width="26" stroke-opacity=".75" fill="none" filter="url(#wear-line)"/>${crumbs}`
      : '')
  );
}

/** A machine's guide with what a shedding tape leaves on it. */
export function guide(): string {
  return (
    `<rect x="-60" y="-60" width="1320" height="1120" fill="#b7b8b5" filter="url(#card)"/>` +
    `<defs><linearGradient id="steel" x1="0" x2="1"><stop offset="0" stop-color="#4a4b4c"/><stop offset=".3" stop-color="#f4f4f1"/><stop offset=".5" stop-color="#9b9d9e"/><stop offset=".8" stop-color="#e2e3e2"/><stop offset="1" stop-color="#3c3d3e"/></linearGradient></defs>` +
    `<rect x="470" y="150" width="280" height="700" fill="#0c0804" opacity=".5" filter="url(#soft)"/>` +
    `<rect x="440" y="130" width="290" height="90" rx="14" fill="url(#steel)"/><rect x="470" y="220" width="230" height="520" fill="url(#steel)"/><rect x="440" y="740" width="290" height="100" rx="14" fill="url(#steel)"/>` +
    `<path d="M470 452 h230 M470 520 h230" stroke="#4d2c14" stroke-width="44" stroke-opacity=".85" filter="url(#wear-line)"/><path d="M470 486 h230" stroke="#38200f" stroke-width="30" filter="url(#wear-line)"/>` +
    `<path d="M-20 440 h470 M720 440 h500" stroke="#4b362a" stroke-width="100" filter="url(#card-line)"/>`
  );
}
