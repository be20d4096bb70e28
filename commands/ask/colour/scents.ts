import type { Context } from '../../../src/conversation/context.ts';
import type { Reply } from '../../../src/conversation/reply.ts';
import { refuseSpirit } from '../../../src/engine/batch/additives/additives.ts';
import { riskyScents } from '../../../src/engine/hazards/index.ts';
import type { QuestionRead } from '../../../src/engine/questions/read.ts';
import { unlessRefused } from '../../../src/engine/refusal.ts';
import { foldedWords } from '../../../src/engine/text/fold.ts';

const INSTEAD = /\b(?:instead|replace|substitute|en vez|en lugar|reemplazar|sustituir|por agua)\b/u;
/** Without one of these, mint and lemon are colours as often as scents. */
const SCENT =
  /\b(?:oils?|essential|scents?|fragrances?|balsam|perfume|cologne|eau|aceites?|esencial|esencias?|fragancia|balsamo|colonia|aroma)\b/u;
const LIQUID = /\b(?:water|agua|liquid|liquido|lye|sosa|soda|lejia)\b/u;

/** True where no colour is asked about, and nothing else of ours can be answered. */
const isOfNoColour = ({ outside, readings: [reading], facts }: QuestionRead) =>
  facts.named.length === 0 &&
  facts.target === undefined &&
  (outside === 'other' ||
    reading === undefined ||
    (outside === undefined &&
      reading.missing.length > 0 &&
      /^(?:dose|colourant check)$/u.test(reading.command)));

/**
 * What a scent asked about by name does, where no colour is asked about; undefined where none is named. Throws a Refusal
 * `scent-barred`, or `liquid-is-spirit` where strong drink is to stand in for the water.
 */
export function scentReply(question: string, read: QuestionRead, { say }: Context): Reply | undefined {
  if (!isOfNoColour(read)) return undefined;
  const words = foldedWords(question.slice(0, 500)).join(' ');
  if (INSTEAD.test(words) && LIQUID.test(words)) refuseSpirit(question);
  if (!SCENT.test(words)) return undefined;
  const risky = riskyScents(question);
  const [first, ...others] = risky.map(({ name, risk }) =>
    say.batch.warnings['scent-hurts']({ scent: name, risk }),
  );
  if (first === undefined) return undefined;
  return {
    kind: 'reply',
    headline: first,
    data: { understood: { scents: risky } },
    blocks: others.map(text => ({ kind: 'text', text })),
    cautions: [],
  };
}

/** Whether a scent that stays out of soap is asked about, or strong drink for the water. */
export function isBarredScent(question: string, read: QuestionRead, context: Context): boolean {
  return unlessRefused(() => ({ reply: scentReply(question, read, context) })) === undefined;
}
