// Keeps the page live and sends its forms without a reload. Every form also works without this script.
const main = document.getElementById('main')
const notice = document.getElementById('notice')
const said = main.dataset
const mostPicture = 8 * 1024 * 1024

const tell = (text, tone) => {
  notice.textContent = text
  notice.className = `notice ${tone}`
}

/** A notice is read and taken away by a touch, so that it covers nothing that is to be pressed. */
const takeAway = () => tell('', '')

/** The one way to listen: what goes wrong in a listener is told, never lost. */
const on = (target, type, run) =>
  target.addEventListener(type, async (event) => {
    try {
      await run(event)
    } catch (cause) {
      reportError(cause)
      tell(type === 'submit' ? said.unsent : said.lost, 'trouble')
    }
  })

on(notice, 'click', takeAway)

const freshId = () =>
  Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, '0')).join('')

const renew = (form) => {
  if (form.elements.id) form.elements.id.value = freshId()
}

const wasSent = (form) => {
  renew(form)
  for (const box of form.elements) if (box.matches('textarea, input:not([type=hidden], [type=checkbox])')) box.value = ''
  for (const folded of form.querySelectorAll('details[open]')) folded.open = false
  form.closest('details.roster')?.removeAttribute('open')
}

const choosing = 'form[action$="/choose"]'

/** A question that was answered, or that another came after, stays to be read and cannot be pressed. */
const close = (form) => {
  const held = form.contains(document.activeElement)
  for (const box of form.querySelectorAll('fieldset')) box.disabled = true
  if (held) document.querySelector('[data-live]')?.focus({ preventScroll: true })
}

/** Why it was not done stays where it was pressed until it is pressed again. */
const tellBeside = (form, reason) => {
  form.querySelector(':scope > .refused')?.remove()
  if (!reason) return
  const word = document.createElement('p')
  word.className = 'refused trouble'
  word.textContent = reason
  form.append(word)
  word.scrollIntoView({ block: 'nearest' })
}

const bodyOf = (form, button) => {
  const data = new FormData(form, button)
  return form.enctype === 'multipart/form-data' ? data : new URLSearchParams(data)
}

const send = async (form, button) => {
  const body = bodyOf(form, button)
  // Not form.action: a button named "action" hides it.
  const address = button?.getAttribute('formaction') ?? form.getAttribute('action')
  form.setAttribute('aria-busy', 'true')
  try {
    const answer = await fetch(address, {
      method: 'POST',
      body,
      headers: { accept: 'application/json' },
    })
    const { said: sentence, isDone } = await answer.json()
    const isRefused = !answer.ok || isDone === false
    tell(sentence ?? '', isRefused ? 'trouble' : 'good')
    tellBeside(form, isRefused ? sentence : null)
    if (!answer.ok) return
    // It was not done: what was filled in stays to be mended.
    if (isRefused) return renew(form)
    wasSent(form)
    if (form.matches(choosing)) close(form)
    form.closest('details.fill')?.removeAttribute('open')
    if (line.source?.readyState !== EventSource.OPEN) location.reload()
  } finally {
    form.removeAttribute('aria-busy')
  }
}

on(document, 'submit', async (event) => {
  const form = event.target
  if (!form.matches('[data-send]')) return
  event.preventDefault()
  if (form.getAttribute('aria-busy') !== 'true') await send(form, event.submitter)
})

on(document, 'keydown', (event) => {
  if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) event.target.closest('form[data-send]')?.requestSubmit()
})

// A file that cannot be taken is said before it travels; the shop checks again.
on(document, 'change', (event) => {
  const large = [...(event.target.files ?? [])].find((file) => file.size > mostPicture)
  event.target.setCustomValidity?.(large ? said.large.replace('*', () => large.name) : '')
  event.target.reportValidity?.()
})

const slips = document.querySelector('[data-live]')
const list = slips?.querySelector('ol')
const line = { source: null, lost: false }

const isAtEnd = () => window.innerHeight + window.scrollY > document.documentElement.scrollHeight - 240
/** Shows the newest slip: its end, or its beginning when it is taller than the window. */
const toEnd = () => {
  const last = list?.lastElementChild
  last?.scrollIntoView({ block: last.offsetHeight > window.innerHeight ? 'start' : 'end' })
}

/** Words half typed into a slip, and the place of the hand, survive its replacement. */
const carryOver = (old, fresh) => {
  for (const box of old.querySelectorAll('textarea, select, input:not([type=hidden], [type=file])')) {
    const twin = box.value && fresh.querySelector(`[name="${CSS.escape(box.name)}"]`)
    if (twin) twin.value = box.value
  }
  const held = old.contains(document.activeElement) ? document.activeElement : null
  const named = held?.name && `[name="${CSS.escape(held.name)}"]`
  return () => {
    if (held)
      (fresh.querySelector(`${named}[value="${CSS.escape(held.value)}"]`) ?? fresh.querySelector(named || 'a') ?? slips).focus()
  }
}

const place = (fresh) => {
  const old = document.getElementById(fresh.id)
  if (old) {
    const refocus = carryOver(old, fresh)
    const [folded, twin] = [old, fresh].map((slip) => slip.querySelector('details.slip-fold'))
    if (folded && twin) twin.open = folded.open
    old.replaceWith(fresh)
    return refocus()
  }
  const next = [...list.children].find((slip) => Number(slip.dataset.seq) > Number(fresh.dataset.seq))
  list.insertBefore(fresh, next ?? null)
  slips.querySelector('.none')?.remove()
}

const markup = (event) => {
  const holder = document.createElement('template')
  holder.innerHTML = event.data
  return holder.content.firstElementChild
}

/** What lies open stays open; a form that is being filled in and a count-down that runs stay what they are. */
const keepOpen = (old, fresh) => {
  for (const folded of old.querySelectorAll('details[open][id]')) {
    const twin = fresh.querySelector(`#${CSS.escape(folded.id)}`)
    if (twin && folded.matches('.fill')) twin.replaceWith(folded)
    else if (twin) twin.open = true
  }
  for (const running of old.querySelectorAll('.timer:has([aria-pressed=true])'))
    fresh.querySelector(`#${CSS.escape(running.id)}`)?.replaceWith(running)
}

/** A garment that stands as it stood stays chosen or not, as the hand left it; where no hand was, as the page offers it now. */
const keepChosen = (old, fresh) => {
  for (const box of old.querySelectorAll('.tile input')) {
    if (box.checked === box.defaultChecked) continue
    const twin = fresh.querySelector(`#${CSS.escape(box.id)}`)
    if (twin?.parentElement.className === box.parentElement.className) twin.checked = box.checked
  }
}

const placeSheet = (fresh) => {
  const old = document.getElementById('sheet')
  const held = old.contains(document.activeElement) ? document.activeElement : null
  keepChosen(old, fresh)
  keepOpen(old, fresh)
  old.replaceWith(fresh)
  if (!held || document.activeElement === held) return
  const again = held.isConnected ? held : document.getElementById(held.id || 'now')
  // Where the hand was is folded away now: it is put on the step that comes.
  const visible = again?.checkVisibility() ? again : document.getElementById('now')
  visible?.focus({ preventScroll: Boolean(held.isConnected) })
}

const watch = () => {
  const source = new EventSource(`${slips.dataset.live}?after=${slips.dataset.after}`)
  line.source = source
  on(source, 'open', () => {
    if (line.lost) tell(said.on, 'good')
    line.lost = false
  })
  on(source, 'slip', (event) => {
    const stay = !isAtEnd()
    const fresh = markup(event)
    slips.dataset.after = event.lastEventId
    const isNew = !document.getElementById(fresh.id)
    place(fresh)
    if (fresh.querySelector(choosing))
      for (const slip of list.children)
        if (Number(slip.dataset.seq) < Number(fresh.dataset.seq)) slip.querySelectorAll(choosing).forEach(close)
    if (isNew && !stay) toEnd()
    if (isNew && document.hidden) document.title = `• ${document.title.replace(/^• /, '')}`
  })
  on(source, 'sheet', (event) => placeSheet(markup(event)))
  on(source, 'over', () => location.reload())
  on(source, 'error', () => {
    if (!line.lost) tell(said.lost, 'trouble')
    line.lost = true
    if (source.readyState === EventSource.CLOSED) setTimeout(watch, 5000)
  })
}

if (slips) {
  watch()
  if (!location.hash && !document.getElementById('sheet')) on(window, 'load', toEnd)
  on(document, 'visibilitychange', () => {
    document.title = document.title.replace(/^• /, '')
  })
}

// A count-down beside the press's own timer: a reminder with a sound, nothing that the press obeys.
const beep = () => {
  const audio = new AudioContext()
  const tone = audio.createOscillator()
  tone.frequency.value = 880
  tone.connect(audio.destination)
  tone.start()
  tone.stop(audio.currentTime + 0.6)
  tone.onended = () => audio.close()
}

const countDown = (button, output, until) => {
  const left = Math.ceil((until - performance.now()) / 1000)
  output.textContent = left > 0 ? String(left) : button.dataset.over
  if (left > 0) return setTimeout(() => countDown(button, output, until), 200)
  button.removeAttribute('aria-pressed')
  beep()
}

on(document, 'click', (event) => {
  const button = event.target.closest('[data-seconds]')
  if (!button || button.getAttribute('aria-pressed') === 'true') return
  button.setAttribute('aria-pressed', 'true')
  countDown(button, button.parentElement.querySelector('output'), performance.now() + Number(button.dataset.seconds) * 1000)
})

// A link to a form opens it.
const openNamed = () => {
  const named = document.getElementById(location.hash.slice(1))
  if (named?.matches('details')) named.open = true
}
openNamed()
on(window, 'hashchange', openNamed)
