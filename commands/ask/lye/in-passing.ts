import type { Context } from '../../../src/conversation/context.ts';
import { byLitreIn, heldUpIn } from '../../../src/engine/questions/lye/amounts/by-litre.ts';
import type { AskReply } from '../understood.ts';
import { cautions } from './matter.ts';

/** Two figures told in passing: oil by the litre beside lye by weight, or lye for oil that is held up once more. */
export function inPassing(question: string, context: Context): AskReply | undefined {
  const words = context.say.lyeQuestions;
  const reply = (headline: string, texts: readonly string[], data: object): AskReply => ({
    kind: 'reply',
    headline,
    data,
    understood: { kind: 'lye', lye: 'in-passing' },
    blocks: texts.map(text => ({ kind: 'text', text })),
    cautions: cautions(context),
  });
  const byLitre = byLitreIn(question);
  if (byLitre) return reply(words.byLitre.headline(byLitre), [words.byLitre.why(byLitre)], { byLitre });
  const heldUp = heldUpIn(question);
  if (heldUp?.kind === 'too-much') return reply(words.tooMuchForAll(heldUp), [words.nameOils], { heldUp });
  if (heldUp)
    return reply(
      words.checked(heldUp.check),
      [words.checkedWhy(heldUp.check), words.remedy[heldUp.check.verdict]],
      { heldUp },
    );
  return undefined;
}
