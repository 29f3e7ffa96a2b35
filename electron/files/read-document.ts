import { createHash } from 'node:crypto';
import { open, stat } from 'node:fs/promises';
import { basename } from 'node:path';
import { reasonOf, Refusal } from './refusal.ts';

const MEBIBYTE = 1024 * 1024;

/** 32 MiB; an order of 500 drawers is below 1 MiB. */
export const MAX_DOCUMENT_BYTES = 32 * MEBIBYTE;

/** Reads a file that is small enough to be a document; a refusal says what hinders it. */
export async function readDocument(path: string): Promise<Uint8Array> {
  try {
    // Looked at before it is opened: a pipe would hold whoever opens it.
    const found = await stat(path);
    if (found.isDirectory()) throw new Refusal(`${basename(path)} is a folder`);
    if (!found.isFile()) throw new Refusal(`${basename(path)} is no ordinary file`);
    const handle = await open(path, 'r');
    try {
      const { size } = await handle.stat();
      if (size > MAX_DOCUMENT_BYTES) throw new Refusal(`${basename(path)} ${tooLarge(size)}`);
      return await handle.readFile();
    } finally {
      await handle.close();
    }
  } catch (problem) {
    if (problem instanceof Refusal) throw problem;
    throw new Refusal(`${basename(path)} cannot be read: ${reasonOf(problem)}`);
  }
}

/** `has 40.2 MB; 32 MB are read at most, ...` */
export const tooLarge = (bytes: number): string =>
  `is larger than ${MAX_DOCUMENT_BYTES / MEBIBYTE} MB, which is the most that is read: it has ${(bytes / MEBIBYTE).toFixed(1)} MB`;

/** SHA-256 in hexadecimal digits. */
export const hashOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');
