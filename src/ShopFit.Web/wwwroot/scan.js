// A scanner that plugs in as a keyboard types a code and Enter faster than anybody. When no text field has the focus, what it typed goes
// into the field of the page that takes scans; without such a field, or at a person's pace, nothing happens.
(() => {
  // Milliseconds between two keys, and letters of a code. Common practice, no source: scanners need 5 to 50 ms, people 100 and more.
  const FASTER_THAN_MS = 80;
  const SHORTEST = 4;

  let typed = '';
  let last = 0;

  const takesText = element => element?.matches?.('textarea, select, [contenteditable]') ||
    (element?.matches?.('input') && !['button', 'checkbox', 'radio', 'range', 'submit'].includes(element.type));

  addEventListener('keydown', event => {
    if (takesText(document.activeElement) || event.ctrlKey || event.altKey || event.metaKey) {
      typed = '';
      return;
    }
    if (event.timeStamp - last > FASTER_THAN_MS) typed = '';
    last = event.timeStamp;
    if (event.key.length === 1) {
      typed += event.key;
      return;
    }
    if (event.key !== 'Enter') return;
    const code = typed;
    typed = '';
    const field = code.length >= SHORTEST && document.querySelector('[data-takes-scan]');
    if (!field) return;
    // Enter belongs to the scan: a key that happens to have the focus must not be pressed by it.
    event.preventDefault();
    event.stopPropagation();
    field.value = code;
    field.dispatchEvent(new Event('change', { bubbles: true }));
  }, true);
})();
