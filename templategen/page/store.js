// The job that is being filled in: everything typed, kept in this browser, and what of it goes into the spec.

const PREFIX = "templategen draft ";
const MOST_DRAFTS = 12;

export const empty = (value) => value === undefined || value === null || value === "" || value === false
  || (Array.isArray(value) && value.every((each) => each.trim() === ""));

/** Whether a text is a number with nothing that says of what. */
const bare = (text) => /[\d½⅓⅔¼¾⅛⅜⅝⅞⅒]/.test(text) && !/[a-z'"′″’”]/i.test(text);
const same = (one, other) => !empty(other) && JSON.stringify(one) === JSON.stringify(other);
const copy = (value) => JSON.parse(JSON.stringify(value));

export class Store extends EventTarget {
  #keeping = false; // nothing is kept before what was kept has been read

  constructor(about) {
    super();
    this.about = about;
    this.id = tabId();
    this.begin(about.start.inch, "", "");
  }

  /** A job to go on with: `form` as it stands in the file whose text is `spec`. */
  begin(form, spec, name) {
    this.form = copy(form);
    this.form.together ||= {};
    this.spec = spec;
    this.name = name;
    this.window = this.form.windows.length ? 0 : null;
    this.strays = new Set();
    for (const window of [null, ...this.form.windows.keys()]) {
      for (const path of Object.keys(this.own(window))) {
        if (!this.there(path, window)) this.strays.add(`${window ?? ""}:${path}`);
      }
    }
    this.saved = this.#state();
    this.dispatchEvent(new Event("begun"));
    this.#changed();
  }

  // ---- what stands where

  /** The fields of a window, by its number from 0; of null, those that all windows share. */
  own(window = this.window) {
    return window === null ? this.form.fields : this.form.windows[window].fields;
  }

  /** What a field is worth for a window: its own value, or else the shared one where the window has that too. */
  value(path, window = this.window) {
    const own = this.own(window)[path];
    if (window === null || !empty(own)) return own;
    return this.inherited(path, window);
  }

  /** The shared value that a window has where it says nothing itself. */
  inherited(path, window = this.window) {
    if (window === null) return undefined;
    const { chooser, styles } = this.about.fields[path];
    const chosen = chooser ? this.own(window)[chooser] : undefined;
    return empty(chosen) || styles.includes(chosen) ? this.form.fields[path] : undefined;
  }

  /** What is chosen there, be it only as most people choose. */
  chosen(path, window = this.window) {
    const value = this.value(path, window);
    return empty(value) ? this.about.fields[path].usual : value;
  }

  /** Whether the kind of heading or hem that is chosen has this field. */
  there(path, window = this.window) {
    const field = this.about.fields[path];
    return Boolean(field) && (!field.styles.length || field.styles.includes(this.chosen(field.chooser, window)));
  }

  /** Whether it means anything beside what else is filled in. */
  means(path, window = this.window) {
    const needs = this.about.fields[path].with;
    return !needs.length || !empty(this.value(path, window)) || needs.some((each) => !empty(this.value(each, window)));
  }

  get units() {
    return this.form.fields.units === "metric" ? "metric" : "inch";
  }

  // ---- changes

  set(path, value, window = this.window) {
    const own = this.own(window);
    if (path === "units") this.#nameUnits(value);
    // What is typed just as all windows have it is theirs.
    if (window !== null && same(value, this.inherited(path, window))) value = "";
    if (path === "window.name" || path === "window.room") this.form.windows[window][path.slice(7)] = value;
    else if (path.startsWith("together.")) put(this.form.together, path.slice(9), value);
    else put(own, path, value);
    this.strays.delete(`${window ?? ""}:${path}`);
    this.#changed();
  }

  /** A number without a unit is in the units that are shown: before these change, it is given its own. */
  #nameUnits(next) {
    const unit = { inch: "in", metric: "mm" }[this.units];
    if (next === this.units || empty(next)) return;
    const named = (text) => (bare(text) ? `${text.trim()} ${unit}` : text);
    const lengths = (path) => ["length", "lengths"].includes(this.about.fields[path]?.kind);
    for (const fields of [this.form.fields, ...this.form.windows.map((each) => each.fields)]) {
      for (const [path, value] of Object.entries(fields).filter(([each]) => lengths(each))) {
        fields[path] = Array.isArray(value) ? value.map(named) : named(value);
      }
    }
  }

  show(window) {
    this.window = window;
    this.dispatchEvent(new Event("shown"));
  }

  /** One window more: a copy of `of`, by its number; the first makes two of a job that had one. */
  add(of = this.window) {
    const { windows, fields } = this.form;
    if (!windows.length) {
      const own = {};
      for (const path of this.about.of_a_window) {
        if (!empty(fields[path])) own[path] = fields[path];
        delete fields[path];
      }
      windows.push({ from: null, name: "first window", room: "", fields: own });
      of = 0;
    }
    const pattern = windows[of ?? 0];
    const names = new Set(windows.map((window) => window.name));
    const words = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"];
    let number = windows.length;
    const named = () => (number < words.length ? `${words[number]} window` : `window ${number + 1}`);
    while (names.has(named())) number += 1;
    windows.push({ ...copy(pattern), name: named() });
    this.#changed();
    this.show(windows.length - 1);
  }

  remove(window) {
    const { windows, fields } = this.form;
    windows.splice(window, 1);
    if (windows.length === 1 && !Object.keys(this.form.together).length) {
      // The last one left is the job itself again.
      Object.assign(fields, windows[0].fields);
      windows.length = 0;
    }
    this.strays = new Set([...this.strays].filter((each) => each.startsWith(":")));
    this.#changed();
    this.show(windows.length ? Math.min(window, windows.length - 1) : null);
  }

  /** Whether something was typed that stands in no file yet. */
  get dirty() {
    return this.#state() !== this.saved;
  }

  /** It stands in a file now, as `spec`. */
  keep(spec, name) {
    this.spec = spec;
    this.name = name;
    this.form.windows.forEach((window, number) => { window.from = number; });
    this.saved = this.#state();
    this.#changed();
  }

  // ---- what goes into the spec

  /** What the interface is asked with: only what the job as it is chosen has a use for. */
  question() {
    const { fields, windows, together } = this.form;
    const sent = (own, window) => Object.fromEntries(Object.entries(own).filter(([path, value]) => !empty(value)
      && (this.there(path, window) || this.strays.has(`${window ?? ""}:${path}`))));
    return {
      spec: this.spec,
      form: {
        fields: sent(fields, null),
        windows: windows.map((window, number) => ({
          from: window.from, name: window.name, room: window.room || "", fields: sent(window.fields, number),
        })),
        together: Object.fromEntries(Object.entries(together).filter(([, value]) => !empty(value))),
      },
    };
  }

  // ---- kept in the browser

  #state() {
    return JSON.stringify(this.question().form);
  }

  #changed() {
    this.dispatchEvent(new Event("changed"));
    if (!this.#keeping) return;
    const { form, spec, name, saved, window } = this;
    try {
      localStorage.setItem(PREFIX + this.id, JSON.stringify({ form, spec, name, saved, window, at: Date.now() }));
    } catch {
      this.dispatchEvent(new Event("unkept"));
    }
  }

  /** Goes on with what this tab, or else the tab used last, was filled with. */
  recall() {
    this.#keeping = true;
    try {
      this.#recalled();
    } catch (error) {
      console.warn("nothing kept could be read", error);
    }
  }

  #recalled() {
    const drafts = Object.keys(localStorage).filter((key) => key.startsWith(PREFIX)).flatMap((key) => {
      try {
        return [{ key, ...JSON.parse(localStorage.getItem(key)) }];
      } catch {
        localStorage.removeItem(key);
        return [];
      }
    }).sort((one, other) => other.at - one.at);
    drafts.slice(MOST_DRAFTS).forEach((draft) => localStorage.removeItem(draft.key));
    const draft = drafts.find((each) => each.key === PREFIX + this.id) || drafts[0];
    const form = draft && sound(draft.form, this.about);
    if (!form) return;
    this.begin(form, String(draft.spec ?? ""), String(draft.name ?? ""));
    this.saved = draft.saved;
    if (draft.window === null || draft.window < this.form.windows.length) this.window = draft.window;
    this.#changed();
  }
}

/** A form out of the browser's keeping, which another version may have left there: only what is known now. */
function sound(form, about) {
  const fit = (value) => ["string", "boolean"].includes(typeof value)
    || (Array.isArray(value) && value.every((each) => typeof each === "string"));
  const known = (fields, before = "") => Object.fromEntries(Object.entries(fields ?? {})
    .filter(([path, value]) => about.fields[before + path] && fit(value)
      && Array.isArray(value) === (about.fields[before + path].kind === "lengths")));
  if (typeof form?.fields !== "object" || !Array.isArray(form.windows)) return null;
  return {
    fields: known(form.fields),
    windows: form.windows.filter((each) => typeof each === "object" && each).map((each) => ({
      from: Number.isInteger(each.from) ? each.from : null, name: String(each.name ?? ""), room: String(each.room ?? ""),
      fields: known(each.fields),
    })),
    together: known(form.together, "together."),
  };
}

/** What this tab keeps its draft under: its own, be it loaded again. */
function tabId() {
  // No crypto.randomUUID: it is there only where a page is served to this very machine, or encrypted.
  const made = Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, "0")).join("");
  try {
    const known = sessionStorage.getItem("draft") || made;
    sessionStorage.setItem("draft", known);
    return known;
  } catch {
    return made;
  }
}

function put(into, name, value) {
  if (value === "" || value === false || (Array.isArray(value) && !value.length)) delete into[name];
  else into[name] = value;
}
