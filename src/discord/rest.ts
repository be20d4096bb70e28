import { type Client, REST } from 'discord.js';
import { type Sends, sendRequest } from './request.ts';

/** "Too many requests" (RFC 6585, 4). */
const TOO_MANY = 429;

/** How often the platform said "too many requests" (429) since the start. */
export class Tally {
  tooMany = 0;
  readonly #onTooMany: () => void;

  /** `onTooMany` hears of each. */
  constructor(onTooMany: () => void = () => undefined) {
    this.#onTooMany = onTooMany;
  }

  /** Sends as `send` does, and counts what the platform said. Not by the library's own event, for which it copies each request. */
  counting(send: Sends): Sends {
    return async (url, asked) => {
      const response = await send(url, asked);
      if (response.status === TOO_MANY) this.#count();
      return response;
    };
  }

  #count(): void {
    this.tooMany += 1;
    this.#onTooMany();
  }
}

/**
 * The platform allows 50 a second, but its seconds and ours do not begin together: two of ours can fall into one of
 * its own, which has to hold what else is asked at a start besides.
 */
const POSTS_PER_SECOND = 20;
/** Long enough for a picture over a slow line, short enough that a hung request does not pile up more. */
export const REST_TIMEOUT_MS = 5_000;

/**
 * A line of its own for what no interaction asked for: posts, and questions who is still in a group. The client's own line is freed of the library's global
 * limit, as the platform frees answers to interactions of its global limit; posts and edits in channels are not.
 */
export function postingRest(client: Client, token: string, tally: Tally): REST {
  const { api } = client.rest.options;
  // The platform counts what all shards of a bot ask together.
  const globalRequestsPerSecond = Math.max(
    1,
    Math.floor(POSTS_PER_SECOND / (client.options.shardCount ?? 1)),
  );
  const makeRequest = tally.counting(sendRequest);
  const rest = new REST({ api, globalRequestsPerSecond, timeout: REST_TIMEOUT_MS, makeRequest });
  return rest.setToken(token);
}
