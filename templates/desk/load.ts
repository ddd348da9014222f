import type { Fix } from '../../src/domain/schedule/bottleneck.ts'
import type { Cause } from '../../src/domain/schedule/causes.ts'
import type { LearnedStage } from '../../src/domain/schedule/learned-rates.ts'
import type { StationKind } from '../../src/domain/schedule/operation.ts'

/** What stands for a fix in a sentence: whom or what it is about, until when, how long. */
export type FixFacts = { readonly subject: string; readonly at: string; readonly duration: string }

/** The owner's load page and the questions it sends to customers, in words. */
export type LoadWords = {
  readonly title: string
  readonly stationsTitle: string
  readonly dueTitle: string
  readonly pictureAlt: (worst: string) => string
  readonly calm: string
  readonly worst: (name: string, day: string, percent: number) => string
  readonly station: string
  readonly kinds: { readonly [kind in StationKind]: string }
  readonly kindsOf: { readonly [kind in StationKind]: string }
  readonly days: readonly [string, string, string, string, string, string, string]
  readonly date: (month: number, day: number) => string
  readonly duration: (days: number, hours: number, minutes: number) => string
  readonly lateTitle: string
  readonly nobodyLate: string
  readonly late: (job: string, by: string, promised: string) => string
  readonly tight: (job: string, slack: string, promised: string) => string
  readonly causes: { readonly [cause in Cause['cause']]: (duration: string, about: string) => string }
  readonly work: { readonly [prefix: string]: string }
  readonly because: string
  readonly fixesTitle: string
  readonly fixes: { readonly [code in Fix['code']]: (facts: FixFacts) => string }
  readonly buttons: { readonly [code in Fix['code']]: string }
  readonly mended: (job: string) => string
  readonly notMended: (job: string, by: string) => string
  readonly asked: (job: string) => string
  readonly gone: string
  readonly ownerOnly: string
  readonly proposal: {
    readonly 'move-promise': (at: string) => string
    readonly 'split-collection': (ready: string, at: string, rest: string) => string
    readonly 'drop-stones': (at: string) => string
    readonly yes: string
    readonly no: string
    readonly thanks: { readonly 'move-promise': (at: string) => string; readonly 'split-collection': (at: string) => string }
    /** What is said in the customer's name when they agree to leave the stones off. */
    readonly withoutStones: string
    readonly refused: string
    readonly over: string
  }
  readonly answered: { readonly yes: (job: string, what: string) => string; readonly no: (job: string, what: string) => string }
  readonly ratesTitle: string
  readonly ratesLead: string
  readonly stages: { readonly [stage in LearnedStage]: string }
  readonly rate: (took: number, seen: number, spread: number) => string
  readonly rateUnseen: string
  readonly frozen: string
  readonly freeze: string
  readonly thaw: string
  readonly keptTitle: string
  readonly kept: { readonly [reason in 'search' | 'extra-hours' | 'earlier-delivery' | 'put-first' | 'promise-moved']: string }
}

const plural = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`
const joined = (parts: readonly string[]): string => parts.filter((part) => part !== '').join(' ')

export const loadWords = {
  en: {
    title: 'Load',
    stationsTitle: 'Each station and day: busy share of its open time, in percent',
    dueTitle: 'By each day on which orders are due: work due by then against what can be done until then, in percent',
    pictureAlt: (worst) => `The load of the stations by day, the same figures as in the tables below. ${worst}`,
    calm: 'No station is over nine tenths of its time.',
    worst: (name, day, percent) => `Fullest: ${name} on ${day}, ${percent} %.`,
    station: 'Station',
    kinds: { cutter: 'cutter', press: 'press', bench: 'bench', person: 'person' },
    kindsOf: { cutter: 'cutters', press: 'presses', bench: 'benches', person: 'people' },
    days: ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'],
    date: (month, day) => `${month}/${day}`,
    duration: (days, hours, minutes) =>
      joined([
        days > 0 ? plural(days, 'day', 'days') : '',
        hours > 0 ? plural(hours, 'hour', 'hours') : '',
        minutes > 0 || days + hours === 0 ? `${minutes} min` : '',
      ]),
    lateTitle: 'Late or tight',
    nobodyLate: 'Every promise is kept by the plan, none by less than two hours.',
    late: (job, by, promised) => `${job} will be late by ${by}; promised ${promised}.`,
    tight: (job, slack, promised) => `${job} is tight: ready only ${slack} before ${promised}.`,
    causes: {
      work: (duration, about) => `${duration} of work (${about})`,
      wait: (duration, about) => `${duration} of cooling or testing before ${about}`,
      closed: (duration) => `${duration} while the shop is closed`,
      queue: (duration, about) => `${duration} waiting for ${about}`,
      arrival: (duration) => `${duration} until garments or material are here`,
    },
    work: {
      proof: 'proof',
      'count-in': 'count-in',
      'water-drops': 'water drops',
      'test-press': 'test press',
      'bleed-test': 'bleed test',
      'cut-vinyl': 'cutting vinyl',
      'cut-templates': 'cutting templates',
      plugs: 'weeding templates',
      coupon: 'coupon',
      weed: 'weeding',
      brush: 'brushing stones',
      'first-piece': 'first piece',
      press: 'pressing',
      inspect: 'inspecting and bagging',
      remake: 'remake',
    },
    because: 'Why:',
    fixesTitle: 'What would mend it',
    fixes: {
      'move-up': () => 'There is a gap that breaks no other promise: plan it into that gap.',
      'extra-minutes': ({ subject, at, duration }) => `${duration} more at ${subject}, about ${at}.`,
      'open-longer': ({ at, duration }) => `Work on after closing, ${duration} in all, until ${at}.`,
      'earlier-delivery': ({ at, duration }) => `Have garments or material here by ${at}, ${duration} sooner.`,
      'drop-stones': ({ duration }) => `Leave the stones off, which saves ${duration}. The customer must sign that.`,
      'go-before': ({ subject, at }) => `Take it before ${subject}, which is then ready ${at}, still in time.`,
      'split-collection': ({ subject, at }) => `Hand over what is ready by ${at} (${subject} of the lots) and the rest later.`,
      'move-promise': ({ at }) => `Ask the customer for ${at}.`,
    },
    buttons: {
      'move-up': 'Plan it into the gap',
      'extra-minutes': 'Add these extra hours',
      'open-longer': 'Add these extra hours',
      'earlier-delivery': 'The supplier agreed: plan with it',
      'drop-stones': 'Propose it without stones',
      'go-before': 'Put it first',
      'split-collection': 'Ask the customer to collect in two parts',
      'move-promise': 'Ask the customer',
    },
    mended: (job) => `${job} is in time now; every other promise is kept.`,
    notMended: (job, by) => `Even so ${job} would be late by ${by}, or another promise would break. Nothing was changed.`,
    asked: (job) => `The customer of ${job} was asked. The promise stays as it is until they answer.`,
    gone: 'That no longer applies; look at the load as it is now.',
    ownerOnly: 'Only the owner can do that.',
    proposal: {
      'move-promise': (at) =>
        `We are sorry: your order cannot be ready when we promised. It can be ready ${at}. Is that all right? Nothing changes until you say so.`,
      'split-collection': (ready, at, rest) =>
        `We are sorry: not all of your order can be ready in time. ${ready} of the lots can be collected ${at}, the rest ${rest}. Is that all right? Nothing changes until you say so.`,
      'drop-stones': (at) =>
        `We are sorry: with the stones your order cannot be ready ${at}; without them it can. Shall we show you a proof without stones? It counts only if you sign it.`,
      yes: 'Yes, that is fine',
      no: 'No, please call me',
      thanks: {
        'move-promise': (at) => `Thank you. Your order will be ready ${at}.`,
        'split-collection': (at) => `Thank you. The first part will be ready ${at}; we will write again for the rest.`,
      },
      withoutStones: 'No stones, please',
      refused: 'Understood. Somebody from the shop will call you; nothing was changed.',
      over: 'That question is no longer open.',
    },
    answered: {
      yes: (job, what) => `${job}: the customer agreed (${what}).`,
      no: (job, what) => `${job}: the customer said no (${what}). Call them.`,
    },
    ratesTitle: 'How long work takes here',
    ratesLead:
      'Learned from tickets with a start, a signed first piece and a check; used for new promises. Freeze one to keep it.',
    stages: {
      'before-the-press': 'Cutting, weeding, brushing',
      'at-the-press': 'Pressing, inspecting, bagging',
    },
    rate: (took, seen, spread) => `100 planned minutes take ${took} (seen ${seen} times, usually within ${spread})`,
    rateUnseen: 'as the shop set it; nothing seen yet',
    frozen: 'frozen',
    freeze: 'Freeze',
    thaw: 'Let it learn',
    keptTitle: 'Why the plan was changed',
    kept: {
      search: 'a longer search found a better plan',
      'extra-hours': 'extra hours were added',
      'earlier-delivery': 'a delivery comes sooner',
      'put-first': 'a job was put first',
      'promise-moved': 'a customer agreed to a later hour',
    },
  },
  es: {
    title: 'Carga',
    stationsTitle: 'Cada puesto y día: parte ocupada de su tiempo abierto, en por ciento',
    dueTitle: 'Para cada día con entregas: trabajo que vence hasta entonces frente a lo que se puede hacer, en por ciento',
    pictureAlt: (worst) => `La carga de los puestos por día, las mismas cifras que en las tablas de abajo. ${worst}`,
    calm: 'Ningún puesto pasa de nueve décimas de su tiempo.',
    worst: (name, day, percent) => `El más lleno: ${name} el ${day}, ${percent} %.`,
    station: 'Puesto',
    kinds: { cutter: 'cortadora', press: 'plancha', bench: 'mesa', person: 'persona' },
    kindsOf: { cutter: 'cortadoras', press: 'planchas', bench: 'mesas', person: 'personas' },
    days: ['dom', 'lun', 'mar', 'mié', 'jue', 'vie', 'sáb'],
    date: (month, day) => `${day}/${month}`,
    duration: (days, hours, minutes) =>
      joined([
        days > 0 ? plural(days, 'día', 'días') : '',
        hours > 0 ? plural(hours, 'hora', 'horas') : '',
        minutes > 0 || days + hours === 0 ? `${minutes} min` : '',
      ]),
    lateTitle: 'Tarde o justo',
    nobodyLate: 'El plan cumple todas las promesas, ninguna por menos de dos horas.',
    late: (job, by, promised) => `${job} llegará ${by} tarde; prometido ${promised}.`,
    tight: (job, slack, promised) => `${job} va justo: listo solo ${slack} antes de ${promised}.`,
    causes: {
      work: (duration, about) => `${duration} de trabajo (${about})`,
      wait: (duration, about) => `${duration} de enfriado o prueba antes de ${about}`,
      closed: (duration) => `${duration} con la tienda cerrada`,
      queue: (duration, about) => `${duration} esperando ${about}`,
      arrival: (duration) => `${duration} hasta que lleguen prendas o material`,
    },
    work: {
      proof: 'prueba',
      'count-in': 'conteo',
      'water-drops': 'gotas de agua',
      'test-press': 'planchado de prueba',
      'bleed-test': 'prueba de sangrado',
      'cut-vinyl': 'corte de vinilo',
      'cut-templates': 'corte de plantillas',
      plugs: 'limpieza de plantillas',
      coupon: 'muestra',
      weed: 'pelado',
      brush: 'piedras',
      'first-piece': 'primera pieza',
      press: 'planchado',
      inspect: 'revisión y embolsado',
      remake: 'rehacer',
    },
    because: 'Por qué:',
    fixesTitle: 'Qué lo arreglaría',
    fixes: {
      'move-up': () => 'Hay un hueco que no rompe ninguna otra promesa: planearlo en ese hueco.',
      'extra-minutes': ({ subject, at, duration }) => `${duration} más en ${subject}, hacia ${at}.`,
      'open-longer': ({ at, duration }) => `Seguir después del cierre, ${duration} en total, hasta ${at}.`,
      'earlier-delivery': ({ at, duration }) => `Tener prendas o material aquí ${at}, ${duration} antes.`,
      'drop-stones': ({ duration }) => `Dejarlo sin piedras, lo que ahorra ${duration}. El cliente debe firmarlo.`,
      'go-before': ({ subject, at }) => `Hacerlo antes que ${subject}, que queda listo ${at}, aún a tiempo.`,
      'split-collection': ({ subject, at }) => `Entregar lo que esté listo ${at} (${subject} de los lotes) y el resto después.`,
      'move-promise': ({ at }) => `Pedir al cliente ${at}.`,
    },
    buttons: {
      'move-up': 'Planearlo en el hueco',
      'extra-minutes': 'Añadir estas horas',
      'open-longer': 'Añadir estas horas',
      'earlier-delivery': 'El proveedor aceptó: planear así',
      'drop-stones': 'Proponerlo sin piedras',
      'go-before': 'Ponerlo primero',
      'split-collection': 'Pedir al cliente que recoja en dos partes',
      'move-promise': 'Preguntar al cliente',
    },
    mended: (job) => `${job} ya llega a tiempo; las demás promesas se cumplen.`,
    notMended: (job, by) => `Aun así ${job} llegaría ${by} tarde, o se rompería otra promesa. No se cambió nada.`,
    asked: (job) => `Se preguntó al cliente de ${job}. La promesa sigue igual hasta que responda.`,
    gone: 'Eso ya no vale; mire la carga como está ahora.',
    ownerOnly: 'Solo el dueño puede hacer eso.',
    proposal: {
      'move-promise': (at) =>
        `Lo sentimos: su pedido no puede estar listo cuando prometimos. Puede estar listo ${at}. ¿Le parece bien? Nada cambia hasta que lo diga.`,
      'split-collection': (ready, at, rest) =>
        `Lo sentimos: no todo su pedido puede estar listo a tiempo. ${ready} de los lotes se pueden recoger ${at}, el resto ${rest}. ¿Le parece bien? Nada cambia hasta que lo diga.`,
      'drop-stones': (at) =>
        `Lo sentimos: con las piedras su pedido no puede estar listo ${at}; sin ellas sí. ¿Le mostramos una prueba sin piedras? Solo vale si la firma.`,
      yes: 'Sí, está bien',
      no: 'No, llámenme',
      thanks: {
        'move-promise': (at) => `Gracias. Su pedido estará listo ${at}.`,
        'split-collection': (at) => `Gracias. La primera parte estará lista ${at}; escribiremos de nuevo por el resto.`,
      },
      withoutStones: 'Sin piedras, por favor',
      refused: 'Entendido. Alguien de la tienda le llamará; no se cambió nada.',
      over: 'Esa pregunta ya no está abierta.',
    },
    answered: {
      yes: (job, what) => `${job}: el cliente aceptó (${what}).`,
      no: (job, what) => `${job}: el cliente dijo que no (${what}). Llámele.`,
    },
    ratesTitle: 'Cuánto tarda el trabajo aquí',
    ratesLead:
      'Aprendido de órdenes con inicio, primera pieza firmada y revisión; se usa para nuevas promesas. Congele una para mantenerla.',
    stages: {
      'before-the-press': 'Corte, pelado, piedras',
      'at-the-press': 'Planchado, revisión, embolsado',
    },
    rate: (took, seen, spread) => `100 minutos planeados tardan ${took} (visto ${seen} veces, normalmente a ${spread} o menos)`,
    rateUnseen: 'como lo puso la tienda; nada visto aún',
    frozen: 'congelado',
    freeze: 'Congelar',
    thaw: 'Dejar que aprenda',
    keptTitle: 'Por qué cambió el plan',
    kept: {
      search: 'una búsqueda más larga encontró un plan mejor',
      'extra-hours': 'se añadieron horas',
      'earlier-delivery': 'una entrega llega antes',
      'put-first': 'un trabajo se puso primero',
      'promise-moved': 'un cliente aceptó una hora posterior',
    },
  },
} as const satisfies { readonly [language: string]: LoadWords }
