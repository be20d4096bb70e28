import { type Pair, split } from './host-refusal-bodies.ts';

type Json = Record<string, unknown>;
const times = <T>(count: number, make: (index: number) => T): T[] =>
  Array.from({ length: count }, (_, i) => make(i));
const long = (count: number): string => 'é'.repeat(count);
const command = (over: Json = {}): Json => ({ name: 'batch', description: 'A batch', ...over });
const option = (over: Json = {}): Json => ({ type: 3, name: 'oils', description: 'Oils', ...over });
const withOptions = (...options: Json[]): Json => command({ options });
const choice = (index: number): Json => ({ name: `Oil ${index}`, value: `oil-${index}` });
const subcommand = (over: Json = {}): Json => ({ type: 1, name: 'list', description: 'List', ...over });
const wide = (index: number): Json => ({
  name: `${index}`.padStart(100, '0'),
  value: `${index}`.padStart(100, '0'),
});
/** Names and descriptions 6, choices 39 of 200, and a last one of 100 and the rest. */
const ofSize = (size: number): Json =>
  command({
    name: 'c',
    description: 'd',
    options: [
      option({ name: 'a', description: 'b', choices: times(25, wide) }),
      option({
        name: 'e',
        description: 'f',
        choices: [...times(14, wide), { name: long(100), value: long(size - 6 - 39 * 200 - 100) }],
      }),
    ],
  });

/** Rows that a declared command runs into when it is created in a guild. */
const pairs = {
  'command-name': { refused: command({ name: 'Batch' }), taken: command({ name: 'tandá-1' }) },
  'command-description': {
    refused: command({ description: long(101) }),
    taken: command({ description: long(100) }),
  },
  'menu-description': {
    refused: { name: 'Look at this', type: 3, description: 'look' },
    taken: { name: 'Look at this', type: 3 },
  },
  'command-kind': { refused: command({ type: 9 }), taken: command({ type: 1 }) },
  'command-size': { refused: ofSize(8001), taken: ofSize(8000) },
  'command-locale': {
    refused: command({ description_localizations: { es: 'Una tanda' } }),
    taken: command({ description_localizations: { 'es-ES': 'Una tanda' } }),
  },
  'command-permissions': {
    refused: command({ default_member_permissions: 'stewards' }),
    taken: command({ default_member_permissions: '32' }),
  },
  'command-global-only': { refused: command({ contexts: [0] }), taken: command() },
  'option-kind': { refused: withOptions(option({ type: 12 })), taken: withOptions(option({ type: 11 })) },
  'option-count': {
    refused: withOptions(...times(26, i => option({ name: `o${i}` }))),
    taken: withOptions(...times(25, i => option({ name: `o${i}` }))),
  },
  'option-duplicate': {
    refused: withOptions(option(), option()),
    taken: withOptions(option(), option({ name: 'lye' })),
  },
  'option-order': {
    refused: withOptions(option(), option({ name: 'lye', required: true })),
    taken: withOptions(option({ name: 'lye', required: true }), option()),
  },
  'option-mixed': {
    refused: withOptions(subcommand(), option()),
    taken: withOptions(subcommand({ options: [option()] })),
  },
  'option-choices': {
    refused: withOptions(option({ choices: times(26, choice) })),
    taken: withOptions(option({ choices: times(25, choice) })),
  },
  'option-choices-kind': {
    refused: withOptions(option({ choices: [choice(1)], autocomplete: true })),
    taken: withOptions(option({ autocomplete: true })),
  },
  'option-range': {
    refused: withOptions(option({ min_value: 1 })),
    taken: withOptions(option({ min_length: 1, max_length: 6000 })),
  },
} as const satisfies Record<string, Pair>;

export const { ours: declarationPairs, theirs: carriedDeclarationPairs } = split(pairs);
