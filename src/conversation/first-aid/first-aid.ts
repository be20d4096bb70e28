import { z } from 'zod';
import {
  EMERGENCY_IDS,
  type EmergencyId,
  helpFor,
  isBareEggSmell,
  isRisingInMould,
} from '../../engine/hazards/index.ts';
import { LANGUAGES } from '../../engine/language.ts';
import { type Words, wordsIn } from '../../words/index.ts';
import { followUp } from '../command.ts';
import type { Origin } from '../question.ts';
import type { CommandRegistry } from '../registry/registry.ts';
import type { Block, Reply } from '../reply.ts';
import { inTalk } from './in-talk.ts';
import { emergenciesTold } from './told.ts';

/** More than this at once is no help to anybody in a hurry. */
const MOST_SHOWN = 3;

/** What the steps of an emergency already say, so that it is not said again beside them. */
const CONTAINED: { readonly [Id in EmergencyId]?: readonly EmergencyId[] } = {
  'hydrogen-sulfide': ['fumes-inhaled'],
  'hydrogen-from-metal': ['lye-eruption'],
  'lye-eruption': ['lye-skin'],
  'lye-skin': ['skin-reaction'],
};

/** The first, which is shown whole, and those of the others that its steps do not cover. */
function shownOf([first, ...others]: readonly EmergencyId[]): readonly EmergencyId[] {
  if (first === undefined) return [];
  return [first, ...others.filter(id => !CONTAINED[first]?.includes(id))].slice(0, MOST_SHOWN);
}

/** What to do, in steps, with the numbers of the member's country where it is known. Shown whole: nothing
 * folds. Only the first of
 * the emergencies has its steps (`inMould`: those of soap that rises in its mould); the others are a line
 * each, for two lists are none to somebody in a panic. */
export function firstAidReply(
  ids: readonly EmergencyId[],
  {
    say,
    locale,
    airway = false,
    inMould = false,
  }: {
    readonly say: Words;
    readonly locale?: string | undefined;
    readonly airway?: boolean;
    readonly inMould?: boolean;
  },
): Reply {
  const { firstAid } = say;
  const help = helpFor(locale);
  const call = help
    ? firstAid.number({ number: help.emergency, country: help.country })
    : firstAid.yourNumber;
  const poison = help?.poison
    ? firstAid.poison({ number: help.poison, country: help.country })
    : firstAid.anyPoison;
  const [first = 'lye-skin', ...more] = shownOf(ids);
  const isLoaf = inMould && first === 'lye-eruption';
  const rows = (isLoaf ? firstAid.inMould.steps : firstAid.steps[first])({ call, poison });
  const steps: Block = { kind: 'rows', numbered: true, rows };
  const usual = isLoaf ? firstAid.inMould.headline : firstAid.headlines[first];
  return {
    kind: 'reply',
    headline: airway && first === 'skin-reaction' ? firstAid.airway({ call }) : usual,
    data: {
      emergency: {
        id: first,
        also: more,
        ...(airway && { airway }),
        ...(isLoaf && { inMould }),
        ...(help && { country: help.country }),
      },
    },
    blocks: [
      steps,
      ...more.map((id): Block => ({ kind: 'text', text: firstAid.also({ what: firstAid.short[id] }) })),
    ],
    cautions: [],
  };
}

/** Emergencies as they travel in a signed id: their places in the list, parted by `-`; an `m` behind them for soap that rises in its mould. */
const sealedIds = (ids: readonly EmergencyId[], inMould: boolean) =>
  `${ids.map(id => EMERGENCY_IDS.indexOf(id)).join('-')}${inMould ? IN_MOULD : ''}`;
const IN_MOULD = 'm';

/** Shows a first aid that one member was given to everyone there. */
export const shareFirstAid = followUp({
  seenBy: 'group',
  args: { ids: z.string().regex(/^\d{1,2}(-\d{1,2}){0,10}m?$/), spoken: z.enum(LANGUAGES) },
  answer: ({ ids, spoken }, { locale }) =>
    firstAidReply(
      ids
        .replace(IN_MOULD, '')
        .split('-')
        .flatMap(at => EMERGENCY_IDS[Number(at)] ?? []),
      { say: wordsIn(spoken), locale, inMould: ids.endsWith(IN_MOULD) },
    ),
});

/**
 * The first aid that a question needs before anything else; undefined where its texts tell of no emergency. Where others
 * may be there to help, one button shows it to them.
 */
export async function firstAidFor(
  texts: readonly string[],
  origin: Origin,
  {
    say,
    registry,
    before = [],
  }: {
    readonly say: Words;
    readonly registry: CommandRegistry;
    /** The emergencies that the turn before was about. */
    readonly before?: readonly EmergencyId[];
  },
): Promise<Reply | undefined> {
  const told = inTalk(emergenciesTold(texts), before);
  if (told.length === 0) return undefined;
  const inMould = texts.some(isRisingInMould);
  const isAllInDoubt = told.every(one => one.inDoubt);
  // The words of a loaf that rises tell of nothing else where no sentence does.
  const ids = inMould && isAllInDoubt ? (['lye-eruption'] as const) : told.map(({ id }) => id);
  const inDoubt = isAllInDoubt && !inMould;
  const { channel, locale } = origin;
  if (channel !== undefined) await loadSharing(origin, registry);
  const airway = told.some(one => one.airway === true);
  const reply = firstAidReply(ids, { say, locale, airway, inMould });
  const misread: Block = { kind: 'text', text: say.firstAid.misread };
  // What the smell usually is where soap is made, behind what to do where it is more.
  const usual: readonly Block[] =
    ids[0] === 'hydrogen-sulfide' && texts.some(isBareEggSmell)
      ? [{ kind: 'text', text: say.firstAid.ultramarineWhiff }]
      : [];
  const canShare = channel !== undefined && registry.nameOf.has(shareFirstAid);
  return {
    ...reply,
    ...(inDoubt && { headline: `${say.firstAid.ifHurt} ${reply.headline}` }),
    blocks: inDoubt ? [misread, ...reply.blocks, ...usual] : [...reply.blocks, ...usual, misread],
    ...(canShare && {
      choices: [
        {
          kind: 'button',
          label: say.firstAid.share,
          follow: shareFirstAid.with({ ids: sealedIds(shownOf(ids), inMould), spoken: say.language }),
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
