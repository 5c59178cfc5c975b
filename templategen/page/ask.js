// A question before something is lost.

import { byId, el, fill } from "./dom.js";

/** Whether the person says yes: `yes` is what the button does. */
export function sure(question, more, yes) {
  const dialog = byId("ask");
  return new Promise((resolve) => {
    const answer = (value) => () => {
      dialog.close();
      resolve(value);
    };
    fill(dialog, el("h2", { id: "ask-name" }, question), el("p", {}, more), el("div", { class: "row" },
      el("button", { type: "button", class: "strong", on: { click: answer(true) } }, yes),
      el("button", { type: "button", autofocus: true, on: { click: answer(false) } }, "Leave it as it is")));
    dialog.oncancel = () => resolve(false);
    dialog.showModal();
  });
}
