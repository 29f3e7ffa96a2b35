import { z } from 'zod';
import type { Channel } from './channels.ts';
import { TAB_ID } from './tab.ts';

/**
 * The contract between the renderer and the platform, the desktop shell or the browser host: for each channel
 * the schema of its request and of its reply. Replies are values; a failure is `{ ok: false, reason }`.
 * All payloads are JSON-safe.
 */

const failure = z.strictObject({ ok: z.literal(false), reason: z.string() });
const cancelled = z.strictObject({ ok: z.literal(true), cancelled: z.literal(true) });

/** A document as it was read; `handle` is what the platform will save it under without asking. */
const opened = z.strictObject({
  ok: z.literal(true),
  cancelled: z.literal(false),
  name: z.string(),
  handle: z.string().nullable(),
  text: z.string(),
});

const saved = z.strictObject({
  ok: z.literal(true),
  cancelled: z.literal(false),
  name: z.string(),
  handle: z.string().nullable(),
  /** Where a browser fetches it from; absent on the desktop. */
  download: z.string().optional(),
});

/** Not saved: the file has become another since it was read or written here, and `replaceChanged` was not set. */
const changedOutside = z.strictObject({
  ok: z.literal(true),
  cancelled: z.literal(true),
  changedOutside: z.string(),
});

const tabId = z.string().regex(TAB_ID, 'must be a UUID in small letters');
const tab = z.strictObject({ id: tabId, browser: tabId });

/** What a file holds: text, or bytes of a file that is no text. */
const content = z.union([z.string(), z.strictObject({ base64: z.base64() })]);

const done = z.strictObject({ ok: z.literal(true) });

export const MESSAGES = {
  /** Asks for a file and reads it. `source`: a recent document's handle, an upload's token, or null to ask. */
  'document.open': {
    request: z.strictObject({ source: z.string().nullable() }),
    reply: z.union([opened, cancelled, failure]),
  },
  /**
   * Saves whole or not at all. Without a handle it asks where. `tab`: whose unsaved work this is; null for
   * what is kept beside the order. A file that another program wrote to since is not replaced, unless
   * `replaceChanged` says so; the reply then has its name as `changedOutside`.
   */
  'document.save': {
    request: z.strictObject({
      tab: tab.nullable(),
      handle: z.string().nullable(),
      suggestedName: z.string(),
      text: z.string(),
      replaceChanged: z.boolean().exactOptional(),
    }),
    reply: z.union([saved, changedOutside, cancelled, failure]),
  },
  'document.recent': {
    request: z.strictObject({}),
    reply: z.strictObject({
      ok: z.literal(true),
      documents: z.array(z.strictObject({ handle: z.string(), name: z.string(), folder: z.string() })),
    }),
  },
  /** Keeps a snapshot of a tab's unsaved work, for after a crash. */
  'document.keep': {
    request: z.strictObject({
      tab,
      name: z.string(),
      handle: z.string().nullable(),
      text: z.string(),
    }),
    reply: z.union([done, failure]),
  },
  /**
   * The snapshot that this tab left before it was loaded again, or else the newest that a tab left which is
   * gone; null when there is none. `open`: ids of the tabs that are open in this browser.
   */
  'document.kept': {
    request: z.strictObject({ tab, open: z.array(tabId) }),
    reply: z.strictObject({
      ok: z.literal(true),
      document: z
        .strictObject({ name: z.string(), handle: z.string().nullable(), text: z.string() })
        .nullable(),
    }),
  },
  /** Tells whether there is unsaved work, which guards the window's closing; the name is for its title. */
  'document.changed': {
    request: z.strictObject({ tab, unsaved: z.boolean(), name: z.string() }),
    reply: done,
  },
  /** Begins a folder of cut files; asks where. */
  'output.begin': {
    request: z.strictObject({ suggestedName: z.string() }),
    reply: z.union([
      z.strictObject({ ok: z.literal(true), cancelled: z.literal(false), job: z.string() }),
      cancelled,
      failure,
    ]),
  },
  'output.write': {
    request: z.strictObject({ job: z.string(), path: z.string(), content }),
    reply: z.union([z.strictObject({ ok: z.literal(true), size: z.number(), sha256: z.string() }), failure]),
  },
  /** Moves the folder into its place, whole. */
  'output.finish': {
    request: z.strictObject({ job: z.string() }),
    reply: z.union([
      z.strictObject({ ok: z.literal(true), place: z.string(), download: z.string().optional() }),
      failure,
    ]),
  },
  'output.discard': {
    request: z.strictObject({ job: z.string() }),
    reply: done,
  },
  /** Shows the finished folder in the system's file manager; on a browser host there is none. */
  'output.show': {
    request: z.strictObject({ place: z.string() }),
    reply: z.union([done, failure]),
  },
  'app.about': {
    request: z.strictObject({}),
    reply: z.strictObject({
      ok: z.literal(true),
      version: z.string(),
      platform: z.enum(['desktop', 'browser']),
    }),
  },
} as const satisfies Record<Channel, { readonly request: z.ZodType; readonly reply: z.ZodType }>;

export type Request<C extends Channel> = z.input<(typeof MESSAGES)[C]['request']>;
export type Reply<C extends Channel> = z.output<(typeof MESSAGES)[C]['reply']>;

/** What the renderer calls: one function for all channels, typed by the channel. */
export type Send = <C extends Channel>(channel: C, request: Request<C>) => Promise<Reply<C>>;
