// Draws the PNG icons from the one SVG, with ImageMagick. Run by hand when the SVG changes.

import { execFileSync } from 'node:child_process';

const folder = new URL('../public/', import.meta.url).pathname;
const svg = `${folder}icon.svg`;

function convert(...args) {
  execFileSync('convert', ['-background', 'none', '-density', '288', svg, ...args]);
}

for (const size of [180, 192, 512]) {
  convert('-resize', `${size}x${size}`, '-strip', `PNG8:${folder}icon-${size}.png`);
}
// A mask may cut a fifth off each side: the drawing shrinks into the middle of its own background.
convert(
  '-resize',
  '360x360',
  '-gravity',
  'center',
  '-background',
  '#1a2124',
  '-extent',
  '512x512',
  '-flatten',
  '-strip',
  `PNG8:${folder}icon-mask-512.png`,
);
