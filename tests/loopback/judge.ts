import * as spec from 'discord-api-spec/zod';
import { z } from 'zod';
import type { Host, RequestView } from '../../src/loopback/interface.ts';

/**
 * Holds what was sent to the platform against the platform's own description of its interface, which others
 * publish (`discord-api-spec`, generated from the official OpenAPI description). It knows shapes and most limits;
 * what only the documentation says stays with the host.
 */
type Schema = z.core.$ZodType;
type Judged = Pick<RequestView, 'method' | 'path' | 'body'>;

/** Callbacks by their type. Source: Interactions > Receiving and Responding > Interaction Callback Type. */
const callbacks: Readonly<Record<number, Schema>> = {
  4: spec.CreateMessageInteractionCallbackRequestSchema,
  5: spec.CreateMessageInteractionCallbackRequestSchema,
  6: spec.UpdateMessageInteractionCallbackRequestSchema,
  7: spec.UpdateMessageInteractionCallbackRequestSchema,
  8: spec.ApplicationCommandAutocompleteCallbackRequestSchema,
  9: spec.ModalInteractionCallbackRequestSchema,
};

const routes: readonly (readonly [string, RegExp, Schema])[] = [
  ['POST', /^\/channels\/\d+\/messages$/, spec.MessageCreateRequestSchema],
  ['PATCH', /^\/channels\/\d+\/messages\/\d+$/, spec.MessageEditRequestPartialSchema],
  ['POST', /^\/channels\/\d+\/messages\/\d+\/threads$/, spec.CreateTextThreadWithMessageRequestSchema],
  ['PATCH', /^\/channels\/\d+$/, spec.UpdateThreadRequestPartialSchema],
  ['POST', /^\/users\/@me\/channels$/, spec.CreatePrivateChannelRequestSchema],
  ['POST', /^\/guilds\/\d+\/scheduled-events$/, spec.ExternalScheduledEventCreateRequestSchema],
  ['PATCH', /^\/guilds\/\d+\/scheduled-events\/\d+$/, spec.ExternalScheduledEventPatchRequestPartialSchema],
  ['POST', /^\/webhooks\/\d+\/[\w-]+$/, spec.IncomingWebhookRequestPartialSchema],
  ['PATCH', /^\/webhooks\/\d+\/[\w-]+\/messages\//, spec.IncomingWebhookUpdateRequestPartialSchema],
  ['POST', /^\/applications\/\d+\/(guilds\/\d+\/)?commands$/, spec.ApplicationCommandCreateRequestSchema],
  [
    'PATCH',
    /^\/applications\/\d+\/(guilds\/\d+\/)?commands\/\d+$/,
    spec.ApplicationCommandPatchRequestPartialSchema,
  ],
  [
    'PUT',
    /^\/applications\/\d+\/(guilds\/\d+\/)?commands$/,
    z.array(spec.ApplicationCommandUpdateRequestSchema as z.ZodType),
  ],
];

/** The schema of a request that carries a body; undefined for one that carries none. */
function schemaOf({ method, path, body }: Judged): Schema | undefined {
  if (path.endsWith('/callback') && method === 'POST')
    return callbacks[(body as { type?: number } | undefined)?.type ?? 0] ?? z.never();
  return routes.find(([verb, route]) => verb === method && route.test(path))?.[2];
}

/** Whether no text in a body was cut through a character that takes two code units. */
const isWellFormed = (value: unknown): boolean => {
  if (typeof value === 'string') return value.isWellFormed();
  return typeof value !== 'object' || value === null || Object.values(value).every(isWellFormed);
};

/** The description wants a number where the documentation, and the platform, take a bit set as text. */
const asDescribed = (body: unknown): unknown =>
  JSON.parse(JSON.stringify(body ?? null), (key, value: unknown) =>
    key === 'default_member_permissions' && typeof value === 'string' && /^\d+$/.test(value)
      ? Number(value)
      : value,
  );

/** What is wrong with a request by the platform's description; undefined when nothing is. */
export function wrongWith(request: Judged): string | undefined {
  const hasBody = typeof request.body === 'object' && request.body !== null;
  const isWrite = ['POST', 'PATCH', 'PUT'].includes(request.method);
  const schema = schemaOf(request);
  // A body on a route that nobody described here would go unjudged.
  if (!schema)
    return isWrite && hasBody && Object.keys(request.body as object).length > 0 ? 'no schema' : undefined;
  if (!isWellFormed(request.body)) return 'half a character';
  const judged = z.safeParse(schema, asDescribed(request.body));
  return judged.success ? undefined : z.prettifyError(judged.error);
}

/** Judges every request of a host as it comes: a host keeps only its last ones. */
export function judge(host: Host, accepts: (request: RequestView) => boolean = () => true) {
  let judged = 0;
  const wrong: string[] = [];
  const leave = host.watchRequests(request => {
    if (!accepts(request)) return;
    judged += 1;
    const why = wrongWith(request);
    if (why !== undefined) wrong.push(`${request.method} ${request.path}: ${why}`);
  });
  return {
    get judged() {
      return judged;
    },
    /** Throws an Error that names what was wrong. */
    settle() {
      leave();
      if (wrong.length > 0)
        throw new Error(
          `${wrong.length} of ${judged} requests are off the description:\n${wrong.slice(0, 5).join('\n')}`,
        );
    },
  };
}
