import {
  button,
  type Json,
  long,
  menu,
  option,
  type Pair,
  people,
  section,
  split,
  text,
  times,
} from './host-refusal-bodies.ts';

const input = (over: Json = {}): Json => ({ type: 4, custom_id: 'oils', style: 1, ...over });
const label = (component: Json = input(), over: Json = {}): Json => ({
  type: 18,
  label: 'Oils',
  component,
  ...over,
});
const form = (...components: Json[]): Json => ({ custom_id: 'batch', title: 'A batch', components });
const radio = (count: number): Json => ({ type: 21, custom_id: 'gel', options: times(count, option) });
const ticks = (count: number): Json => ({ type: 22, custom_id: 'gel', options: times(count, option) });

/** Rows that the data of a form runs into. */
const pairs = {
  'form-title': {
    refused: { ...form(label()), title: long(46) },
    taken: { ...form(label()), title: long(45) },
  },
  'form-parts': {
    refused: form(...times(6, i => label(input({ custom_id: `f${i}` })))),
    taken: form(...times(5, i => label(input({ custom_id: `f${i}` })))),
  },
  'form-part-kind': { refused: form(section()), taken: form(text(), label()) },
  'label-text': {
    refused: form(label(input(), { label: long(46) })),
    taken: form(label(input(), { label: long(45) })),
  },
  'label-description': {
    refused: form(label(input(), { description: long(101) })),
    taken: form(label(input(), { description: long(100) })),
  },
  'label-child': { refused: form(label(button())), taken: form(label(people())) },
  'text-input-style': { refused: form(label(input({ style: 3 }))), taken: form(label(input({ style: 2 }))) },
  'text-input-range': {
    refused: form(label(input({ max_length: 4001 }))),
    taken: form(label(input({ min_length: 0, max_length: 4000 }))),
  },
  'text-input-value': {
    refused: form(label(input({ value: long(4001) }))),
    taken: form(label(input({ value: long(4000) }))),
  },
  'text-input-placeholder': {
    refused: form(label(input({ placeholder: long(101) }))),
    taken: form(label(input({ placeholder: long(100) }))),
  },
  'form-disabled': {
    refused: form(label(menu({ disabled: true }))),
    taken: form(label(menu({ disabled: false }))),
  },
  'form-min-required': {
    refused: form(label(menu({ min_values: 0 }))),
    taken: form(label(menu({ min_values: 0, required: false }))),
  },
  'radio-options': { refused: form(label(radio(1))), taken: form(label(radio(2))) },
  'tick-options': { refused: form(label(ticks(11))), taken: form(label(ticks(10))) },
  'upload-range': {
    refused: form(label({ type: 19, custom_id: 'photo', max_values: 11 })),
    taken: form(label({ type: 19, custom_id: 'photo', max_values: 10 })),
  },
} as const satisfies Record<string, Pair>;

export const { ours: formPairs, theirs: carriedFormPairs } = split(pairs);
