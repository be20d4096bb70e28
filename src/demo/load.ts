import { type Host, type Member, type MessageView, permissionBits } from '../loopback/index.ts';
import { HOME } from '../page/index.ts';
import { LOCALES } from '../words/locales.ts';
import { photographBar } from './bar-photo.ts';
import { groupName, loosePhoto, type Maker, makers, type Step, scenario } from './scenario.ts';

const DAY = 86_400_000;

/** A clock that runs in the past while the scenario is played, and is the wall's afterwards. */
export type DemoClock = { readonly now: () => number; readonly setDaysAgo: (days: number) => void };

/** `daysBehind`: where it starts. `wall`: milliseconds since 1970 UTC. */
export function demoClock(daysBehind: number, wall: () => number = Date.now): DemoClock {
  let behind = daysBehind * DAY;
  return {
    now: () => wall() - behind,
    setDaysAgo: days => {
      behind = days * DAY;
    },
  };
}

/** How the scenario reaches the room. */
export type Stage = {
  readonly host: Host;
  /** Does what has become due; resolves when it is done. */
  readonly keepTime: () => Promise<void>;
  /** Hears what each interaction asked, and in whose name. */
  readonly onAsked: (interaction: string, by: string, line: string) => void;
};

/** Ids of the makers: the first of them sits where the first member of any room sits. */
const seats: Readonly<Record<Maker, string>> = {
  odile: HOME.member,
  bram: '110000000000000003',
  ilse: '110000000000000004',
  tomas: '110000000000000005',
};

/** Founds the invented group with its four members. */
export function furnishDemo(host: Host): void {
  const group = host.addGuild({ id: HOME.group, name: groupName, channels: ['bench'] });
  for (const [maker, id] of Object.entries(seats)) {
    const { name, steward, language } = makers[maker as Maker];
    group.addMember({
      id,
      name,
      locale: LOCALES[language][0],
      ...(steward && { permissions: permissionBits.manageGuild }),
    });
  }
}

/** Plays the scenario through the commands. Rejects with an Error that names the first step that was refused. */
export async function playDemo({ host, keepTime, onAsked }: Stage, clock: DemoClock): Promise<void> {
  for (const step of scenario) {
    clock.setDaysAgo(step.daysAgo);
    await keepTime();
    const answer = await play(step, memberOf(host, step.by));
    if (answer.interactionId) onAsked(answer.interactionId, makers[step.by].name, lineOf(step));
  }
  clock.setDaysAgo(0);
  await keepTime();
  const { by, text, name, bar } = loosePhoto;
  await memberOf(host, by).postMessage(text, [{ name, bytes: photographBar(bar) }]);
}

function memberOf(host: Host, maker: Maker): Member {
  const found = host.guilds.flatMap(({ members }) => members).find(({ id }) => id === seats[maker]);
  if (!found) throw new Error(`${maker} does not sit in the demo`);
  return found;
}

async function play({ by, command, options, photo }: Step, member: Member): Promise<MessageView> {
  const file = photo && { photo: { name: `${by}.png`, bytes: photographBar(photo) } };
  const answer = await member.run(command, { ...options, ...file });
  if (isProblem(answer)) throw new Error(`the demo stopped at ${command} of ${by}: ${answer.text}`);
  return answer;
}

/** Answers come on a sheet (a container); what could not be answered is one bare sentence. */
const isProblem = ({ components }: MessageView): boolean => components[0]?.type === 10;

function lineOf({ command, options, photo }: Step): string {
  const words = Object.entries({ ...options, ...(photo && { photo: 'bar.png' }) });
  return [command, ...words.map(([name, value]) => `${name}:${quoted(value)}`)].join(' ');
}

const quoted = (value: string | number | boolean): string =>
  /\s/.test(String(value)) ? `"${value}"` : String(value);
