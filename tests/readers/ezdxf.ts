import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { z } from 'zod';
import type { ReadDxf } from './types.ts';

/** What ezdxf read and its audit found; `failure` when its strict reader refused the file. */
export interface EzdxfReport extends ReadDxf {
  readonly failure: string | null;
  readonly version: string;
  readonly errors: readonly string[];
  readonly fixes: readonly string[];
}

const SCRIPT = fileURLToPath(new URL('../files/ezdxf-check.py', import.meta.url));

/** Debian's Python, which has the package python3-ezdxf; a `python3` on the path may not. */
const PYTHON = '/usr/bin/python3';

const UNREAD = {
  version: '',
  errors: [],
  fixes: [],
  insunits: Number.NaN,
  measurement: Number.NaN,
  extents: [Number.NaN, Number.NaN, Number.NaN, Number.NaN],
  layers: {},
  entities: [],
} as const;

const reports = z.array(
  z.union([
    z.object({ failure: z.string() }).transform(({ failure }): EzdxfReport => ({ ...UNREAD, failure })),
    z.object({
      failure: z.null(),
      version: z.string(),
      errors: z.array(z.string()),
      fixes: z.array(z.string()),
      insunits: z.number(),
      measurement: z.number(),
      extents: z.tuple([z.number(), z.number(), z.number(), z.number()]),
      layers: z.record(z.string(), z.number()),
      entities: z.array(
        z.object({
          type: z.string(),
          layer: z.string(),
          closed: z.boolean(),
          vertices: z.array(z.tuple([z.number(), z.number(), z.number()])),
          circle: z.tuple([z.number(), z.number(), z.number()]).nullable(),
        }),
      ),
    }),
  ]),
);

/** Reads many DXF files in one process; a report each, in order. */
export function readWithEzdxf(paths: readonly string[]): readonly EzdxfReport[] {
  if (paths.length === 0) return [];
  const text = execFileSync(PYTHON, [SCRIPT, ...paths], { encoding: 'utf8', maxBuffer: 512 * 1024 * 1024 });
  const read = reports.parse(JSON.parse(text));
  if (read.length !== paths.length) throw new Error(`ezdxf read ${read.length} of ${paths.length} files`);
  return read;
}
