import type { OutcomeWords } from "./outcome-words.ts";

/**
 * How it went, in French. Words: reference lexicon of practice words, class outcome.
 */
export const FRENCH_OUTCOMES: OutcomeWords = {
  reached: `
    acquis | aisé | aisée | assez bien | assez propre | beau | beaucoup mieux | bien | bien en place | bon | bonne |
    c'est bon | en place | enfin | facile | fluide | impeccable | joli | jolie | juste | léger | net | nette |
    nickel | ok | oui | parfait | pas mal | passe | propre | propre partout | régulier | régulière | réussi | réussie | sans
    erreur | sans faute | solide | souple | stable | super | sûr | tranquille | très bien | très propre | ça marche
    | ça passe | ça va
  `,
  nearly: `
    arrêts | bof | comme ci comme ça | correct | en progrès | encore fragile | erreurs | faute | fautes | fragile |
    inégal | limite | mieux | moyen | moyennement | pas encore sûr | pas trop mal | passable | presque |
    presque bien | presque propre | un peu mieux | à peu près | à revoir | ça vient
  `,
  not: `
    accroc | accroche | accroché | accrocs | aïe | bloque | bloqué | brouillon | bute | catastrophe | coince | couac
    | couacs | crispé | difficile | dur | dérape | dérapé | encore raté | essoufflé | essoufflée | faux | flou |
    floue | galère | hésitant | inégale | irrégulier | irrégulière | je bute | lourde | mal | non | nul | nulle |
    pas bien | pas en place | pas encore | pas juste | pas propre | pas régulier | pas terrible | plante | planté |
    presse | précipité | raté | ratée | s'écroule | sale | savonné | trop bas | trop haut | trop rapide | trop vite
    | trébuche | à reprendre | ça accroche | ça casse | ça coince | ça dérape
  `,
  intensifiers: "très | assez | un peu | bien | plutôt | enfin | maintenant | encore | vraiment | si",
  negations: "pas | non | jamais | sans | mais | sauf",
};
