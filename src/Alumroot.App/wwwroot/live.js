// Answers while the fields are being filled. A form marked data-live is sent as the plain GET it is, one request at a
// time, without a new step in the history; what is being typed is never overwritten. Without this file the form's own
// button does the same.
(() => {
  const typed = new Map();   // field id -> { value, caret } since it was last sent, or while it has the focus
  const picked = new Map();  // name of a radio group -> value picked since it was last sent
  const folds = new Map();   // fold id -> open, as the reader left it
  let asking = false, again = null, escape = 0, quiet = 0, path = location.pathname;

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

  const restore = () => {
    for (const [id, { value, caret }] of typed) {
      const field = document.getElementById(id);
      if (field && field.value !== value) {
        field.value = value;
        if (field === document.activeElement && caret !== null) field.setSelectionRange(caret, caret);
      }
      if (field !== document.activeElement && !again) typed.delete(id);
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
      again = null;
      if (!location.hash) (document.getElementById('find-words') ?? document.querySelector('h1'))?.focus();
    } else {
      restore();
      say();
    }
    settle();
  });
})();
