import { foldsOf, wholeOf } from '../conversation/faces/face.ts';
import { faceText, formText, textOf } from '../conversation/faces/plain-text.ts';
import type { Answer, Choice, Next } from '../conversation/reply.ts';
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
      const { headline, data, choices = [] } = answer;
      const pictures = await savePictures(answer, folder);
      const say = wordsIn(answer.language);
      const whole = wholeOf(answer);
      const folds = foldsOf(answer).map(({ id, ...parts }) => ({
        id,
        title: say.folds.names[id],
        text: textOf({ ...answer, headline: '', ...parts }, say),
      }));
      return {
        ok: true as const,
        command,
        headline,
        data,
        cautions: whole.cautions.map(({ id, text }) => ({ id, text })),
        text: textOf(whole, say),
        face: faceText(answer, say),
        folds,
        choices,
        ...(answer.next && { next: answer.next }),
        pictures,
      };
    }
  }
}

/** How an answer is shown to a person: where pictures are saved, and whether all of it or its face. */
export type Showing = { readonly folder: string; readonly all?: boolean; readonly opens?: boolean };

/**
 * An answer as lines for a person: its face, and last a line that names its folds; all of it with `all`. Choices are
 * numbered from 1, the lines that may be asked next among them.
 */
export async function linesOf(
  answer: Answer,
  { folder, all = false, opens = false }: Showing,
): Promise<string> {
  if (answer.kind === 'form') return formText(answer);
  const next = answer.kind === 'reply' ? (answer.next ?? []) : [];
  const offered = [...(answer.choices ?? []).map(choiceText), ...next.map(nextText)];
  const choices = offered.map((text, index) => `  [${index + 1}] ${text}`).join('\n');
  if (answer.kind === 'problem') return [answer.text, choices].filter(Boolean).join('\n\n');
  const say = wordsIn(answer.language);
  const paths = await savePictures(answer, folder);
  const folds = all ? [] : foldsOf(answer).map(({ id }) => say.folds.names[id]);
  return [
    all ? textOf(wholeOf(answer), say) : faceText(answer, say),
    choices,
    paths.map(path => `→ ${path}`).join('\n'),
    folds.length === 0 ? '' : opens ? say.folds.openBy({ folds }) : say.folds.named({ folds }),
  ]
    .filter(Boolean)
    .join('\n\n');
}

/** The text of one fold, or of the whole answer; undefined where the answer has no fold of that name. */
export function foldText(answer: Answer, name: string): string | undefined {
  if (answer.kind !== 'reply') return undefined;
  const say = wordsIn(answer.language);
  const wanted = name.trim().toLowerCase();
  if (foldsOf(answer).length > 0 && wanted === say.folds.all) return textOf(wholeOf(answer), say);
  const fold = foldsOf(answer).find(({ id }) => say.folds.names[id].toLowerCase() === wanted);
  return fold && textOf({ ...answer, headline: say.folds.names[fold.id], ...fold }, say);
}

/** Items of a menu that are shown: a longer one is a list to read, of which the first are the likeliest. */
const MOST_ITEMS = 8;

/** A button's label; a menu's with what can be chosen from it, by number. */
function choiceText(choice: Choice<string>): string {
  if (choice.kind === 'button') return choice.label;
  return withItems(
    choice.label,
    choice.items.map(({ label }) => label),
  );
}

const nextText = (one: Next): string =>
  'line' in one
    ? `${one.label}: ${one.line}`
    : withItems(
        one.label,
        one.lines.map(({ label }) => label),
      );

function withItems(label: string, items: readonly string[]): string {
  const shown = items.slice(0, MOST_ITEMS).map((item, at) => `\n        ${at + 1}: ${item}`);
  const more = items.length > MOST_ITEMS ? `\n        … ${items.length}` : '';
  return `${label}${shown.join('')}${more}`;
}
