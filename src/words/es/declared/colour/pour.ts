import type { says as en } from '../../../en/declared/colour/pour.ts';

export const says: typeof en = {
  purpose: 'Cuánto de cada color va dónde: capas, líneas, remolinos, degradados, aceites infusionados',
  options: {
    mould: 'Su interior, altura al final: «25x9x7 cm», «cilindro 8x25 cm», «12 cavidades x 100 ml»',
    base: 'El jabón sin color: blanca, crema, amarilla, verde, o tus aceites',
    gel: '¿Pasa por gel?',
  },
  layers: {
    purpose: 'Capas de igual altura, planas o con cuña de un molde inclinado',
    layers: 'Cuántas capas',
    raised: 'Taco bajo un lado largo para la primera capa, cm: queda en cuña',
  },
  line: {
    purpose: 'Cuánto polvo lleva una línea de lápiz',
    colourant: 'Un bote tuyo o un colorante. Mica dorada si no dices nada',
    lines: 'Cuántas líneas. Una si no dices',
    thickness: { says: 'Qué grosor', choices: { thin: 'Fina', usual: 'Normal', thick: 'Gruesa' } },
  },
  swirl: {
    purpose: 'Cuánto de cada color para su parte de la superficie',
    shares: 'Qué parte toma cada uno: «azul 50%, blanco 30%» o «azul 2, blanco 1»',
    depth: 'Profundidad del remolino, cm. 2,5 si no dices',
  },
  gradient: {
    purpose: 'Pasos entre dos jarras que se ven iguales, no cucharas iguales',
    from: 'Jarra A: «azul ultramar pleno», o «sin color»',
    to: 'Jarra B, lo mismo',
    steps: 'Cuántos pasos. 5 si no dices',
    portion: 'Masa en cada paso: «1 taza». 1 taza si no dices nada',
  },
  infusion: {
    purpose: 'Qué parte de tus aceites infusionar con una planta, por una barra de prueba',
    bar: 'Una barra curada: parte de aceite infusionado y color: «20% #d9b86a»',
    target: 'El color que quieres: «#c79a3c» o «mostaza»',
    oils: 'Todos los aceites de la receta: «1000 g»',
  },
};
