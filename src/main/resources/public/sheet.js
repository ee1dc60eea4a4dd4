// What makes the bake sheet livelier than plain HTML: the laid-out recipe is told to those who hear
// the page, once typing has paused, and each moment counts the signs that were picked in it.
(() => {
  "use strict";

  const PAUSE = 1500;
  const AGAIN = 800;
  const MOST_TRIES = 4;
  const ROOM = "crumbtrail-room";
  const form = document.querySelector("form[data-draft]");
  const panel = document.getElementById("layout");
  const status = document.getElementById("layout-said");
  let timer = 0;
  let tries = 0;

  if (!form || !panel) {
    return;
  }

  function tell() {
    const said = panel.querySelector("[data-said]")?.dataset.said ?? "";
    if (status.textContent !== said) {
      status.textContent = said;
    }
  }

  function count() {
    for (const stage of form.querySelectorAll("details:has(.signs)")) {
      const picked = [...stage.querySelectorAll("input:checked")].filter((one) => one.value);
      stage.querySelector(".count").textContent = picked.length
        ? form.dataset.picked.replace("#", picked.length)
        : "";
    }
  }

  // What a recipe that is put back will take up is kept, so that nothing below it moves once it is
  // laid out; with the width, since it is higher where there is less of that.
  function atWidth() {
    return `${panel.offsetWidth} `;
  }

  function measure() {
    try {
      sessionStorage.setItem(ROOM, atWidth() + panel.offsetHeight);
    } catch {
      // It will move, then.
    }
  }

  function reserve() {
    try {
      const kept = sessionStorage.getItem(ROOM) ?? "";
      if (kept.startsWith(atWidth())) {
        panel.style.minHeight = `${kept.slice(atWidth().length)}px`;
      }
    } catch {
      // It will move, then.
    }
  }

  // A recipe that is put back is not typed again, so what was lost on the way is asked for anew.
  function askAgain() {
    if (tries < MOST_TRIES) {
      tries++;
      setTimeout(() => panel.dispatchEvent(new CustomEvent("layout")), AGAIN * tries);
    }
  }

  window.addEventListener("pagehide", measure);
  panel.addEventListener("htmx:sendError", askAgain);
  panel.addEventListener("htmx:timeout", askAgain);
  panel.addEventListener("htmx:responseError", (event) => {
    // What is refused is refused again.
    if (event.detail.xhr.status >= 500) {
      askAgain();
    }
  });
  panel.addEventListener("htmx:afterSwap", () => {
    tries = 0;
    panel.style.minHeight = "";
    clearTimeout(timer);
    timer = setTimeout(tell, PAUSE);
  });
  form.addEventListener("change", count);
  form.addEventListener("draft", () => {
    count();
    reserve();
    panel.dispatchEvent(new CustomEvent("layout"));
  });
})();
