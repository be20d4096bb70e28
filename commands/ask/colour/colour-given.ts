import type { Context } from '../../../src/conversation/context.ts';
import { colourantsMeant } from '../../../src/engine/colourants/find.ts';
import { survivalAsked } from '../../../src/engine/questions/found/asked/survives.ts';
import type { QuestionRead } from '../../../src/engine/questions/read.ts';
import { answerTo } from '../../../src/engine/questions/technique/answer-to.ts';
import type { AskReply } from '../understood.ts';

/** Which colour a plant or a mineral that is named gives; undefined where none is named, or nothing is known of it. */
export function colourGivenReply(
  question: string,
  { facts }: QuestionRead,
  { say }: Context,
): AskReply | undefined {
  if (!('technique' in answerTo('colour-families', question))) return undefined;
  const [id] = facts.named.flatMap(name => colourantsMeant(name).map(one => one.id));
  const given = id === undefined ? undefined : say.technique.given[id];
  const plant = given === undefined ? survivalAsked(question, true) : undefined;
  const headline = given ?? (plant?.of && say.plants.fate[plant.of](plant.name));
  const item = plant?.name ?? facts.named[0];
  if (headline === undefined || item === undefined) return undefined;
  return {
    kind: 'reply',
    headline,
    data: {},
    understood: {
      kind: 'technique',
      technique: 'colour-families',
      job: 'survives-lye',
      command: 'colourant check',
      given: { item },
      facts,
    },
    blocks: [{ kind: 'text', text: say.plants.test }],
    cautions: [],
  };
}
