import type { TakenBackPhrases } from '../matters/taken-back.ts'

/** How a change is taken back in Spanish. */
export const esTakenBack: TakenBackPhrases = {
  returning: [
    ...[
      'regresa',
      'regresalo',
      'regresalos',
      'regresemos',
      'vuelve',
      'volvamos',
      'volver',
      'deja',
      'dejalo',
      'dejalos',
      'dejemos',
    ],
    ...[
      'estaba',
      'estaban',
      'antes',
      'queda',
      'quedaba',
      'quedan',
      'prefiero',
      'preferimos',
      'prefieren',
      'era',
      'eran',
      'gustaba',
    ],
    ...['siempre', 'olvida', 'olvidalo', 'otra'],
  ],
  ofWhom: ['a(?:l| la)?', 'del?(?: la)?', 'para', 'con', 'en', 'lo del?(?: la)?'],
  undo: [
    ...['deshaz(?:lo)?', 'deshaga(?:n|lo|nlo)?', 'deshacer', 'cancela (?:eso|lo ultimo|ese cambio)'],
    ...['regresal[oae]s?', 'revierte(?:lo)?', 'echa(?:lo)? para atras'],
  ],
  dismiss: [
    ...[
      'olvidal[oa]',
      'olvida (?:eso|lo (?:ultimo|anterior|que dije))',
      'mejor no',
      'siempre no(?! (?:van|va|llevan|lleva|le|les|quiero|queremos|se|las?|los|el)\\b)',
      'no me hagas? caso',
    ],
    ...['ignora (?:eso|lo anterior|lo ultimo|mi mensaje)', 'haz de cuenta que no dije nada'],
  ],
  asWas: [
    '(?:lo|la|los|las) de (?:es[oae]s?|est[oae]s?|ell[oa]s|los|las)(?: (?:dos|tres|ultimos?))? (?:se )?(?:queda|quede|quedan|queden|deja\\w*|dejen\\w*|siga|sigue)n? (?:como|igual que|tal como) (?:estaban?|antes|iban?|era)',
    '(?:dej[ae](?:n|mos|r)?(?:me|nos)?l?[aoe]?s?|se queda|queda|que (?:se )?quede|vuelve?l?[aoe]|regres[ae]l[aoe]s?)(?: (?:a|al|la|el|los|las))?(?: [\\w#]+)? (?:como|igual (?:que|a como)|tal como|a como) (?:estaba|estaban|antes|iba|iban|venia|lo tenia|era)',
    'como estaban?(?: antes)?(?=[\\s.!,]*$)',
    '(?:lo|la) (?:dejamos|dejas|dejan) (?:como|igual) (?:estaba|antes|que antes)',
  ],
}
