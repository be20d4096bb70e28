import type { householdFirstAid as english } from '../../en/hazards/first-aid-household.ts';

/** See the English sentences for what they rest on. */
export const householdFirstAid: typeof english = {
  headlines: {
    fire: 'Fuego: tapa puesta y calor apagado si puedes sin peligro, nunca agua. Si no, sal y llama.',
    'toxic-gas': 'Limpiadores que reaccionan sueltan un gas venenoso: todos al aire libre ya.',
  },
  steps: {
    fire: ({ call }) => [
      'Pequeño y dentro de la olla: desliza encima una tapa o bandeja de metal y apaga el calor. No la quites hasta que se enfríe.',
      'Nunca agua sobre aceite o cera que arde, ni el chorro de un extintor en la olla: se aviva. No lleves la olla a otro sitio.',
      'Horno o microondas: deja la puerta cerrada y apágalo.',
      `Mayor que la olla, o no se apaga enseguida: todos fuera, cierra la puerta y llama a ${call} desde afuera. No vuelvas a entrar.`,
      'Ropa en llamas: párate, tírate al suelo y rueda. Piel quemada: agua corriente fresca 20 minutos, nada más encima.',
    ],
    'toxic-gas': ({ call, poison }) => [
      'Todos, también los animales, fuera al aire libre. Aguanta la respiración al salir; deja todo como está.',
      `Le cuesta respirar, opresión, silbidos, desmayo: llama ya a ${call}. Tos, ojos o garganta que arden: llama también${poison}.`,
      'Ojos que arden: enjuaga con agua 15 minutos. Fuera la ropa salpicada, la piel bajo agua corriente.',
      'No le añadas nada ni vuelvas a entrar para tirarlo o por alguien: eso es de los bomberos.',
      'Abre ventanas solo desde afuera o al salir. No vuelvas hasta que no huela.',
      'La lejía de limpiar (cloro) no se junta nunca con vinagre, otro ácido, amoníaco ni otro limpiador.',
    ],
  },
  short: {
    fire: 'fuego: tapa puesta, fuego apagado, nunca agua; si no, salir y llamar',
    'toxic-gas': 'limpiadores que reaccionan: todos fuera, al aire libre',
  },
  names: {
    fire: 'fuego, o aceite que arde',
    'toxic-gas': 'cloro con ácido o amoníaco; olor a cloro',
  },
  stillHere: 'Si hay alguien herido: /first-aid',
  callNow: v => `Peligro ahora mismo: llama a ${v.call}.`,
};
