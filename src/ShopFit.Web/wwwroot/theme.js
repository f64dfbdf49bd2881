// Before the first paint: which dress the page wears. A choice made on this tablet wins over what the tablet asks for.
(() => {
  const root = document.documentElement;
  const dark = matchMedia('(prefers-color-scheme: dark)');
  const contrast = matchMedia('(prefers-contrast: more)');

  const kept = name => { try { return localStorage.getItem(name); } catch { return null; } };
  const keep = (name, value) => { try { localStorage.setItem(name, value); } catch { /* a private window forgets, and that is all */ } };

  const dress = () => {
    const theme = kept('theme');
    const strong = kept('contrast');
    root.dataset.theme = theme === 'light' || theme === 'dark' ? theme : dark.matches ? 'dark' : 'light';
    root.dataset.contrast = strong === 'high' || (strong !== 'usual' && contrast.matches) ? 'high' : 'usual';
  };

  dress();
  dark.addEventListener('change', dress);
  contrast.addEventListener('change', dress);

  addEventListener('click', event => {
    const key = event.target.closest?.('[data-wear-theme], [data-wear-contrast]');
    if (!key) return;
    if (key.dataset.wearTheme) keep('theme', key.dataset.wearTheme);
    if (key.dataset.wearContrast) keep('contrast', key.dataset.wearContrast);
    dress();
  });
})();
