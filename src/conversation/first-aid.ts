import { z } from 'zod';
import { EMERGENCY_IDS, type EmergencyId, helpFor, readEmergencies } from '../engine/hazards/index.ts';
import type { Words } from '../words/index.ts';
import { followUp } from './command.ts';
import type { Origin, Question } from './question.ts';
import type { CommandRegistry } from './registry.ts';
import type { Block, Reply } from './reply.ts';

/** More than this at once is no help to anybody in a hurry. */
const MOST_SHOWN = 3;

/**
 * Every free text of a question, each for itself: what a member typed into options, form fields and lines, and the
 * message that a menu entry was used on. Ids that buttons and menus send back read as nothing.
 */
export function freeTexts(question: Question): readonly string[] {
  const texts = (given: Readonly<Record<string, unknown>>) =>
    Object.values(given).filter(value => typeof value === 'string');
  switch (question.kind) {
    case 'command':
      // Who is in a panic types the words where the command stands.
      return [question.path.join(' '), ...texts(question.given)];
    case 'follow':
      return [...question.values, ...texts(question.fields)];
    case 'point':
      return [question.message.text];
    case 'typing':
      return [];
  }
}

/** The emergencies told in any of the texts, most urgent first, each once. */
export function emergenciesIn(texts: readonly string[]): readonly EmergencyId[] {
  const told = new Set(texts.flatMap(text => readEmergencies(text).map(({ id }) => id)));
  return EMERGENCY_IDS.filter(id => told.has(id));
}

/** What to do, in steps, with the numbers of the member's country where it is known. Shown whole: nothing folds. */
export function firstAidReply(
  ids: readonly EmergencyId[],
  { say, locale }: { readonly say: Words; readonly locale?: string | undefined },
): Reply {
  const { firstAid } = say;
  const help = helpFor(locale);
  const call = help
    ? firstAid.number({ number: help.emergency, country: help.country })
    : firstAid.yourNumber;
  const poison = help?.poison
    ? firstAid.poison({ number: help.poison, country: help.country })
    : firstAid.anyPoison;
  const [first = 'lye-skin', ...more] = ids.slice(0, MOST_SHOWN);
  const rows = (id: EmergencyId, title?: string): Block => ({
    kind: 'rows',
    numbered: true,
    rows: firstAid.steps[id]({ call, poison }),
    ...(title !== undefined && { title }),
  });
  return {
    kind: 'reply',
    headline: firstAid.headlines[first],
    data: { emergency: { id: first, also: more, ...(help && { country: help.country }) } },
    blocks: [rows(first), ...more.map(id => rows(id, firstAid.headlines[id]))],
    cautions: [],
  };
}

/** Emergencies as they travel in a signed id: their places in the list, parted by `-`. */
const sealedIds = (ids: readonly EmergencyId[]) => ids.map(id => EMERGENCY_IDS.indexOf(id)).join('-');

/** Shows a first aid that one member was given to everyone there. */
export const shareFirstAid = followUp({
  seenBy: 'group',
  args: { ids: z.string().regex(/^\d(-\d){0,8}$/) },
  answer: ({ ids }, { say, locale }) =>
    firstAidReply(
      ids.split('-').flatMap(at => EMERGENCY_IDS[Number(at)] ?? []),
      { say, locale },
    ),
});

/**
 * The first aid that a question needs before anything else; undefined where its texts tell of no emergency. Where others
 * may be there to help, one button shows it to them.
 */
export async function firstAidFor(
  texts: readonly string[],
  origin: Origin,
  { say, registry }: { readonly say: Words; readonly registry: CommandRegistry },
): Promise<Reply | undefined> {
  const ids = emergenciesIn(texts);
  if (ids.length === 0) return undefined;
  const { channel, locale } = origin;
  if (channel !== undefined) await loadSharing(origin, registry);
  const reply = firstAidReply(ids, { say, locale });
  const misread: Block = { kind: 'text', text: say.firstAid.misread };
  const canShare = channel !== undefined && registry.nameOf.has(shareFirstAid);
  return {
    ...reply,
    blocks: [...reply.blocks, misread],
    ...(canShare && {
      choices: [
        {
          kind: 'button',
          label: say.firstAid.share,
          follow: shareFirstAid.with({ ids: sealedIds(ids.slice(0, MOST_SHOWN)) }),
        },
      ],
    }),
  };
}

/** Loads the command that the button leads to, and no other. Where it cannot be loaded, help comes without the button. */
async function loadSharing(origin: Origin, registry: CommandRegistry): Promise<void> {
  try {
    await registry.prepare?.({ ...origin, kind: 'command', path: ['first-aid'], given: {} });
  } catch {
    // What to do matters more than who else is shown it.
  }
}
