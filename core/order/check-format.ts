import { z } from 'zod';
import type { Finding } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import type { DocumentPlace } from './field-findings.ts';

const formatSchema = z.object({ format: z.string(), version: z.int().min(1) });

/** Checks that a JSON document is of a format and of a version that this program reads. */
export function checkFormat(
  json: unknown,
  expected: {
    readonly format: string;
    readonly version: number;
    readonly what: string;
    readonly code: string;
  },
  { file, within = [] }: DocumentPlace,
): Finding | undefined {
  const { format, version, what, code } = expected;
  const read = formatSchema.safeParse(json);
  if (!read.success || read.data.format !== format) {
    const message = `This is not a ${what}: one begins with "format": "${format}", "version": ${version}.`;
    return error(`${code}/format`, message, { file, field: [...within, 'format'].join('.') });
  }
  if (read.data.version <= version) return undefined;
  const message = `This ${what} has version ${read.data.version}, written by a newer program; this one reads version ${version}: update the program, or save the file as version ${version}.`;
  return error(
    `${code}/newer-version`,
    message,
    { file, field: [...within, 'version'].join('.') },
    { version: read.data.version },
  );
}
