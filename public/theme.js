// Runs before the first paint, so that a dark room never sees a white page.
(function () {
  try {
    const chosen = localStorage.getItem('halfstop-theme');
    if (['dark', 'light', 'metering'].includes(chosen)) {
      document.documentElement.dataset.theme = chosen;
    }
  } catch {
    // Storage is forbidden here: the system's wish stands.
  }
})();
