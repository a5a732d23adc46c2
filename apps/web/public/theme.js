// Sets the chosen theme before the first paint, so that a night hangar sees no white flash.
(function () {
  try {
    var chosen = localStorage.getItem('strutbook.theme');
    if (chosen === 'light' || chosen === 'dark') document.documentElement.setAttribute('data-theme', chosen);
  } catch (_) {
    // Storage may be off; the system's setting then decides.
  }
})();
