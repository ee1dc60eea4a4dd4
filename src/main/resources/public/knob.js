// Beside a knob that is chosen stands a range that would do for it.
(() => {
  "use strict";

  for (const [knob, range] of [
    ["turn", "range"],
    ["second", "secondRange"],
  ]) {
    const choice = document.getElementById(knob);
    const field = document.getElementById(range);
    if (choice && field) {
      choice.addEventListener("change", () => {
        field.placeholder = choice.selectedOptions[0].dataset.range ?? "";
      });
    }
  }
})();
