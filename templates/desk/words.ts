import type { Order } from '../../src/domain/order/order.ts'
import type { Gate } from '../../src/domain/press/press-plan.ts'
import type { OrderState } from '../../src/ports/work-records.ts'
import { plural } from '../plural.ts'
import { ended } from './load/words.ts'

type HandOver = Order['handOver']

/** An earlier order as the owner finds it in the books. */
type EarlierNamed = { readonly orderId: string; readonly revision: number; readonly needBy: string }

/** What the desk itself says: progress, states, tickets in the bench channel, and the owner's sheet. */
export type DeskWords = {
  readonly progress: { readonly drawing: string; readonly done: string; readonly planning: string; readonly printing: string }
  readonly states: { readonly [State in OrderState]: string }
  readonly status: (state: string, when: string | null) => string
  /** Added to the status of an order that is collected in two parts. */
  readonly firstPart: (garments: number, of: number, when: string) => string
  readonly stopped: string
  readonly placeLost: string
  readonly signedOff: (revision: number, when: string) => string
  readonly onBench: (ticket: string) => string
  readonly ticketFor: (ticket: string, team: string) => string
  readonly needed: (when: string) => string
  readonly promisedAsWanted: (when: string) => string
  readonly promisedAndWanted: (promised: string, wanted: string) => string
  readonly inTwoParts: (garments: number, of: number, first: string) => string
  readonly pieces: (count: number) => string
  readonly gates: string
  readonly gateNames: { readonly [Code in Gate['code']]: string }
  /** By how it is handed over: who has it mailed is not asked to come. */
  readonly ready: { readonly [way in HandOver]: string }
  readonly dayBefore: {
    readonly ready: { readonly [way in HandOver]: (when: string) => string }
    readonly onTime: (when: string) => string
    readonly collects: (name: string) => string
  }
  readonly papers: string
  readonly noTicket: string
  readonly notOpen: string
  readonly sheet: string
  readonly send: string
  readonly again: string
  readonly holdLapsed: (revision: number) => string
  /** A change of a signed order that nobody signed: what was signed is made. */
  readonly changeLapsed: (revision: number, signed: number) => string
  readonly replaced: (revision: number) => string
  readonly forgotten: string
  readonly picture: (revision: number) => string
  readonly ownerNote: {
    /** `who`: team, person and order, as far as they are known. */
    readonly person: (who: string, why: 'asked' | 'document') => string
    readonly complaint: (kind: string, text: string) => string
    readonly cancelBegun: (name: string, begun: number, lines: number) => string
    readonly earlier: (text: string, found: readonly EarlierNamed[]) => string
    readonly stuck: (step: string, reason: string) => string
    readonly cannotPlan: (reasons: string) => string
  }
  readonly cancelled: string
  readonly cancelledByShop: string
  /** To a customer who wants an earlier order again and may not see it by what the desk knows. */
  readonly earlierAsked: string
  /** On the owner's button that hands an earlier order to whoever asked. */
  readonly releaseEarlier: (team: string, needBy: string) => string
  readonly tooLate: string
  readonly handedOver: string
  /** On a cancelled order's ticket at the bench, and to whoever holds it. */
  readonly ticketCancelled: string
  readonly calledBack: (ticket: string, holder: string) => string
  readonly cancelOrder: string
}

export const deskWords = {
  en: {
    progress: {
      drawing: 'Drawing your order and counting stones…',
      done: 'Your proof is ready below.',
      planning: 'Signed. Planning the benches…',
      printing: 'Printing the job ticket…',
    },
    states: {
      asked: 'being put together',
      quoted: 'shown to you, waiting for your sign-off',
      'signed-off': 'signed off',
      planned: 'planned',
      ticketed: 'ticket printed',
      'on-bench': 'on the bench',
      checked: 'checked',
      bagged: 'bagged and ready',
      collected: 'collected',
      cancelled: 'cancelled',
    },
    status: (state, when) => (when === null ? `Your order is ${state}.` : `Your order is ${state}; promised for ${when}.`),
    firstPart: (garments, of, when) => `You collect about ${garments} of the ${of} garments before: ${when}.`,
    stopped:
      'Work on your order is stopped: something about your garments must be settled first, and nothing is pressed until it is. The shop will be in touch with you; the promised time may change.',
    placeLost:
      'That time was taken while you decided. I am working out the next honest date; please look at the new proof and sign it.',
    signedOff: (revision, when) => `Revision ${revision} is signed off. We promise it for ${when}.`,
    onBench: (ticket) => `Job ticket ${ticket} is on the bench. I will say when it is ready.`,
    ticketFor: (ticket, team) => `Ticket ${ticket} · ${team}`,
    needed: (when) => `Wanted ${when}`,
    promisedAsWanted: (when) => `Promised ${when}, as wanted`,
    promisedAndWanted: (promised, wanted) => `Promised ${promised} · wanted ${wanted}`,
    inTwoParts: (garments, of, first) => `FIRST PART ${first}: ${garments} of ${of} garments; ask which`,
    pieces: (count) => plural(count, 'garment', 'garments'),
    gates: 'Gates before pressing',
    gateNames: {
      'count-in': 'count-in',
      strings: 'strings of a child’s garment',
      'water-drops': 'water drops',
      'test-press': 'test press',
      'bleed-test': 'bleed test',
      certificate: 'certificate of the lot',
      coupon: 'coupon for the stone lot',
      'first-piece': 'first piece signed',
    },
    ready: {
      collect: 'Your order is bagged and ready to be collected.',
      field: 'Your order is bagged; we bring it to the field.',
      post: 'Your order is bagged and goes into the mail.',
    },
    dayBefore: {
      ready: {
        collect: (when) => `Your order is bagged and waits for you; we promised it for tomorrow, ${when}.`,
        field: (when) => `Your order is bagged; we bring it to the field as promised for tomorrow, ${when}.`,
        post: (when) => `Your order is bagged and goes into the mail, as promised for tomorrow, ${when}.`,
      },
      onTime: (when) => `Your order is on the bench and on time for tomorrow, ${when}. I will say when it is bagged.`,
      collects: (name) => `It is handed over to ${name}, as you named; tell us if somebody else comes.`,
    },
    papers: 'Your papers: the price slip, and the care card with how to wash it.',
    noTicket: 'There is no such ticket in this shop.',
    notOpen: 'This ticket is no longer open; look for its newest revision.',
    sheet: 'Job ticket (PDF)',
    send: 'Send',
    again: 'Try again',
    changeLapsed: (revision, signed) =>
      `Your change (revision ${revision}) is not signed, and its place is no longer held. Until you sign it we make what you signed before, revision ${signed}. You can still sign it: I check the date again first.`,
    holdLapsed: (revision) =>
      `The place for revision ${revision} is no longer held. You can still sign it: I check the date again first.`,
    forgotten: 'The people of this order are forgotten; what was written here is deleted.',
    replaced: (revision) => `Replaced by revision ${revision}. Do not press from this ticket.`,
    picture: (revision) => `Proof of revision ${revision}: front and back, to scale`,
    ownerNote: {
      person: (who, why) =>
        why === 'asked'
          ? `A customer asks for a person: ${who}. Call or write to them.`
          : `An order could not be put together: ${who}. The customer was told that a person looks at it.`,
      complaint: (kind, text) => `Complaint (${kind}): ${text}`,
      cancelBegun: (name, begun, lines) =>
        `${name}: the customer wants to cancel, but ${begun} of ${lines} lines are cut or further. Talk with them; you decide.`,
      earlier: (text, found) =>
        [
          `A customer asks for an earlier order again: ${text}`,
          found.length === 0
            ? 'No signed order of this team is in the books: ask which one is meant.'
            : `Signed for this team: ${found.map(({ orderId, revision, needBy }) => `${orderId} revision ${revision}, wanted ${needBy.slice(0, 10)}`).join('; ')}. Check who asks before a list of names goes out.`,
        ].join('\n'),
      stuck: (step, reason) => `The step "${step}" gave up: ${reason}`,
      cannotPlan: (reasons) =>
        `A customer’s order could not be planned. ${reasons} They were told that the shop will look into it.`,
    },
    cancelled: 'Your order is cancelled. Nothing was cut.',
    earlierAsked:
      'A list of players is shown only to whoever ordered it. If you have the address of that order’s page, write “same as last time” and paste it here. Otherwise the shop, which is told now, hands it over to you. You can also just tell me what you need.',
    releaseEarlier: (team, needBy) => `Hand over: ${team}, ${needBy}`,
    cancelledByShop: 'Your order is cancelled. For what was made already, talk with the shop.',
    tooLate: 'Work on it has begun, so a person at the shop will answer you about cancelling.',
    handedOver: 'Your order was handed over already. If something is wrong with it, tell me what.',
    ticketCancelled: 'Cancelled. Do not cut or press from this ticket; take its printed sheets away.',
    calledBack: (ticket, holder) =>
      `${ticket} is cancelled. ${holder}, please stop, take its printed sheets away and put its garments and pieces aside.`,
    cancelOrder: 'Cancel the order',
  },
  es: {
    progress: {
      drawing: 'Dibujando su pedido y contando piedras…',
      done: 'Su prueba está lista abajo.',
      planning: 'Firmado. Planeando las mesas…',
      printing: 'Imprimiendo la orden de trabajo…',
    },
    states: {
      asked: 'en preparación',
      quoted: 'mostrado, esperando su firma',
      'signed-off': 'firmado',
      planned: 'planeado',
      ticketed: 'con orden impresa',
      'on-bench': 'en la mesa de trabajo',
      checked: 'revisado',
      bagged: 'embolsado y listo',
      collected: 'entregado',
      cancelled: 'cancelado',
    },
    firstPart: (garments, of, when) => ended(`Unas ${garments} de las ${of} prendas las recoge antes: ${when}`),
    stopped:
      'El trabajo en su pedido está detenido: primero hay que resolver algo de sus prendas, y hasta entonces no se prensa nada. El taller se pondrá en contacto con usted; la hora prometida puede cambiar.',
    status: (state, when) =>
      when === null ? `Su pedido está ${state}.` : ended(`Su pedido está ${state}; prometido para el ${when}`),
    placeLost:
      'Ese lugar se ocupó mientras usted decidía. Calculo la siguiente fecha segura; revise la nueva prueba y fírmela, por favor.',
    signedOff: (revision, when) => ended(`La revisión ${revision} está firmada. La prometemos para el ${when}`),
    onBench: (ticket) => `La orden de trabajo ${ticket} está en la mesa. Le aviso cuando esté lista.`,
    ticketFor: (ticket, team) => `Orden ${ticket} · ${team}`,
    needed: (when) => `Se necesita ${when}`,
    promisedAsWanted: (when) => `Prometido para el ${when}, como se pidió`,
    promisedAndWanted: (promised, wanted) => `Prometido para el ${promised} · se pidió para el ${wanted}`,
    inTwoParts: (garments, of, first) => `PRIMERA PARTE ${first}: ${garments} de ${of} prendas; pregunte cuáles`,
    pieces: (count) => plural(count, 'prenda', 'prendas'),
    gates: 'Controles antes de prensar',
    gateNames: {
      'count-in': 'conteo de entrada',
      strings: 'cordones de prenda infantil',
      'water-drops': 'gotas de agua',
      'test-press': 'prueba de prensa',
      'bleed-test': 'prueba de sangrado',
      certificate: 'certificado del lote',
      coupon: 'cupón del lote de piedras',
      'first-piece': 'primera pieza firmada',
    },
    ready: {
      collect: 'Su pedido está embolsado y listo para recoger.',
      field: 'Su pedido está embolsado; lo llevamos al campo.',
      post: 'Su pedido está embolsado y sale por correo.',
    },
    dayBefore: {
      ready: {
        collect: (when) => `Su pedido está embolsado y le espera; lo prometimos para mañana, ${when}.`,
        field: (when) => `Su pedido está embolsado; lo llevamos al campo como prometimos para mañana, ${when}.`,
        post: (when) => `Su pedido está embolsado y sale por correo, como prometimos para mañana, ${when}.`,
      },
      onTime: (when) => `Su pedido está en el taller y a tiempo para mañana, ${when}. Le aviso cuando esté embolsado.`,
      collects: (name) => `Se entrega a ${name}, como usted indicó; díganos si viene otra persona.`,
    },
    papers: 'Sus papeles: la nota con el precio y la tarjeta de cuidado, que dice cómo lavarlo.',
    noTicket: 'No hay tal orden en este taller.',
    notOpen: 'Esta orden ya no está abierta; busque su revisión más nueva.',
    sheet: 'Orden de trabajo (PDF)',
    send: 'Enviar',
    again: 'Intentar otra vez',
    changeLapsed: (revision, signed) =>
      `Su cambio (revisión ${revision}) no está firmado y ya no guardamos su lugar. Hasta que lo firme hacemos lo que firmó antes, la revisión ${signed}. Aún puede firmarlo: antes reviso otra vez la fecha.`,
    holdLapsed: (revision) =>
      `Ya no guardamos el lugar de la revisión ${revision}. Aún puede firmarla: antes reviso otra vez la fecha.`,
    forgotten: 'Los datos de las personas de este pedido se borraron, con lo que decía aquí.',
    replaced: (revision) => `Reemplazada por la revisión ${revision}. No prense con esta orden.`,
    picture: (revision) => `Prueba de la revisión ${revision}: frente y espalda, a escala`,
    ownerNote: {
      person: (who, why) =>
        why === 'asked'
          ? `Un cliente pide hablar con una persona: ${who}. Llámelo o escríbale.`
          : `Un pedido no se pudo armar: ${who}. Al cliente se le dijo que una persona lo ve.`,
      complaint: (kind, text) => `Queja (${kind}): ${text}`,
      cancelBegun: (name, begun, lines) =>
        `${name}: el cliente quiere cancelar, pero ${begun} de ${lines} líneas ya están cortadas o más adelante. Hable con él; usted decide.`,
      earlier: (text, found) =>
        [
          `Un cliente pide repetir un pedido anterior: ${text}`,
          found.length === 0
            ? 'No hay ningún pedido aprobado de este equipo en los libros: pregunte cuál es.'
            : `Aprobados para este equipo: ${found.map(({ orderId, revision, needBy }) => `${orderId} revisión ${revision}, para el ${needBy.slice(0, 10)}`).join('; ')}. Vea quién lo pide antes de mandar una lista de nombres.`,
        ].join('\n'),
      stuck: (step, reason) => `El paso "${step}" se detuvo: ${reason}`,
      cannotPlan: (reasons) => `El pedido de un cliente no se pudo planear. ${reasons} Se le dijo que el taller lo revisa.`,
    },
    cancelled: 'Su pedido está cancelado. No se cortó nada.',
    earlierAsked:
      'Una lista de jugadores se muestra solo a quien la pidió. Si tiene la dirección de la página de ese pedido, escriba «igual que la vez pasada» y péguela aquí. Si no, el taller, que ya está avisado, se la entrega. También puede decirme lo que necesita.',
    releaseEarlier: (team, needBy) => `Entregar: ${team}, ${needBy}`,
    cancelledByShop: 'Su pedido está cancelado. Por lo que ya estaba hecho, hable con el taller.',
    tooLate: 'El trabajo ya empezó, así que una persona del taller le responderá sobre la cancelación.',
    handedOver: 'Su pedido ya se entregó. Si algo no está bien, dígame qué.',
    ticketCancelled: 'Cancelada. No corte ni prense con esta orden; retire sus hojas impresas.',
    calledBack: (ticket, holder) =>
      `${ticket} está cancelada. ${holder}, deténgase, retire sus hojas impresas y aparte sus prendas y piezas.`,
    cancelOrder: 'Cancelar el pedido',
  },
} as const satisfies { readonly [language: string]: DeskWords }
