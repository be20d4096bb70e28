import { spaced } from '../../../engine/over-lines.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';
import { degrees } from '../../temperatures.ts';
import { batch } from './batch.ts';

const { whole, one } = numbersIn('en');

/** Amounts and names that are asked back, since a slip there can hurt. */
export const askedBackRefusals: Pick<
  RefusalSentences,
  | 'additive-over-usual'
  | 'oil-unclear'
  | 'oil-is-food'
  | 'oil-is-liquid'
  | 'oils-without-unit'
  | 'lye-not-hydroxide'
  | 'lye-potash-unclear'
  | 'lye-or-bleach'
  | 'lye-by-volume'
  | 'lye-weight-told'
  | 'start-too-hot'
  | 'oven-too-hot'
  | 'lye-drain-cleaner'
  | 'size-very-large'
  | 'oil-number-spaced'
  | 'amounts-whose'
  | 'recipe-corrected'
  | 'recipe-scaled'
  | 'oil-shared'
  | 'recipe-words'
  | 'oil-told-twice'
  | 'oil-lost'
  | 'superfat-twice'
  | 'recipe-planned'
  | 'recipe-of-another'
  | 'oil-in-pot'
  | 'oils-left-out'
  | 'pots-compared'
  | 'lye-which-unknown'
  | 'lye-ready-strength'
  | 'lye-of-soft-soap'
  | 'vessel-weighed'
  | 'lye-damp'
  | 'lye-shares-untold'
  | 'cocoa-which'
  | 'superfat-under-one'
> = {
  'oil-is-liquid': ({ text }) => spaced`
    “${text}” is no fat: lye finds nothing in it to make soap of, and it would all stay in the bar as lye.
    Name the oils, and write this as liquid:“${text.trim()}”.
  `,
  'lye-or-bleach': ({ text }) =>
    `“${text}”: caustic soda (NaOH), or the bleach for cleaning? Bleach makes no soap and must never go in. If the label says sodium hydroxide, write “NaOH”.`,
  'lye-not-hydroxide': ({ text }) =>
    `“${text}” is not lye: carbonates and other salts make no soap. Only sodium hydroxide (NaOH) or potassium hydroxide (KOH) does; read the label.`,
  'lye-drain-cleaner': ({ text }) => spaced`
    “${text}” may hold aluminium chips (hydrogen), bleach or perfume beside the lye: not for soap. Use pure
    sodium hydroxide (NaOH), 97 % or more on the label.
  `,
  'lye-potash-unclear': ({ text }) =>
    `“${text}”: caustic potash (KOH) or potassium carbonate? Only KOH makes soap. If the label says potassium hydroxide, write “KOH”.`,
  'lye-by-volume': ({ text }) =>
    `“${text}”: lye goes by weight, never by volume; the two differ by half. Weigh it, and give its percent by weight, such as “50% lye solution”.`,
  'lye-weight-told': ({ text }) =>
    `“${text}”: how much lye is worked out from the oils. Say only which: “NaOH” or “KOH”, with its purity in percent if the label has it.`,
  'oven-too-hot': ({ ovenC, most, material }) => spaced`
    ${degrees(ovenC)} is too hot an oven for
    soap${material === 'plastic' ? ' in a plastic mould, which softens' : ': it boils up and cracks'}.
    ${degrees(most)} at most, then switched off.
  `,
  'start-too-hot': ({ startC, most }) =>
    `${degrees(startC)} is too hot to pour: batter foams up and burns. ${degrees(most)} at most here; 38 °C (100 °F) is usual.`,
  'size-very-large': ({ kilograms }) => spaced`
    That is ${whole(kilograms)} kg of oils: really? If so, write the size in kilograms:
    size:“${whole(kilograms)} kg oils”. If not, look at the amounts again.
  `,
  'amounts-whose': ({ text }) =>
    `“${text}”: I cannot tell which weight belongs to which name. Write each weight before its name, with commas: “500 g olive, 200 g coconut, 230 g water”.`,
  'recipe-corrected': ({ text }) =>
    `You put something right on the way (“${text}”). Write the recipe once more as it is to be: “500 g olive, 200 g coconut, superfat 5%”.`,
  'recipe-scaled': ({ text }) => spaced`
    “${text}”: multiply every oil, the lye and the water by one and the same number, and ask with those
    weights: “500 g olive, 200 g coconut, 90 g lye, 200 g water”.
  `,
  'oil-shared': ({ text }) =>
    `“${text}”: of one oil alone. Write each oil with the weight that is or goes in the pot, and the superfat: “500 g olive, 200 g coconut, superfat 5%”.`,
  'recipe-words': ({ text }) =>
    `I cannot tell what “${text}” does to the recipe. Write only the oils with their weights, and the superfat: “500 g olive, 200 g coconut, superfat 5%”.`,
  'oil-told-twice': ({ name, one, other }) =>
    `“${name}” stands twice: ${one} and ${other}. Write each oil once, with what is or goes in the pot, all of it in one weight: “… g ${name}”.`,
  'oil-lost': ({ text }) => spaced`
    “${text}”: some of the oil is gone. Weigh each oil that is in the pot now and ask with that: “500 g
    olive, 200 g coconut, superfat 5%”. Mixed already: weigh the mix and say “800 g oils, 60% olive, 40%
    coconut”. No lye before that.
  `,
  'vessel-weighed': ({ text }) => spaced`
    “${text}”: is that in the weights of the oils? A vessel that is counted as oil is too much lye. Take it
    off wherever it was on the scale, and ask with what the oil alone weighs: “500 g olive, 200 g coconut,
    superfat 5%”.
  `,
  'lye-damp': ({ text }) => spaced`
    “${text}”: lye that drew water from the air has lost strength, and nobody knows how much; the soap would
    be soft and greasy. No lump is broken with a tool: splinters fly. Use fresh, dry lye, and ask for its
    weight without these words.
  `,
  'lye-shares-untold': ({ text }) =>
    `“${text}”: how much of each? Write the shares, such as “NaOH 60 %, KOH 40 %”, or ask with one alkali: they are no weight for weight exchange.`,
  'cocoa-which': ({ text }) =>
    `“${text}”: cocoa butter or cocoa powder? Only the butter takes lye. Write “cocoa butter” with its weight, or leave the powder out of the oils.`,
  'superfat-under-one': ({ text, percent }) => spaced`
    “${text}”: a
    superfat${percent === undefined ? ' in percent' : ` of ${one(percent)} %, told as a share of one`}, or really less than
    1 %, which leaves next to no reserve and may leave lye in the bar? Write the percent, such as “superfat
    5%”; less than 1 % only /plan takes.
  `,
  'superfat-twice': ({ one, other }) => spaced`
    Two superfats stand there: “${one}” and “${other}”. A discount of lye is a superfat by another name:
    write the one that counts, or their sum, as “superfat …%”.
  `,
  'recipe-planned': ({ text }) =>
    `What was to go in stands beside what did (“${text}…”). Write only what is or goes in the pot: “500 g olive, 200 g coconut, superfat 5%”.`,
  'recipe-of-another': ({ text }) => spaced`
    Another pot is told beside yours (“${text}…”), and each needs a lye of its own. Write only what is or
    goes in the one that you ask for: “500 g olive, 200 g coconut, superfat 5%”.
  `,
  'oil-in-pot': ({ names, text }) => spaced`
    ${names.length === 1 ? `Is “${names[0]}” in the pot, all of it?` : `Are ${names.map(name => `“${name}”`).join(', ')} in the pot, all of them?`}
    I cannot tell from “${text}”. Write only what is or goes in: “500 g olive, 200 g coconut, superfat 5%”.
  `,
  'lye-which-unknown': ({ text }) => spaced`
    “${text}”: do not use it until it is known which it is. Sodium (NaOH) and potassium hydroxide (KOH)
    look the same and weigh differently: a label or the seller tells, nothing at home does. With a labelled
    one, ask again: “NaOH, 500 g olive, 200 g coconut”.
  `,
  'pots-compared': ({ text }) => spaced`
    Two pots stand there (“${text}…”), and each oil takes lye of its own: the weight that is right for one
    burns in another. Ask for one pot at a time: “500 g olive, superfat 0%”.
  `,
  'oils-left-out': ({ text, names, ways = [] }) =>
    names.length === 0
      ? `“${text}”: which oils go in, and which do not? Write only what is or goes in the pot: “500 g olive, 200 g coconut, superfat 5%”.`
      : ways.length > 1
        ? spaced`
          “${text}”: is ${names.map(name => `“${name}”`).join(', ')} in the pot? Press what is so, or write
          only what is or goes in: “500 g olive, 200 g coconut, superfat 5%”.
        `
        : spaced`
          “${text}”: I take it that ${names.map(name => `“${name}”`).join(', ')} stays out, and nothing
          else. If so, press the button; if not, write only what goes in: “500 g olive, 200 g coconut,
          superfat 5%”.
        `,
  'lye-ready-strength': ({ text }) =>
    `“${text}” is lye with water in it already, so it weighs more than dry lye: how strong is it? Ask with its percent, such as “50% lye solution”.`,
  'lye-of-soft-soap': ({ text }) => spaced`
    “${text}” is made with potassium hydroxide (KOH), a bar with sodium hydroxide (NaOH), and their weights
    are not the same. Write which one is on your label, with the recipe: “KOH, 500 g olive, 200 g coconut”.
  `,
  'oil-number-spaced': ({ text, joined, last }) =>
    `“${text}”: ${joined}, or ${last}? Write the amount without a space in it, such as “${joined}”.`,
  'additive-over-usual': ({ additive: id, percent, most }) => spaced`
    ${whole(percent)} % of the oils is far too much
    ${batch.additives[id]}${id === 'honey' || id === 'sugar' ? ' (all sugars together)' : ''}: ${most} % at
    most.${id === 'honey' || id === 'sugar' ? ' More overheats the loaf, which can erupt.' : ''} Look at
    the amount again.
  `,
  'oil-unclear': ({ text }) =>
    `“${text}”: which fat is in it? Read the label and name each one, such as “soybean 60%, palm 40%”; every fat needs its own lye.`,
  'oil-is-food': ({ text }) =>
    `“${text}” is a food with only some fat in it: lye for its whole weight would burn. Name the fat alone, such as “almond oil”, “lard” or “cocoa butter”.`,
  'oils-without-unit': () =>
    'These numbers are no percents: they make more than 100. Add g or oz to each, such as “olive 500 g, coconut 300 g”.',
};
