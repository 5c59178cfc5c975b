// A question before something is lost.

import { byId, el, fill } from "./dom.js";

/**
 * What the person chooses, one of the `ways`: [value, what its button says]; the last is to leave all as it is, which
 * closing the question means as well.
 */
export function ask(question, more, ways) {
  const dialog = byId("ask");
  const [stay] = ways.at(-1);
  return new Promise((resolve) => {
    fill(dialog, el("h2", { id: "ask-name" }, question), el("p", {}, more), el("div", { class: "row" },
      ...ways.map(([value, words]) => el("button", { type: "button", autofocus: value === stay, on: { click: () => {
        dialog.close();
        resolve(value);
      } } }, words))));
    dialog.oncancel = () => resolve(stay);
    dialog.showModal();
  });
}
