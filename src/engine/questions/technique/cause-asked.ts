import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';
import type { QuestionRead } from '../read.ts';

/** The question that a report ends in, or begins with. */
const CAUSE = new RegExp(
  unbroken`
    (?:^|[.,;!?]\s*|\s)(?:why(?: (?:is that|though|did it|did that happen))?|how come|what happened|
    what (?:did i do|went) wrong|what caused (?:it|that)|(?:por|x) ?(?:que|q)(?: (?:fue|paso|sera))?|(?:que|q) (?:le |
    me )?paso|(?:que|q) (?:hice|salio) mal|a que se debe)\W*$
  `,
  'u',
);
/** It is over: nobody stands before it. */
const WAS =
  /(?<!\p{L})(?:went|got|turned|seized|set|came|was|quedo|se puso|se volvio|espeso|endurecio|salio|fue)(?!\p{L})/u;
/** What is to be done is asked, or it still lies in the pot. */
const NOW = new RegExp(
  unbroken`
    (?<!\p{L})(?:now|help|quick|do i do|to do|can i do|can i save|still|ahora|ayuda|rapido|urgente?|
    que hago|hago|salvar|todavia|aun)(?!\p{L})
  `,
  'u',
);
/** The judge of jobs is as sure as that of a flaw. */
const SURE_FLAW = 0.97;

/**
 * Whether what batter did is told as over and the question ends in why: causes are asked, and not what to do with a pot. "It went thick as
 * porridge 20 secs after the clove oil went in. why". Pure.
 */
export function asksCause(question: string, { readings: [reading] }: QuestionRead): boolean {
  const plain = unaccented(question);
  return (
    reading?.job === 'diagnose' &&
    reading.score >= SURE_FLAW &&
    CAUSE.test(plain) &&
    WAS.test(plain) &&
    !NOW.test(plain)
  );
}
