// The button that prints shows where scripts run; who came here to print gets the choice at once.
(() => {
  "use strict";

  const button = document.querySelector("[data-print]");

  if (!button) {
    return;
  }

  button.hidden = false;
  button.addEventListener("click", () => window.print());
  if (location.hash === "#print") {
    // Whoever comes back to this page later does not want to print it again.
    history.replaceState(null, "", location.pathname + location.search);
    window.addEventListener("load", () => setTimeout(() => window.print(), 0));
  }
})();
