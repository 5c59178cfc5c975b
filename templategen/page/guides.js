// The pictures of what is measured: one beside each group, the part of the focused field lit.

import { el, fill } from "./dom.js";
import { figure } from "./picture.js";

export class Guide {
  #guides;
  #store;
  #keys;
  #window;
  #key = "";
  #drawn = null;

  constructor(store, guides, keys, window) {
    this.#store = store;
    this.#guides = guides;
    this.#keys = keys;
    this.#window = window;
    this.words = el("p", { class: "measuring" });
    this.place = el("div", { class: "place" });
    this.part = el("div", { class: "guide", hidden: true }, this.place, this.words);
    this.show();
  }

  /** The pictures that there are for what is chosen. */
  #there() {
    return this.#keys.map((key) => key.replace(/\{(.+?)\}/g, (_, path) => this.#store.chosen(path, this.#window)))
      .filter((key) => this.#guides[key]);
  }

  /**
   * Shows the picture that has this path, its part lit. Without one it is that of `next`, which is still to be filled
   * in; or else the picture stays as it is.
   */
  show(path = "", how = "", next = "") {
    const keys = this.#there();
    const with_ = (each) => keys.find((key) => subjects(this.#guides[key].picture).has(each));
    const having = path && with_(path);
    const key = having || (next && with_(next)) || (keys.includes(this.#key) ? this.#key : keys[0] || "");
    if (key !== this.#key) {
      this.#key = key;
      this.#drawn = key ? figure(this.#guides[key], 0.24) : null;
      fill(this.place, this.#drawn);
    }
    if (this.#drawn) light(this.#drawn, having ? path : "");
    this.words.textContent = how;
    this.part.hidden = !key && !how;
  }

  /** A picture of its own for one field, lit; null where none has it. */
  one(path) {
    const key = this.#there().find((each) => subjects(this.#guides[each].picture).has(path));
    if (!key) return null;
    const drawn = figure(this.#guides[key], 0.24);
    light(drawn, path);
    return drawn;
  }
}

function light(drawn, path) {
  drawn.classList.toggle("some-lit", Boolean(path));
  for (const each of drawn.querySelectorAll("[data-about]")) {
    each.classList.toggle("lit", each.getAttribute("data-about") === path);
  }
}

const known = new WeakMap();

/** Every path that a picture is about. */
function subjects(tree) {
  if (!known.has(tree)) {
    const found = new Set();
    const walk = ([, attributes, ...children]) => {
      if (attributes["data-about"]) found.add(attributes["data-about"]);
      children.forEach((child) => { if (Array.isArray(child)) walk(child); });
    };
    walk(tree);
    known.set(tree, found);
  }
  return known.get(tree);
}
