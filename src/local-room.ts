import { dirname, join } from 'node:path';
import type { Conversation } from './conversation/conversation.ts';
import type { Environment } from './environment.ts';
import { type Host, openHost } from './loopback/index.ts';
import { furnish, HOME, openJournal, openPage } from './page/index.ts';
import { preferencesOf } from './records/preferences.ts';
import type { Words } from './words/index.ts';
import type { Language } from './words/sentence.ts';

/** Whatever answers on a platform: what it knows, and how it leaves. */
export type Answering = {
  readonly conversation: Conversation;
  /** Does what is due now. */
  readonly keepTime: () => Promise<void>;
  close(): Promise<void>;
};

/** What a new room is filled with. */
export type Scene = {
  /** The room's clock, milliseconds since 1970 UTC: it may stand in the past while the scene is played. */
  readonly now: () => number;
  furnish(host: Host): void;
  play(stage: {
    readonly host: Host;
    readonly keepTime: () => Promise<void>;
    readonly onAsked: (interaction: string, by: string, line: string) => void;
  }): Promise<void>;
};

/** How the local room reaches the rest of the house. */
export type LocalRoomParts = {
  readonly environment: Environment;
  readonly say: Words;
  /** Ends the room from outside. */
  readonly signal: AbortSignal;
  /** Registers the commands and answers on a platform at this address, by this clock. */
  readonly answerAt: (platform: { token: string; api: string }, now: () => number) => Promise<Answering>;
  /** Played once, in a room without a history. */
  readonly scene?: Scene;
};

/** The platform waits three seconds; here one machine is host, client and browser, and may be a slow one. */
const PATIENCE_MS = 15_000;

/** The intent to read messages. Source: platform documentation, Gateway > List of Intents. */
const MESSAGE_CONTENT = 1 << 15;

/** Nobody checks it: the host is our own, and on this machine. */
const TOKEN = 'local-room';

/** A room on this machine: the host, the page, and the real client that answers there. */
export type LocalRoom = {
  readonly host: Host;
  readonly url: string;
  readonly conversation: Conversation;
  close(): Promise<void>;
};

/** Opens the room; says where it is as soon as the page stands, then lets the client in. */
export async function openLocalRoom(
  { environment, say, answerAt, scene }: LocalRoomParts,
  tell: (sentence: string) => void,
): Promise<LocalRoom> {
  const journal = await openJournal(join(folderOf(environment), 'room'));
  const isNew = (journal?.events ?? []).length === 0;
  const now = isNew && scene ? scene.now : Date.now;
  const host = await openHost({
    replay: journal?.events ?? [],
    now,
    acknowledgeWithinMs: PATIENCE_MS,
    // First aid reads what is written without a command.
    privilegedIntents: MESSAGE_CONTENT,
  });
  journal?.follow(host);
  if (isNew && scene) scene.furnish(host);
  else furnish(host, { ...firstNames(say), language: say.language });
  const entered: { answering?: Answering } = {};
  const page = await openPage(host, {
    port: environment.TINTMOOT_PORT,
    languageOf: async member => {
      const { store } = entered.answering?.conversation.services ?? {};
      return store && (await preferencesOf(store, member)).language;
    },
    ...(journal && {
      asked: journal.asked,
      onAsked: (interaction, asked) => journal.noteAsked(interaction, asked),
    }),
  });
  tell(say.page.roomAt({ url: page.url }));
  if (!journal) tell(say.page.notKept);
  const answering = await answerAt({ token: TOKEN, api: host.api }, now);
  entered.answering = answering;
  if (isNew && scene) {
    tell(say.page.playing);
    const onAsked = (interaction: string, by: string, line: string) =>
      page.noteAsked(interaction, { by, line });
    await scene.play({ host, keepTime: answering.keepTime, onAsked });
  }
  page.ready();
  if (scene) tell(say.page.demoAnew);
  return {
    host,
    url: page.url,
    conversation: answering.conversation,
    async close() {
      await page.close();
      await answering.close();
      await host.close();
      await journal?.close();
    },
  };
}

/** The seat of the terminal is the first seat of the page: one shelf for both. */
export const firstSeat = (language: Language) => ({
  member: HOME.member,
  group: HOME.group,
  language,
  manages: true,
  roles: [],
});

const firstNames = ({ page }: Words) => ({ groupName: page.firstGroup, name: page.firstName });

/** Beside the store where that is a file. */
export function folderOf({ TINTMOOT_STORE }: Environment): string {
  const [, path] = /^sqlite:(?!:memory:)(.+)$/.exec(TINTMOOT_STORE) ?? [];
  return path === undefined ? '.tintmoot' : dirname(path);
}

/** Opens the room, answers in the terminal too where somebody can type, and stays until it is told to stop. */
export async function runLocalRoom(
  parts: LocalRoomParts,
  { plain }: { readonly plain: boolean },
): Promise<void> {
  const { environment, say, signal } = parts;
  // Answers alone go to standard output when a program reads them.
  const tell = (sentence: string) => void (plain ? process.stderr : process.stdout).write(`${sentence}\n`);
  const room = await openLocalRoom(parts, tell);
  const told = new Promise<void>(resolve => {
    if (signal.aborted) resolve();
    signal.addEventListener('abort', () => resolve(), { once: true });
  });
  try {
    if (await isReadable(plain)) {
      const { runPrompt } = await import('./terminal/prompt.ts');
      if (!plain) tell(`${say.fronts.welcome({ store: environment.TINTMOOT_STORE })}\n`);
      const folder = folderOf(environment);
      const asked = await runPrompt(firstSeat(say.language), room.conversation, {
        pictures: join(folder, 'pictures'),
        history: join(folder, 'history'),
        plain,
        signal,
      });
      // A pipe that asked nothing was no question: the page stays.
      if (process.stdin.isTTY || plain || asked > 0) return;
    }
    await told;
  } finally {
    await room.close();
  }
}

/** True where somebody types or pipes something in; a service has neither. */
async function isReadable(plain: boolean): Promise<boolean> {
  if (plain || process.stdin.isTTY) return true;
  const { fstatSync } = await import('node:fs');
  try {
    const input = fstatSync(0);
    return input.isFIFO() || input.isFile();
  } catch {
    return false;
  }
}
