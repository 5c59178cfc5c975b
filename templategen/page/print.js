// The kit: how to print true, the sheets as they will print, and everything to be taken away.

import { bytes, Newest, post } from "./api.js";
import { download } from "./download.js";
import { byId, capital, el, fill, plural } from "./dom.js";

const REST = 700; // ms without a change, after which the sheets are drawn again
const FAR = 5000; // the same while nobody is near them: they take a hundred times as long as the plan
const LARGE = 1400; // pixels that an enlarged sheet is wide

export class Print {
  #store;
  #gone;
  #timer = null;
  #sheets;
  #plan = null;
  #answer = null;
  #despite = false;
  #pictures = [];
  #near = false; // whether the sheets are in sight, or nearly

  constructor(store, gone) {
    this.#store = store;
    this.#gone = gone;
    this.#sheets = new Newest((question) => post("/api/sheets", question), (answered) => this.#answered(answered));
    this.paper = el("div", {});
    this.state = el("p", { class: "verdict" });
    this.kit = el("div", { class: "kit" });
    this.list = el("div", {});
    fill(byId("printing"),
      el("div", { class: "columns" },
        el("div", {}, this.paper),
        el("div", {},
          el("h3", {}, "The kit"),
          this.state,
          this.kit,
          el("h3", {}, "Print true, the first time"),
          el("ol", { class: "steps" },
            el("li", {}, "Print page 1 of the kit by itself: actual size or 100 %, no “fit to page”, one-sided."),
            el("li", {}, "Measure its two bars with a steel rule, to half a millimetre. Each says what it should measure."),
            el("li", {}, "If they measure what they say, print the rest. If not, write under “Bar across” and “Bar along” what you read, download the kit again, and print page 1 once more."),
            el("li", {}, "Measure both bars on every sheet before you cut it.")))),
      el("h3", {}, "The sheets"), this.list);
    store.addEventListener("begun", () => { this.#despite = false; });
    new IntersectionObserver(([entry]) => {
      this.#near = entry.isIntersecting;
      if (this.#near && this.#timer) this.#soon();
    }, { rootMargin: "300px" }).observe(byId("print"));
  }

  /** What the plan said: with it the sheets can be drawn, without it nothing can be printed. */
  plan(answer, wrong) {
    this.#plan = answer;
    if (!answer) {
      this.#stale(wrong ? "Nothing can be printed before what is wrong has been put right." : "Nothing can be printed before everything is filled in.");
      this.state.append(" ", el("a", { href: "#see" }, wrong ? "See what is wrong" : "See what is missing"));
      return;
    }
    if (answer.stopped && !this.#despite) {
      this.#stopped();
      return;
    }
    this.#soon();
  }

  #soon(wait = this.#near ? REST : FAR) {
    clearTimeout(this.#timer);
    this.state.textContent = "The sheets are being laid out …";
    this.#timer = setTimeout(() => {
      this.#timer = null;
      this.#sheets.change({ ...this.#store.question(), despite_stops: this.#despite });
    }, wait);
  }

  #stale(words) {
    clearTimeout(this.#timer);
    this.#timer = null;
    this.#answer = null;
    this.state.textContent = words;
    fill(this.kit);
    this.#clear();
  }

  #clear() {
    this.#pictures.forEach((url) => URL.revokeObjectURL(url));
    this.#pictures = [];
    fill(this.list, el("p", { class: "soft" }, "They are shown here as they will print."));
  }

  #stopped() {
    this.#stale("The plan says stop. Put right what is listed there first.");
    fill(this.kit, el("label", { class: "tick" }, el("input", { type: "checkbox", checked: this.#despite, on: { change: (event) => {
      this.#despite = event.target.checked;
      if (this.#despite) this.#soon(0);
    } } }), el("span", {}, "Make the kit despite the stop: I know what I am doing")));
  }

  #answered({ question, answer, refused, newer }) {
    if (newer || !this.#plan || JSON.stringify(question.form) !== JSON.stringify(this.#store.question().form)) return;
    if (refused) {
      if (this.#gone(refused)) return;
      this.#stale(refused.message);
      return;
    }
    this.#answer = answer;
    const reading = answer.pages.filter((page) => page.holds.every((each) => each === "work order")).length;
    this.state.textContent = reading ? `${answer.said} ${reading} of them are the work order, which can be read on a screen instead.` : answer.said;
    this.#kitShown(answer);
    this.#sheetsShown(answer);
  }

  #kitShown(answer) {
    const stop = this.#despite ? el("p", { class: "notice" }, "Made despite the stop.") : null;
    const files = answer.files.map(({ name, size, what }) => el("li", {}, el("button", { type: "button", class: "plain",
      on: { click: () => this.#take(name) } }, name), el("span", { class: "soft" }, ` ${what}, ${kilobytes(size)}`)));
    fill(this.kit, stop,
      el("div", { class: "row" },
        el("button", { type: "button", class: "strong", id: "take-kit", on: { click: () => this.#take("kit.pdf") } }, "Download the kit to print"),
        el("button", { type: "button", id: "take-all", on: { click: () => this.#take(null) } }, "Everything, in one zip")),
      el("details", {}, el("summary", {}, `Each file by itself (${answer.files.length})`), el("ul", { class: "plain-list" }, ...files)),
      answer.correction ? el("p", {}, answer.correction) : null,
      el("p", { class: "soft" }, `Fingerprint ${answer.fingerprint} stands on every sheet: a sheet with another one belongs to other measurements.`));
  }

  async #take(file) {
    try {
      const blob = await bytes("/api/kit", { ...this.#store.question(), file, despite_stops: this.#despite });
      download(blob, file || "kit.zip");
    } catch (refused) {
      if (!this.#gone(refused)) this.state.textContent = refused.message;
    }
  }

  #sheetsShown(answer) {
    this.#clear();
    const sheets = answer.pages.map((page) => {
      const url = URL.createObjectURL(pngOf(page.png));
      this.#pictures.push(url);
      const holds = capital(page.holds.join(", ")) || "Work order";
      return el("li", {}, el("button", { type: "button", class: "sheet", "aria-label": `Enlarge page ${page.page}: ${holds}`,
        on: { click: () => this.#enlarge(page.page) } },
      el("img", { src: url, alt: "", width: 220, height: Math.round((220 * page.height_mm) / page.width_mm) }),
      el("span", {}, el("b", {}, String(page.page)), ` ${holds}`)));
    });
    const [first, ...rest] = answer.told;
    fill(this.list, el("p", {}, first), rest.length ? el("details", {}, el("summary", {}, "How true the templates come"),
      ...rest.map((line) => el("p", {}, line))) : null, el("ol", { class: "sheets" }, ...sheets));
  }

  /** One sheet as large as the window, with those before and after it. */
  async #enlarge(number) {
    const dialog = byId("large");
    const { pages } = this.#answer;
    const page = pages[number - 1];
    const holds = capital(page.holds.join(", "));
    const image = el("img", { alt: `Page ${number}: ${holds}`, width: page.width_mm * 4, height: page.height_mm * 4 });
    const to = (other, text) => el("button", { type: "button", id: other < number ? "before" : "after",
      "aria-disabled": pages[other - 1] ? null : "true",
      on: { click: () => { if (pages[other - 1]) this.#enlarge(other); } } }, text);
    const was = dialog.contains(document.activeElement) ? document.activeElement.id : "";
    fill(dialog, el("div", { class: "row" }, el("h2", { id: "large-name" }, `Page ${number} of ${pages.length}`),
      to(number - 1, "Page before"), to(number + 1, "Page after"),
      el("button", { type: "button", class: "strong", id: "shut", on: { click: () => dialog.close() } }, "Close")),
    el("p", { class: "soft" }, holds), el("div", { class: "paper", tabindex: "0", role: "region", "aria-label": "The sheet" }, image));
    dialog.onkeydown = (event) => {
      const other = { ArrowLeft: number - 1, ArrowRight: number + 1 }[event.key];
      if (pages[other - 1] && !event.target.closest(".paper")) this.#enlarge(other);
    };
    if (!dialog.open) dialog.showModal();
    byId(was || "shut")?.focus();
    try {
      const blob = await bytes("/api/sheet", { ...this.#store.question(), page: number, width: LARGE, despite_stops: this.#despite });
      const url = URL.createObjectURL(blob);
      image.addEventListener("load", () => URL.revokeObjectURL(url), { once: true });
      image.src = url;
    } catch (refused) {
      if (!this.#gone(refused)) image.replaceWith(el("p", {}, refused.message));
    }
  }
}

function pngOf(base64) {
  return new Blob([Uint8Array.from(atob(base64), (character) => character.charCodeAt(0))], { type: "image/png" });
}

const kilobytes = (size) => (size < 1000 ? `${plural(size, "byte")}` : `${Math.round(size / 1000)} kB`);
