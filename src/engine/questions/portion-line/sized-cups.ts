import { unbroken } from '../../over-lines.ts';
import { unitOfWord } from '../../quantities/unit-words.ts';
import type { Item, Quantity } from './item.ts';

const SAID = new RegExp(
  unbroken`
    ^(?:big|large|small|little|wee|grande|grandes|chica|chicas|pequena|pequenas|of|de|del|las|los|la|the|
    measuring|medidora|that|que|holds?|hold|is|are|es|son|tiene|tienen|hace|hacen|caben?|le|about|abt|unos|
    como|soap|my|our|mi|mis|nuestras?|cups?|mugs?|tazas?|y|media|1\/2|here|aqui|aca|,|\(|=|each)$
  `,
  'u',
);
const REACH = 6;

const isCups = (item: Item): item is Quantity =>
  item.is === 'amount' &&
  item.told.measure === 'volume' &&
  unitOfWord(item.told.text.split(' ').at(-1)!) === 'cup' &&
  /^\d+ /u.test(item.told.text);

/** Cups whose own size is told: "1 taza grande de 350 ml" is 350 ml, whatever a cup is elsewhere. Pure. */
export function withCupSizes(items: readonly Item[]): readonly Item[] {
  let said = items;
  for (const [at, cups] of items.entries()) {
    if (!isCups(cups)) continue;
    const next = items.slice(at + 1, at + 1 + REACH).findIndex(({ is }) => is === 'amount');
    const size = items[at + 1 + next];
    const between = items.slice(at + 1, at + 1 + next);
    if (next < 1 || size?.is !== 'amount' || size.told.measure !== 'volume' || size.isSpoons) continue;
    if (!between.every(({ text }) => SAID.test(text))) continue;
    said = said.flatMap(item => (item === cups ? [sized(cups, size)] : item === size ? [] : [item]));
  }
  return said;
}

function sized(cups: Quantity, size: Quantity): Quantity {
  const count = Number(cups.told.text.split(' ')[0]);
  const { from, of } = cups.told;
  if (count === 1) return { ...size, from, told: { ...size.told, from, of } };
  const text = `${count} x ${size.told.text}`;
  const product = {
    count,
    noun: cups.told.text.split(' ').at(-1)!,
    of: 'vessels',
    each: size.told.text,
  } as const;
  return { ...size, from, text, told: { ...size.told, text, from, of }, value: count * size.value, product };
}
