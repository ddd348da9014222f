/** What the desk says in a shop's server beside what it says everywhere. */
type ServerWords = {
  readonly open: string
  readonly answer: string
  readonly words: string
  readonly rosterFile: string
  readonly send: string
  readonly tickets: (where: string) => string
  readonly noTickets: string
  readonly ticketLine: (ticket: string, team: string, state: string) => string
  readonly takenBy: (name: string) => string
  readonly nobody: string
  readonly place: (stations: string, from: string, to: string) => string
  readonly postAgain: string
  readonly postedAgain: (ticket: string) => string
  readonly ticket: (ticket: string) => string
  readonly messageTo: (order: string) => string
  readonly morning: (day: string) => string
  readonly nothing: string
  readonly drawing: string
  readonly loadComes: string
  readonly todo: (text: string, todo: string) => string
}

export const serverWords = {
  en: {
    open: 'Open',
    answer: 'Answer, or send a file',
    words: 'Your answer',
    rosterFile: 'A roster (CSV or spreadsheet) or artwork',
    send: 'Send',
    tickets: (where) => (where === '' ? 'Open tickets' : `Open tickets: ${where}`),
    noTickets: 'No open ticket there.',
    ticketLine: (ticket, team, state) => `${ticket} ${team}: ${state}`,
    takenBy: (name) => `taken by ${name}`,
    nobody: 'nobody has taken it',
    place: (stations, from, to) => `${stations} ${from} to ${to}`,
    postAgain: 'Post a lost ticket again',
    postedAgain: (ticket) => `Ticket ${ticket} is posted again in the bench channel.`,
    ticket: (ticket) => `Ticket ${ticket}`,
    messageTo: (order) => `A message to the customer of order ${order}`,
    morning: (day) => `Morning sheet, ${day}`,
    nothing: 'Nothing is waiting.',
    drawing: 'Drawing the load…',
    loadComes: 'The load is being drawn; it comes into the owner’s channel.',
    todo: (text, todo) => `${text} → ${todo}`,
  },
  es: {
    open: 'Abrir',
    answer: 'Responder o enviar un archivo',
    words: 'Su respuesta',
    rosterFile: 'Una lista (CSV u hoja de cálculo) o un diseño',
    send: 'Enviar',
    tickets: (where) => (where === '' ? 'Órdenes abiertas' : `Órdenes abiertas: ${where}`),
    noTickets: 'No hay órdenes abiertas ahí.',
    ticketLine: (ticket, team, state) => `${ticket} ${team}: ${state}`,
    takenBy: (name) => `la tiene ${name}`,
    nobody: 'nadie la ha tomado',
    place: (stations, from, to) => `${stations} de ${from} a ${to}`,
    postAgain: 'Publicar otra vez una orden perdida',
    postedAgain: (ticket) => `La orden ${ticket} se publica otra vez en el canal de la mesa.`,
    ticket: (ticket) => `La orden ${ticket}`,
    messageTo: (order) => `Un mensaje al cliente del pedido ${order}`,
    morning: (day) => `Hoja de la mañana, ${day}`,
    nothing: 'No hay nada pendiente.',
    drawing: 'Dibujando la carga…',
    loadComes: 'Se está dibujando la carga; llega al canal del dueño.',
    todo: (text, todo) => `${text} → ${todo}`,
  },
} as const satisfies { readonly [language: string]: ServerWords }
