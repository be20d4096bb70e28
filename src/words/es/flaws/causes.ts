import { withNames } from '../../en/flaws/causes.ts';

export const flawCauses = withNames({
  'undispersed-pigment': {
    plain: 'pigmento sin dispersar',
    why: 'El color seco entró más rápido de lo que se mojó, y sus grumos quedaron en la barra como puntos.',
  },
  'carrier-pockets': {
    plain: 'bolsas de color',
    why: 'La glicerina, el aceite o el agua que llevaba el color no se integró en la masa y quedó en bolsas húmedas de color.',
  },
  'white-pigment-crackle': {
    plain: 'craquelado del blanco',
    why: 'La parte con dióxido de titanio se sobrecalentó y cuajó con una red de líneas finas, como loza vieja. Es solo estético.',
  },
  'glycerin-rivers': {
    plain: 'ríos de glicerina',
    why: 'El agua y el calor dejaron dos texturas: vetas translúcidas junto a jabón más blanco. Es solo estético.',
  },
  'excess-white-pigment': {
    plain: 'demasiado pigmento blanco',
    why: 'Más dióxido de titanio u óxido de zinc del que aguanta el jabón lo vuelve como tiza y quebradizo.',
  },
  'lye-excess': {
    plain: 'jabón con exceso de sosa',
    why: 'Había más sosa de la que los aceites podían gastar, y queda sosa libre en todo el jabón.',
  },
  'lye-pockets': {
    plain: 'bolsas de sosa',
    why: 'La sosa que no se disolvió o no se mezcló quedó en puntos y puede quemar ahí aunque el resto parezca bien.',
  },
  'over-hard-recipe': {
    plain: 'una receta demasiado dura para cortar',
    why: 'Muchas grasas duras, o un corte tardío, endurecen tanto el bloque que se rompe en vez de cortarse.',
  },
  'soda-ash': {
    plain: 'ceniza de sosa',
    aside: 'soda ash',
    why: 'El jabón fresco de la superficie tocó el aire y formó una capa blanca de polvo. Es inofensiva.',
  },
  'partial-gel': {
    plain: 'gel parcial',
    why: 'El centro se calentó lo bastante para gelificar y los bordes no, y queda un anillo más oscuro. Es solo estético.',
  },
  'vanillin-browning': {
    plain: 'oscurecimiento por vainillina',
    why: 'La vainillina de la fragancia vuelve el jabón de beige a café en días y semanas, de fuera hacia dentro.',
  },
  'alkali-unstable-colourant': {
    plain: 'un color que la sosa destruye',
    why: 'El colorante no aguanta el jabón fresco: su color cambió o se fue al tocar la sosa.',
  },
  'dye-bleed': {
    plain: 'color que sangra',
    why: 'Un tinte o laca que se disuelve un poco se pasó al jabón de al lado.',
  },
  'overdosed-colour': {
    plain: 'demasiado color',
    why: 'Hay más color del que el jabón sujeta, y sale en la espuma.',
  },
  'underdosed-colour': {
    plain: 'muy poco color',
    why: 'La dosis fue poca para tanta masa, y el color quedó pálido. El jabón está bien.',
  },
  'base-colour-cast': {
    plain: 'se ve el color de la base',
    why: 'Los aceites amarillos o verdes tiñen la masa, y cada color se mezcla con ese tono desde el principio.',
  },
  'overheating-crack': {
    plain: 'grieta por sobrecalentamiento',
    aside: 'volcán',
    why: 'El bloque se calentó tanto que el centro se hinchó y abrió la parte de arriba.',
  },
  acceleration: {
    plain: 'aceleración',
    why: 'La fragancia, el calor o las grasas espesaron la masa antes de poder verter.',
  },
  ricing: {
    plain: 'efecto arroz',
    why: 'Partes de la fragancia se unieron con grasas duras en granitos como de arroz.',
  },
  separation: {
    plain: 'separación',
    aside: 'falsa traza',
    why: 'El aceite y la sosa disuelta se separaron otra vez: hay aceite de un lado y jabón cargado de sosa del otro.',
  },
  'stearic-spots': {
    plain: 'puntos de estearina',
    why: 'Las grasas duras cuajaron antes de hacerse jabón y dejaron puntos pálidos y cerosos sin color.',
  },
  rancidity: {
    plain: 'rancidez',
    aside: 'manchas naranjas',
    why: 'El aceite que quedó en el jabón se enranció: manchas naranjas y olor a viejo.',
  },
  'air-bubbles': {
    plain: 'burbujas de aire',
    why: 'Entró aire al batir o quedó atrapado en la masa espesa y dejó agujeritos secos.',
  },
  'humidity-dew': {
    plain: 'jabón que suda',
    why: 'La glicerina del jabón toma agua del aire húmedo, y queda en la barra como gotitas.',
  },
  'soft-from-carrier': {
    plain: 'blando por demasiado vehículo',
    why: 'El aceite, la glicerina o el agua del color dejó esa parte blanda o grasosa.',
  },
  'light-fade': {
    plain: 'desteñido por la luz',
    why: 'La luz del día o de las lámparas aclaró el color; lo que estuvo a oscuras lo conserva.',
  },
  'fragrance-discolouration': {
    plain: 'color de la fragancia',
    why: 'Algo del aroma que no es vainillina tiñó el jabón.',
  },
  'reactive-metal': {
    plain: 'mancha de metal',
    why: 'Una olla, molde, utensilio o rejilla de un metal que la sosa ataca dejó una marca gris, oscura o verde.',
  },
  'mica-oil-pools': {
    plain: 'charcos de aceite con mica',
    why: 'Se dibujó arriba con más aceite del que el jabón podía absorber, y quedó en charquitos brillantes.',
  },
  'wire-drag': {
    plain: 'rayas del cortador',
    why: 'El alambre o la hoja arrastró granos o color por la cara del corte. Justo debajo la barra está limpia.',
  },
  'mould-growth': {
    plain: 'moho',
    why: 'Alimento fresco o humedad constante dio de comer a algo que crece. Ese jabón no es para la piel.',
  },
  'layers-apart': {
    plain: 'capas que se separan',
    why: 'La capa de abajo ya había cuajado, o tenía aceite, mica o ceniza encima, y la siguiente no pudo agarrarse.',
  },
  'muddy-swirl': {
    plain: 'remolino turbio',
    aside: 'mezclado de más',
    why: 'Los colores se removieron o vertieron tanto, o tan líquidos, que se hicieron uno.',
  },
  'sunk-swirl': {
    plain: 'remolino hundido',
    why: 'La masa de abajo era muy líquida para sostener el color, o se vertió desde alto, y se fue al fondo.',
  },
  warped: {
    plain: 'barras torcidas',
    why: 'Un lado perdió el agua antes que el otro y encogió, y la barra se dobló.',
  },
  'loose-mica': {
    plain: 'mica suelta encima',
    why: 'La mica espolvoreada en seco, o sobre jabón ya cuajado, queda sin agarre y se sale al tocarla.',
  },
  'gel-shifted-colour': {
    plain: 'un color que el gel cambió',
    why: 'El jabón que se calentó entero quedó más claro por dentro, y la misma dosis se ve más intensa o de otro tono.',
  },
  'unsuitable-colour': {
    plain: 'un color que no es para jabón',
    why: 'Crayón, tinte de velas, pintura o color de cocina se hace para otra cosa: en jabón hace grumos, corre, se va o cambia.',
  },
  'unmoulded-early': {
    plain: 'desmoldado demasiado pronto',
    why: 'El jabón aún no estaba firme y se pegó, se rompió o se marcó. A esa edad todavía es cáustico.',
  },
  'mould-texture': {
    plain: 'marcas del molde o del forro',
    why: 'Los pliegues del forro, o aire y agua contra él, se imprimieron en los lados. Es solo estético.',
  },
  'wrinkled-top': {
    plain: 'superficie arrugada',
    aside: 'piel de cocodrilo',
    why: 'Arriba se hizo una piel mientras el calor de abajo aún la movía, y se plegó. Es solo estético.',
  },
});
