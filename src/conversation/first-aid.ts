import { z } from 'zod';
import {
  EMERGENCY_IDS,
  type Emergency,
  type EmergencyId,
  helpFor,
  readEmergencies,
} from '../engine/hazards/index.ts';
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

/** The emergencies told in any of the texts, each once: those told outright before those only in doubt. */
function readAll(texts: readonly string[]): readonly Emergency[] {
  const all = texts.map(text => readEmergencies(text));
  const outright = all.filter(([first]) => first?.inDoubt === false);
  // One text keeps its own order, by what is likeliest; several are put together by urgency.
  const [only, ...others] = outright.length > 0 ? outright : all.filter(read => read.length > 0);
  if (others.length === 0) return only ?? [];
  const told = [only ?? [], ...others].flat();
  return EMERGENCY_IDS.flatMap(id => told.find(one => one.id === id) ?? []);
}

/** The ids of the emergencies told in any of the texts, in the order in which they are shown. */
export function emergenciesIn(texts: readonly string[]): readonly EmergencyId[] {
  return readAll(texts).map(({ id }) => id);
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
  args: { ids: z.string().regex(/^\d{1,2}(-\d{1,2}){0,10}$/) },
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
export function firstAidFor(
  texts: readonly string[],
  { channel, locale }: Pick<Origin, 'channel' | 'locale'>,
  { say, registry }: { readonly say: Words; readonly registry: CommandRegistry },
): Reply | undefined {
  const told = readAll(texts);
  const ids = told.map(({ id }) => id);
  if (ids.length === 0) return undefined;
  const inDoubt = told.every(one => one.inDoubt);
  const reply = firstAidReply(ids, { say, locale });
  const misread: Block = { kind: 'text', text: say.firstAid.misread };
  const canShare = channel !== undefined && registry.nameOf.has(shareFirstAid);
  return {
    ...reply,
    ...(inDoubt && { headline: `${say.firstAid.ifHurt} ${reply.headline}` }),
    blocks: inDoubt ? [misread, ...reply.blocks] : [...reply.blocks, misread],
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
