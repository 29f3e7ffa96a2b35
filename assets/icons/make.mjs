// Draws icon.svg at every size that the systems ask for, and packs the pictures as .ico and .icns.
// node assets/icons/make.mjs, after a change of icon.svg; needs Chromium.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';

const folder = import.meta.dirname;
const svg = readFileSync(join(folder, 'icon.svg'), 'utf8');
const SIZES = [16, 32, 48, 64, 128, 256, 512];

const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
const page = await browser.newPage();
const pictures = new Map();
mkdirSync(join(folder, 'png'), { recursive: true });
for (const size of SIZES) {
  await page.setViewportSize({ width: size, height: size });
  await page.setContent(
    `<style>*{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${svg}`,
  );
  const picture = await page.screenshot({ omitBackground: true });
  pictures.set(size, picture);
  writeFileSync(join(folder, 'png', `${size}x${size}.png`), picture);
}
await browser.close();

/** An .ico file: a header of 6 bytes, 16 bytes for each picture, the pictures as PNG. 256 is written as 0. From memory. */
function ico(sizes) {
  const header = Buffer.alloc(6 + 16 * sizes.length);
  header.writeUInt16LE(1, 2);
  header.writeUInt16LE(sizes.length, 4);
  let at = header.length;
  sizes.forEach((size, index) => {
    const entry = 6 + 16 * index;
    header.writeUInt8(size % 256, entry);
    header.writeUInt8(size % 256, entry + 1);
    header.writeUInt16LE(1, entry + 4);
    header.writeUInt16LE(32, entry + 6);
    header.writeUInt32LE(pictures.get(size).length, entry + 8);
    header.writeUInt32LE(at, entry + 12);
    at += pictures.get(size).length;
  });
  return Buffer.concat([header, ...sizes.map((size) => pictures.get(size))]);
}

/** An .icns file: `icns`, its length, then type, length and PNG of each picture, big-endian. From memory. */
function icns(types) {
  const blocks = Object.entries(types).map(([type, size]) => {
    const head = Buffer.alloc(8);
    head.write(type, 'latin1');
    head.writeUInt32BE(8 + pictures.get(size).length, 4);
    return Buffer.concat([head, pictures.get(size)]);
  });
  const body = Buffer.concat(blocks);
  const head = Buffer.alloc(8);
  head.write('icns', 'latin1');
  head.writeUInt32BE(8 + body.length, 4);
  return Buffer.concat([head, body]);
}

writeFileSync(join(folder, 'icon.ico'), ico([16, 32, 48, 64, 128, 256]));
writeFileSync(
  join(folder, 'icon.icns'),
  icns({ ic11: 32, ic12: 64, ic07: 128, ic13: 256, ic08: 256, ic14: 512, ic09: 512 }),
);
