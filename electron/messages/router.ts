import type { z } from 'zod';
import { fieldFindings } from '../../core/order/field-findings.ts';
import { quoteText } from '../../core/order/quote-text.ts';
import { CHANNELS, type Channel } from '../../shared/contract/channels.ts';
import { MESSAGES, type Reply } from '../../shared/contract/messages.ts';
import { reasonOf } from '../files/refusal.ts';
import { documentHandlers } from './document-handlers.ts';
import { outputHandlers } from './output-handlers.ts';
import type { Ports } from './ports.ts';

/** What a channel does with a request that fits its schema. */
export type Handler<C extends Channel> = (request: Checked<C>) => Promise<Reply<C>>;

type Checked<C extends Channel> = z.output<(typeof MESSAGES)[C]['request']>;

/** The schemas once more, typed so that a channel's schema and its handler are known to belong together. */
const SCHEMAS: {
  readonly [C in Channel]: { readonly request: z.ZodType<Checked<C>>; readonly reply: z.ZodType<Reply<C>> };
} = MESSAGES;

export type Handlers<C extends Channel = Channel> = { readonly [K in C]: Handler<K> };

/** Answers every message of the contract; the same for the desktop and for the browser host. */
export interface Router {
  /** Never rejects for anything that a request says: a failure is `{ ok: false, reason }`. */
  readonly answer: (channel: string, request: unknown) => Promise<unknown>;
  /** Discards what is unfinished. */
  readonly close: () => Promise<void>;
}

export function createRouter(ports: Ports): Router {
  const output = outputHandlers(ports);
  const handlers: Handlers = {
    ...documentHandlers(ports),
    ...output.handlers,
    'app.about': async () => ({ ok: true, ...ports.about }),
  };
  return {
    async answer(channel, request) {
      if (!isChannel(channel)) return failure(`there is no message ${quoteText(channel)}`);
      return answerOne(channel, handlers[channel], request);
    },
    close: output.close,
  };
}

const isChannel = (name: string): name is Channel => (CHANNELS as readonly string[]).includes(name);

async function answerOne<C extends Channel>(
  channel: C,
  handler: Handler<C>,
  request: unknown,
): Promise<unknown> {
  const schema = SCHEMAS[channel];
  const read = schema.request.safeParse(request);
  if (!read.success) {
    const [wrong] = fieldFindings(read.error.issues, request, 'message/field', { file: channel });
    return failure(`${channel}: ${(wrong?.message ?? 'the request is wrong').replace(/\.$/, '')}`);
  }
  try {
    const reply = schema.reply.safeParse(await handler(read.data));
    return reply.success ? reply.data : failure(`${channel} has no fitting reply`);
  } catch (problem) {
    return failure(reasonOf(problem));
  }
}

const failure = (reason: string) => ({ ok: false, reason }) as const;
