// The job as it will be: where it stands, what looks wrong, the panel drawn, every number and how it came about.

import { byId, capital, el, fill, plural, say } from "./dom.js";
import { PAUSE, told } from "./fields.js";
import { placed } from "./form.js";
import { figure } from "./picture.js";

const LEVELS = { stop: "Stop", warning: "Warning", note: "Note" };

export class See {
  #store;
  #form;
  #last = null;
  #opened = new Set();
  #said = "";
  #later = null;
  #typed = 0;

  constructor(store, form) {
    this.#store = store;
    this.#form = form;
    store.addEventListener("begun", () => { this.#last = null; fill(byId("seen")); });
    store.addEventListener("shown", () => { this.#last = null; });
    store.addEventListener("changed", () => { this.#typed = Date.now(); });
  }

  /** The plan, or the faults that stand in its way: these when nobody is in the middle of a word. */
  answer(answer, refused) {
    clearTimeout(this.#later);
    const wait = this.#typed + PAUSE - Date.now();
    if (refused && this.#last && wait > 0) this.#later = setTimeout(() => this.#show(answer, refused), wait);
    else this.#show(answer, refused);
  }

  #show(answer, refused) {
    if (answer) {
      this.#last = answer;
      this.#seen(answer);
    }
    const faults = refused?.faults || [];
    const wrong = faults.filter((fault) => fault.read || !fault.field);
    const missing = once(faults.filter((fault) => !fault.read && fault.field));
    fill(byId("state"), this.#state(answer, missing, wrong), this.#last && !answer ? el("p", { class: "before" },
      "What is drawn below is from before.") : null);
    if (!answer) byId("see").scrollTop = 0;
    byId("seen").classList.toggle("old", !answer);
    this.#brief(answer, missing, wrong);
    if (!answer && !this.#last) fill(byId("seen"), this.#nothing());
    this.#speak(answer, missing, wrong);
  }

  #state(answer, missing, wrong) {
    if (answer) {
      const count = (level) => answer.notices.filter((notice) => notice.level === level).length;
      const verdict = count("stop") ? "Worked out, but stop:" : count("warning")
        ? `Worked out, with ${plural(count("warning"), "warning")}.` : "All worked out.";
      return [el("p", { class: "verdict" }, el("strong", {}, verdict), ` ${answer.in_short}`),
        el("p", { class: "onward" }, el("a", { href: "#print" }, "Go on to print"),
          count("note") ? el("span", { class: "soft" }, `${plural(count("note"), "note")} below the drawings`) : null)];
    }
    return [
      wrong.length ? this.#list(wrong.length === 1 ? "One thing is wrong" : `${wrong.length} things are wrong`, wrong, true) : null,
      missing.length ? this.#list(`Still to fill in: ${missing.length}`, missing, false) : null,
    ];
  }

  #list(title, faults, wrong) {
    return el("div", { class: wrong ? "list faulty" : "list" }, el("h3", {}, title),
      el("ul", {}, ...faults.map((fault) => this.#row(fault, wrong))));
  }

  #row(fault, wrong) {
    const { windows } = this.#store.form;
    const { window: number, path } = placed(fault.field);
    const about = this.#store.about.fields[path] || this.#store.about.fields[`window.${path}`];
    const name = !wrong && path === "drop.floor_marks" ? "Marks, or rod to floor and length"
      : about ? this.#form.find(fault.field)?.name() || about.label : fault.field;
    const where = number !== null && windows[number]?.name ? `${windows[number].name}: ` : "";
    const label = where + (name || "The spec");
    const there = about && el("a", { href: "#measure", on: { click: (event) => this.#go(event, fault.field, number) } }, label);
    return el("li", {}, there || el("strong", {}, label),
      wrong ? el("span", {}, fault.read ? ` ${fault.read}: ` : ": ", told(fault, this.#store.about, path)) : null);
  }

  #go(event, name, number) {
    event.preventDefault();
    const { windows } = this.#store.form;
    if (number !== null && number !== this.#store.window && windows[number]) this.#store.show(number);
    let field = this.#form.find(name);
    if (!field && this.#store.window !== null && number === null) {
      this.#store.show(null);
      field = this.#form.find(name);
    }
    if (!field) return;
    const inputs = field.part.querySelectorAll("input, select");
    const input = inputs[placed(name).at] || inputs[0];
    input.scrollIntoView({ block: "center" });
    input.focus({ preventScroll: true });
  }

  /** The same in a line above the measurements, where there is no room to see both. */
  #brief(answer, missing, wrong) {
    const words = wrong.length ? `${plural(wrong.length, "thing")} to put right` : missing.length
      ? `${plural(missing.length, "thing")} still to fill in` : "All worked out: see the panel";
    fill(byId("brief"), el("a", { href: "#see" }, words),
      answer || this.#last ? null : el("button", { type: "button", on: { click: () => this.#example() } }, "Look at an example"));
  }

  #example() {
    this.#store.begin(this.#store.about.example[this.#store.units], "", "");
    byId("see").focus();
    byId("see").scrollIntoView();
  }

  #nothing() {
    return el("div", { class: "nothing" },
      el("p", {}, "As soon as there are enough measurements, the panel is drawn here to scale, with every line to mark and cut."),
      el("p", {}, el("button", { type: "button", id: "example", on: { click: () => this.#example() } }, "Look at an example"),
      el("span", { class: "soft" }, " You can change its numbers, or begin again with New.")));
  }

  #seen(answer) {
    const open = (key, details) => {
      details.open = this.#opened.has(key);
      details.addEventListener("toggle", () => (details.open ? this.#opened.add(key) : this.#opened.delete(key)));
      return details;
    };
    const told = (notes) => {
      const some = answer.notices.filter((notice) => (notice.level === "note") === notes);
      return some.length ? el("ul", { class: "notices" }, ...some.map((notice) => el("li",
        { class: notice.level }, el("strong", {}, `${LEVELS[notice.level]}: `), notice.text))) : null;
    };
    const numbers = answer.numbers.map((section) => el("div", { class: "numbers" }, el("h3", {}, section.title),
      ...section.rows.map((row) => (row.working ? open(`${section.title}:${row.label}`, el("details", {},
        el("summary", {}, el("span", {}, capital(row.label)), el("b", {}, row.value)), el("p", {}, row.working)))
        : el("p", { class: "row" }, el("span", {}, capital(row.label)), el("b", {}, row.value))))));
    const { windows } = this.#store.form;
    const shown = windows.length ? windows[this.#store.window ?? 0]?.name : "";
    fill(byId("seen"),
      told(false),
      shown && this.#store.window === null ? el("p", { class: "soft" }, `Drawn and told below: ${shown}. Choose another window to see it.`) : null,
      el("div", { class: "pictures" }, ...answer.pictures.map((each) => figure(each, 0.26))),
      el("p", { class: "soft signs" }, "After a figure + means a hair over, − a hair under."),
      told(true),
      answer.parts.length > 1 ? el("div", { class: "parts" }, el("h3", {}, "Made together"),
        el("ul", {}, ...answer.parts.map((labels) => el("li", {}, labels.join(", "))))) : null,
      el("h3", { class: "unseen" }, "Every number, and how it came about"),
      el("p", { class: "soft hint" }, "Press a number to see how it came about."),
      ...numbers);
  }

  /** The state in a few words, to who listens, and only when it changes. */
  #speak(answer, missing, wrong) {
    const words = answer ? "All worked out." : [
      wrong.length ? `${plural(wrong.length, "thing")} wrong` : "", missing.length ? `${plural(missing.length, "measurement")} still to be made` : "",
    ].filter(Boolean).join(", ");
    if (words !== this.#said && this.#said) say(words);
    this.#said = words;
  }
}

/** The first fault of each field. */
const once = (faults) => faults.filter((fault, at) => faults.findIndex((other) => other.field === fault.field) === at);
