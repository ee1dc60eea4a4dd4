// Keeps what is typed into the bake sheet in this browser and nowhere else, so that a reload or a
// closed tab loses nothing. A form that the server sent back is newer than any draft and wins.
(() => {
  "use strict";

  const KEY = "crumbtrail-draft";
  const form = document.querySelector("form[data-draft]");
  const note = document.getElementById("draft-note");
  let timer = 0;
  let afresh = false;

  if (!form) {
    return;
  }

  // Storage may be full or forbidden; the sheet works without it.
  function read() {
    try {
      const draft = JSON.parse(localStorage.getItem(KEY));
      return draft && typeof draft === "object" ? draft : {};
    } catch {
      return {};
    }
  }

  function write(draft) {
    try {
      if (Object.keys(draft).length) {
        localStorage.setItem(KEY, JSON.stringify(draft));
      } else {
        localStorage.removeItem(KEY);
      }
    } catch {
      // Nothing to be done about it.
    }
  }

  function fields() {
    return [...form.elements].filter((field) => field.name && field.type !== "submit");
  }

  function typed() {
    const draft = {};
    for (const field of fields()) {
      const said = field.type !== "radio" || field.checked;
      if (said && field.value.trim()) {
        draft[field.name] = field.value;
      }
    }
    return draft;
  }

  function fill(draft) {
    let filled = false;
    for (const field of fields()) {
      const text = Object.hasOwn(draft, field.name) ? draft[field.name] : "";
      if (typeof text !== "string" || !text) {
        continue;
      }
      if (field.type === "radio") {
        field.checked = field.value === text;
      } else {
        field.value = text;
      }
      filled = true;
      field.closest("details")?.setAttribute("open", "");
    }
    return filled;
  }

  function keep() {
    clearTimeout(timer);
    if (!afresh) {
      write(typed());
    }
  }

  function restore() {
    if (form.dataset.draft === "sent") {
      keep();
    } else if (fill(read())) {
      note.textContent = `${form.dataset.back} `;
      const link = document.querySelector(".afresh").cloneNode(true);
      note.append(link);
      form.dispatchEvent(new CustomEvent("draft"));
    }
  }

  form.addEventListener("input", () => {
    clearTimeout(timer);
    timer = setTimeout(keep, 300);
  });
  window.addEventListener("pagehide", keep);
  document.addEventListener("click", (event) => {
    if (event.target.closest?.(".afresh")) {
      afresh = true;
      write({});
    }
  });
  document.addEventListener("DOMContentLoaded", restore);
})();
