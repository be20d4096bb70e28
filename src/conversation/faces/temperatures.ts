import { fahrenheit } from '../../engine/quantities/units.ts';
import type { Block, Caution, Reply } from '../reply.ts';

const FIGURE = String.raw`-?\d+(?:[.,]\d+)?`;
const CELSIUS_FIRST = new RegExp(String.raw`(${FIGURE}) °C \((${FIGURE}) °F\)`, 'gu');

/** From one degree to another; a single figure in °C alone may be a difference, and stays. */
const BETWEEN = new RegExp(String.raw`(${FIGURE}) (to|a|y|and) (${FIGURE}) °C(?! \()`, 'gu');

const degrees = (celsius: string): number => Math.round(fahrenheit(Number(celsius.replace(',', '.'))));

const turned = (text: string): string =>
  text
    .replace(CELSIUS_FIRST, '$2 °F ($1 °C)')
    .replace(
      BETWEEN,
      (_, low: string, to: string, high: string) =>
        `${degrees(low)} ${to} ${degrees(high)} °F (${low} ${to} ${high} °C)`,
    );

function turnedBlock(block: Block): Block {
  switch (block.kind) {
    case 'measures': {
      const measures = block.measures.map(({ label, value, note, ...rest }) => ({
        ...rest,
        label: turned(label),
        value: turned(value),
        ...(note !== undefined && { note: turned(note) }),
      }));
      return { ...block, measures };
    }
    case 'text':
      return { ...block, text: turned(block.text) };
    case 'rows':
      return {
        ...block,
        rows: block.rows.map(turned),
        ...(block.title !== undefined && { title: turned(block.title) }),
      };
    case 'picture':
      return { ...block, alt: turned(block.alt) };
    case 'file':
      return block;
  }
}

/** A reply with °F before °C wherever both stand, for whoever reads a thermometer of that kind; its data keep their units. */
export const fahrenheitFirst = (reply: Reply<string>): Reply<string> => ({
  ...reply,
  headline: turned(reply.headline),
  blocks: reply.blocks.map(turnedBlock),
  cautions: reply.cautions.map(
    (caution): Caution => ({
      ...caution,
      text: turned(caution.text),
      ...(caution.brief !== undefined && { brief: turned(caution.brief) }),
    }),
  ),
});
