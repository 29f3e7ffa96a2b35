import { createHash } from 'node:crypto';
import sharp from 'sharp';

export interface Colours {
  /** Different colours, each channel in 32 shades. */
  readonly count: number;
  /** 0 to 255, of the lightest colour. */
  readonly brightest: number;
  /** Tells two pictures apart. */
  readonly print: string;
}

/** The colours of a screenshot, a PNG. */
export async function coloursOf(png: Buffer): Promise<Colours> {
  const { width, height, data, channels } = await pixelsOf(png);
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
export async function unlike(one: Buffer, other: Buffer): Promise<number> {
  const [a, b] = await Promise.all([pixelsOf(one), pixelsOf(other)]);
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

/** Its pixels row by row, red, green and blue of each, 0 to 255. */
async function pixelsOf(png: Buffer) {
  const { data, info } = await sharp(png).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  return { data, width: info.width, height: info.height, channels: info.channels };
}
