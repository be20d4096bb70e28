import type { Context } from '../../../src/conversation/context.ts';
import { textsOf } from '../../../src/conversation/question.ts';
import { survivalAsked } from '../../../src/engine/questions/found/asked/survives.ts';
import type { QuestionRead } from '../../../src/engine/questions/read.ts';
import { PLANT_CLASS_ORIGINS } from '../../../src/engine/stability/plant-classes.ts';
import type { Answerer, NearLye } from '../asked.ts';
import { type AskReply, type SaidNearLye, saidNearLye } from '../understood.ts';

/** Matters of lye that a plant in place of water is taken for; what is asked of its colour is answered with how it goes in. */
const OF_LIQUIDS: ReadonlySet<SaidNearLye | undefined> = new Set(['liquid-instead', 'puree']);

/** From here on what was learned is sure enough to need no word that says what is asked. */
const SURELY = 0.9;
/** And to stand before a name that is only likened to. */
const MOST_SURELY = 0.97;

/** Whether what was read near lye leaves the colour to be answered. */
const isLeftOpen = ({ told, recipe }: NearLye): boolean =>
  told ? OF_LIQUIDS.has(saidNearLye(told.understood)) : recipe === undefined;

/**
 * What lye does to a plant or a food that the catalogue does not hold, by what colours it, or that it is on no list; undefined where
 * the question asks for something else. `near`: what was read of it near lye.
 */
function survivalReply(
  question: string,
  { read, near }: { readonly read: QuestionRead; readonly near: NearLye },
  { say }: Context,
): AskReply | undefined {
  const [reading] = read.readings;
  const isSure = reading?.job === 'survives-lye' && reading.score >= SURELY;
  // "A mix for avocado green": the plant is what the colour is likened to.
  if (reading?.job === 'mix' && reading.score >= MOST_SURELY && read.facts.target !== undefined)
    return undefined;
  // How much of it is worth putting in hangs on what lye leaves of it.
  const isDosed = reading?.job === 'dose' && reading.score >= SURELY;
  const asked = isLeftOpen(near) ? survivalAsked(question, isSure || isDosed) : undefined;
  if (!asked || (isDosed && asked.of === undefined)) return undefined;
  if (read.outside !== undefined && (read.outside !== 'other' || !asked.isOfSoap)) return undefined;
  const { name, plant, of, isLiquid } = asked;
  const words = say.plants;
  const origin = of && PLANT_CLASS_ORIGINS[of];
  return {
    kind: 'reply',
    headline: of ? words.fate[of](name) : words.notListed(name),
    data: { plant: { name, plant, of } },
    understood: {
      kind: 'command',
      ...(isDosed
        ? { job: 'dose', command: 'dose', given: { ...textsOf(reading.given), colourant: plant ?? name } }
        : { job: 'survives-lye', command: 'colourant check', given: { item: plant ?? name } }),
      facts: { ...read.facts, named: [name] },
    },
    blocks: [
      ...(isDosed ? [{ kind: 'text' as const, text: words.usual }] : []),
      { kind: 'text', text: of ? words.test : words.onlyForSoap },
      ...(origin
        ? [
            {
              kind: 'text' as const,
              text: words.source({ source: origin.source, isRemembered: origin.trust === 'from memory' }),
              fold: 'why' as const,
            },
          ]
        : []),
    ],
    cautions: isLiquid ? [{ id: 'plant-liquid', text: words.asLiquid, firm: true }] : [],
  };
}

/** What becomes of a plant or a food in lye. */
export const survival: Answerer = {
  id: 'survival',
  leavesTo: ['check'],
  async answer({ question, read, context, nearLye }) {
    const near = await nearLye();
    const reply = survivalReply(question, { read, near }, context);
    return reply && { ...reply, blocks: [...reply.blocks, ...(near.behind ?? [])] };
  },
};
