import { unbroken } from '../../../over-lines.ts';
import { foldedColour, isColourWord } from '../../../text/colours/folded-colours.ts';
import { type Before, isOfLye } from '../before.ts';
import { type Lean, run } from '../lean-kinds.ts';

/* “Its minty not green”: what a colour came out as is told, and the shade that is not wanted is never what is aimed at. */

const REPORT = new RegExp(
  unbroken`
    ^(?:(?:i )?(?:did|done|tried|made|used) (?:that|it|this) |(?:ya )?(?:lo|la) (?:hice|probe|
    use) )?(?:(?:and|but|y|pero|now|ahora) )*(?:(?:it|its|it is|theyre|they|this|that|mine|me|se|
    esta) )*(?:(?:came out|come out|turned(?: out)?|went|looks?|is|are|was|quedo|salio|sale|queda|puso|ve|
    parece|esta|es) )*(?:(?:all|too|very|a bit|more|like|muy|mas|un poco|como) )*(\p{L}+) (?:and )?(?:not|
    instead of|rather than|y no|no|en vez de|en lugar de) (?:a |the |un |el )?(\p{L}+)$
  `,
  'u',
);
/** Says that it has come out, and wishes for nothing. */
const TELLS = new RegExp(
  unbroken`
    ^(?:i )?(?:did|done|tried|made|used) |^(?:ya )?(?:lo|la) (?:hice|probe|use) |(?:^| )(?:its|it is|it|
    theyre|came|turned|went|looks?|quedo|salio|puso|esta)(?= )
  `,
  'u',
);

/** What little of a colour gives, by what it was to be. */
const PALE: readonly (readonly [wished: RegExp, came: RegExp])[] = [
  [/^(?:green|verde)$/u, /^(?:mint\p{L}*|menta|sage|pistach\p{L}*)$/u],
  [/^(?:red|roj[oa])$/u, /^(?:pink\p{L}*|rosa|rosad[oa]|salmon)$/u],
  [/^(?:black|negr[oa])$/u, /^(?:gr[ae]y\p{L}*|gris)$/u],
  [/^(?:purple|violet|morad[oa]|violeta)$/u, /^(?:lilac|lavender|lila|lavanda|mauve)$/u],
  [/^(?:orange|naranja)$/u, /^(?:peach\p{L}*|durazno|melocoton|apricot)$/u],
  [/^(?:brown|marron|cafe)$/u, /^(?:beige|tan|cream\p{L}*|crema)$/u],
  [/\p{L}/u, /^(?:pale|pastel|light|washed|clar[oa]|clarit[oa]|palid[oa])$/u],
];

/** What a turn tells of the colour that a dose or a mixture gave: paler than it was to be, or another; undefined where it tells none. Pure. */
export function cameOut(text: string, before: Before): Lean | undefined {
  if (before.kind !== 'command' || isOfLye(before)) return undefined;
  const isOfColour = before.command === 'dose' || before.command === 'match';
  const [, came = '', wished = ''] = (isOfColour && TELLS.test(text) && REPORT.exec(text)) || [];
  if (came === '' || !isHue(wished)) return undefined;
  if (PALE.some(([deep, pale]) => deep.test(wished) && pale.test(came)))
    return { kind: 'technique', id: 'darker-lighter' };
  return isHue(came) ? run({ job: 'diagnose', command: 'diagnose', given: { words: text } }) : undefined;
}

const isHue = (word: string): boolean => isColourWord(foldedColour(word));
