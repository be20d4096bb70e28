import { spaced } from '../../../over-lines.ts';

/** Animals near lye, and what they do there. */
export const ANIMAL_WORDS = {
  animal: spaced`
    marrano, marrana, marranito, puerquito, lechon, lechoncito, dog, dogs, doggy, doggo, puppy, pup,
    puppies, pupper, pooch, cat, cats, kitty, kitten, kittens, hen, hens, chicken, chickens, rooster, duck,
    ducks, rabbit, rabbits, bunny, parrot, budgie, parakeet, horse, pony, piglet, hamster, gerbil,
    guinea pig, ferret, hedgehog, pet, pets, labrador, retriever, terrier, poodle, chihuahua, beagle,
    dachshund, goldendoodle, bulldog, goat kid, baby goat, my goat, nanny goat, alpaca, squirrel, perro,
    perra, perros, perrita, perrito, cachorro, cachorra, cachorrito, gato, gata, gatos, gatito, gatita,
    gatitos, michi, minino, gallina, gallinas, gallo, pollito, pollo, conejo, coneja, conejos, conejito,
    loro, cotorra, pajaro, pajarito, canario, periquito, caballo, yegua, cerdito, cobaya, cuyo, huron,
    tortuga, mascota, mascotas, oveja, cabrito, mi cabra, la cabra, peritto, perrro, gatto, schnauzer,
    caniche, my pig, the pig, my bird, the bird, my lab, our lab, my husky, my cow, the cow, mi vaca,
    la vaca, el burro, mi cerdo, el cerdo, el pato, mi pato, my turtle, the turtle, my tortoise, my lizard,
    our sheep, border collie, german shepherd, chick, chicks, goats, lambs, gecko, snake, iguana, rat,
    rats, mouse pet, pet mouse, guinea pigs, canary, cockatiel, macaw, perrita mia, perrito mio, mi lorito,
    lorito, cachorros, conejillo, chanchito, mi chancho, cerdita, tortuguita, hamsters
  `,
  /** What an animal does with lye, or what it does to an animal. */
  beast: spaced`
    lick, licked, licking, licks, drink, drank, drunk, lapped, lap, lapping, eat, ate, eaten, eats, eating,
    swallow, swallowed, chew, chewed, chewing, chews, bit, bite, nibbled, gobbled, scoffed, wolfed, stole,
    got into, gets into, stepped, step, steps, walked, walks, ran through, paw, paws, muzzle, snout, nose,
    whiskers, fur, coat, feathers, belly, face, tongue, mouth, eye, eyes, tail, foaming, drooling, drool,
    gagging, vomiting, vomited, vomit, throwing up, threw up, puking, whining, whimpering, yelping, yelped,
    pawing, squinting, limping, burn, burned, burnt, burns, splashed, spilled, fell, knocked, knocked over,
    tipped, rolled, sniffed, sniffing, jumped, touched, stuck, lamio, lamido, lamiendo, lame, lamer, bebio,
    bebido, bebiendo, tomo, comio, comido, comiendo, comer, comer un, trago, tragado, tragar, mordio,
    mordido, masticado, mastico, piso, pisado, pisa, camino, paso por, metio, metido, patas, pata, patitas,
    hocico, morro, pelo, pelaje, lomo, plumas, pico, picoteando, picoteado, picoteo, lengua, boca, ojo,
    ojos, barriga, panza, babea, babeando, baba, babas, vomita, vomito, vomitando, aulla, aullando, gime,
    gimiendo, llora, llorando, quema, quemo, quemado, salpico, cayo, caido, tiro, volco, olfateo, olio,
    revolco, salto, rasca, chupo, chupado, chupando, robo, ate some, eating some, poisoned, envenenado,
    intoxicado, vet, vets, veterinarian, veterinario, veterinaria, mordisqueo, mordisquea, mordisqueando,
    gnawed, pecked, pecking, peck, pecks, shaking his head, shaking her head, acting weird, acting strange,
    acting funny, lethargic, wobbly, maulla, maullando, ladra, temblando, trembling, shaking, raro, rara,
    decaido, decaida, se sacude, no come, toco, tocado, se metio, se meo, chupeteo, olisqueo, se revolco,
    camino sobre, camino por, paso por encima, se subio, se cayo, sniff, sniffs, stepping, walking,
    jumped in, sat in, slept on, splash, drip, dripped, back, her back, his back, comieron, bebieron,
    lamieron, pisaron, tragaron, picotearon, se quemo, patita, restos
  `,
} as const;
