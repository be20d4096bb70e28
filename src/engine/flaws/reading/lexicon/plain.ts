import { spaced } from '../../../over-lines.ts';
import common from './plain-common.json' with { type: 'json' };

/**
 * Words that must never be taken for a misspelt word of the trade: the common ones of English that lie that near to one
 * (SCOWL, written by `tests/engine/flaws/write-plain-words.ts`), and our own of Spanish, of talk and of the bench.
 */
export const PLAIN_WORDS: readonly string[] = [
  ...common.words.flatMap(row => row.split(' ')),
  ...[
    spaced`
      antes bien como cuando cuanto desde despues donde entre esta estas este estos eso esos hace hasta
      hecho luego menos mismo mucho mucha muy nada nunca para pero poco poca porque puede quiero sobre
      siempre tambien tengo todo todos vez veces
    `,
    // "Se me han quedado marrones" burns nobody: no "quemado".
    'quedado quedada quedados quedadas',
    // Spanish words that lie near to one of the trade: "pongo" is no "hongo", "jarra" no "barra".
    spaced`
      cantidad cantidades calidad medida medidas manera maneras precio precios mercado navidad hijo hijos
      tercio tercios cuarto nuevo nueva nuevos nuevas chica chico alguna algunas alguno algunos varios
      varias cerca segun pongo quise quiso dicen salgo salir pesar medir creen hielo tarro tarros jarra
      jarras delantal abrazo abrazos raices poder
    `,
    'soap soaps batter batters batch batches jabones loaf loaves lather bars gram grams',
    spaced`
      chair chairs rocking wick sinkhole preciosa precioso preciosos hermosa hermoso rascas rasca rascar
      raspo raspas crime scene neat rows tanda cosa cosas gente quiero clienta clientas cliente feria curl
      sale masas misma mismo
    `,
    'theyre youre weve ive thats theres whats youve theyve itll youd theyd hows wheres heres lets whos gonna wanna gotta kinda sorta cause cuz idk tbh',
  ]
    .join(' ')
    .split(' '),
];
