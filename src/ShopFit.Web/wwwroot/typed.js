// What somebody types while the line to the shop's computer is gone, or types half before it goes, is not lost: once the line is
// back it is told to the shop, and where the page had to start afresh it stands in its field again. Nothing of it is kept longer.
(() => {
  const WAITING = 'typed-on-leaving';
  // Milliseconds within which a page that starts afresh shows its fields. Common practice, no source.
  const SHOWN_WITHIN_MS = 30 * 1000;

  // Fields of this page into which somebody typed, and what was not heard since: 'input', or 'change' as well.
  const typed = new Set();
  const unheard = new Map();
  let lost = false;

  const takesText = element => element.matches?.('textarea, input:not([type=password], [type=checkbox], [type=radio], [type=hidden])');
  const here = () => [...typed].filter(field => field.isConnected);
  // A field that says what is kept or heard of it differs from that until it is; of any other it is known while the line is gone.
  const isUnheard = field => {
    const told = field.dataset.kept ?? field.dataset.heard;
    return told === undefined ? unheard.has(field) : field.value !== told;
  };
  const tell = (field, what) => field.dispatchEvent(new Event(what, { bubbles: true }));

  const labelOf = field => (field.getAttribute('aria-label') ?? field.labels?.[0]?.textContent ?? '').replace(/\s+/g, ' ').trim();
  const alike = label => [...document.querySelectorAll('input, textarea')].filter(field => takesText(field) && labelOf(field) === label);

  addEventListener('input', event => {
    if (!event.isTrusted || !takesText(event.target)) return;
    typed.add(event.target);
    if (lost && !unheard.has(event.target)) unheard.set(event.target, 'input');
  }, true);
  addEventListener('change', event => {
    if (lost && event.isTrusted && typed.has(event.target)) unheard.set(event.target, 'change');
  }, true);

  document.getElementById('components-reconnect-modal')?.addEventListener('components-reconnect-state-changed', event => {
    lost = event.detail.state !== 'hide';
    if (lost) return;
    for (const field of here().filter(isUnheard)) {
      tell(field, 'input');
      // What is still being typed is finished by whoever types it.
      if (unheard.get(field) === 'change' || field !== document.activeElement) tell(field, 'change');
    }
    unheard.clear();
  });

  addEventListener('shop-starts-afresh', () => {
    const fields = here().filter(field => field.dataset.kept !== field.value).map(field => ({
      label: labelOf(field),
      at: alike(labelOf(field)).indexOf(field),
      value: field.value,
      finished: unheard.get(field) === 'change',
      active: field === document.activeElement,
    }));
    if (fields.length > 0) sessionStorage.setItem(WAITING, JSON.stringify({ path: location.pathname, fields }));
  });

  const waiting = JSON.parse(sessionStorage.getItem(WAITING) ?? 'null');
  sessionStorage.removeItem(WAITING);
  if (waiting?.path !== location.pathname) return;

  let fields = waiting.fields;
  const putBack = () => {
    fields = fields.filter(({ label, at, value, finished, active }) => {
      const field = alike(label)[at];
      if (!field) return true;
      if (field.value === value) return false;
      field.value = value;
      typed.add(field);
      tell(field, 'input');
      if (active) {
        field.focus();
        if (field.type !== 'date') field.setSelectionRange(value.length, value.length);
      }
      if (finished || !active) {
        tell(field, 'change');
        return false;
      }
      // The browser calls only what a person typed a change.
      let changed = false;
      field.addEventListener('change', () => { changed = true; }, { once: true });
      field.addEventListener('focusout', () => { if (!changed) tell(field, 'change'); }, { once: true });
      return false;
    });
    if (fields.length === 0) page.disconnect();
  };
  const page = new MutationObserver(putBack);
  page.observe(document.documentElement, { childList: true, subtree: true });
  setTimeout(() => page.disconnect(), SHOWN_WITHIN_MS);
})();
