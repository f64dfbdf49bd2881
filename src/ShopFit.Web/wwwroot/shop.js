// What the browser must do by itself: drawings that know their scale, and a circuit that comes back by itself.

// A drawing in millimetres tells its style sheet how many of its units make one pixel, so that its text stays readable at any size.
customElements.define('to-scale', class extends HTMLElement {
  connectedCallback() {
    this.watch = new ResizeObserver(() => this.measure());
    this.watch.observe(this);
    this.measure();
  }

  disconnectedCallback() {
    this.watch.disconnect();
  }

  measure() {
    const drawing = this.querySelector('svg');
    const box = drawing?.viewBox.baseVal;
    const { width, height } = this.getBoundingClientRect();
    if (!box?.width || !width || !height) return;
    this.style.setProperty('--unit', String(Math.max(box.width / width, box.height / height)));
  }
});

// Whoever knows what is typed and not yet kept hears that the page goes, and puts it back.
const startAfresh = () => {
  dispatchEvent(new Event('shop-starts-afresh'));
  location.reload();
};

// The server keeps a circuit for three minutes. A tablet that slept longer starts afresh: everything entered is in the database.
const KEPT_FOR_MS = 3 * 60 * 1000;
let asleepSince = null;
document.addEventListener('visibilitychange', () => {
  if (document.hidden) {
    asleepSince = Date.now();
    return;
  }
  if (asleepSince !== null && Date.now() - asleepSince > KEPT_FOR_MS && document.querySelector('[data-interactive="true"]')) {
    startAfresh();
  }
  asleepSince = null;
});

const lost = document.getElementById('components-reconnect-modal');
lost?.addEventListener('components-reconnect-state-changed', event => {
  if (event.detail.state === 'rejected') startAfresh();
});
lost?.addEventListener('click', async event => {
  if (!event.target.closest('[data-again]')) return;
  try {
    if (!await Blazor.reconnect()) startAfresh();
  } catch {
    startAfresh();
  }
});

// A number is retyped, not edited: what stands in the field is selected, so that typing replaces it.
document.addEventListener('focusin', event => {
  if (event.target.matches?.('[data-select-on-focus]')) event.target.select();
});

// The keypad's tick goes on to the next number, so that both feet are read without a tap between.
document.addEventListener('keydown', event => {
  if (event.key !== 'Enter' || event.isComposing || !event.target.matches?.('[data-next-on-enter]')) return;
  const numbers = [...document.querySelectorAll('[data-next-on-enter]:not(:disabled)')];
  const next = numbers[numbers.indexOf(event.target) + 1];
  if (next) next.focus();
  else event.target.blur();
});

// Coming back to a page that another tablet may have changed: it looks again by itself.
addEventListener('focus', () => document.querySelector('[data-refresh]')?.click());
