import { formText, textOf } from '../conversation/plain-text.ts';
import type { Answer, Choice } from '../conversation/reply.ts';
import { wordsIn } from '../words/index.ts';
import { savePictures } from './pictures.ts';
import type { Answered } from './seat.ts';

/** An answer as the JSON object that `ask --json` prints. Pictures are saved to `folder`. */
export async function jsonOf({ command, answer }: Answered, folder: string) {
  switch (answer.kind) {
    case 'problem':
      return {
        ok: false as const,
        command,
        problem: answer.text,
        id: answer.id,
        ...(answer.choices && { choices: answer.choices }),
      };
    case 'form': {
      const { title, fields, follow } = answer;
      return {
        ok: true as const,
        command,
        headline: title,
        data: {},
        cautions: [],
        text: formText(answer),
        form: { fields, follow },
      };
    }
    case 'reply': {
      const { headline, data, cautions, choices = [] } = answer;
      const pictures = await savePictures(answer, folder);
      const text = textOf(answer, wordsIn(answer.language));
      return { ok: true as const, command, headline, data, cautions, text, choices, pictures };
    }
  }
}

/** An answer as lines for a person. Choices are numbered from 1; pictures are saved to `folder`. */
export async function linesOf(answer: Answer, folder: string): Promise<string> {
  if (answer.kind === 'form') return formText(answer);
  const choices = (answer.choices ?? []).map((choice, index) => `  [${index + 1}] ${choiceText(choice)}`);
  if (answer.kind === 'problem') return [answer.text, choices.join('\n')].filter(Boolean).join('\n\n');
  const paths = await savePictures(answer, folder);
  return [
    textOf(answer, wordsIn(answer.language)),
    choices.join('\n'),
    paths.map(path => `→ ${path}`).join('\n'),
  ]
    .filter(Boolean)
    .join('\n\n');
}

/** A button's label; a menu's with what can be chosen from it, the value to type first. */
function choiceText(choice: Choice<string>): string {
  if (choice.kind === 'button') return choice.label;
  const items = choice.items.map(({ label, value }) => `\n        ${value}: ${label}`);
  return `${choice.label}${items.join('')}`;
}
