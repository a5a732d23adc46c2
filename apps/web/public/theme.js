// Sets the chosen theme before the first paint, so that a night hangar sees no white flash.
(() => {
  let chosen = null;
  try {
    chosen = localStorage.getItem('strutbook.theme');
  } catch {
    // Storage may be off; the system's setting then decides.
  }
  if (chosen === 'light' || chosen === 'dark') document.documentElement.dataset.theme = chosen;
})();
