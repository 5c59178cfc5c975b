// The windows of a job: which one is shown, one more, a copy, one less.

import { byId, el, fill, plural } from "./dom.js";
import { ask } from "./ask.js";

export function windows(store) {
  const into = byId("windows");

  function show() {
    const { form, window } = store;
    if (!form.windows.length) {
      fill(into, el("p", { class: "one-window" }, el("button", { type: "button", class: "plain", id: "add-window",
        on: { click: () => store.add(null) } }, "Add a window"),
      el("span", { class: "soft" }, " for several windows in one kit: the second begins as a copy of the first.")));
      return;
    }
    const tab = (number, name) => el("li", {}, el("button", { type: "button", class: "tab",
      "aria-current": number === window ? "true" : null, on: { click: () => store.show(number) } }, name));
    fill(into, el("nav", { class: "windows", "aria-label": "Windows of the job" },
      el("ul", {}, tab(null, "All windows"),
        ...form.windows.map((each, number) => tab(number, [each.room, each.name].filter(Boolean).join(", ") || `window ${number + 1}`))),
      el("div", { class: "row" },
        el("button", { type: "button", class: "plain", id: "add-window", on: { click: () => store.add(window ?? form.windows.length - 1) } },
          "Add a window"),
        window === null ? null : el("button", { type: "button", class: "plain", on: { click: () => remove(window) } },
          "Remove this window"),
        el("span", { class: "soft" }, `${plural(form.windows.length, "window")} in one kit; a new one begins as a copy of ${window === null ? "the last" : "this one"}.`))));
  }

  async function remove(window) {
    const { name } = store.form.windows[window];
    const way = await ask(`Remove ${name || "this window"}?`, "All that was measured of it goes with it.",
      [["remove", "Remove it"], ["stay", "Keep it"]]);
    if (way === "remove") store.remove(window);
  }

  for (const event of ["begun", "shown", "changed"]) {
    store.addEventListener(event, () => {
      const within = into.contains(document.activeElement) ? document.activeElement.textContent : null;
      show();
      if (within !== null) {
        ([...into.querySelectorAll("button")].find((each) => each.textContent === within)
          || into.querySelector('[aria-current="true"]') || byId("add-window")).focus();
      }
    });
  }
  show();
}
