import type { Host, HostOptions, Member, MessageView } from '../../../src/loopback/interface.ts';
import { everyonePermissions } from '../../../src/loopback/permissions.ts';
import type { Store } from '../../../src/records/store.ts';
import { openRoom } from '../../loopback/room.ts';
import { shoot } from '../../photo/render/scene.ts';
import { shotOf } from '../../photo/render/shots.ts';

/** Wednesday 2 December 2026, 10:00 in London. */
export const began = Date.UTC(2026, 11, 2, 10);
export const hour = 3_600_000;
export const day = 24 * hour;

const camera = { blur: 1, noise: 0.5, quality: 92 };

/**
 * A photo of a bar of these colours, beside white paper unless it is left out: a small one, since what a camera does to
 * colours has tests of its own and a photo is drawn and read pixel by pixel.
 */
export async function photoOf(colours: readonly string[], paper: 'beside' | 'none' = 'beside') {
  const shot = shotOf(4, camera, {
    colours,
    paper,
    cast: [1.05, 1, 0.9],
    design: { pattern: colours.length > 1 ? 'halves' : 'plain', edge: 0.004 },
    width: 480,
    height: 360,
  });
  return { name: 'bar.jpg', bytes: await shoot(shot) };
}

/** A room whose clock only moves when it is told to. */
export async function openFair({ store, host }: { store?: Store; host?: HostOptions } = {}) {
  let now = began;
  const clock = () => now;
  // Days pass in a moment here: the platform’s five seconds for five messages do not, and would be waited for.
  const room = await openRoom({ ...(store && { store }), host: { limits: 'none', ...host, now: clock } });
  let groups = 0;
  return {
    room,
    /** A group of its own with a steward and four members: what happens in one is no matter of another. */
    group() {
      groups += 1;
      const group = room.host.addGuild({ name: `Soapers ${groups}`, channels: ['bench'] });
      const join = (name: string, permissions = 0n) => group.addMember({ name, permissions });
      const member = join('Bram');
      return {
        group,
        host: room.host,
        faults: room.faults,
        /** What the bot may do in an ordinary channel. */
        permissions: everyonePermissions,
        steward: join('Odile', 1n << 5n),
        member,
        ana: join('Ana'),
        bea: join('Bea'),
        cleo: join('Cleo'),
        now: clock,
        /** Lets time pass and does what has become due by then. */
        async wait(ms: number) {
          now += ms;
          await room.watch.check();
        },
        /** What stands in the channel for everybody, as it reads now. */
        channel: () => publicMessages(room.host, member),
      };
    },
    [Symbol.asyncDispose]: () => room[Symbol.asyncDispose](),
  };
}

export type FairRooms = Awaited<ReturnType<typeof openFair>>;
export type Fair = ReturnType<FairRooms['group']>;

const publicMessages = (host: Host, member: Member): readonly MessageView[] =>
  member
    .sees()
    .filter(({ ephemeral }) => !ephemeral)
    .flatMap(message => host.latest(message) ?? []);

/** An instant as the platform is told to show it, by each reader's clock. */
export const instant = (at: number): string => `<t:${at / 1000}:f>`;

/** The control of a message with that label. */
export function controlOf(message: MessageView, label: string | RegExp): string {
  const found = message.controls.find(one =>
    typeof label === 'string' ? one.label === label : label.test(one.label),
  );
  if (!found?.customId)
    throw new Error(`no ${label} among ${message.controls.map(one => one.label).join(', ')}`);
  return found.customId;
}
