import { type Token, tokenise } from '../../text/tokens.ts';

const isAlarm = (tokens: readonly Token[], at: number) => {
  const two = `${tokens[at]?.text} ${tokens[at + 1]?.text}`;
  return two === 'false alarm' || two === 'falsa alarma';
};
/** Before it at the end of the words: it is denied, doubted, or told of something else. */
const NOT_BARE_BEFORE =
  /^(a|an|the|no|not|nor|never|isnt|wasnt|aint|another|any|yesterdays|last|earlier|un|una|la|ni|nunca|otra|ninguna|como|like|sin|without)$/;
/** After it at the start of the words: the alarm of another time, or a question. */
const NOT_BARE_AFTER =
  /^(\?|of|about|from|for|yesterday|last|earlier|before|this|was|were|is|or|again|no|not|de|del|ayer|antes|fue|era|es|o|anoche|que|por)$/;
/** Leads back to what is going on now. */
const TODAY =
  /^(but|however|today|now|just|again|really|actually|pero|sino|hoy|ahora|ahorita|recien|acaba|acabo|esta)$/;

/** What is told behind a "false alarm" that opens the words, or undefined where none does. */
export function toldAfterAlarm(words: string): string | undefined {
  const tokens = tokenise(words);
  const first = tokens.findIndex(({ kind }) => kind === 'word');
  return first >= 0 && isAlarm(tokens, first)
    ? words.replace(/^.*?(?:false|falsa)\s+(?:alarm|alarma)\b/isu, '').trim()
    : undefined;
}

/**
 * True where a member takes an alarm back: a bare "false alarm" or "falsa alarma" at the very start or end of the words,
 * neither denied nor asked nor told of another day. Anything else may be somebody who is hurt.
 */
export function isTakenBack(words: string): boolean {
  const tokens = tokenise(words);
  const said = tokens.map((_, at) => at).filter(at => tokens[at]!.kind === 'word');
  const [first = 0, last = 0] = [said[0], said.at(-1)];
  if (isAlarm(tokens, first)) {
    const next = tokens[first + 2];
    if (!next) return true;
    return !NOT_BARE_AFTER.test(next.text) && !tokens.slice(first + 2).some(({ text }) => TODAY.test(text));
  }
  if (last === 0 || !isAlarm(tokens, last - 1)) return false;
  const before = tokens[last - 2];
  const asked = tokens.slice(last + 1).some(({ text }) => text === '?');
  return !asked && (!before || !NOT_BARE_BEFORE.test(before.text));
}
