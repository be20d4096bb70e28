import { type Host, type HostOptions, openHost } from '../../src/loopback/index.ts';
import type { RequestView } from '../../src/loopback/interface.ts';
import { judge } from './judge.ts';

export type JudgedHost = Host & { readonly judging: ReturnType<typeof judge> };

/**
 * A host every request of which is held against the platform's description; closing it throws where one is off. Requests
 * that a test sends wrongly on purpose are left out by `accepts`.
 */
export async function openJudgedHost(
  options: HostOptions = {},
  accepts: (request: RequestView) => boolean = () => true,
): Promise<JudgedHost> {
  const host = await openHost(options);
  const judging = judge(host, accepts);
  const close = host.close.bind(host);
  return Object.assign(host, {
    judging,
    async close() {
      await close();
      judging.settle();
    },
  });
}
