// One field of the form: its label, where it is typed, what was understood, what is wrong, how it is measured.

import { capital, el, fill, say } from "./dom.js";
import { empty } from "./store.js";

export const PAUSE = 1000; // ms without a key, after which a fault is told: nobody wants to be corrected in mid-word

/** The fault's words for who reads them beside the field: what was read is in sight, and is not said again. */
export const told = (fault, about, path) => capital(worded(fault.right, about, path));

/** Words that name fields as a file does, "hem.depth" or "floor_marks", with the names that stand on the page. */
export function worded(words, about, path = "") {
  const table = path.slice(0, path.lastIndexOf(".") + 1);
  return words.replaceAll(/\b(?:[a-z]+\.)*[a-z]+(?:_[a-z]+)*\b/g, (name) => {
    const field = name.includes(".") ? about.fields[name] : name.includes("_") ? about.fields[table + name] : null;
    return field ? `“${field.label}”` : name;
  });
}

export class Field {
  #store;
  #quiet = 0;
  #stale = false; // whether it has been changed since the last answer
  #pending = null;

  /** `window` is the number of the window that it belongs to, null for the shared ones. */
  constructor(store, path, window, focused) {
    this.#store = store;
    this.path = path;
    this.window = window;
    this.about = store.about.fields[path];
    this.id = `${window === null ? "" : `w${window + 1}-`}${path.replaceAll(".", "-")}`;
    this.said = el("p", { class: "said", id: `${this.id}-said` });
    this.wrong = el("p", { class: "wrong", id: `${this.id}-wrong`, hidden: true });
    const { meaning, measure, left_out: leftOut } = this.about;
    this.how = [`${capital(meaning)}.`, measure, leftOut ? `Left empty: ${leftOut}.` : ""].filter(Boolean).join(" ");
    this.how = worded(this.how, store.about, path);
    const measured = ["length", "lengths"].includes(this.about.kind) && measure;
    this.help = el("details", { class: "how" }, el("summary", {}, measured ? "How to measure" : "What is this?"), el("p", {}, this.how));
    this.label = el("label", { class: "name", for: this.id }, this.name());
    this.input = this.#control();
    this.part = el("div", { class: `field ${this.about.kind}`, "data-path": path,
      on: { focusin: () => focused(this), focusout: () => this.#settle() } },
    this.label, el("div", { class: "entry" }, this.input, this.said, this.wrong, measure ? this.help : null));
    this.unseen = el("p", { hidden: true, id: `${this.id}-how` }, this.how); // for who has the field described
    this.part.append(this.unseen);
    this.show();
  }

  /** What it is called, for what the panels hang to. */
  name() {
    return lined(this.about.label, this.#store.chosen("drop.to", this.window), this.#store.about.lines);
  }

  get #value() {
    const store = this.#store;
    if (this.path === "window.name" || this.path === "window.room") {
      return store.form.windows[this.window][this.path.slice(7)] || "";
    }
    if (this.path.startsWith("together.")) return store.form.together[this.path.slice(9)];
    return store.value(this.path, this.window);
  }

  /** Whether something stands in it. */
  get filled() {
    return !this.part.hidden && !empty(this.#value);
  }

  /** Whether what stands here is what all windows have. */
  get inherits() {
    return this.window !== null && !this.path.startsWith("window.") && empty(this.#store.own(this.window)[this.path])
      && !empty(this.#store.inherited(this.path, this.window));
  }

  #set(value) {
    this.#quiet = Date.now() + PAUSE;
    this.#stale = true;
    this.#store.set(this.path, value, this.window);
    this.#tell();
  }

  // ---- where it is typed

  #control() {
    const { kind, choices } = this.about;
    if (kind === "switch") {
      return el("input", { type: "checkbox", id: this.id, on: { change: (event) => this.#set(event.target.checked) } });
    }
    if (kind === "choice") {
      return el("select", { id: this.id, on: { change: (event) => this.#set(event.target.value) } },
        ...this.#leftOut().map((words) => el("option", { value: "" }, words)),
        ...choices.map((choice) => el("option", { value: choice }, choice)));
    }
    if (kind === "lengths") return el("div", { class: "several", role: "group", "aria-labelledby": `${this.id}-name` });
    return this.#line(this.id, (value) => this.#set(value));
  }

  #line(id, set, label) {
    return el("input", {
      type: "text", id, autocomplete: "off", spellcheck: this.about.kind === "text" ? null : "false",
      autocapitalize: this.about.kind === "text" ? null : "off", "aria-label": label,
      inputmode: this.about.kind === "count" ? "numeric" : null,
      list: this.path === "paper.name" ? "papers" : null, on: { input: (event) => set(event.target.value) },
    });
  }

  /** Several lengths: a line for each, and one more at a press. */
  #several() {
    const given = Array.isArray(this.#value) ? this.#value : [];
    const shown = given.length ? given : [""];
    const lines = [...this.input.querySelectorAll("input")];
    const count = lines.length;
    if (count === shown.length) {
      lines.forEach((line, at) => { if (line.value !== shown[at]) line.value = shown[at]; });
      return;
    }
    const rows = shown.map((text, at) => {
      const id = at ? `${this.id}-${at + 1}` : this.id;
      const line = this.#line(id, (value) => this.#setOne(at, value), `${this.name()}, ${at + 1}`);
      line.value = text;
      const marked = el("span", { class: "number", "aria-hidden": "true" }, String(at + 1));
      const away = el("button", { type: "button", class: "plain", "aria-label": `Remove ${this.name()}, ${at + 1}`,
        on: { click: () => this.#away(at) } }, "Remove");
      return el("div", { class: "one" }, marked, line, shown.length > 1 ? away : null,
        el("p", { class: "said", id: `${id}-said` }));
    });
    const more = el("button", { type: "button", class: "plain more", on: { click: () => this.#more() } }, "One more");
    fill(this.input, ...rows, shown.length < this.#store.about.limits.marks ? more : null);
  }

  #setOne(at, value) {
    const given = Array.isArray(this.#value) ? [...this.#value] : [];
    given[at] = value;
    this.#set([...given].map((each) => each ?? ""));
  }

  #more() {
    const given = Array.isArray(this.#value) && this.#value.length ? this.#value : [""];
    this.#set([...given, ""]);
    this.show();
    [...this.input.querySelectorAll("input")].at(-1).focus();
  }

  #away(at) {
    this.#set(this.#value.filter((_, number) => number !== at));
    this.show();
    [...this.input.querySelectorAll("input")].at(Math.max(0, at - 1)).focus();
  }

  // ---- what it shows

  /** Shows what stands in it now. */
  show() {
    const value = this.#value;
    this.label.textContent = this.name();
    if (this.about.kind === "switch") this.input.checked = value === true || value === "true";
    else if (this.about.kind === "lengths") {
      this.label.id = `${this.id}-name`;
      this.#several();
    } else if (this.about.kind === "choice") {
      this.input.value = this.#choice;
      if (this.input.value !== this.#choice) {
        // A word from a file that is no choice: it is shown as it stands, and the fault beside it.
        this.input.prepend(el("option", { value }, value));
        this.input.value = value;
      }
    } else if (this.input.value !== (value ?? "") && document.activeElement !== this.input) {
      this.input.value = value ?? "";
    }
    this.part.classList.toggle("shared", this.inherits);
    this.part.classList.toggle("unfilled", empty(value));
    this.#tell();
  }

  /** What stands first among choices: what happens where none is made; nothing where one is made anyhow. */
  #leftOut() {
    const { left_out: leftOut, usual, required } = this.about;
    if (this.window !== null) return ["as for all windows"];
    return usual || required ? [] : [leftOut.split(";")[0]];
  }

  /** What a choice shows: a window its own; where nobody has chosen, what then stands. */
  get #choice() {
    if (this.window !== null) return this.#store.own(this.window)[this.path] ?? "";
    return this.#value ?? this.about.usual;
  }

  /** What the interface said of it: understood by path, and the faults of this field. */
  answer(understood, faults) {
    this.#pending = { understood, faults };
    this.#stale = false;
    this.#tell();
    const wait = this.#quiet - Date.now();
    if (wait > 0 && faults.length) setTimeout(() => this.#tell(), wait + 20);
  }

  #settle() {
    this.#quiet = 0;
    this.#tell();
  }

  #prefix() {
    return this.window === null ? "" : `window[${this.window + 1}].`;
  }

  #tell() {
    const { understood = {}, faults = [] } = this.#pending || {};
    const value = this.#value;
    const path = this.path.startsWith("window.") ? this.path.slice(7) : this.path;
    const key = this.path.startsWith("together.") ? this.path : `${this.#prefix()}${path}`;
    const heard = understood[key] || (this.inherits ? understood[this.path] : "");
    const missing = empty(value);
    // What is still missing is listed beside the job; a field is not called wrong before it has been filled in.
    const wrong = faults.filter((fault) => fault.read || !(missing || this.#stale));
    const quiet = Date.now() < this.#quiet && document.activeElement?.closest(".field") === this.part;
    const text = this.#hint(heard, missing, missing && faults.length > 0);
    if (this.said.textContent !== text) this.said.textContent = text;
    if (this.about.kind === "lengths") this.#tellEach(understood);
    const shown = wrong.length > 0 && (!quiet || !this.wrong.hidden); // what is told already stays till it is right
    const words = shown ? [...new Set(wrong.map((each) => told(each, this.#store.about, this.path)))].join(" ") : "";
    if (this.wrong.textContent !== words) {
      this.wrong.textContent = words;
      if (words && this.part.contains(document.activeElement)) say(words);
    }
    this.wrong.hidden = !shown;
    this.part.classList.toggle("faulty", shown);
    for (const input of this.part.querySelectorAll("input, select")) {
      input.toggleAttribute("aria-invalid", shown);
      if (shown) input.setAttribute("aria-invalid", "true");
      if (this.about.required) input.setAttribute("aria-required", "true");
      input.setAttribute("aria-describedby", [shown ? this.wrong.id : "", this.said.id, `${this.id}-how`].join(" ").trim());
    }
  }

  #hint(heard, missing, needed) {
    const { about } = this;
    if (this.inherits && about.kind === "choice") return String(this.#value);
    if (this.inherits) return heard ? `${heard}, as for all windows` : "as for all windows";
    if (!missing) return about.kind === "lengths" ? "" : briefly(heard, this.#value);
    if (about.kind === "switch" || about.kind === "choice") return "";
    const sample = about[this.#store.units];
    const example = `For example ${Array.isArray(sample) ? sample[0] : sample}`;
    if (about.required || needed || !about.left_out) return example;
    if (about.left_out === sample) return `Empty: ${about.left_out}`;
    return about.left_out.length < 26 ? `${example}; empty: ${about.left_out}` : `${example}, or leave it empty`;
  }

  #tellEach(understood) {
    const before = `${this.#prefix()}${this.path}`;
    this.input.querySelectorAll(".one").forEach((row, at) => {
      const heard = understood[`${before}[${at + 1}]`] || (this.inherits ? understood[`${this.path}[${at + 1}]`] : "");
      row.querySelector(".said").textContent = briefly(heard, row.querySelector("input").value);
    });
  }
}

/** What was understood; only in the other units, where it is just what was typed. */
function briefly(heard, typed) {
  if (!heard) return "";
  const found = /^(.*) \((.*)\)$/.exec(heard);
  return found && found[1] === String(typed).trim() ? `= ${found[2]}` : heard;
}

/** Words about the floor, said of whatever the panels hang to. */
export function lined(text, line, lines) {
  if (!line || line === "floor" || !lines[line]) return text;
  return text.replaceAll("the floor", lines[line]).replaceAll(/\bfloor\b/g, line);
}
