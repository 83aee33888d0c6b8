// Answers while the fields are being filled. A form marked data-live is sent as the plain GET it is, one request at a
// time, without a new step in the history; what is being typed is never overwritten. Without this file the form's own
// button does the same.
(() => {
  const typed = new Map();   // field id -> { value, caret } since it was last sent, or while it has the focus
  const picked = new Map();  // name of a radio group -> value picked since it was last sent
  const folds = new Map();   // fold id -> open, as the reader left it
  let asking = false, again = null, escape = 0, quiet = 0, path = location.pathname;
  let held = null;           // selector of what has the focus, until a finger or the mouse goes elsewhere

  const ask = form => {
    if (asking) { again = form; return; }
    asking = true;
    again = null;
    escape = setTimeout(settle, 4000);
    const address = new URL(form.action);
    address.search = new URLSearchParams([...new FormData(form)].filter(([, value]) => value !== '')).toString();
    Blazor.navigateTo(address.href, { replaceHistoryEntry: true });
  };

  const settle = () => {
    clearTimeout(escape);
    asking = false;
    if (again?.isConnected) ask(again);
  };

  // An answer may bring the field anew that is being typed in: it gets the focus and the caret back.
  const refocus = () => {
    const place = held && document.activeElement === document.body ? document.querySelector(held) : null;
    place?.focus({ preventScroll: true });
    if (place?.selectionStart == null) return;
    const caret = typed.get(place.id)?.caret ?? place.value.length;
    place.setSelectionRange(caret, caret);
  };

  const restore = () => {
    for (const [id, { value, caret }] of typed) {
      const field = document.getElementById(id);
      if (field && field.value !== value) {
        field.value = value;
        if (field === document.activeElement && caret !== null) field.setSelectionRange(caret, caret);
      }
      if (field !== document.activeElement && !again && held !== '#' + CSS.escape(id)) typed.delete(id);
    }
    for (const [name, value] of picked) {
      const radio = [...document.querySelectorAll('input[type=radio]')].find(r => r.name === name && r.value === value);
      if (radio) radio.checked = true;
      if (!again) picked.delete(name);
    }
    for (const [id, open] of folds) {
      const fold = document.getElementById(id);
      if (fold) fold.open = open;
    }
    refocus();
  };

  const say = () => {
    clearTimeout(quiet);
    quiet = setTimeout(() => {
      const sentence = document.querySelector('[data-live-sentence]')?.textContent.trim();
      const status = document.getElementById('live-status');
      if (sentence && status.textContent !== sentence) status.textContent = sentence;
    }, 700);
  };

  document.addEventListener('input', e => {
    const form = e.target.form;
    if (!form?.hasAttribute('data-live')) return;
    if (e.target.matches('input:not([type=radio], [type=checkbox])'))
      typed.set(e.target.id, { value: e.target.value, caret: e.target.selectionStart });
    if (e.target.matches('input[type=radio]')) picked.set(e.target.name, e.target.value);
    ask(form);
  });

  document.addEventListener('focusin', ({ target }) => {
    const fold = target.tagName === 'SUMMARY' && target.parentElement.id;
    held = target.id ? '#' + CSS.escape(target.id) : fold ? `#${CSS.escape(fold)} > summary` : null;
  });

  document.addEventListener('pointerdown', () => { held = null; });

  document.addEventListener('focusout', e => { if (!asking) typed.delete(e.target.id); });

  document.addEventListener('click', e => {
    const fold = e.target.closest?.('summary')?.parentElement;
    if (fold?.id) folds.set(fold.id, !fold.open);
    const link = e.target.closest?.('a[href*="#"]');
    if (link && link.pathname === location.pathname && link.search === location.search) reveal(link.hash.slice(1));
  });

  // A link to a place on this page opens the folds around it and takes the focus there.
  const reveal = id => {
    const place = document.getElementById(id);
    for (let e = place; e; e = e.parentElement) {
      if (e.tagName !== 'DETAILS') continue;
      e.open = true;
      if (e.id) folds.set(e.id, true);
    }
    const stop = place?.tagName === 'DETAILS' ? place.querySelector('summary') : place;
    stop?.focus();
    stop?.scrollIntoView({ block: 'nearest' });
  };

  document.addEventListener('keydown', e => {
    if (e.key === 'k' && e.ctrlKey && !e.altKey && !e.shiftKey) {
      e.preventDefault();
      Blazor.navigateTo('/find');
    }
  });

  Blazor.addEventListener('enhancedload', () => {
    if (location.pathname !== path) {
      path = location.pathname;
      typed.clear();
      picked.clear();
      folds.clear();
      again = held = null;
      if (!location.hash) (document.getElementById('find-words') ?? document.querySelector('h1'))?.focus();
    } else {
      restore();
      say();
    }
    settle();
  });
})();

// The bench and what waits: time left is worked out anew from the end that the record holds, whenever the page is seen again.
(() => {
  const words = minutes => {
    if (minutes < 2) return '1 minute';
    if (minutes < 60) return `${minutes} minutes`;
    const days = Math.floor(minutes / 1440), hours = Math.floor(minutes % 1440 / 60), rest = minutes % 60;
    if (days === 0) return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
    return (days === 1 ? '1 day' : `${days} days`) + (hours === 0 ? '' : ` ${hours} h`);
  };

  // How far the studio's clock is ahead of this device's.
  const told = document.querySelector('[data-now]');
  const ahead = told ? Date.parse(told.dataset.now) - Date.now() : 0;

  const tick = () => {
    for (const timer of document.querySelectorAll('[data-ready]')) {
      const left = Date.parse(timer.dataset.ready) - (Date.now() + ahead), shown = timer.querySelector('[data-left]');
      if (!shown) continue;
      if (left <= 0) { location.reload(); return; }
      const text = words(Math.ceil(left / 60000));
      if (shown.textContent !== text) shown.textContent = text;
    }
  };

  setInterval(tick, 1000);
  addEventListener('pageshow', tick);
  document.addEventListener('visibilitychange', () => { if (!document.hidden) tick(); });

  // What is typed but not sent is held under the entry number of its form until the studio has it.
  const slot = form => 'alumroot-typed-' + location.pathname + '-' + (form.elements.act?.value ?? '');
  const hold = form => {
    const fields = [...form.elements].filter(e => e.id && e.type !== 'file' && e.type !== 'hidden' && e.value);
    if (fields.length) localStorage.setItem(slot(form), JSON.stringify(fields.map(e => [e.id, e.type === 'checkbox' ? e.checked : e.value])));
    else localStorage.removeItem(slot(form));
  };
  const bring = () => {
    for (const form of document.querySelectorAll('form[data-keep]')) {
      const held = localStorage.getItem(slot(form));
      if (!held || ![...form.elements].some(e => e.id)) continue;
      for (const [id, value] of JSON.parse(held)) {
        const field = form.elements[id];
        if (!field || field.value && field.type !== 'checkbox') continue;
        if (field.type === 'checkbox') field.checked = value;
        else field.value = value;
        const fold = field.closest('details');
        if (fold) fold.open = true;
      }
    }
  };
  document.addEventListener('input', e => { if (e.target.form?.hasAttribute('data-keep')) hold(e.target.form); });
  document.addEventListener('submit', async e => {
    const form = e.target;
    if (!form.hasAttribute('data-keep') || form.enctype === 'multipart/form-data') return;
    localStorage.removeItem(slot(form));
    if (navigator.onLine) return;
    e.preventDefault();
    const entries = new URLSearchParams(new FormData(form, e.submitter));
    waiting.push({ action: form.action, body: entries.toString() });
    store();
    say();
  });

  // Entries that could not be sent wait here; each bears its own number, so that sending it twice does no harm.
  const key = 'alumroot-not-sent';
  let waiting = JSON.parse(localStorage.getItem(key) ?? '[]');
  const store = () => localStorage.setItem(key, JSON.stringify(waiting));
  const say = () => {
    const status = document.getElementById('live-status');
    if (status && waiting.length) {
      status.className = 'kept-line';
      status.textContent = `Not yet sent: ${waiting.length === 1 ? '1 entry is' : waiting.length + ' entries are'} held on this device. They go to the studio as soon as it answers.`;
    } else if (status?.className === 'kept-line') {
      status.className = 'unseen';
      status.textContent = '';
    }
  };
  const send = async () => {
    if (!waiting.length) return;
    try {
      while (waiting.length) {
        const answer = await fetch(waiting[0].action, { method: 'POST', headers: { 'Content-Type': 'application/x-www-form-urlencoded' }, body: waiting[0].body });
        if (!answer.ok) break;
        waiting = waiting.slice(1);
        store();
      }
    } catch {
      // The studio does not answer yet: the entries stay held.
    }
    say();
    if (!waiting.length) location.reload();
  };
  addEventListener('online', send);
  setInterval(send, 15000);
  document.addEventListener('DOMContentLoaded', () => { bring(); say(); tick(); });
  bring();
  say();
})();
