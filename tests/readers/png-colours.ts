import { createHash } from 'node:crypto';
import { inflateSync } from 'node:zlib';

export interface Colours {
  /** Different colours, each channel in 32 shades. */
  readonly count: number;
  /** 0 to 255, of the lightest colour. */
  readonly brightest: number;
  /** Tells two pictures apart. */
  readonly print: string;
}

const SIGNATURE = 8;

/** The colours of a screenshot: a PNG of 8 bits a channel, not interlaced, as browsers write them. */
export function coloursOf(png: Buffer): Colours {
  const { width, height, data, channels } = pixelsOf(png);
  const seen = new Set<number>();
  let brightest = 0;
  for (let at = 0; at < width * height * channels; at += channels) {
    const [r = 0, g = 0, b = 0] = data.subarray(at, at + 3);
    seen.add(((r >> 3) << 10) | ((g >> 3) << 5) | (b >> 3));
    brightest = Math.max(brightest, (r + g + b) / 3);
  }
  return { count: seen.size, brightest, print: createHash('sha256').update(data).digest('hex') };
}

/** Levels of 255 by which pixels may differ and still be taken for the same. */
const SAME = 24;

/** The share of pixels of two screenshots of one size that have no like of the other's within a pixel of their place. */
export function unlike(one: Buffer, other: Buffer): number {
  const [a, b] = [pixelsOf(one), pixelsOf(other)];
  if (a.width !== b.width || a.height !== b.height) throw new Error('the pictures are not of one size');
  const { width, height } = a;
  const differs = (from: number, to: number, channel: number): boolean =>
    Math.abs((a.data[from * a.channels + channel] ?? 0) - (b.data[to * b.channels + channel] ?? 0)) > SAME;
  const isLike = (from: number, to: number): boolean =>
    !(differs(from, to, 0) || differs(from, to, 1) || differs(from, to, 2));
  const near = [0, -1, 1, -width, width, -width - 1, -width + 1, width - 1, width + 1];
  let count = 0;
  for (let y = 1; y < height - 1; y += 1) {
    for (let x = 1; x < width - 1; x += 1) {
      const at = y * width + x;
      if (!near.some((off) => isLike(at, at + off))) count += 1;
    }
  }
  return count / (width * height);
}

/** The chunks of a PNG, its filters undone: https://www.w3.org/TR/png-3/#9Filters */
function pixelsOf(png: Buffer) {
  const width = png.readUInt32BE(16);
  const height = png.readUInt32BE(20);
  const channels = png[25] === 6 ? 4 : 3;
  const parts: Buffer[] = [];
  for (let at = SIGNATURE; at < png.length;) {
    const length = png.readUInt32BE(at);
    if (png.toString('latin1', at + 4, at + 8) === 'IDAT') parts.push(png.subarray(at + 8, at + 8 + length));
    at += length + 12;
  }
  const raw = inflateSync(Buffer.concat(parts));
  const stride = width * channels;
  const data = new Uint8Array(stride * height);
  for (let row = 0; row < height; row += 1) {
    const filter = raw[row * (stride + 1)] ?? 0;
    for (let column = 0; column < stride; column += 1) {
      const here = row * stride + column;
      const left = column < channels ? 0 : (data[here - channels] ?? 0);
      const up = row === 0 ? 0 : (data[here - stride] ?? 0);
      const corner = row === 0 || column < channels ? 0 : (data[here - stride - channels] ?? 0);
      const value = raw[row * (stride + 1) + 1 + column] ?? 0;
      data[here] = value + predicted(filter, left, up, corner);
    }
  }
  return { width, height, channels, data };
}

function predicted(filter: number, left: number, up: number, corner: number): number {
  if (filter === 1) return left;
  if (filter === 2) return up;
  if (filter === 3) return (left + up) >> 1;
  if (filter !== 4) return 0;
  const guess = left + up - corner;
  const [a, b, c] = [Math.abs(guess - left), Math.abs(guess - up), Math.abs(guess - corner)];
  return a <= b && a <= c ? left : b <= c ? up : corner;
}
