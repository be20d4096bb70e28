import { unbroken } from '../../../over-lines.ts';
import { plainText } from '../../../quantities/number.ts';
import { spokenAmounts } from '../../../quantities/spoken/spoken-amounts.ts';
import { knowsColour } from '../../colours/known-colours.ts';
import { respelt } from '../../spelling/trade/respelt.ts';
import { deaccented } from '../../unaccented.ts';
import { percent, shareAt } from '../shares/share-at.ts';
import { coloursIn, evenly, placed, placedByClause, resting, stacked } from './portion-places.ts';
import { type Token, tokensOf } from './portion-tokens.ts';

const LONGEST_TEXT = 200;
/** Percent, thirds rounded up. */
const WHOLE = 100.01;

/** What parts a share again among the colours that it is told for. */
const AGAIN = new RegExp(
  unbroken`
    (?<!\p{L})(?:split|divid\p{L}+|shar(?:e|ed|ing)|between|among|same|even(?:ly)?|equal(?:ly)?|
    half and half|halves|entre|igual(?:es|it[oa]s?)?|parej[oa]s?|repart\p{L}+|a medias|mitad y mitad|
    lo mismo)(?!\p{L})
  `,
  'iu',
);

type ShareTold = { readonly share: Extract<Token, { is: 'share' }>; readonly names: readonly string[] };

/** Shares and the colours that they are of by turns, whichever stands first; undefined where they do not alternate. */
function turnsOf(tokens: readonly Token[]): readonly ShareTold[] | undefined {
  const told = tokens.filter(({ is }) => is === 'share' || is === 'colour');
  const isShareFirst = told[0]?.is === 'share';
  const turns: { share: ShareTold['share'] | undefined; names: string[] }[] = [];
  for (const [at, token] of told.entries()) {
    const isNew = isShareFirst
      ? token.is === 'share'
      : token.is === 'colour' && told[at - 1]?.is !== 'colour';
    if (isNew) turns.push({ share: undefined, names: [] });
    const turn = turns.at(-1)!;
    if (token.is === 'colour') turn.names.push(token.name);
    else if (token.is === 'share' && turn.share === undefined) turn.share = token;
    else return undefined;
  }
  const whole = turns.flatMap(({ share, names }) => (share && names.length > 0 ? [{ share, names }] : []));
  return whole.length === turns.length ? whole : undefined;
}

const percentOf = (canonical: string): number | undefined => {
  const figure = /^([\d.]+)%$/u.exec(canonical)?.[1];
  return figure === undefined ? undefined : Number(figure);
};

/** Each colour with its share; several of one share part it evenly where a word says so. */
function paired(tokens: readonly Token[], isSplit = false): string | undefined {
  const turns = turnsOf(tokens);
  if (!turns || turns.flatMap(({ names }) => names).length < 2) return undefined;
  const sum = turns.reduce((all, { share }) => all + (percentOf(share.canonical) ?? 0), 0);
  if (sum > WHOLE) return undefined;
  const pairs = turns.map(({ share: { canonical }, names }) => {
    if (names.length === 1) return [`${canonical} ${names[0]}`];
    const whole = canonical === 'rest' ? 100 - sum : percentOf(canonical);
    return isSplit && whole !== undefined && whole > 0
      ? names.map(name => `${percent(whole / 100 / names.length)} ${name}`)
      : undefined;
  });
  return pairs.every(pair => pair !== undefined) ? pairs.flat().join('; ') : undefined;
}

/** "60 20 20, blue pink uncoloured": bare figures of a hundred, each with its colour or all before the colours. */
function listed(tokens: readonly Token[]): string | undefined {
  const figures = tokens.flatMap(token => (token.is === 'figure' ? [token.value] : []));
  const names = coloursIn(tokens);
  const sum = figures.reduce((all, one) => all + one, 0);
  const turns = tokens.filter((token, at) => at > 0 && token.is !== tokens[at - 1]!.is).length;
  if (figures.length < 2 || figures.length !== names.length || Math.abs(sum - 100) > 1e-9) return undefined;
  if (turns > 1)
    return paired(
      tokens.map(token =>
        token.is === 'figure' ? { is: 'share', canonical: percent(token.value / 100) } : token,
      ),
    );
  return names.map((name, at) => `${percent(figures[at]! / 100)} ${name}`).join('; ');
}

/** "3:2:1 as yellow, orange, red": as many parts as colours. */
const RATIO = /(?<![\d.,:/])\d{1,2}(?:\s?:\s?\d{1,2}){1,5}(?!\d|[:/]|[.,]\d)/u;
function inRatio(text: string): string | undefined {
  const ratio = RATIO.exec(text);
  if (!ratio) return undefined;
  const parts = ratio[0].split(':').map(Number);
  const tokens = tokensOf(`${text.slice(0, ratio.index)} ${text.slice(ratio.index + ratio[0].length)}`);
  const names = tokens?.every(({ is }) => is === 'colour') ? coloursIn(tokens) : [];
  if (names.length !== parts.length || !parts.every(part => part > 0)) return undefined;
  return names.map((name, at) => `${parts[at]} parts ${name}`).join('; ');
}

/**
 * A division of a batter of which every word is a share, a colour, a place or a word that changes nothing, in the portions' own grammar:
 * "just the two dear, brown under and tan over", "ten percent red for the drizzle and what is left stays plain", "60 20 20, blue pink
 * uncoloured". Undefined where another word stands in it, or where it may be read in two ways. Pure.
 */
export function portionsAmongWords(text: string): string | undefined {
  if (text.length > LONGEST_TEXT || /(?:^|\s)[-–—]\s?\d/u.test(text)) return undefined;
  const told = spokenAmounts(
    plainText(text)
      .replace(PART_IS, '$1 is')
      .replace(COLOUR_IS, ' is')
      .replace(IN_EQUAL_PARTS, 'equal')
      .replace(TO, '$1:$2')
      .replace(TO_ONE, '$1:1')
      .replace(ONE_TO, '1:$1'),
  )
    .replace(LIKENESS_FIRST, '')
    .replace(LIKENESS_LAST, '')
    .replace(TAG, '')
    .replace(TALK, '');
  const [said, larger] = withoutLarger(told.replace(ASIDE, ''));
  const division = divided(said) ?? divided(respelt(said).text) ?? divided(said.replace(MOSTLY, 'rest '));
  return division !== undefined && (larger === undefined || isLargest(division, larger))
    ? division
    : undefined;
}

/** "4 a 1": no "for a", as chats write it. */
const TO = /(?<![\d.,])(\d{1,2}) (?:a|to) (\d{1,2})(?=[\s,;]|$)/giu;
/** "Dos a uno": one is a figure only here. */
const TO_ONE = /(?<![\d.,])(\d{1,2}) (?:a|to|por) (?:one|un[oa]?)(?!\p{L})/giu;
const ONE_TO = /(?<!\p{L})(?:one|un[oa]?) (?:a|to|por) (\d{1,2})(?![\d.,])/giu;
/** "It's mostly white, a fifth is red". */
const MOSTLY =
  /(?<!\p{L})(?:mostly|mainly|(?:almost|nearly|casi) (?:all|tod[oa])|mayormente|sobre todo|principalmente)\s+(?=\p{L})/giu;
/** "Blue's at the bottom". */
const COLOUR_IS =
  /(?<=\p{L})['’]s(?= (?:at|on|in|the|next|first|last|under|over|below|goes|going)(?!\p{L}))/giu;
/** "Like a trifle: red at the base", "a cream head on it like a pint of stout". */
const LIKENESS_FIRST = /^(?:like|como) (?:(?:an?|una?|the|la|el|my|mi) )?[\p{L}\p{M}'’ ]+[:,]\s*/iu;
const LIKENESS_LAST = /[\s,]+(?:like|como) (?:an?|una?|the|la|el|my|mi|our) [\p{L}\p{M}'’ ]+[.!\s]*$/iu;
/** Asked behind a division, these ask nothing of it; said before it, they tell how surely it is meant. */
const TAG = new RegExp(
  unbroken`
    [\s,.;]+(?:no|verdad|cierto|vale|right|ok(?:ay)?|yeah|innit|eh|you know|sabes|(?:yo )?(?:creo|
    dir[ií]a)(?: yo)?|i (?:think|guess|reckon)|not sure|no s[eé])[\s?!.]*$
  `,
  'iu',
);
const TALK = new RegExp(
  unbroken`
    ^(?:(?:pues|bueno|mira|a ver|yo|well|ok(?:ay)?|so|oh|hmm+|i|i['’]?d|we|le|les|lo|
    la)[\s,]+)*(?:(?:dir[ií]a|creo|calculo|pongamos|digamos|say|think|guess|reckon|go|
    going)(?: que| for| with| about)?[\s,]+)+
  `,
  'iu',
);
/** "60/40 green and white, green being the big one". */
const LARGER = new RegExp(
  unbroken`
    [\s,;(–-]+(?:(?:the|el|la|con|with) )?([\p{L}\p{M} ]+?) (?:being|is|es|siendo|as|como)(?: (?:the|el|la|
    lo))? (?:big(?:ger)? (?:one|part|share|bit|half)|larg(?:er|est) (?:one|part|share)?|main (?:one|colou?r|
    part)?|most of it|m[aá]s grande|mayor(?: parte)?|principal|que m[aá]s (?:lleva|hay))[\s.!)]*$
  `,
  'iu',
);

/** A division without the clause that says whose part is the largest, and whose that is. */
function withoutLarger(text: string): readonly [said: string, larger: string | undefined] {
  const match = LARGER.exec(text);
  return match && knowsColour(match[1]!) ? [text.slice(0, match.index), match[1]] : [text, undefined];
}

/** Whether no other colour has as large a share of a division as one. */
function isLargest(division: string, name: string): boolean {
  const shares = division.split('; ').map(piece => {
    const [, share = '', colour = ''] = /^([\d.]+)(?:%| parts) (.+)$/u.exec(piece) ?? [];
    return { share: Number(share), colour };
  });
  const own = shares.find(({ colour }) => deaccented(colour) === deaccented(name));
  return own !== undefined && shares.every(one => one === own || one.share < own.share);
}

/** "A partes iguales" tells how all are parted, and no part of its own. */
const IN_EQUAL_PARTS = /(?<!\p{L})(?:(?:a|en|por|in) )?(?:partes iguales|equal parts)(?!\p{L})/giu;
const PART_IS = /\b(half|thirds?|quarters?|fifths?|rest|bottom|top|middle)['’]s(?!\p{L})/giu;
/** What is said of the whole behind a comma tells of no part. */
const ASIDE =
  /[,;.]\s*(?:if|since|because|cos|cuz|which is|like|as in|si|porque|como|pues)(?!\p{L})[^,;.\d]*[.!]*$/iu;
/** A share of what an earlier share left. */
const OF_WHAT_IS_LEFT = new RegExp(
  unbroken`
    (?<!\p{L})(?:of|de)\s+(?:the (?:rest|remainder|other half)|what(?:['’]?s| is| was|
    ever(?:['’]s| is| was)?) left|what remain(?:s|ed)|la otra mitad|lo que (?:queda|quedaba|qued[oó]|sobra|
    sobraba)|el resto|del resto)(?!\p{L})
  `,
  'iu',
);

function divided(said: string): string | undefined {
  if (OF_WHAT_IS_LEFT.test(said)) return undefined;
  const tokens = tokensOf(said);
  if (!tokens) return resting(said) ?? inRatio(said);
  const shares = tokens.filter(({ is }) => is === 'share').length;
  const even = tokens.flatMap(token => (token.is === 'even' ? [token.parts] : []));
  if (even.length > 0 && shares > 0)
    return paired(
      tokens.filter(({ is }) => is !== 'even'),
      true,
    );
  if (even.length > 0) {
    const names = coloursIn(tokens);
    return even.every(parts => parts === names.length) ? evenly(names) : undefined;
  }
  if (shares > 0)
    return tokens.some(({ is }) => is === 'figure') ? undefined : paired(tokens, AGAIN.test(said));
  return (
    inRatio(said) ??
    listed(tokens) ??
    resting(said) ??
    placed(tokens) ??
    placedByClause(said) ??
    stacked(tokens)
  );
}

/** Whether every portion of a division is a share with colours that are known, or with none. */
export const isPlainDivision = (division: string): boolean => {
  const pieces = division.split(';').map(piece => piece.trim());
  return (
    pieces.length > 1 &&
    pieces.every(piece => {
      const share = shareAt(piece);
      return share !== undefined && knowsColour(piece.slice(share.length).trim());
    })
  );
};
