// The measurements: groups in the order of measuring, and in them only the fields that what is chosen has a use for.

import { el, fill } from "./dom.js";
import { Field, lined } from "./fields.js";
import { Guide } from "./guides.js";
import { empty } from "./store.js";

export class Form {
  #store;
  #guides;
  #into;
  #groups = [];
  #answer = { understood: {}, faults: [] };

  /** `into` are elements by key of the group, "" for all the others. */
  constructor(store, guides, into) {
    this.#store = store;
    this.#guides = guides;
    this.#into = into;
    store.addEventListener("begun", () => this.build());
    store.addEventListener("shown", () => this.build());
    store.addEventListener("changed", () => this.refresh());
    this.build();
  }

  /** Every field made anew, for the window that is shown. */
  build() {
    const { about, window, form } = this.#store;
    this.#groups = [];
    const names = window === null ? [] : [this.#group({
      key: "window", name: "This window", about: "A dashed field is the same for all windows: type in it to change it here, empty it to go back.",
      guides: [], fields: ["window.name", "window.room"], more: [],
    }, window)];
    const alike = window === null && form.windows.length ? [this.#group({
      key: "together", name: "All windows together", about: "What is to be alike, whatever each measures.",
      guides: [], fields: ["together.keep", "together.finished_length"], more: [],
    }, null)] : [];
    const printed = new Set(Object.keys(this.#into));
    const made = about.groups.map((group) => {
      // What the kit is printed on is one for all windows, whichever is shown.
      if (printed.has(group.key)) return [group.key, this.#group(group, null)];
      const ours = (path) => window === null || !about.of_the_kit.some((each) => path === each || path.startsWith(`${each}.`));
      const fields = group.fields.filter(ours);
      const more = group.more.filter(ours);
      return fields.length || more.length ? [group.key, this.#group({ ...group, fields, more }, window)] : null;
    }).filter(Boolean);
    const measured = made.filter(([key]) => !printed.has(key)).map(([, part]) => part);
    fill(this.#into[""], ...names, ...alike, ...measured);
    for (const key of printed) if (key) fill(this.#into[key], ...made.filter(([each]) => each === key).map(([, part]) => part));
    this.refresh();
    this.answer(this.#answer.understood, this.#answer.faults);
  }

  #group(group, window) {
    const guide = new Guide(this.#store, this.#guides, group.guides, window);
    const focused = (field) => guide.show(field.path, field.how);
    const field = (path) => {
      const made = new Field(this.#store, path, window, focused);
      made.help.addEventListener("toggle", () => {
        const drawn = made.help.open && !made.help.querySelector("figure") ? guide.one(path) : null;
        if (drawn) made.help.append(drawn);
      });
      return made;
    };
    const fields = group.fields.map(field);
    const more = group.more.map(field);
    const name = el("h3", { id: `group-${group.key}` }, group.name);
    const folded = more.length ? el("details", { class: "further" },
      el("summary", {}, fields.length ? "More (optional)" : "Fill in (optional)"),
      ...more.map((each) => each.part)) : null;
    const lead = el("p", { class: "about" }, group.about);
    const part = el("section", { class: "group", "aria-labelledby": name.id, "data-group": group.key }, name, lead,
      el("div", { class: "beside" }, el("div", { class: "fields" }, ...fields.map((each) => each.part), folded),
        guide.part));
    this.#groups.push({ group, name, lead, part, guide, fields, more, folded, window });
    if (more.some((each) => !empty(this.#store.value(each.path, window)))) folded.open = true;
    folded?.addEventListener("toggle", () => part.classList.toggle("shut", !fields.length && !folded.open));
    return part;
  }

  /** What is there and what stands in it, after a change. */
  refresh() {
    const store = this.#store;
    for (const { group, name, lead, part, guide, fields, more, folded, window } of this.#groups) {
      const there = (each) => store.there(each.path, window) && store.means(each.path, window);
      for (const each of [...fields, ...more]) {
        const stray = store.strays.has(`${window ?? ""}:${each.path}`);
        each.part.hidden = !there(each) && !stray;
        each.show();
      }
      if (folded) folded.hidden = more.every((each) => each.part.hidden);
      part.hidden = [...fields, ...more].every((each) => each.part.hidden);
      const line = store.chosen("drop.to", window);
      name.textContent = lined(group.name, line, store.about.lines);
      lead.textContent = lined(group.about, line, store.about.lines);
      const at = [...fields, ...more].find((each) => each.part.contains(document.activeElement));
      const next = fields.find((each) => !each.part.hidden && each.about.required && empty(store.value(each.path, window)));
      guide.show(at?.path, at?.how, next?.path);
      part.classList.toggle("shut", !fields.length && !folded?.open);
      part.classList.toggle("unfilled", ![...fields, ...more].some((each) => each.filled));
    }
  }

  /** What was understood and what is wrong, put beside the fields. */
  answer(understood, faults) {
    this.#answer = { understood, faults };
    for (const { fields, more, folded, window } of this.#groups) {
      for (const each of [...fields, ...more]) {
        const mine = faults.filter((fault) => concerns(fault.field, each.path, window));
        each.answer(understood, mine);
        if (folded && more.includes(each) && mine.some((fault) => fault.read)) folded.open = true;
      }
    }
  }

  /** The field that a fault is about, made ready to be gone to; null where there is none in sight. */
  find(name) {
    for (const { fields, more, folded, window } of this.#groups) {
      const found = [...fields, ...more].find((each) => concerns(name, each.path, window));
      if (!found || found.part.hidden) continue;
      if (folded && more.includes(found)) folded.open = true;
      return found;
    }
    return null;
  }
}

/** Whether a fault's field, "window[2].drop.floor_marks[1]", is this field of this window. */
function concerns(name, path, window) {
  const { window: of, path: plain } = placed(name);
  if (path.startsWith("window.")) return of !== null && of === window && plain === path.slice(7);
  return plain === path && (of === null || of === window);
}

/** A fault's field taken apart: of which window, from 0, or null; its path; which of several values, from 0. */
export function placed(name) {
  const [, of, path, at] = /^(?:window\[(\d+)\]\.)?(.*?)(?:\[(\d+)\])?$/.exec(name);
  return { window: of ? Number(of) - 1 : null, path, at: at ? Number(at) - 1 : 0 };
}
