import { action, command } from '../src/conversation/command.ts';
import { text } from '../src/conversation/option.ts';
import { diagnose } from '../src/engine/flaws/diagnose.ts';
import { flawBlocks, flawCautions, flawHeadline } from '../src/replies/flaw.ts';

export default command(
  'diagnose',
  action({
    purpose: {
      en: 'Why did my bar do that? Describe it in your own words',
      es: '¿Por qué le pasó eso a mi pastilla? Descríbelo con tus palabras',
    },
    seenBy: 'group',
    options: {
      words: text(
        {
          en: 'What you see and feel, and what you did: “blue specks all over, no zap”',
          es: 'Lo que ves y notas, y lo que hiciste: «motas azules por todas partes»',
        },
        { most: 5000 },
      ),
    },
    answer({ words }, { say }) {
      const diagnosis = diagnose(words);
      return {
        kind: 'reply',
        headline: flawHeadline(diagnosis, say),
        data: diagnosis,
        blocks: flawBlocks(diagnosis, say),
        cautions: flawCautions(diagnosis, say),
      };
    },
  }),
);
