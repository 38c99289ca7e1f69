import { joined } from "../joined.ts";
import { combined } from "./combined.ts";
import type { OutcomeWords } from "./outcome-words.ts";

/** What is said with a word before it: `presque propre`, `pas encore en place`. */
const GOOD = joined(
  "au point | bien | dans le tempo | en place | ensemble | fluide | juste | net | parfait | propre | régulier | stable | sûr",
);

const FAULT = "accroc | arrêt | canard | couac | dérapage | trou de mémoire";
const FAULT_FEMININE = "erreur | faute | fausse note | hésitation";
const FAULTS = joined(
  "accrocs | arrêts | canards | couacs | dérapages | erreurs | fautes | fausses notes | hésitations | trous de mémoire",
);

/**
 * How it went, in French. Words: reference lexicon of practice words, class outcome, and from memory. A single word
 * that also stands in what is said of a pain is none: `précis`, `facilement`.
 */
export const FRENCH_OUTCOMES: OutcomeWords = {
  reached: `
    acquis | aisé | aisée | assez bien | assez propre | au point | beau | beau son | beaucoup mieux | bel effort |
    belle sonorité | bien | bien calé | bien chantant | bien en place | bien ensemble | bien joué | bien mieux |
    bien rythmé | bien senti | bon | bon son | bon tempo | bonne | bonne intonation | bonne justesse |
    bonne sonorité | bravo | c'est acquis | c'est bien | c'est bon | c'est dans la poche | c'est mieux que bien |
    c'est parfait | calé | carré | dans la poche | dans le tempo | dans les doigts | en place | enfin | enfin propre |
    excellent | excellente | facile | fluide | fluide et propre | fluidité | formidable | franchement bien | gagné |
    génial | géniale | homogène | hourra | imparable | impec | impeccable | joli | jolie | juste | juste et propre |
    limpide | léger | magnifique | maîtrisé | maîtrisée | mémorisé | mémorisée | net | nette | nettement mieux |
    nickel | ok | ouais | ouep | ouf | ouf enfin | oui | parfait | pas de faute | pas de fautes | pas de problème |
    pas de souci | pas de soucis | pas mal | pas mal du tout | pas une faute | passe | pile poil | plein de progrès |
    plus aucune faute | propre | propre enfin | propre et net | propre et régulier | propre maintenant |
    propre partout | réglé | régulier | régulière | réussi | réussi enfin | réussie | sans accroc | sans accroche |
    sans accrocs | sans aucune faute | sans couac | sans difficulté | sans effort | sans erreur | sans faute |
    sans hésitation | sans hésiter | sans m'arrêter | sans problème | sans souci | sans stress | satisfaisant |
    satisfaisante | satisfait du résultat | solide | solide partout | souple | stable | super | superbe | sûr |
    tient bien | tient la route | tout bon | tout est en place | tout juste et propre | tout passe | tout roule |
    tout y est | tranquille | trop bien | très bien | très correct | très propre | validé | victoire | yes | youpi |
    zéro faute | zéro fautes | à l'aise | à la perfection | à tempo | ça coule | ça glisse | ça le fait | ça marche |
    ça marche bien | ça marche enfin | ça passe | ça passe bien | ça roule | ça roule tout seul | ça sonne |
    ça sonne bien | ça tient | ça tourne | ça tourne bien | ça va | étonnamment bien |
    ${combined("aucun | pas un | sans | sans aucun", FAULT)} |
    ${combined("aucune | pas une | sans | sans aucune", FAULT_FEMININE)} |
    ${combined("0 | pas de | sans | zéro", FAULTS)}
  `,
  nearly: `
    acceptable | aléatoire | arrêts | assez inégal | assez moyen | bien mais lent | bof | comme ci comme ça |
    convenable | correct | couci couça | en bonne voie | en cours | en progrès | en travail | encore fragile |
    encore inégal | encore lent | encore moyen | encore quelques fautes | encore un peu lent | encore à polir |
    erreurs | faute | fautes | fragile | inégal | irrégulier mais mieux | limite | limite limite | mais lent | mieux |
    mieux mais lent | mieux qu'avant | mieux qu'hier | mieux que la dernière fois | mieux que la semaine dernière |
    mitigé | mouais | moyen | moyen moyen | moyen plus | moyennement | par moments | parfois | pas encore au point |
    pas encore parfait | pas encore propre | pas encore sûr | pas encore tout à fait | pas loin | pas parfait |
    pas si mal | pas toujours | pas tout à fait | pas trop mal | passable | passable mais lent | petit à petit |
    petites fautes | plus ou moins | plus sûr | plutôt mieux | potable | presque | presque au point | presque bien |
    presque parfait | presque propre | presque sans faute | presque ça | progrès | propre mais lent |
    quelques accrocs | quelques couacs | quelques erreurs | quelques fautes | quelques hésitations |
    quelques progrès | un peu fragile | un peu inégal | un peu mieux | une fois sur deux | variable | à améliorer |
    à confirmer | à consolider | à moitié | à peaufiner | à peu près | à peu près bien | à peu près propre | à polir |
    à retravailler | à revoir | ça avance | ça commence | ça commence à venir | ça dépend | ça ira | ça progresse |
    ça s'améliore | ça se met en place | ça va mieux | ça vient | ça vient doucement | ça vient petit à petit |
    ${combined("moyennement | parfois | pas encore tout à fait | pas toujours | pas tout à fait | presque", GOOD)} |
    ${combined("1 | un | un petit | un seul", FAULT)} |
    ${combined("1 | une | une petite | une seule", FAULT_FEMININE)} |
    ${combined("2 | deux | peu de | quelques", FAULTS)}
  `,
  not: `
    accroc | accroche | accroché | accrocs | affreuse | affreux | atroce | aïe | bancal | bancale |
    beaucoup de fautes | beaucoup trop rapide | beaucoup trop vite | bloque | bloqué | bourrin | brouillon |
    brouillé | bute | bâclé | bâclée | carrément raté | cata | catastrophe | catastrophique | chaotique | coince |
    confus | confuse | couac | couacs | crispé | crissant | crissements | dans le mur | difficile | dur | décalé |
    décalée | déraillé | dérape | dérapé | désaccordé | désastre | désastreux | en vrac | encore faux | encore raté |
    essoufflé | essoufflée | fausses notes | faux | flou | floue | galère | grince | grinçant | gros bazar | haché |
    hachée | horreur | horrible | hésitant | impossible | imprécis | imprécise | infaisable | injouable | instable |
    inégal et précipité | inégale | irrégulier | irrégulière | j'y arrive pas | j'y arrive pas encore | je bute |
    je cale | je coince | je me plante | je patauge | je trébuche | la cata | laborieuse | laborieux | loupé |
    loupée | lourd et lent | lourde | mal | massacre | mauvais | mauvais son | mauvaise | moche | mou | médiocre |
    n'importe quoi | non | nul | nul nul | nulle | oups | pas bien | pas bon | pas bonne | pas clair | pas du tout |
    pas en place | pas encore | pas encore ça | pas ensemble | pas fameux | pas fluide | pas glorieux | pas juste |
    pas maîtrisé | pas nickel | pas possible | pas propre | pas régulier | pas réussi | pas solide | pas stable |
    pas terrible | pas top | pas ça | perdu | perdu le fil | perdue | pire | pire qu'hier | plante | planté |
    planté encore | poussif | poussive | presse | précipitation | précipité | précipitée | pâteux | pénible |
    ralenti à la fin | raté | ratée | s'écroule | saccadé | saccadée | sale | sale et précipité | sans rythme |
    savonné | tempo perdu | toujours faux | toujours pas | tout de travers | tout faux | trop bas | trop de fautes |
    trop difficile | trop dur | trop fort | trop haut | trop lent | trop lourd | trop mou | trop pressé |
    trop rapide | trop tard | trop tôt | trop vite | trou de mémoire | trous de mémoire | trébuche | zut | à côté |
    à reprendre | ça accroche | ça bloque | ça casse | ça coince | ça dérape | ça marche pas | ça ne marche pas |
    ça ne passe pas | ça ne sort pas | ça ne vient pas | ça passe pas | ça savonne | ça sort pas | ça traîne |
    ça va pas | ça va trop vite | ça vient pas | échec | échoué | énervant | épouvantable |
    ${combined("jamais | pas | pas assez | pas du tout | toujours pas", GOOD)} |
    ${combined("3 | 4 | 5 | trois | beaucoup de | plein de | plusieurs | trop de", FAULTS)}
  `,
  intensifiers: joined(
    "assez | aujourd'hui | bien | carrément | cette fois | complètement | encore | enfin | franchement",
    "globalement | maintenant | parfaitement | plutôt | si | totalement | tout à fait | très | un peu | vachement",
    "vraiment",
  ),
  negations: "pas | non | jamais | sans | mais | sauf",
};
