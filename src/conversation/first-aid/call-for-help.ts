import { isTakenBack } from '../../engine/hazards/index.ts';
import { unbroken } from '../../engine/over-lines.ts';
import { remembered } from '../../engine/remembered.ts';
import { unaccented } from '../../engine/text/unaccented.ts';
import type { Words } from '../../words/index.ts';
import type { Form, Problem, Reply } from '../reply.ts';

/** What is typed for a command by who needs help and knows no command's name. */
const CALL = new RegExp(
  unbroken`
    ^\/?(?:firstaid|1staid|aid|emergenc(?:y|ies|ia|ias)|urgen(?:t|cy|cia|te)|help(?:me|us)|helphelp.*|sos|
    mayday|ayuda(?:me|nos)?|auxilio|socorro|primerosauxilios|ambulanc(?:e|ia)|poison(?:ed|control|centre|
    center)?|veneno|hurt|injur(?:y|ed)|accident[eo]?|911|999|112|fire|fuego|incendio)$
  `,
  '',
);

/** True where a command that is not there asks for help: "/emergency", "/first aid", "/ayuda". */
export function isCallForHelp(path: string): boolean {
  return CALL.test(unaccented(path).replaceAll(/[^a-z0-9]/g, ''));
}

/** The words of whoever is in a hurry and names nothing. */
const NOTHING_BUT_HELP = new RegExp(
  unbroken`
    ^\W*(?:(?:i need|we need|call|get|please|quick|necesito|llama|llamad|una?|an?|the|la|el|de|por favor|
    now|ya)\W+)*(?:first[ -]?aid|emergency|emergencies|ambulance|paramedics?|911|112|999|sos|
    primeros auxilios|emergencias?|urgencias?|ambulancia|socorro|auxilio)(?:\W+(?:please|now|quick|help|
    por favor|ya|r[aá]pido))*\W*$
  `,
  'iu',
);

/** True where a question is nothing but a call for first aid; what happened is then asked beside the list of it. */
export const callsForFirstAid = (question: string): boolean => NOTHING_BUT_HELP.test(question);
const takesBack = remembered(isTakenBack);

/** An answer with the way to first aid kept under it, where the member took an alarm back in any of the texts. */
export function keepingFirstAid(
  answer: Reply<string> | Form<string> | Problem,
  texts: readonly string[],
  say: Words,
): Reply<string> | Form<string> | Problem {
  if (!texts.some(takesBack)) return answer;
  const text = say.firstAid.stillHere;
  if (answer.kind === 'reply') return { ...answer, blocks: [...answer.blocks, { kind: 'text', text }] };
  return answer.kind === 'problem' ? { ...answer, text: `${answer.text} ${text}` } : answer;
}
