import type { RefusedCases } from './row.ts';

export const lines: RefusedCases = {
  'files and lines': [
    [
      '/match photo:/nowhere/bar.jpg',
      'file-not-found',
      'Give the path of a picture on this machine',
      'Da la ruta de una imagen de este equipo',
    ],
    [
      '/dose portion:"1 cup" portion:"2 cups" colourant:"gold mica"',
      'line-option-twice',
      'is there twice',
      'ponlo una sola',
    ],
  ],
  'commands and options': [
    ['/dose colourant:"gold mica"', 'option-missing', 'Please fill in', 'Falta rellenar'],
    [
      '/dose color:"gold mica" portion:"1 cup"',
      'option-unknown',
      'There is no option',
      'Aquí no hay ninguna opción',
    ],
    [
      '/recipe show recipe:"aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa"',
      'option-too-long',
      '“recipe” is too',
      'caracteres como máximo',
    ],
    [
      '/colourant label market:mars of:"gold mica"',
      'option-not-offered',
      'must be one of',
      'debe ser uno de estos',
    ],
    [
      '/plan oils:"olive 500 g" superfat:lots',
      'option-not-a-number',
      'must be a number',
      '«superfat» debe ser',
    ],
    ['/pour layers mould:"25x9x7 cm" layers:99', 'option-out-of-range', 'must be from', 'debe estar entre'],
    ['/preview mix:"gold mica" gel:perhaps', 'option-not-yes-or-no', 'must be yes or no', 'debe ser sí o no'],
    [
      '/doos colourant:"gold mica" portion:"1 cup"',
      'command-unknown',
      'There is no command',
      'No existe la orden',
    ],
    [
      '~ /challenge open title:Tide entries-until:"in 2 days"',
      'stewards-only',
      'Only a steward of this group may do that',
      'Solo puede hacerlo quien coordina este grupo',
    ],
    ['/dose colourant:"gold mica', 'line-quote-open', 'end the value with a "', 'termina el valor con "'],
    [
      '/dose colourant:"gold mica" portion:"1 cup" extra words',
      'line-not-understood',
      'with quotes around values that have spaces',
      'Escribe las opciones como nombre',
    ],
    [
      'press dose.take.bad',
      'follow-up-not-yours',
      'or from before my signing key was changed',
      'o de antes de que cambiara mi clave de firma',
    ],
  ],
};
